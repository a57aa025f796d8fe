import { access } from "../../src/access/access.ts";
import { gapsFrom } from "../../src/access/gaps.ts";
import { bedReach, reachOf } from "../../src/access/reach.ts";
import { sideDimensions } from "../../src/access/side-dimensions.ts";
import { roomToStand } from "../../src/access/standing.ts";
import { type Garden, itemId, limitsOf } from "../../src/index.ts";
import { denseScene, rowsScene, seeded, withMoved } from "../helpers/scenes.ts";
import type { BenchRow } from "./row.ts";
import { share } from "./side-by-side.ts";

/** What one move of the pointer asks for. There is no outside reference for it: the bar is its share of a frame. */
const DRAGGED = "bed-7";
const ROUNDS = 200;
const WARM_UP = 60;

export function run(): BenchRow[] {
  const large = rowsScene(500, 1);
  return [
    row("dense, 40 beds", "gaps, standing, reach and ways of all, p95", denseScene(40, 1), chain, 4),
    row("rows, 40 beds", "gaps, standing, reach and ways of all, p95", rowsScene(40, 1), chain, 4),
    row("rows, 500 beds", "gaps, dimension lines and reach of the moved bed, p95", large, ofMoved, 2),
    row("rows, 500 beds", "dimension lines of the moved bed, p95", large, dimensions, 1),
    row("rows, 500 beds", "gaps, standing, reach and ways of all, p95 (worker)", large, chain, 100),
  ];
}

const chain = (garden: Garden): unknown => access(garden, { detail: "dragged" });
const dimensions = (garden: Garden): unknown => sideDimensions(garden, itemId(DRAGGED));

function ofMoved(garden: Garden): void {
  const limits = limitsOf(garden);
  gapsFrom(itemId(DRAGGED), garden);
  dimensions(garden);
  const moved = garden.items.find(({ id }) => id === DRAGGED);
  if (moved?.kind !== "bed") throw new RangeError(`no bed is called ${DRAGGED}`);
  const room = roomToStand(garden.gardener, limits);
  bedReach(moved, garden, { room, reach: reachOf(garden.gardener, limits) });
}

function row(
  scene: string,
  what: string,
  garden: Garden,
  work: (moved: Garden) => unknown,
  bar: number,
): BenchRow {
  const random = seeded(11);
  let now = garden;
  const times = Array.from({ length: ROUNDS + WARM_UP }, () => {
    now = withMoved(now, DRAGGED, [random() * 60 - 30, random() * 60 - 30]);
    const start = performance.now();
    work(now);
    return performance.now() - start;
  });
  const productMs = share(times.slice(WARM_UP), 0.95);
  return { scene, what, productMs, referenceMs: null, bar: `within ${bar} ms`, ok: productMs <= bar };
}
