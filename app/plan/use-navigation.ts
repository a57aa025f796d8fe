import { type RefObject, useEffect } from "react";
import { listenToFingers } from "./looking/fingers.ts";
import { listenToPan } from "./looking/pan.ts";
import { listenToWheel } from "./looking/wheel.ts";
import { showWhole } from "./looking/whole.ts";

/** Looking about on the plan by wheel, trackpad, middle button, space bar and fingers. */
export function useNavigation(element: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const board = element.current;
    if (!board) return;
    const stops = [showWhole(), listenToWheel(board), listenToPan(board), listenToFingers(board)];
    return () => {
      for (const stop of stops) stop();
    };
  }, [element]);
}
