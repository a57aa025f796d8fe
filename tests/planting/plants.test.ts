import { describe, expect, it } from "vitest";
import { segmentDistance } from "../../src/geometry/segment.ts";
import {
  applyOps,
  boundsOf,
  CROPS,
  contains,
  FOOT,
  frameOf,
  growing,
  INCH,
  type ItemOf,
  itemId,
  newPlanting,
  type PlantedPatch,
  type Planting,
  type Point,
  plantCount,
  plantsOf,
  type Ring,
  SAME_LENGTH,
} from "../../src/index.ts";
import { meetInTime } from "../../src/planting/year-day.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { seeded, someBed } from "../helpers/scenes.ts";

type Bed = ItemOf<"bed">;

const site = { latitude: 40.4, winter: "freezing" as const, lastFrost: "04-28", firstFrost: "10-14" };
/** Soil of these sizes, without a wall to take from them. */
const soil = (width: number, length: number, plantings: readonly Planting[]): Bed =>
  bed("soil", {
    shape: { type: "rectangle", width, length },
    wall: { made: "mound", height: 300 },
    plantings,
  });
const put = (crop: Planting["crop"], changes: Partial<Planting> = {}): Planting => ({
  ...newPlanting(crop),
  ...changes,
});
const counts = (of: Bed) => plantsOf(of, site).map(({ count }) => count);

describe("plants by spacing", () => {
  it("stand half a spacing from the wall: one in the middle of a bed as wide as its spacing", () => {
    const [patch] = plantsOf(soil(24 * INCH, 24 * INCH, growing("tomato")), site);
    expect(patch!.plants).toEqual([[near(0), near(0)]]);
    expect(counts(soil(24 * INCH - 2, 24 * INCH, growing("tomato")))).toEqual([0]);
  });

  it("fill rows evenly about the middle, along the longer side or across it", () => {
    // 8 ft take 4 tomatoes at 24 in, 3 ft one row.
    const along = plantsOf(soil(8 * FOOT, 3 * FOOT, growing("tomato")), site)[0]!;
    expect(along.plants.map(([x, y]) => [Math.round(x / INCH), Math.round(y / INCH)])).toEqual([
      [-36, 0],
      [-12, 0],
      [12, 0],
      [36, 0],
    ]);
    expect(along.rows).toHaveLength(1);
    const across = plantsOf(soil(8 * FOOT, 3 * FOOT, [put("tomato", { run: "across" })]), site)[0]!;
    expect(across.rows).toHaveLength(4);
    expect(across.plants.every(([, y]) => Math.abs(y) < 1e-9)).toBe(true);
  });

  it("take the typed spacing in the row and from row to row", () => {
    const typed = put("onion-bulb", { apart: 100, rowsApart: 300 });
    const patch = plantsOf(soil(1200, 2400, [typed]), site)[0]!;
    expect(patch.rows).toHaveLength(4);
    expect(patch.count).toBe(4 * 24);
    expect(plantCount(patch)).toMatchObject({ plants: 96, rows: 4 });
    expect(plantCount(patch).rowLength).toBeCloseTo(4 * 2400, 6);
  });

  it("stand equally far from one another in every direction in a block", () => {
    const patch = plantsOf(soil(1200, 1200, [put("kale", { set: "block", apart: 150 })]), site)[0]!;
    const nearest = patch.plants.map((plant) =>
      patch.plants
        .filter((other) => other !== plant)
        .map((other) => Math.hypot(other[0] - plant[0], other[1] - plant[1]))
        .sort((a, b) => a - b),
    );
    for (const [first, second] of nearest) {
      expect(first).toBeCloseTo(150, 6);
      expect(second).toBeCloseTo(150, 6);
    }
    // Six neighbours at the same distance about a plant in the middle: a lattice of triangles.
    expect(Math.max(...nearest.map((all) => all.filter((far) => far < 150.001).length))).toBe(6);
    // Five rows of 8 and four of 7 between them, where a square grid has 8 rows of 8.
    expect(patch.count).toBe(5 * 8 + 4 * 7);
  });

  it("are parted where the soil is, in a U", () => {
    const u = bed("u", {
      shape: { type: "u", width: 2400, length: 1500, bayWidth: 600, bayLength: 900 },
      wall: { made: "mound", height: 300 },
      plantings: [put("lettuce-leaf", { apart: 300, rowsApart: 300 })],
    });
    const rows = plantsOf(u, site)[0]!.rows.map(([[x1, y], [x2]]) => [Math.round(y), Math.round(x2 - x1)]);
    expect(rows).toEqual([[-600, 2400], [-300, 2400], ...[0, 0, 300, 300, 600, 600].map((y) => [y, 900])]);
  });

  it("keep off one another past a point of wall that juts in between them", () => {
    const points: Point[] = [
      [-386.8, -500],
      [-10, -500],
      [0, 0],
      [10, -500],
      [386.8, -500],
      [386.8, 500],
      [-386.8, 500],
    ];
    const jutting = bed("jutting", {
      shape: { type: "polygon", points },
      wall: { made: "mound", height: 300 },
      plantings: [put("kale", { apart: 200, rowsApart: 50, run: "across" })],
    });
    const { plants } = plantsOf(jutting, site)[0]!;
    const inRow = plants.filter(([, y]) => y === plants.find(([, other]) => other > 40 && other < 60)?.[1]);
    expect(inRow.length).toBeGreaterThan(2);
    const gaps = inRow.slice(1).map(([x], i) => x - inRow[i]![0]);
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(200 - SAME_LENGTH);
  });

  it("are counted by their area where there are too many to draw", () => {
    const [patch] = plantsOf(soil(100_000, 100_000, [put("carrot", { apart: 10, rowsApart: 20 })]), site);
    expect(patch).toMatchObject({ count: 5e7, plants: [], rows: [] });
  });

  it("are none in a bed whose walls leave no soil", () => {
    const walls = bed("walls", { w: 300, h: 2000, crops: ["carrot"], wall: blocks(200) });
    expect(plantsOf(walls, site)[0]).toMatchObject({ count: 0, areaMm2: 0, share: 0, notPlaced: 1 });
  });
});

