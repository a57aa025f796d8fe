import type { Garden, ItemId } from "../../src/index.ts";
import { searchShift } from "../../src/layout/shift-to-clear.ts";
import { survey } from "../../src/rules/survey.ts";
import { denseScene, rowsScene, seeded, withMoved } from "../helpers/scenes.ts";
import type { BenchRow } from "./row.ts";
import { median, share } from "./side-by-side.ts";

const WITHIN_MS = 100;
/** How far a bed is put out of its place before it is asked about, mm along x and y. */
const PUT_OUT = 700;

/** Shift to clear for each of 40 beds put out of its place, where there is something to clear. No outside reference. */
export function run(): BenchRow[] {
  return [
    ...rows(
      "rows, 40 beds",
      [1, 2].map((seed) => rowsScene(40, seed)),
    ),
    ...rows(
      "dense, 40 beds",
      [1, 2].map((seed) => denseScene(40, seed)),
    ),
  ];
}

function rows(scene: string, gardens: readonly Garden[]): BenchRow[] {
  const times = gardens.flatMap(searches);
  const row = (what: string, productMs: number): BenchRow => ({
    scene,
    what: `shift to clear of one bed, ${what} of ${times.length}`,
    productMs,
    referenceMs: null,
    bar: `within ${WITHIN_MS} ms`,
    ok: productMs <= WITHIN_MS,
  });
  return [row("median", median(times)), row("95th percentile", share(times, 0.95))];
}

/** Ways, routes and sun are known already, as they are on the screen when somebody asks. */
function searches(garden: Garden): number[] {
  const random = seeded(5);
  const beds = garden.items.filter(({ kind }) => kind === "bed");
  return beds.flatMap(({ id }) => {
    const put = withMoved(garden, id, [random() * 2 * PUT_OUT - PUT_OUT, random() * 2 * PUT_OUT - PUT_OUT]);
    return timeOf(put, id);
  });
}

function timeOf(garden: Garden, id: ItemId): number[] {
  const known = survey(garden, "reading").access;
  const start = performance.now();
  const { found } = searchShift(garden, [id], known);
  const time = performance.now() - start;
  return found === "nothing to clear" ? [] : [time];
}
