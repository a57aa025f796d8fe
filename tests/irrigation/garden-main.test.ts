import { describe, expect, it } from "vitest";
import { besideTap, hoseGround } from "../../src/access/routes.ts";
import { distanceToOutline, overlaps } from "../../src/geometry/gap.ts";
import { distance, type Garden, type ItemOf, outlineOf, type Point, type Ring } from "../../src/index.ts";
import { type Main, mainTo } from "../../src/irrigation/garden-main.ts";
import { bed, fence, gardenOf, house, tap } from "../helpers/garden-of.ts";
import { smallGarden } from "../helpers/random-gardens.ts";
import { walksByVisibility } from "../helpers/visibility-reference.ts";

const bedsOf = ({ items }: Garden) => items.filter((item): item is ItemOf<"bed"> => item.kind === "bed");
const mainOf = (garden: Garden): Main => mainTo(bedsOf(garden), garden);
/** Pipe lies half of its thickness off what it runs along. */
const HALF = 6;

describe("the main to one bed", () => {
  it("goes straight to it over open ground", () => {
    const main = mainOf(
      gardenOf(tap("tap", { at: [0, 0] }), bed("a", { x: -700, y: 3000, w: 1500, h: 2500 })),
    );
    expect(main.length).toBeCloseTo(3000 - HALF, 1);
    expect(main.runs).toHaveLength(1);
  });

  it("goes round a house", () => {
    const items = [
      house("house", { x: -4000, y: 1000, w: 7000, h: 3000 }),
      tap("tap", { at: [2000, 990], turn: 180 }),
      bed("a", { x: 1500, y: 5000, w: 1200, h: 2500 }),
    ];
    // Along the wall to its corner at 3000, down its side of 3000, and 1000 down and 300 back to the bed's nearest corner.
    expect(mainOf(gardenOf(...items)).length).toBeGreaterThan(1000 + 3000 + Math.hypot(300, 1000) - 20);
    expect(mainOf(gardenOf(...items)).length).toBeLessThan(1000 + 3000 + Math.hypot(300, 1000) + 60);
  });
});

describe("the main to several beds", () => {
  it("forks between two beds that stand apart, where that takes less than from bed to bed", () => {
    const items = [
      tap("tap", { at: [0, 0] }),
      bed("far", { x: -600, y: 6000, w: 1200, h: 2500 }),
      bed("beside", { x: 400, y: 2500, w: 1200, h: 2500 }),
    ];
    const main = mainOf(gardenOf(...items));
    const straight = 6000 - HALF;
    // To the nearest corner of the bed beside (400, 2500), and on from there past its corner to the far one.
    expect(main.length).toBeLessThan(Math.hypot(400, 2500) + straight);
    expect(main.heads.size).toBe(2);
    expect(main.length).toBeGreaterThan(straight);
  });

  it("tells the pipe from the tap to each bed along it", () => {
    const main = mainOf(
      gardenOf(
        tap("tap", { at: [0, 0] }),
        bed("near", { x: 200, y: -600, w: 1200, h: 1200 }),
        bed("far", { x: 3000, y: -600, w: 1200, h: 1200 }),
      ),
    );
    const [near, far] = ["near", "far"].map(
      (id) => [...main.heads].find(([other]) => other === id)![1].along,
    );
    expect(near).toBeCloseTo(200 - HALF, 1);
    expect(far).toBeGreaterThan(3000 - HALF);
    expect(far).toBeLessThan(3000 + 2 * 600);
    expect(main.length).toBeCloseTo(far!, 6);
  });

  it("takes the tap with the least pipe unless one is chosen", () => {
    const garden = gardenOf(
      tap("far", { at: [0, -9000] }),
      tap("near", { at: [0, -2000] }),
      bed("a", { x: -600, y: 0, w: 1200, h: 2500 }),
    );
    expect(mainOf(garden).tap?.id).toBe("near");
    const [far] = garden.items;
    expect(mainOf({ ...garden, water: { ...garden.water, tap: far!.id } }).tap?.id).toBe("far");
  });

  it("rather reaches all beds than saves pipe", () => {
    const shut = [
      fence("n", { from: [-3000, -3000], to: [3000, -3000], thickness: 60 }),
      fence("e", { from: [3000, -3030], to: [3000, 3000], thickness: 60 }),
      fence("s", { from: [3030, 3000], to: [-3000, 3000], thickness: 60 }),
      fence("w", { from: [-3000, 3030], to: [-3000, -3030], thickness: 60 }),
    ];
    const garden = gardenOf(
      ...shut,
      tap("within", { at: [0, -1000] }),
      tap("without", { at: [0, -9000] }),
      bed("in", { x: -600, y: 0, w: 1200, h: 1100 }),
      bed("out-1", { x: -600, y: 5000, w: 1200, h: 2500 }),
      bed("out-2", { x: 3600, y: 5000, w: 1200, h: 2500 }),
    );
    const main = mainOf(garden);
    expect(main.tap?.id).toBe("without");
    expect([...main.heads.keys()].toSorted()).toEqual(["out-1", "out-2"]);
  });

  it("says why there is none", () => {
    const salads = bed("a", { x: 0, y: 0 });
    expect(mainOf(gardenOf(salads))).toMatchObject({ tap: null, why: "no-tap", length: 0 });
    const within = [
      house("house", { x: -9000, y: -9000, w: 8000, h: 8000 }),
      tap("tap", { at: [-5000, -5000] }),
    ];
    expect(mainOf(gardenOf(...within, salads))).toMatchObject({ why: "tap-shut-in", length: 0 });
  });
});

