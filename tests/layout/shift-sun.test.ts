import { describe, expect, it, vi } from "vitest";
import { checkGarden, type Garden, type Point, searchShift } from "../../src/index.ts";
import { RULES } from "../../src/rules/index.ts";
import { bed, gardenWith, gate, house, keepClear } from "../helpers/garden-of.ts";
import { withMoved } from "../helpers/scenes.ts";

/** Whole searches, each place of which is looked at through a season. */
vi.setConfig({ testTimeout: 30_000 });

const yard: readonly Point[] = [
  [-3000, -6000],
  [13_000, -6000],
  [13_000, 12_000],
  [-3000, 12_000],
];

/**
 * A bed on a drying ground that takes the whole width of the yard: 1500 mm to the south it is off it, and in the shade of
 * whatever house stands there; to the north it takes 2500 mm, into full sun.
 */
const onDryingGround = (houseHeight: number): Garden =>
  gardenWith(
    { yard, site: { latitude: 44, longitude: 0, north: 0 }, limits: { sun: 8 } },
    house("house", { x: -2500, y: 4800, w: 15_000, h: 3000, height: houseHeight }),
    keepClear("drying", { x: -2900, y: 0, w: 15_800, h: 3000 }),
    gate("gate", { at: [5000, -6000], width: 1100 }),
    bed("salads", { x: 4000, y: 1500, w: 2400, h: 1000, name: "Salads" }),
  );

const sunSnags = (garden: Garden) =>
  checkGarden(garden, {}, RULES, "reading")
    .filter(({ unit }) => unit === "h")
    .map(({ rule }) => rule);

describe("a shift to clear", () => {
  it("goes the shortest way where that brings no shade", () => {
    const garden = onDryingGround(1500);
    expect(sunSnags(withMoved(garden, "salads", [0, 1500]))).toEqual([]);
    const search = searchShift(garden, ["salads"]);
    expect(search.found === "shift" && search.shift.by.map(Math.round)).toEqual([0, 1500]);
  });

  it("is none that would leave the bed with less sun than it wants, but the next that does not", () => {
    const garden = onDryingGround(7000);
    expect(sunSnags(garden)).toEqual([]);
    expect(sunSnags(withMoved(garden, "salads", [0, 1500]))).toEqual(["too-little-sun"]);
    const search = searchShift(garden, ["salads"]);
    expect(search.found === "shift" && search.shift.by.map(Math.round)).toEqual([0, -2500]);
    expect(search.found === "shift" && sunSnags(withMoved(garden, "salads", search.shift.by))).toEqual([]);
  });

  it("is not held up by shade that is there already", () => {
    const garden = { ...onDryingGround(7000), limits: { sun: 13 } };
    expect(sunSnags(garden)).toEqual(["too-little-sun"]);
    // To the south there would be hours less of what is too little as it is.
    const search = searchShift(garden, ["salads"]);
    expect(search.found === "shift" && search.shift.by.map(Math.round)).toEqual([0, -2500]);
  });
});
