import { add, type Op, type Point, say, subtract } from "../../../../src/index.ts";
import { liesUnder } from "../../../underlay/placing.ts";
import { tellDone } from "../announce.ts";
import { type Desk, type Gesture, type Hand, tryPreview } from "../gesture.ts";

/** Whether a press on empty ground takes hold of the picture beneath: where it lies, and is not locked. */
export function holdsUnderlay({ editor }: Desk, { plan }: Pick<Hand, "plan">): boolean {
  const { underlay } = editor.getState().garden;
  return underlay !== null && !underlay.locked && liesUnder(underlay, plan);
}

/** Carries the picture beneath the plan. It snaps to nothing: what is in it is seen, and nothing else of it is known. */
export function startMoveUnderlay(desk: Desk, start: Hand): Gesture {
  const { editor } = desk;
  const { underlay } = editor.getState().garden;
  const opsTo = (at: Point): readonly Op[] =>
    underlay ? [{ op: "set-garden", changes: { underlay: { ...underlay, at } } }] : [];
  return {
    cursor: "move",
    move({ plan }) {
      if (underlay) tryPreview(desk, opsTo(add(underlay.at, subtract(plan, start.plan))));
    },
    end() {
      editor.getState().commitPreview(say`Move the picture beneath`);
      tellDone(editor, say`Picture moved`);
    },
    cancel() {
      editor.getState().dropPreview();
    },
  };
}
