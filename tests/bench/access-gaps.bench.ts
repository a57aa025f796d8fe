import { gapsOf } from "../../src/access/gaps.ts";
import { obstaclesOf } from "../../src/access/obstacles.ts";
import { sideDimensions } from "../../src/access/side-dimensions.ts";
import { GAP_SIGHT } from "../../src/access/types.ts";
import { boxDistance, boxOf, gapBetween } from "../../src/geometry/gap.ts";
import { boundsOf } from "../../src/geometry/ring.ts";
import { type Garden, itemId, type Ring } from "../../src/index.ts";
import { type JstsPolygon, jstsDistance, jstsPolygon } from "../helpers/jsts-reference.ts";
import { denseScene, rowsScene, seeded, withMoved } from "../helpers/scenes.ts";
import type { BenchRow } from "./row.ts";
import { median, share, sideBySide } from "./side-by-side.ts";

const DRAGGED = "bed-7";
const TIMES = 5;

/** Gaps of one bed that is being dragged, against the distances that JSTS finds between the same pairs. */
export function run(): BenchRow[] {
  return [
    movedAgainstJsts("dense, 40 beds", denseScene(40, 1)),
    movedAgainstJsts("rows, 40 beds", rowsScene(40, 1)),
    movedAgainstJsts("rows, 500 beds", rowsScene(500, 1)),
    allWhileDragging("dense, 40 beds", denseScene(40, 1), 1),
    allWhileDragging("rows, 500 beds", rowsScene(500, 1), 2),
    dimensionsWhileDragging("dense, 40 beds", denseScene(40, 1)),
  ];
}

/** One garden a round, each with the bed a little elsewhere, none of it seen before. */
function drag(garden: Garden, seed: number): () => Garden {
  const random = seeded(seed);
  let now = garden;
  return () => {
    now = withMoved(now, DRAGGED, [random() * 60 - 30, random() * 60 - 30]);
    return now;
  };
}

/** So many moves are measured as one: a single one takes some microseconds, about as long as looking at the clock. */
const MOVES_A_ROUND = 24;
const ROUNDS = 41;
const WARM_UP = 20;

interface Move {
  readonly pairs: readonly (readonly [Ring, Ring])[];
  readonly jsts: readonly (readonly [JstsPolygon, JstsPolygon])[];
}

function movedAgainstJsts(scene: string, garden: Garden): BenchRow {
  const next = drag(garden, 5);
  const polygons = new Map<Ring, JstsPolygon>();
  const moves = (): Move[] => Array.from({ length: MOVES_A_ROUND }, () => pairsOf(next(), polygons));
  gapsOf(garden);
  // Each move is seen once by either side, as in a drag.
  const rounds = Array.from({ length: ROUNDS + WARM_UP }, moves);
  const times = sideBySide(
    (round) => rounds[round]!.map(({ pairs }) => pairs.map(([own, other]) => gapBetween(own, other))),
    (round) => rounds[round]!.map(({ jsts }) => jsts.map(([own, other]) => jstsDistance(own, other))),
    { rounds: ROUNDS, warmUp: WARM_UP },
  );
  const ratio = times.referenceMs / times.productMs;
  return {
    scene,
    what: "gaps of the moved bed, against JSTS on the same pairs",
    productMs: times.productMs / MOVES_A_ROUND,
    referenceMs: times.referenceMs / MOVES_A_ROUND,
    bar: `at least ${TIMES} times faster`,
    ok: ratio >= TIMES,
  };
}

/** JSTS keeps what it can keep as well: its polygons are made before, and only pairs as near as ours are asked. */
function pairsOf(moved: Garden, polygons: Map<Ring, JstsPolygon>): Move {
  const obstacles = obstaclesOf(moved);
  const own = obstacles.find(({ id }) => id === DRAGGED)!.ring;
  const box = boundsOf(own);
  const near = obstacles
    .filter(({ id, ring }) => id !== DRAGGED && boxDistance(box, boxOf(ring)) < GAP_SIGHT)
    .map(({ ring }) => ring);
  const ownPolygon = jstsPolygon(own);
  return {
    pairs: near.map((ring) => [own, ring]),
    jsts: near.map((ring) => {
      const polygon = polygons.get(ring) ?? jstsPolygon(ring);
      polygons.set(ring, polygon);
      return [ownPolygon, polygon];
    }),
  };
}

function allWhileDragging(scene: string, garden: Garden, bar: number): BenchRow {
  const productMs = whileDragging(garden, (moved) => gapsOf(moved), 0.95);
  return {
    scene,
    what: "all gaps after a move, p95",
    productMs,
    referenceMs: null,
    bar: `within ${bar} ms`,
    ok: productMs <= bar,
  };
}

function dimensionsWhileDragging(scene: string, garden: Garden): BenchRow {
  const productMs = whileDragging(garden, (moved) => sideDimensions(moved, itemId(DRAGGED)), 0.5);
  return {
    scene,
    what: "dimension lines after a move",
    productMs,
    referenceMs: null,
    bar: "within 0.2 ms",
    ok: productMs <= 0.2,
  };
}

function whileDragging(garden: Garden, work: (moved: Garden) => unknown, part: number): number {
  const next = drag(garden, 9);
  const times = Array.from({ length: 120 }, () => {
    const moved = next();
    const start = performance.now();
    work(moved);
    return performance.now() - start;
  }).slice(30);
  return part === 0.5 ? median(times) : share(times, part);
}
