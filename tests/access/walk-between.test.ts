import { describe, expect, it } from "vitest";
import { walkBetween } from "../../src/access/walk-between.ts";
import { type Garden, type ItemOf, itemId, outlineOf } from "../../src/index.ts";
import { bed, fence, gardenOf, house, wall } from "../helpers/garden-of.ts";
import { smallGarden } from "../helpers/random-gardens.ts";
import { walkBetweenByVisibility } from "../helpers/visibility-reference.ts";

const bedsOf = ({ items }: Garden) => items.filter((item): item is ItemOf<"bed"> => item.kind === "bed");
const [salads, beans] = [itemId("salads"), itemId("beans")];
const left = bed("salads", { x: 0, y: 0, w: 1200, h: 2400 });

describe("the walk from bed to bed", () => {
  it("is straight across where they face each other, less the half of a walker at either end", () => {
    const garden = gardenOf(left, bed("beans", { x: 4200, y: 700, w: 1000, h: 2300 }));
    const route = walkBetween(garden, salads, beans, 500.5);
    expect(route?.length).toBeCloseTo(3000 - 500, 3);
    expect(route?.points).toHaveLength(2);
  });

  it("is none at all where one stands at both", () => {
    const garden = gardenOf(left, bed("beans", { x: 1600, y: 700, w: 1000, h: 2300 }));
    expect(walkBetween(garden, salads, beans, 600)?.length).toBe(0);
    expect(walkBetween(garden, salads, beans, 400.5)?.length).toBeCloseTo(0, 3);
  });

  it("goes round the end of a wall, on an arc about its corners", () => {
    const garden = gardenOf(
      left,
      wall("wall", { from: [2000, -9000], to: [2000, 4000], thickness: 200 }),
      bed("beans", { x: 2800, y: 0, w: 1000, h: 2400 }),
    );
    const route = walkBetween(garden, salads, beans, 500.5);
    // From the lower corner of either bed to the wall's end at y 4000, 1.6 m below, and half round its two corners.
    const [out, back] = [Math.hypot(700, 1600), Math.hypot(700, 1600)];
    expect(route?.length).toBeGreaterThan(out + back - 500);
    expect(route?.length).toBeLessThan(out + back + 200 + Math.PI * 250);
    expect(route?.from).toBe(salads);
    expect(route?.to).toBe(beans);
  });

  it("is as long there as back", () => {
    const garden = smallGarden(5, { beds: 4, apart: 600 });
    const [first, second] = bedsOf(garden);
    const there = walkBetween(garden, first!.id, second!.id, 500);
    const back = walkBetween(garden, second!.id, first!.id, 500);
    expect(there!.length / back!.length).toBeCloseTo(1, 3);
  });

  it("is null where there is no way so wide, and refuses what is no bed", () => {
    const shut = [
      fence("a", { from: [3000, -2000], to: [6000, -2000], thickness: 40 }),
      fence("b", { from: [6000, -2020], to: [6000, 5000], thickness: 40 }),
      fence("c", { from: [6020, 5000], to: [3000, 5000], thickness: 40 }),
      fence("d", { from: [3000, 5020], to: [3000, -2020], thickness: 40 }),
    ];
    const garden = gardenOf(left, bed("beans", { x: 4000, y: 0, w: 1000, h: 2400 }), ...shut);
    expect(walkBetween(garden, salads, beans, 500)).toBeNull();
    expect(() => walkBetween(gardenOf(left, house("house")), salads, itemId("house"), 500)).toThrow(
      RangeError,
    );
    expect(() => walkBetween(garden, salads, itemId("nothing"), 500)).toThrow(/no bed/);
  });
});

describe("against a whole visibility graph of eroded ground", () => {
  const WIDTH = 470;
  const seeds = Array.from({ length: 40 }, (_, i) => i + 1);
  it.each(seeds)("is as short within 0.5 %: seed %i", { timeout: 60_000 }, (seed) => {
    const garden = smallGarden(seed, { beds: 3, apart: 520 });
    const [first, second] = bedsOf(garden);
    const route = walkBetween(garden, first!.id, second!.id, WIDTH);
    const reference = walkBetweenByVisibility(garden, outlineOf(first!), outlineOf(second!), WIDTH - 0.5);
    // The reference begins and ends 2.5 mm before it touches.
    expect(Math.abs((route?.length ?? Infinity) - reference - 5)).toBeLessThan(0.005 * reference + 1);
  });
});
