import { access } from "../../src/access/access.ts";
import { obstaclesOf } from "../../src/access/obstacles.ts";
import { waysOf } from "../../src/access/ways.ts";
import { difference, offset } from "../../src/geometry/clip.ts";
import type { Garden } from "../../src/index.ts";
import { denseScene, rowsScene, seeded, withMoved } from "../helpers/scenes.ts";
import type { BenchRow } from "./row.ts";
import { median, sideBySide } from "./side-by-side.ts";

/** Rounds of each measurement, and those before them that do not count. */
const ROUNDS = 15;
const WARM_UP = 15;
/** Halvings of the span that bring 1.6 m to half a millimetre. */
const HALVINGS = 12;

/** Widest ways to all beds against eroding the ground, and all of access while one bed is dragged. */
export function run(): BenchRow[] {
  return [
    ...waysAgainstErosion("dense, 40 beds", denseScene(40, 1)),
    ...waysAgainstErosion("rows, 40 beds", rowsScene(40, 1)),
    ...[10, 40, 200, 500].map((count) => wholeAccess(`dense, ${count} beds`, denseScene(count, 1))),
  ];
}

const timed = (work: () => void): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

function dragged(garden: Garden): () => Garden {
  const random = seeded(11);
  let now = garden;
  return () => {
    now = withMoved(now, "bed-7", [random() * 60 - 30, random() * 60 - 30]);
    return now;
  };
}

function waysAgainstErosion(scene: string, garden: Garden): BenchRow[] {
  const next = dragged(garden);
  const gardens = Array.from({ length: ROUNDS + WARM_UP }, next);
  const { productMs, referenceMs } = sideBySide(
    (round) => {
      // Another list of the same things: nothing is answered from memory but what each thing keeps about itself.
      const moved = { ...gardens[round]!, items: [...gardens[round]!.items] };
      const ways = waysOf(moved, "dragged");
      for (const item of moved.items) if (item.kind === "bed") ways.toBed(item.id);
    },
    (round) => erode(gardens[round]!, 900),
    { rounds: ROUNDS, warmUp: WARM_UP },
  );
  const beds = garden.items.filter(({ kind }) => kind === "bed").length;
  // A span is halved for each bed by itself; every halving erodes the ground once. Nothing else of it is counted.
  const bisection = referenceMs * HALVINGS * beds;
  return [
    row(scene, "widest ways to all beds, against one erosion", productMs, referenceMs, 5),
    row(scene, "widest ways to all beds, against halving the span by erosions", productMs, bisection, 500),
  ];
}

function erode(garden: Garden, width: number): void {
  const free = difference(
    [garden.yard],
    obstaclesOf(garden).map(({ ring }) => ring),
  );
  offset(free, -width / 2, "round");
}

const row = (
  scene: string,
  what: string,
  productMs: number,
  referenceMs: number,
  times: number,
): BenchRow => ({
  scene,
  what,
  productMs,
  referenceMs,
  bar: `at least ${times} times faster`,
  ok: referenceMs >= times * productMs,
});

/** What a pointer move asks for: everything but free ground and routes, which wait until they are read. */
function wholeAccess(scene: string, garden: Garden): BenchRow {
  const next = dragged(garden);
  access(garden);
  const times = Array.from({ length: ROUNDS + WARM_UP }, () => {
    const moved = next();
    return timed(() => access(moved, { detail: "dragged" }));
  });
  const productMs = median(times.slice(WARM_UP));
  return {
    scene,
    what: "access while one bed is dragged",
    productMs,
    referenceMs: null,
    bar: "within 100 ms",
    ok: productMs < 100,
  };
}
