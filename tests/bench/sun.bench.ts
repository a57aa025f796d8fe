import { deltaOf } from "../../app/live/delta.ts";
import { createSunAnswers } from "../../app/workers/sun-answers.ts";
import { type Garden, itemId } from "../../src/index.ts";
import { bedMonths } from "../../src/sun/bed-months.ts";
import { bedPlane, hoursOn } from "../../src/sun/bed-plane.ts";
import { bedSoil } from "../../src/sun/bed-soil.ts";
import { cellMiddle } from "../../src/sun/cells.ts";
import { SUN_LIVE, SUN_SETTLED, type SunOptions } from "../../src/sun/options.ts";
import { sunFollowing } from "../../src/sun/sun-following.ts";
import { sunHours } from "../../src/sun/sun-hours.ts";
import type { SunMap } from "../../src/sun/sun-map.ts";
import { FOOT } from "../../src/units/length.ts";
import { looksOf, minutesAt, raysOf } from "../helpers/ray-reference.ts";
import { withMoved } from "../helpers/scenes.ts";
import { shadyYard } from "../helpers/sun-scenes.ts";
import type { BenchRow } from "./row.ts";
import { median } from "./side-by-side.ts";

const FASTER = 60;
const FASTER_DRAGGED = 250;
/** Float32 hours, and cells whose middles lie on the edge of a shadow at one look in a thousand. */
const SAME_MINUTES = 0.2;

/** A yard of 60 x 40 ft with 20 things: house, shed, wall, fence, four trees and a dozen beds. */
const yard = (beds = 12, trees = 4): Garden =>
  shadyYard(5, { width: 60 * FOOT, length: 40 * FOOT, beds, trees });

const timed = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};
const medianOf = (rounds: number, work: (round: number) => unknown): number => {
  work(0);
  return median(Array.from({ length: rounds }, (_, round) => timed(() => work(round))));
};

/** The sun map, whole and while one thing is dragged, against a ray from every cell at every look at the sun. */
export function run(): BenchRow[] {
  const garden = yard();
  const map = sunHours(garden);
  const { minutes, ms: naiveMs } = naive(garden, map);
  const scene = `60 x 40 ft, ${garden.items.length} things`;
  const wholeMs = medianOf(9, () => sunHours(garden));
  const off = worstDifference(minutes, minutesOf(map, garden));
  return [
    {
      scene,
      what: `map, 6 in cells, 12 days by 10 minutes; cells part by ${off.toFixed(2)} min a day at most`,
      productMs: wholeMs,
      referenceMs: naiveMs,
      bar: `at least ${FASTER} times faster than rays, with the same answer`,
      ok: naiveMs / wholeMs >= FASTER && off <= SAME_MINUTES,
    },
    ...["house", "shed", "fence", "tree-1", "bed-1"].map((id) => dragged(scene, garden, id, naiveMs)),
    settled(scene, garden),
    ...asTheWorkerAnswers(scene, garden),
    underHand(scene, garden),
    months(scene, garden),
    ...growth(),
  ];
}

function dragged(scene: string, garden: Garden, id: string, naiveMs: number): BenchRow {
  let follow: (moved: Garden) => SunMap = () => sunHours(garden);
  const taken = timed(() => {
    follow = sunFollowing(garden, itemId(id));
  });
  const places = Array.from({ length: 15 }, (_, i) => withMoved(garden, id, [40 * i - 300, 25 * i - 200]));
  const productMs = medianOf(places.length, (round) => follow(places[round]!));
  return {
    scene,
    what: `dragging ${id}, taken hold of in ${taken.toFixed(0)} ms`,
    productMs,
    referenceMs: naiveMs,
    bar: `at least ${FASTER_DRAGGED} times faster than rays`,
    ok: naiveMs / productMs >= FASTER_DRAGGED,
  };
}

function settled(scene: string, garden: Garden): BenchRow {
  const productMs = medianOf(3, () => sunHours(garden, SUN_SETTLED));
  return {
    scene,
    what: "settled map, 24 days by 2 minutes",
    productMs,
    referenceMs: null,
    bar: "within 1 s",
    ok: productMs <= 1000,
  };
}

/** What the page waits for while a shading thing is dragged: from the hand's taking hold, and once it rests. */
function asTheWorkerAnswers(scene: string, garden: Garden): BenchRow[] {
  const first: number[] = [];
  const next: number[] = [];
  const closer: number[] = [];
  for (let round = 0; round < 9; round++) {
    const answers = createSunAnswers();
    answers.hours(deltaOf(null, garden), "live");
    const at = (step: number) => withMoved(garden, "shed", [50 * step, 30 * (round + step)]);
    first.push(timed(() => answers.hours(deltaOf(garden, at(1)), "following")));
    next.push(timed(() => answers.hours(deltaOf(at(1), at(2)), "following")));
    closer.push(timed(() => answers.hours(deltaOf(at(2), at(3)), "closer")));
  }
  const row = (what: string, times: readonly number[], most: number): BenchRow => ({
    scene,
    what: `from the worker, shed dragged: ${what}`,
    productMs: median(times),
    referenceMs: null,
    bar: `within ${most} ms`,
    ok: median(times) <= most,
  });
  return [
    row("the first move, taken hold of", first, 100),
    row("each move after it", next, 100),
    row("a closer look when it rests", closer, 500),
  ];
}

