import * as v from "valibot";
import { say, word } from "../words/say.ts";
import { between, itemIdField, points, size } from "./fields.ts";
import type { DeepReadonly } from "./readonly.ts";

const MOST_RUNS = 60;
const runs = v.pipe(
  v.array(points(2)),
  v.maxLength(MOST_RUNS, () => say`has more than ${MOST_RUNS} runs`),
);
const flow = between(0.1, 20, word("must be within 0.1 and 20 litres an hour"));

/** How a bed is watered. */
export const bedWateringField = v.strictObject({
  by: v.picklist(["drip", "sprinkler", "hand"], () => say`must be drip, sprinkler or hand`),
  /** False under a roof or a sheet that keeps rain off. */
  rainedOn: v.boolean(() => say`must be true or false`),
  /** Drip lines, where there are any. What is null follows from crops and soil. */
  drip: v.strictObject({
    /** Which way lines run in the bed's own frame. */
    run: v.picklist(["along", "across"], () => say`must be along or across`),
    /** From line to line, mm. */
    apart: v.nullable(size),
    /** From emitter to emitter on a line, mm. */
    emittersApart: v.nullable(size),
    /** What one emitter gives at its usual pressure, L/h. */
    emitterLh: v.nullable(flow),
    /** Lines drawn by hand, each a run of points in the bed's own frame, mm; null for those the planner lays. */
    drawn: v.nullable(runs),
  }),
});

/** The garden's pipes. */
export const waterField = v.strictObject({
  /** The tap that feeds the drip lines; null for the one with the least pipe. */
  tap: v.nullable(itemIdField),
  /** What the tap gives, by a gauge and a bucket; null while nobody has measured it. */
  supply: v.nullable(
    v.strictObject({
      /** Pressure with nothing running, kPa. */
      stillKPa: between(10, 2000, word("must be within 10 and 2000 kPa")),
      /** Flow wide open, L/h. */
      openLh: between(10, 20_000, word("must be within 10 and 20,000 litres an hour")),
    }),
  ),
  /** Tubing of the main, by the name of its row in the tubing table. */
  main: v.picklist(["half", "threeQuarter"], () => say`must be half or threeQuarter`),
  /** The main as drawn by hand, runs of points on the plan, mm; null for the one the planner lays along the ways. */
  drawnMain: v.nullable(runs),
});

export type BedWatering = DeepReadonly<v.InferOutput<typeof bedWateringField>>;
export type GardenWater = DeepReadonly<v.InferOutput<typeof waterField>>;

/** A bed nobody has said anything of: watered by hand, in the rain. */
export const HAND_WATERED: BedWatering = {
  by: "hand",
  rainedOn: true,
  drip: { run: "along", apart: null, emittersApart: null, emitterLh: null, drawn: null },
};

export const UNMEASURED_WATER: GardenWater = { tap: null, supply: null, main: "half", drawnMain: null };
