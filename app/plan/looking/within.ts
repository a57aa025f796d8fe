import type { Point } from "../../../src/index.ts";

/** Where on the board an event lies, px. */
export function within(
  board: HTMLElement,
  { clientX, clientY }: { clientX: number; clientY: number },
): Point {
  const { left, top } = board.getBoundingClientRect();
  return [clientX - left, clientY - top];
}
