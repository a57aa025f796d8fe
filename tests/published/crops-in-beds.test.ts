import { describe, expect, it } from "vitest";
import {
  CROPS,
  cropById,
  defaultLimit,
  FOOT,
  frameOf,
  GROWING_SEASON,
  growing,
  INCH,
  plantCount,
  plantsOf,
  rootRun,
  seasonDays,
} from "../../src/index.ts";
import { bed, thing } from "../helpers/garden-of.ts";
import published from "./crops-in-beds.json";

const { bed_geometry: geometry, rotation, season } = published.sections;
const limit = (id: Parameters<typeof defaultLimit>[0]) => defaultLimit(id, "ada-2010").value;
const site = { latitude: 40, winter: "freezing" as const, lastFrost: "04-28", firstFrost: "10-14" };

/** Each case of the section and what our own figure is held to; a case that nothing here speaks of fails. */
const BEDS: Readonly<Record<string, (row: (typeof geometry.cases)[number]) => void>> = {
  "BG-1": ({ ft }) => expectWithin(2 * limit("reach"), ft, FOOT),
  "BG-2": ({ inches }) => {
    expectWithin(limit("standingRoom"), inches, INCH);
    expectWithin(limit("kneelingWay"), inches, INCH);
  },
  // The bed of the barrow as it comes.
  "BG-3": ({ inches }) => expectWithin(frameOf(thing("bed", "new")).wallHeight, inches, INCH),
  // Over anything: lettuce and herbs are of the shallow class.
  "BG-4": ({ inches }) => {
    for (const id of ["lettuce-leaf", "lettuce-head", "basil", "chives"]) {
      expectWithin(rootRun(cropById(id)!, "hard"), inches, INCH);
    }
  },
  "BG-5": ({ inches }) => {
    const deeper = CROPS.filter(({ rootClass }) => rootClass !== "shallow");
    expect(deeper.length).toBeGreaterThan(20);
    for (const crop of deeper) expectWithin(rootRun(crop, "hard"), inches, INCH);
  },
  "BG-6": ({ plants }) => {
    const shape = { type: "rectangle" as const, width: 3 * FOOT, length: 2 * FOOT };
    const soil = bed("carrots", {
      shape,
      wall: { made: "mound", height: 250 },
      plantings: growing("carrot"),
    });
    const [carrots] = plantsOf(soil, site);
    expect(carrots!.apart / INCH).toBeCloseTo(3, 9);
    expect(plantCount(carrots!).plants).toBe(plants);
    // "24 ft of row fits a 3 ft x 2 ft bed".
    expect(plantCount(carrots!).rowLength / FOOT).toBeCloseTo(24, 6);
  },
};

function expectWithin(mm: number, range: readonly number[] | undefined, unit: number) {
  if (range?.length !== 2) throw new Error("the case gives no range");
  expect(mm).toBeGreaterThanOrEqual(range[0]! * unit - 1e-6);
  expect(mm).toBeLessThanOrEqual(range[1]! * unit + 1e-6);
}

describe("published sizes of beds", () => {
  it.each(geometry.cases)("$id: $item", (row) => {
    const check = BEDS[row.id];
    if (!check) throw new Error(`${row.id} is neither checked nor left out`);
    expect.hasAssertions();
    check(row);
  });
});

describe("plant families", () => {
  // Standard botany, from memory; three to four years between the same family is common practice.
  it.each(rotation.groups)("$family holds its crops and no other", ({ family, crops }) => {
    expect(CROPS.filter((crop) => crop.family === family).map(({ id }) => id)).toEqual(
      CROPS.map(({ id }) => id).filter((id) => crops.some((crop) => crop === id)),
    );
    expect(crops.length).toBeGreaterThan(0);
  });

  it("are told of every crop of the table", () => {
    expect(rotation.groups.flatMap(({ crops }) => crops).toSorted()).toEqual(
      CROPS.map(({ id }) => id).toSorted(),
    );
  });
});

const SEASONS: Readonly<Record<string, () => unknown>> = {
  "SE-1": () => GROWING_SEASON.north,
  "SE-2": () => GROWING_SEASON.south,
};
const LEFT_OUT: Readonly<Record<string, string>> = {
  "SE-3": "another window, from memory; the season may be typed as this one by whoever prefers it",
};

describe("windows of the growing season", () => {
  it.each(season.cases)("$id", (row) => {
    if (row.id === "SE-4") {
      // "183 (north), 182 or 183 in a leap year (south)"
      const south = [2026, 2027].map((year) => seasonDays(GROWING_SEASON.south, year).length);
      expect([seasonDays(GROWING_SEASON.north).length, ...south]).toEqual([183, 182, 183]);
      return;
    }
    const ours = SEASONS[row.id];
    if (LEFT_OUT[row.id]) expect(ours).toBeUndefined();
    else expect(ours?.()).toMatchObject({ from: row.from, to: row.to });
  });
});