describe("a drawn main", () => {
  const garden = gardenOf(
    tap("tap", { at: [0, 0] }),
    bed("by", { x: 100, y: 1000, w: 1200, h: 2500 }),
    bed("beyond", { x: 5000, y: 1000, w: 1200, h: 2500 }),
  );

  it("is taken as it is drawn, and reaches the beds it passes within 2 ft", () => {
    const drawnMain: readonly (readonly Point[])[] = [
      [
        [0, 0],
        [0, 3000],
      ],
      [
        [0, 2000],
        [-700, 2000],
      ],
    ];
    const main = mainOf({ ...garden, water: { ...garden.water, drawnMain } });
    expect(main).toMatchObject({ drawn: true, length: 3700, runs: drawnMain });
    expect([...main.heads.keys()]).toEqual(["by"]);
    expect([...main.heads.values()][0]).toMatchObject({ along: 3700 });
  });

  it("counts as not drawn while it has no runs", () => {
    expect(mainOf({ ...garden, water: { ...garden.water, drawnMain: [] } }).drawn).toBe(false);
  });
});

describe("mains in small gardens of every sort", () => {
  const seeds = Array.from({ length: 24 }, (_, seed) => seed + 1);

  // Found by the plain reference, which takes its time.
  it.each(seeds)(
    "are no longer than the shortest tree of walks to the same heads (seed %i)",
    (seed) => {
      const garden = smallGarden(seed, { beds: 2 + (seed % 4), apart: 300 });
      const main = mainOf(garden);
      if (!main.tap) throw new Error("these gardens have a tap");
      const start = besideTap(hoseGround(garden), main.tap)!;
      const heads = [...main.heads.values()].map(({ at }) => at);
      const [tree, edges] = shortestTree(garden, [start, ...heads]);
      const lead = distance(main.tap.at, start);
      // The reference ends its walks 8.5 mm before a head, and the pipe goes round corners by sides, not on an arc.
      expect(main.length).toBeLessThan(tree + lead + edges * (8.5 + 6));
      expect(main.heads.size).toBe(bedsOf(garden).length);
    },
    30_000,
  );

  it.each(seeds)("go to a single bed by the shortest walk (seed %i)", (seed) => {
    const garden = smallGarden(seed, { beds: 3, apart: 300 });
    const [first] = bedsOf(garden);
    const main = mainTo([first!], garden);
    const start = besideTap(hoseGround(garden), main.tap!)!;
    const walk = walksByVisibility(garden, start, 2 * HALF - 1)(outlineOf(first!));
    const pipe = main.length - distance(main.tap!.at, start);
    expect(pipe).toBeGreaterThan(walk - 6);
    expect(pipe).toBeLessThan(walk + 12);
  });

  it.each(seeds)("lie on free ground and add up (seed %i)", (seed) => {
    const garden = smallGarden(seed, { beds: 2 + (seed % 4), apart: 300 });
    const main = mainOf(garden);
    const lengths = main.runs.map((run) =>
      run.slice(1).reduce((sum, to, i) => sum + distance(run[i]!, to), 0),
    );
    expect(lengths.reduce((sum, length) => sum + length, 0)).toBeCloseTo(main.length, 6);
    // The piece from the tap to the open ground before it is left out: it comes out of a wall.
    const legs = main.runs.slice(1).flatMap((run) => run.slice(1).map((to, i): Ring => [run[i]!, to]));
    for (const other of bedsOf(garden)) {
      expect(legs.filter((leg) => overlaps(leg, outlineOf(other)))).toEqual([]);
      const head = main.heads.get(other.id)!;
      expect(distanceToOutline(head.at, outlineOf(other))).toBeLessThan(HALF + 0.2);
    }
  });
});

/** Prim's tree over walks that an independent search has found. */
function shortestTree(garden: Garden, places: readonly Point[]): readonly [length: number, edges: number] {
  const about = ([x, y]: Point): Ring => [
    [x - 0.1, y - 0.1],
    [x + 0.1, y - 0.1],
    [x, y + 0.1],
  ];
  const walks = places.map((place) => {
    const walkTo = walksByVisibility(garden, place, 2 * HALF - 2);
    return places.map((other) => walkTo(about(other)));
  });
  const open = new Set(places.keys());
  open.delete(0);
  const joined = [0];
  let length = 0;
  while (open.size > 0) {
    const [next, leg] = [...open]
      .map((i) => [i, Math.min(...joined.map((j) => walks[j]![i]!))] as const)
      .reduce((a, b) => (b[1] < a[1] ? b : a));
    open.delete(next);
    joined.push(next);
    length += leg;
  }
  return [length, places.length - 1];
}
