import { subtract } from "../../../../src/index.ts";
import { pannedBy } from "../../viewport.ts";
import type { Desk, Gesture, Hand } from "../gesture.ts";

/** One finger on empty ground moves the paper. */
export function startPan({ editor }: Desk, start: Hand): Gesture {
  const { view } = editor.getState();
  return {
    cursor: "grabbing",
    move({ pixel }) {
      editor.getState().setView(pannedBy(view, subtract(pixel, start.pixel)));
    },
    end() {},
    cancel() {},
  };
}
