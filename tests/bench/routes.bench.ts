import { kitchenWalks } from "../../src/access/kitchen-walks.ts";
import { hosesOf } from "../../src/access/routes.ts";
import type { Garden } from "../../src/index.ts";
import { computeFacts } from "../../src/rules/compute-facts.ts";
import { longHose } from "../../src/rules/long-hose.ts";
import { tap } from "../helpers/garden-of.ts";
import { denseScene, rowsScene, seeded, withMoved } from "../helpers/scenes.ts";
import type { BenchRow } from "./row.ts";
import { median } from "./side-by-side.ts";

/** Walks from the kitchen and hoses from two taps to every bed, after one of them was moved. */
const ROUNDS = 15;
const WARM_UP = 6;

export function run(): BenchRow[] {
  return [
    routes("dense, 40 beds, 2 taps", denseScene(40, 1), 40),
    routes("rows, 40 beds, 2 taps", rowsScene(40, 1), 40),
    waysOut("rows, 40 beds, hose of 20 ft", rowsScene(40, 1), 40),
  ];
}

const withTaps = (garden: Garden): Garden => ({
  ...garden,
  items: [...garden.items, tap("tap", { at: [1500, -1390] }), tap("side", { at: [-1100, 3000], turn: 90 })],
});

function routes(scene: string, garden: Garden, bar: number): BenchRow {
  const random = seeded(3);
  let now = withTaps(garden);
  const times = Array.from({ length: ROUNDS + WARM_UP }, () => {
    now = withMoved(now, "bed-7", [random() * 60 - 30, random() * 60 - 30]);
    const start = performance.now();
    const [walks, hoses] = [kitchenWalks(now), hosesOf(now)];
    for (const item of now.items) {
      if (item.kind !== "bed") continue;
      walks.walkTo(item);
      hoses.walkTo(item);
    }
    return performance.now() - start;
  });
  const productMs = median(times.slice(WARM_UP));
  return row(scene, "walks and hoses to all beds after a move", productMs, bar);
}

/** The slowest of all: nothing near by does it, and every place that is tried has another garden to be led through. */
function waysOut(scene: string, garden: Garden, bar: number): BenchRow {
  const short = { ...withTaps(garden), limits: { ...garden.limits, hose: 6096 } };
  const found = longHose.check(computeFacts(short, longHose.needs));
  if (found.length === 0)
    throw new RangeError("no hose of this garden is too long: there is nothing to measure");
  const times = found.map((finding) => {
    const start = performance.now();
    // Ways out are looked for when they are read.
    if (!Array.isArray(finding.waysOut)) return Number.NaN;
    return performance.now() - start;
  });
  return row(scene, "ways out of one long hose, median", median(times), bar);
}

const row = (scene: string, what: string, productMs: number, bar: number): BenchRow => ({
  scene,
  what,
  productMs,
  referenceMs: null,
  bar: `within ${bar} ms`,
  ok: productMs <= bar,
});
