import { describe, expect, it } from "vitest";
import { entrancesOf } from "../../src/access/entrances.ts";
import { hosesOf, walksFrom } from "../../src/access/routes.ts";
import { type Garden, type ItemOf, outlineOf } from "../../src/index.ts";
import { bed, door, fence, gardenOf, house, tap, wall } from "../helpers/garden-of.ts";
import { denseScene, rowsScene } from "../helpers/scenes.ts";
import { walksByVisibility } from "../helpers/visibility-reference.ts";

const bedsOf = ({ items }: Garden) => items.filter((item): item is ItemOf<"bed"> => item.kind === "bed");
const doorsOf = (garden: Garden) => entrancesOf(garden).filter(({ kind }) => kind === "door");
const home = [
  house("house", { x: -3000, y: -4000, w: 6000, h: 4000 }),
  door("door", { at: [0, 0] }),
] as const;

describe("the walk to a bed", () => {
  it("is straight where nothing stands between, and ends where one stands at the bed", () => {
    const salads = bed("salads", { x: -600, y: 5000, w: 1200, h: 2500 });
    const route = walksFrom(doorsOf(gardenOf(...home)), gardenOf(...home, salads), 500.5).walkTo(salads);
    expect(route?.length).toBeCloseTo(5000 - 250, 3);
    expect(route?.points.at(-1)?.[1]).toBeCloseTo(4750, 3);
  });

  it("goes round the end of a wall on an arc half a width from its corners", () => {
    const salads = bed("salads", { x: -700, y: 6000, w: 400, h: 300 });
    const garden = gardenOf(
      ...home,
      wall("wall", { from: [-9000, 3000], to: [2000, 3000], thickness: 200 }),
      salads,
    );
    const route = walksFrom(doorsOf(garden), garden, 600.5).walkTo(salads);
    // 3.0 m out and over, a quarter round or so about each corner at 300 mm, 2.8 m back: between the crow's way and a box.
    expect(route?.length).toBeGreaterThan(Math.hypot(2000, 2900) + 200 + Math.hypot(2300, 2900) - 300);
    expect(route?.length).toBeLessThan(2000 + 2900 + 200 + 2 * 300 + 2300 + 2900);
    for (const point of route?.points.slice(1) ?? []) {
      const [dx, dy] = [Math.max(0, point[0] - 2000), Math.max(0, 2900 - point[1], point[1] - 3100)];
      expect(Math.hypot(dx, dy)).toBeGreaterThan(299);
    }
  });

  it("is null where there is no way so wide, and for a garden without a door", () => {
    const salads = bed("salads", { x: -600, y: 5000, w: 1200, h: 2500 });
    const shut = [
      fence("a", { from: [-2000, 4000], to: [2000, 4000], thickness: 40 }),
      fence("b", { from: [2000, 3980], to: [2000, 9000], thickness: 40 }),
      fence("c", { from: [2020, 9000], to: [-2020, 9000], thickness: 40 }),
      fence("d", { from: [-2000, 9020], to: [-2000, 3980], thickness: 40 }),
    ];
    const garden = gardenOf(...home, ...shut, salads);
    expect(walksFrom(doorsOf(garden), garden, 500).walkTo(salads)).toBeNull();
    expect(walksFrom([], garden, 500).walkTo(salads)).toBeNull();
  });
});

describe("the hose to a bed", () => {
  it("runs to the corner that takes most of it", () => {
    const salads = bed("salads", { x: 300, y: 4000, w: 1200, h: 2500 });
    const route = hosesOf(gardenOf(tap("tap", { at: [0, 0] }), salads)).walkTo(salads);
    // Past the near corner (1500, 4000) and up the side; a hose 12 mm thick lies a little off the bed.
    expect(route?.length).toBeGreaterThan(Math.hypot(1500, 4000) + 2500);
    expect(route?.length).toBeLessThan(Math.hypot(1500, 4000) + 2500 + 30);
    expect(route?.points.at(-1)).toEqual([1500, 6500]);
  });

  it("crosses from the corner of one bed to that of the next, past the middle of their sides", () => {
    const salads = bed("salads", { x: 3600, y: 3000, w: 600, h: 500 });
    const between = [
      bed("a", { x: 600, y: 888, w: 1681, h: 2003 }),
      bed("b", { x: 2926, y: 1193, w: 1474, h: 1501 }),
    ];
    const route = hosesOf(gardenOf(tap("tap", { at: [0, -500] }), ...between, salads)).walkTo(salads);
    // (2281, 888), (2926, 2694), (3600, 3500), (4200, 3500)
    const least = Math.hypot(2281, 1388) + Math.hypot(645, 1806) + Math.hypot(674, 806) + 600;
    expect(route?.length).toBeGreaterThan(least);
    expect(route?.length).toBeLessThan(least + 30);
  });

  it("is the shorter of two taps', and null without a tap", () => {
    const salads = bed("salads", { x: 300, y: 4000, w: 1200, h: 2500 });
    const two = gardenOf(tap("tap", { at: [-9000, 0] }), tap("near", { at: [900, 8000] }), salads);
    expect(hosesOf(two).walkTo(salads)?.from).toBe("near");
    expect(hosesOf(gardenOf(salads)).walkTo(salads)).toBeNull();
  });
});

describe("against a whole visibility graph of eroded ground", () => {
  // As wide as somebody on foot, and as wide as a hose: so thin a walker crosses from one bed's side to the next one's.
  const scenes = [
    ...[1, 2, 3].map((seed) => ["dense", seed, 520, denseScene(4, seed)] as const),
    ...[1, 2].map((seed) => ["rows", seed, 520, rowsScene(4, seed)] as const),
    ["dense", 6, 12, denseScene(12, 6)] as const,
    ["rows", 1, 12, rowsScene(6, 1)] as const,
  ];
  const name = "walks are as short within 0.5 %: %s %i, %i mm wide";
  it.each(scenes)(name, { timeout: 60_000 }, (_name, _seed, width, garden) => {
    const walks = walksFrom(doorsOf(garden), garden, width);
    const opening = doorsOf(garden)[0]!.opening;
    let reference: ReturnType<typeof walksByVisibility> | null = null;
    for (const item of bedsOf(garden)) {
      const route = walks.walkTo(item);
      expect(route, item.id).not.toBeNull();
      const [, start] = route!.points;
      reference ??= walksByVisibility(garden, start!, width - 0.5);
      const lead = Math.hypot(start![0] - opening[0], start![1] - opening[1]);
      const expected = reference(outlineOf(item)) + lead + 2.5;
      expect(Math.abs(route!.length - expected) / expected, item.id).toBeLessThan(0.005);
    }
  });
});
