import type { Point } from "../../../src/index.ts";
import { usePlanSize } from "../plan-size.ts";
import { pannedBy } from "../viewport.ts";
import type { Desk } from "./gesture.ts";

/** How much of the plan comes into sight at a press, as a share of what is in view. */
const SHARE = 1 / 4;

/**
 * Carries the paper by a press instead of a drag: what lies that way comes into sight.
 * @param way [1, 0] for what lies to the right, [0, 1] for what lies below
 * @returns true: it always means something
 */
export function carryPaper({ editor }: Desk, [x, y]: Point): true {
  const { width, height } = usePlanSize.getState();
  const { view, setView } = editor.getState();
  setView(pannedBy(view, [-x * width * SHARE, -y * height * SHARE]));
  return true;
}
