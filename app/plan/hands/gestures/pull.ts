import { distance, type ItemId, type Op, type Point, subtract } from "../../../../src/index.ts";
import { tellDone } from "../announce.ts";
import type { Guide } from "../constraints.ts";
import { type Desk, type Gesture, type Hand, tryPreview } from "../gesture.ts";

/** What a pulled handle makes of its thing. */
export interface Pulled {
  readonly ops: readonly Op[];
  readonly guides?: readonly Guide[];
  /** The new size or angle in words, told on the plan while it changes and aloud at the end. */
  readonly text: string;
}

export interface Pull {
  /** Where the handle was when it was taken hold of; the hand may have taken it beside its middle. */
  readonly handle: Point;
  readonly held: readonly ItemId[];
  readonly cursor: string;
  /** Label of the step, such as "Resize Salads". */
  readonly label: string;
  pulledTo(to: Point, hand: Hand): Pulled;
}

/** Moved by less than this from where it was taken hold of, a handle has not been pulled, in pixels. */
const STILL = 1.5;

/** A gesture that pulls one handle: every size, turn and corner is one of these. */
export function startPull(desk: Desk, pull: Pull, start: Hand): Gesture {
  const { editor, marks } = desk;
  const beside = subtract(pull.handle, start.plan);
  let last: Pulled | null = null;
  let isBack = false;
  marks.setState({ held: pull.held });
  const letGo = () => marks.setState({ held: [], guides: [], readout: null });

  return {
    cursor: pull.cursor,
    move(hand) {
      const to: Point = [hand.plan[0] + beside[0], hand.plan[1] + beside[1]];
      const pulled = pull.pulledTo(to, hand);
      if (!tryPreview(desk, pulled.ops)) return;
      last = pulled;
      isBack = distance(hand.plan, start.plan) * editor.getState().view.scale < STILL;
      marks.setState({ guides: pulled.guides ?? [], readout: { at: to, text: pulled.text } });
    },
    end() {
      letGo();
      // Brought back to where it was taken hold of: rounding alone is no change.
      if (isBack) {
        editor.getState().dropPreview();
        return;
      }
      editor.getState().commitPreview(pull.label);
      if (last) tellDone(editor, `${pull.label}: ${last.text}`);
    },
    cancel() {
      letGo();
      editor.getState().dropPreview();
    },
  };
}
