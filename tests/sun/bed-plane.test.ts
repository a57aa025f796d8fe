import { describe, expect, it } from "vitest";
import { overlaps } from "../../src/geometry/gap.ts";
import { bedPlane, bedShade, hoursOn, type ItemOf, itemId, outlineOf } from "../../src/index.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { seeded, withMoved } from "../helpers/scenes.ts";
import { shadyYard } from "../helpers/sun-scenes.ts";

describe("what a bed would get elsewhere, read off a plane of its own", () => {
  it.each([1, 2, 3, 4])("seed %i: is what it gets there, within 5 minutes a day", (seed) => {
    const whole = shadyYard(seed);
    const random = seeded(seed);
    let compared = 0;
    for (const item of whole.items) {
      if (item.kind !== "bed") continue;
      // What a bed is never put on tells nothing: cells under a thin wall are dark or not as their middles fall.
      const others = whole.items.filter(
        ({ kind, id }) => id === item.id || (kind !== "bed" && kind !== "wall"),
      );
      const garden = { ...whole, items: others };
      const hut = others.find((one): one is ItemOf<"shed"> => one.kind === "shed")!;
      const plane = bedPlane(garden, item.id)!;
      for (let tries = 0; tries < 6; tries++) {
        const to = [2200 + random() * 4600, 2200 + random() * 2600];
        const moved = withMoved(garden, item.id, [to[0]! - item.at[0], to[1]! - item.at[1]]);
        const there = moved.items.find((one) => one.id === item.id)!;
        if (there.kind !== "bed") throw new Error("not a bed");
        if (overlaps(outlineOf(hut), outlineOf(there))) continue;
        const truth = bedShade(moved, item.id)!.hours;
        expect(Math.abs(hoursOn(plane, there)! - truth) * 60).toBeLessThan(5);
        compared++;
      }
    }
    expect(compared).toBeGreaterThanOrEqual(8);
  });

  it("is nothing off the plane, and there is no plane for a bed that is not there", () => {
    const salads = bed("salads", { x: 0, y: 0, w: 1200, h: 2400 });
    const garden = gardenWith({}, salads);
    const plane = bedPlane(garden, salads.id)!;
    expect(hoursOn(plane, { ...salads, at: [90_000, 0] })).toBeNull();
    expect(hoursOn(plane, salads)).toBeCloseTo(bedShade(garden, salads.id)!.hours, 4);
    expect(() => bedPlane(garden, itemId("gone"))).toThrow(RangeError);
  });
});
