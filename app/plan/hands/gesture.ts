import { INCH, type Op, type Point, type Units } from "../../../src/index.ts";
import type { Editor } from "../../store/editor.ts";
import type { MarksStore } from "./marks.ts";

/** What a gesture works on: the garden's editor, and the marks over the plan. Each test has its own. */
export interface Desk {
  readonly editor: Editor;
  readonly marks: MarksStore;
}

/** Where the hand is, and how. */
export interface Hand {
  readonly plan: Point;
  readonly pixel: Point;
  /** Alt: leave snapping off. */
  readonly free: boolean;
  /** Shift: keep to an axis, to steps or to proportions. */
  readonly even: boolean;
  readonly touch: boolean;
}

/**
 * One gesture from press to release: one file each. It previews while it moves, commits one step at its end, and
 * leaves no trace when it is cancelled.
 */
export interface Gesture {
  readonly cursor: string;
  move(hand: Hand): void;
  end(): void;
  cancel(): void;
}

/** How far things are pulled to what they snap to, in pixels. */
export const SNAP_PIXELS = 8;

/** Sizes and places set free of all snapping still come in sixteenths of an inch or whole millimetres. */
export const finestStep = (units: Units): number => (units === "us" ? INCH / 16 : 1);

/**
 * Shows changes if a garden can hold them; otherwise what was last shown stays, as when an outline would cross
 * itself. What no garden may hold is only known by trying.
 * @returns whether they could be shown
 */
export function tryPreview({ editor }: Desk, ops: readonly Op[]): boolean {
  try {
    editor.getState().preview(ops);
    return true;
  } catch (problem) {
    if (problem instanceof RangeError) return false;
    throw problem;
  }
}
