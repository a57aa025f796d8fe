import { type Garden, type ItemOf, type Op, type Point, unplaced } from "../../../src/index.ts";

/** Adds a run to the main that is drawn by hand; the first takes the place of the planner's. */
export const mainOps = ({ water }: Pick<Garden, "water">, run: readonly Point[]): readonly Op[] => [
  {
    op: "set-garden",
    changes: { water: { ...water, drawnMain: [...(water.drawnMain ?? []), run] } },
  },
];

/** Adds a line to those of a bed that are drawn by hand, in the bed's own frame; none without a bed. */
export function dripLineOps(bed: ItemOf<"bed"> | null, run: readonly Point[]): readonly Op[] {
  if (!bed) return [];
  const { watering } = bed;
  const own = run.map((point) => unplaced(point, bed.at, bed.turn));
  const drip = { ...watering.drip, drawn: [...(watering.drip.drawn ?? []), own] };
  return [{ op: "set", id: bed.id, changes: { watering: { ...watering, drip } } }];
}