/** A bed under the hand: its hours in the frame, off a plane that was asked for when it was taken hold of. */
function underHand(scene: string, garden: Garden): BenchRow {
  const plane = bedPlane(garden, itemId("bed-1"))!;
  const beds = Array.from({ length: 400 }, (_, i) => {
    const moved = withMoved(garden, "bed-1", [i, 2 * i]).items.find(({ id }) => id === "bed-1");
    if (moved?.kind !== "bed") throw new Error("bed-1 is no bed");
    return moved;
  });
  const productMs = medianOf(9, () => beds.map((bed) => hoursOn(plane, bed))) / beds.length;
  return {
    scene,
    what: "hours of a bed under the hand",
    productMs,
    referenceMs: null,
    bar: "within 1 ms of a frame",
    ok: productMs <= 1,
  };
}

/** A bar of the day for each month of the year. */
function months(scene: string, garden: Garden): BenchRow {
  const productMs = medianOf(9, () => bedMonths(garden, itemId("bed-1")));
  return {
    scene,
    what: "a bed's day, month by month",
    productMs,
    referenceMs: null,
    bar: "within 100 ms",
    ok: productMs <= 100,
  };
}

function growth(): BenchRow[] {
  const cases: [string, Garden, SunOptions][] = [
    ["12 in cells", yard(), { cell: 304.8 }],
    ["3 in cells", yard(), { cell: 76.2 }],
    ["24 days", yard(), { days: 24 }],
    ["5-minute steps", yard(), { step: 5 }],
    ["40 beds", yard(40), {}],
    ["16 trees", yard(12, 16), {}],
  ];
  return cases.map(([what, garden, options]) => ({
    scene: `60 x 40 ft, ${garden.items.length} things`,
    what: `growth: ${what}`,
    productMs: medianOf(5, () => sunHours(garden, { ...SUN_LIVE, ...options })),
    referenceMs: null,
    bar: "shown",
    ok: true,
  }));
}

/** Rays are sent from one cell in so many, both ways; their time is taken for all by multiplying. */
const EVERY = 5;

interface Naive {
  /** Minutes a day of each cell of the ground; NaN where no rays were sent. */
  readonly minutes: readonly number[];
  readonly ms: number;
}

/** A ray from a cell to the sun for each look at it. The beds' own cells, twice as many again, are given away. */
function naive(garden: Garden, { days, step, yard: grid }: SunMap): Naive {
  const looks = looksOf(garden, days, step);
  const rays = raysOf(garden.items);
  let sent = 0;
  const start = performance.now();
  const minutes = Array.from({ length: grid.columns * grid.rows }, (_, i) => {
    const [column, row] = [i % grid.columns, Math.floor(i / grid.columns)];
    if (column % EVERY !== 0 || row % EVERY !== 0) return Number.NaN;
    sent++;
    return minutesAt(rays, looks, step, cellMiddle(grid, column, row), 0) / days.length;
  });
  return { minutes, ms: ((performance.now() - start) * minutes.length) / sent };
}

/** The same cells out of the product's map; NaN where it says nothing, or speaks of a bed's soil. */
function minutesOf({ yard: grid }: SunMap, { items }: Garden): number[] {
  const soils = items.flatMap((item) => (item.kind === "bed" ? [bedSoil(item, grid.cell)] : []));
  return Array.from(grid.hours, (hours, i) => {
    const [x, y] = cellMiddle(grid, i % grid.columns, Math.floor(i / grid.columns));
    const onBed = soils.some((place) => {
      if (!place) return false;
      const { origin, cell, columns, rows } = place.cells;
      const [column, row] = [Math.floor((x - origin[0]) / cell), Math.floor((y - origin[1]) / cell)];
      // Walls show the light of the soil next to them: a hand round the soil is left out with it.
      return column >= -4 && row >= -4 && column < columns + 4 && row < rows + 4;
    });
    return onBed ? Number.NaN : hours * 60;
  });
}

function worstDifference(one: readonly number[], other: readonly number[]): number {
  let [worst, compared] = [0, 0];
  one.forEach((minutes, i) => {
    if (Number.isNaN(minutes) || Number.isNaN(other[i]!)) return;
    worst = Math.max(worst, Math.abs(minutes - other[i]!));
    compared++;
  });
  if (compared < one.length / EVERY ** 2 / 4) throw new Error(`only ${compared} cells could be compared`);
  return worst;
}