const blocks = (thickness: number): Bed["wall"] => ({
  made: "masonry",
  unitLength: 400,
  unitHeight: 200,
  thickness,
  courses: 2,
});

describe("the ground plantings have", () => {
  it("is an even part of the bed along its longer side, for as many as stand at the same time", () => {
    const patches = plantsOf(soil(1200, 2400, growing("carrot", "beet", "kale")), site);
    expect(patches.map(({ share }) => share)).toEqual([1 / 3, 1 / 3, 1 / 3].map((part) => near(part)));
    expect(patches.map(({ ground }) => boundsOf(ground.flat()).minY)).toEqual(
      [-1200, -400, 400].map((y) => near(y)),
    );
  });

  it("passes to the crop that follows", () => {
    const patches = plantsOf(soil(1200, 2400, growing("radish", "radish")), site);
    expect(patches.map(({ share }) => share)).toEqual([1, 1]);
    const [first, kale, second] = plantsOf(soil(1200, 2400, growing("radish", "kale", "radish")), site);
    expect([first!.share, kale!.share, second!.share]).toEqual([0.5, 0.5, 0.5].map((part) => near(part)));
    expect(second!.ground).toEqual(first!.ground);
  });

  it("is what patches leave", () => {
    const patch = { at: [0, -600] as Point, width: 1200, length: 1200 };
    const patches = plantsOf(soil(1200, 2400, [...growing("beet"), put("kale", { patch })]), site);
    expect(patches.map(({ share }) => share)).toEqual([0.5, 0.5].map((part) => near(part)));
    expect(boundsOf(patches[0]!.ground.flat()).minY).toBeCloseTo(0, 3);
  });

  it("is that of the first in the list where patches lie over one another at the same time", () => {
    const patch = (y: number) => ({ at: [0, y] as Point, width: 1200, length: 1200 });
    const [first, second] = plantsOf(
      soil(1200, 2400, [
        put("beet", { patch: patch(-600), from: "04-20", apart: 100, rowsApart: 100 }),
        put("kale", { patch: patch(0), from: "04-20", apart: 400, rowsApart: 400 }),
      ]),
      site,
    );
    expect([first!.share, second!.share]).toEqual([near(0.5), near(0.25)]);
    // Nine kale fit its patch; half of it is free, and 600 mm wide: one row of three.
    expect([first!.count, first!.notPlaced, second!.count, second!.notPlaced]).toEqual([144, 0, 3, 6]);
  });

  it("is within the soil alone where a patch sticks out of the bed", () => {
    const patch = { at: [600, 0] as Point, width: 1200, length: 1200 };
    const [kale] = plantsOf(soil(1200, 2400, [put("kale", { patch, apart: 300, rowsApart: 300 })]), site);
    expect([kale!.count, kale!.notPlaced]).toEqual([8, 8]);
  });

  it("is parted by area in any shape", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const plantings = growing("carrot", "kale", "beet", "chard", "leek").slice(0, 2 + (seed % 4));
      const patches = plantsOf({ ...someBed("any", seeded(seed)), plantings }, site);
      for (const { share } of patches) expect(share, `seed ${seed}`).toBeCloseTo(1 / plantings.length, 5);
    }
  });
});

const near = (value: number) => expect.closeTo(value, 6);

