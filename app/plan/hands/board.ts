import type { Point } from "../../../src/index.ts";
import { usePlanSize } from "../plan-size.ts";
import { toPlan } from "../viewport.ts";
import type { Desk, Hand } from "./gesture.ts";

let board: HTMLElement | null = null;

/** Tells where the plan lies in the page, for hands that come from outside it. */
export function setBoard(element: HTMLElement | null) {
  board = element;
}

/** Gives the keyboard to the plan, when what had it is about to go. */
export const focusBoard = () => board?.focus({ preventScroll: true });

export type PointerFacts = Pick<PointerEvent, "clientX" | "clientY" | "altKey" | "shiftKey" | "pointerType">;

/** Where a pointer is on the plan, and how it is held. */
export function handAt({ editor }: Desk, event: PointerFacts): Hand {
  const box = board?.getBoundingClientRect();
  const pixel: Point = [event.clientX - (box?.left ?? 0), event.clientY - (box?.top ?? 0)];
  return {
    pixel,
    plan: toPlan(editor.getState().view, pixel),
    free: event.altKey,
    even: event.shiftKey,
    touch: event.pointerType === "touch",
  };
}

/** Whether a pointer is over the plan. */
export function isOverBoard({ clientX, clientY }: Pick<PointerEvent, "clientX" | "clientY">): boolean {
  const box = board?.getBoundingClientRect();
  return (
    box !== undefined &&
    clientX >= box.left &&
    clientX <= box.right &&
    clientY >= box.top &&
    clientY <= box.bottom
  );
}

/** The point of the plan in the middle of what is in view. */
export function middleOfView({ editor }: Desk): Point {
  const { width, height } = usePlanSize.getState();
  return toPlan(editor.getState().view, [width / 2, height / 2]);
}
