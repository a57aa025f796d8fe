import { create } from "zustand";
import type { ItemId, Point } from "../../../src/index.ts";
import type { Guide } from "./constraints.ts";

/** A line or an outline that is being drawn point by point. */
export interface Drawing {
  readonly points: readonly Point[];
  /** Where the next point would come to lie; null while the hand is off the plan. */
  readonly next: Point | null;
}

/** What lies over the plan while the hand works; nothing of it is part of the garden. */
export interface Marks {
  readonly guides: readonly Guide[];
  /** Two opposite corners of the box of a box select, on the plan. */
  readonly box: readonly [Point, Point] | null;
  /** Things a gesture has hold of: their distances to their neighbours are shown. */
  readonly held: readonly ItemId[];
  /** A size or an angle told at a place on the plan while it changes. */
  readonly readout: { readonly at: Point; readonly text: string } | null;
  readonly drawing: Drawing | null;
  /** The finger that carries or pulls something, px of the plan: it covers what it does. */
  readonly finger: Point | null;
  /** The thing under the pointer, or in focus in the list. */
  readonly pointed: ItemId | null;
  /** Corner last taken hold of, to be removed by Delete; id null for the yard's. */
  readonly corner: { readonly id: ItemId | null; readonly index: number } | null;
  /** The planting whose place in its bed has handles; `index` in the bed's list. */
  readonly patch: { readonly id: ItemId; readonly index: number } | null;
  /** The first corner of a place for a crop that is drawn by taps, in the frame of its bed. */
  readonly patchFrom: { readonly id: ItemId; readonly at: Point } | null;
}

export const NO_MARKS: Marks = {
  guides: [],
  box: null,
  held: [],
  readout: null,
  drawing: null,
  finger: null,
  pointed: null,
  corner: null,
  patch: null,
  patchFrom: null,
};

export const createMarks = () => create<Marks>()(() => NO_MARKS);
export type MarksStore = ReturnType<typeof createMarks>;

/** The marks of the page's one plan. */
export const useMarks = createMarks();