describe("laws of plants in beds, over random shapes, patches, days and spacings", () => {
  const SEEDS = Array.from({ length: 150 }, (_, i) => i + 1);

  function randomBed(seed: number): Bed {
    const random = seeded(seed * 31 + 5);
    const shaped = seed % 3 === 0 ? star(random) : someBed("any", random);
    const wall: Bed["wall"] = random() < 0.3 ? blocks(100) : shaped.wall;
    const pick = <T>(choices: readonly T[]): T => choices[Math.floor(random() * choices.length)]!;
    const some = (least: number, most: number) => least + random() * (most - least);
    const day = () => `${pick(["03", "05", "07", "09", "12"])}-${pick(["01", "09", "17", "28"])}`;
    const plantings = Array.from(
      { length: 1 + Math.floor(random() * 6) },
      (): Planting => ({
        crop: pick(CROPS).id,
        from: random() < 0.4 ? day() : null,
        until: random() < 0.2 ? day() : null,
        set: pick(["rows", "block"]),
        apart: random() < 0.5 ? some(40, 500) : null,
        rowsApart: random() < 0.5 ? some(40, 500) : null,
        run: pick(["along", "across"]),
        patch:
          random() < 0.6
            ? { at: [some(-900, 900), some(-900, 900)], width: some(100, 1500), length: some(100, 1500) }
            : null,
      }),
    );
    return { ...shaped, wall, plantings };
  }

  /** A polygon with corners near and far from its middle in turn, drawn either way round. */
  function star(random: () => number): Bed {
    const corners = 5 + Math.floor(random() * 9);
    const points = Array.from({ length: corners }, (_, i): Point => {
      const angle = (2 * Math.PI * (i + random() * 0.5)) / corners;
      const far = 400 + random() * 1400;
      return [far * Math.cos(angle), far * Math.sin(angle)];
    });
    return bed("star", { shape: { type: "polygon", points: random() < 0.5 ? points : points.reverse() } });
  }

  /** How much room about a plant is its own: half the lesser of its spacings. */
  const room = ({ apart, rowsApart, standing }: PlantedPatch) =>
    (standing.planting.set === "block" ? apart : Math.min(apart, rowsApart)) / 2;

  it.each(SEEDS)("hold in bed %i", (seed) => {
    const bedding = randomBed(seed);
    const own = frameOf({ ...bedding, at: [0, 0], turn: 0 }).inside;
    const patches = plantsOf(bedding, site);
    expect(patches.map(({ index }) => index)).toEqual(bedding.plantings.map((_, i) => i));
    for (const patch of patches) {
      expect(patch.count).toBe(patch.plants.length);
      expect(patch.share).toBeLessThanOrEqual(1 + 1e-6);
      for (const plant of patch.plants) {
        expect(inSoil(own, plant), "in the soil").toBe(true);
        expect(toEdge(own, plant), "half a spacing from the wall").toBeGreaterThanOrEqual(
          patch.apart / 2 - SAME_LENGTH,
        );
      }
    }
    for (const [i, a] of patches.entries()) {
      for (const b of patches.slice(i)) {
        if (a !== b && !meetInTime(a.standing, b.standing)) continue;
        const apart = room(a) + room(b) - SAME_LENGTH;
        expect(nearestPair(a.plants, b.plants), `${a.crop} ${i} from ${b.crop}`).toBeGreaterThanOrEqual(
          apart,
        );
      }
    }
  });

  it("are asked of beds with plants in them", () => {
    const all = SEEDS.flatMap((seed) => plantsOf(randomBed(seed), site));
    expect(all.filter(({ count }) => count > 3).length).toBeGreaterThan(200);
    expect(all.filter(({ notPlaced }) => notPlaced > 0).length).toBeGreaterThan(60);
    expect(all.filter(({ ground }) => ground.length > 1).length).toBeGreaterThan(5);
  });

  const inSoil = (rings: readonly Ring[], point: Point) =>
    rings.filter((ring) => contains(ring, point)).length % 2 === 1;

  const toEdge = (rings: readonly Ring[], [x, y]: Point) =>
    Math.min(
      ...rings.flatMap((ring) =>
        ring.map((corner, i) => segmentDistance(x, y, ...ring.at(i - 1)!, ...corner)),
      ),
    );

  function nearestPair(a: readonly Point[], b: readonly Point[]): number {
    let nearest = Infinity;
    for (const [i, [x, y]] of a.entries()) {
      for (const [u, v] of a === b ? b.slice(i + 1) : b)
        nearest = Math.min(nearest, Math.hypot(u - x, v - y));
    }
    return nearest;
  }
});

describe("remembering", () => {
  const planted = bed("kept", { crops: ["carrot", "kale"], turn: 20 });

  it("keeps the plants of a bed that is moved or turned", () => {
    const before = plantsOf(planted, site);
    const moved = applyOps(gardenOf(planted), [
      { op: "move", id: itemId("kept"), by: [300, 50] },
      { op: "turn", id: itemId("kept"), by: 30 },
    ]).items[0] as Bed;
    expect(plantsOf(moved, site)).toBe(before);
  });

  it("sets them anew where the shape, the wall, the plantings or the frosts are others", () => {
    const before = plantsOf(planted, site);
    const wider = { ...planted, shape: { type: "rectangle" as const, width: 1500, length: 2000 } };
    expect(plantsOf(wider, site)[0]!.areaMm2).toBeGreaterThan(before[0]!.areaMm2);
    expect(plantsOf({ ...planted, wall: blocks(150) }, site)[0]!.areaMm2).toBeLessThan(before[0]!.areaMm2);
    expect(plantsOf({ ...planted, plantings: growing("carrot") }, site)).toHaveLength(1);
    expect(plantsOf(planted, { ...site, lastFrost: "05-20" })[0]!.standing.from).not.toBe(
      before[0]!.standing.from,
    );
  });
});
