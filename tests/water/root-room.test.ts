import { describe, expect, it } from "vitest";
import type { Bed } from "../../src/garden/kinds/bed.ts";
import { rootRoomOf } from "../../src/water/root-room.ts";
import { soilOfMix, soilOfTexture } from "../../src/water/soil-water.ts";

const fill: Bed["fill"] = {
  way: "mix",
  mixDepth: 250,
  belowRim: 20,
  recipe: { compost: 1, topsoil: 2, soilless: 0 },
  tested: true,
};
const room = (over: Partial<Bed["fill"]>, liner: Bed["bottom"]["liner"] = null, open = true) =>
  rootRoomOf({ fill: { ...fill, ...over }, bottom: { mesh: { opening: 12 }, liner } }, 400, {
    texture: "sandy-loam",
    open,
  });

describe("room for roots", () => {
  it("is the mix to its depth, and the ground below through mesh", () =>
    expect(room({})).toEqual({
      depth: 400,
      soil: soilOfMix(fill.recipe),
      ground: soilOfTexture("sandy-loam"),
    }));

  it("ends at a liner and at paving", () => {
    expect(room({}, "sheet").ground).toBeNull();
    expect(room({}, "fabric").ground).toBeNull();
    expect(room({}, null, false).ground).toBeNull();
  });

  it("is the mix alone over wood, and no more of it than was filled in", () => {
    expect(room({ way: "layered" })).toEqual({ depth: 250, soil: soilOfMix(fill.recipe), ground: null });
    expect(room({ way: "layered", mixDepth: 600 }).depth).toBe(400);
  });

  it("is the yard's own soil where that is what the bed is filled with", () =>
    expect(room({ way: "native" }).soil).toEqual(soilOfTexture("sandy-loam")));

  it("is refused below nothing", () =>
    expect(() =>
      rootRoomOf({ fill, bottom: { mesh: null, liner: null } }, -1, { texture: "loam", open: true }),
    ).toThrow(RangeError));
});
