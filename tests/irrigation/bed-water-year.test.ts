import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type BedWaterYear,
  bedNeed,
  bedWaterYears,
  type CropId,
  type Garden,
  growing,
  type ItemOf,
  referenceMonths,
} from "../../src/index.ts";
import { wateredCrops } from "../../src/irrigation/watered-crops.ts";
import { soilOfTexture } from "../../src/water/soil-water.ts";
import { bed, gardenWith, ground } from "../helpers/garden-of.ts";
import { DRY_SUMMER, dripBed } from "./drip-scene.ts";

const dry = (...items: Garden["items"]): Garden => ({ ...gardenWith({}, ...items), climate: DRY_SUMMER });
const yearOf = (item: ItemOf<"bed">, garden = dry(item)): BedWaterYear =>
  bedWaterYears(garden).find(({ bedId }) => bedId === item.id)!;
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe("what a bed of the garden asks of water", () => {
  it("is the sum that the handbook's steps give for the same bed, by hand", () => {
    const tomatoes = dripBed("a", {
      w: 1276.2,
      h: 2476.2,
      crops: ["tomato"],
      fill: { way: "native" },
      bottom: { liner: "sheet" },
    });
    const garden = dry(tomatoes);
    const [year] = bedWaterYears(garden);
    // Inside boards of 1.5 in: 1.2 m by 2.4 m, 279.4 mm deep (two courses of 2x6, dressed), loam, nothing below.
    expect(year!.areaMm2).toBeCloseTo(1200 * 2400, 0);
    const reference = referenceMonths(
      DRY_SUMMER.months.map(({ maxC, minC, rain }) => ({
        maxC,
        minC,
        rain,
        humidity: { measured: "mean" as const, meanPercent: 62 },
        sunshine: null,
        wind: { ms: 2, height: 2000 },
      })),
      { latitude: garden.site.latitude, altitudeM: 250, setting: "interior" },
    );
    const plantings = wateredCrops(tomatoes, garden.site);
    const july = bedNeed(
      {
        areaMm2: year!.areaMm2,
        room: { depth: 279.4, soil: soilOfTexture("loam"), ground: null },
        plantings,
        rainedOn: true,
        wetting: null,
        mulchedShare: 0,
      },
      reference,
      DRY_SUMMER.months.map(({ rain }) => rain),
      0.9,
    )[7]!;
    // In August the crop is grown, and how its seedlings were wetted no longer counts.
    expect(year!.months![7]!.et0).toBeCloseTo(july.et0, 9);
    expect(year!.litresAWeek[7]).toBeCloseTo(july.litresAWeek, 6);
    expect(year!.method).toBe("penman-monteith");
    expect(year!.guessed).toEqual(["sunshine"]);
  });

  it("is none for beds in which nothing grows, bare or covered, in every climate", () => {
    const bare = bed("bare");
    const covered = {
      ...bed("covered", { x: 3000 }),
      winter: "sheet" as const,
      mulch: { material: "straw" as const, depth: 75 },
    };
    for (const garden of [dry(bare, covered), gardenWith({}, bare, covered)]) {
      for (const year of bedWaterYears(garden)) expect(year.litresAWeek).toEqual(new Array(12).fill(0));
    }
  });

  it("is less under straw and by drip, and more where no rain falls on it", () => {
    const plain = bed("a", { crops: ["lettuce-leaf"] });
    const litres = (item: ItemOf<"bed">) => sum(yearOf(item).litresAWeek);
    const mulched = { ...plain, mulch: { material: "straw" as const, depth: 50 } };
    const roofed = { ...plain, watering: { ...plain.watering, rainedOn: false } };
    const dripped = { ...plain, watering: { ...plain.watering, by: "drip" as const } };
    expect(litres(mulched)).toBeLessThan(litres(plain));
    expect(litres(roofed)).toBeGreaterThan(litres(plain));
    expect(litres(dripped)).toBeLessThan(litres(plain));
  });

  it("lasts longer between two waterings in a deeper bed, and over open ground than over paving", () => {
    const shallow = bed("a", { crops: ["tomato"], bottom: { liner: "sheet" } });
    const deep = { ...shallow, wall: { ...shallow.wall, courses: 4 } as ItemOf<"bed">["wall"] };
    const waits = (item: ItemOf<"bed">, garden = dry(item)) => yearOf(item, garden).months![7]!.everyDays!;
    expect(waits(deep)).toBeGreaterThan(1.5 * waits(shallow));
    const open = bed("a", { crops: ["tomato"] });
    const paved = dry(ground("patio", { x: -1000, y: -1000, w: 4000, h: 5000, cover: "paving" }), open);
    expect(waits(open)).toBeGreaterThan(1.5 * waits(open, paved));
  });

  it("is the rule of thumb, called so, without a climate: an inch on all of the soil while something grows", () => {
    const beans = bed("a", { crops: ["bean-bush"] });
    const year = yearOf(beans, gardenWith({}, beans));
    expect(year).toMatchObject({ method: "rule-of-thumb", months: null, litresAYear: null, problem: null });
    const grown = year.litresAWeek.filter((litres) => litres > 0);
    expect(grown.length).toBeGreaterThan(2);
    expect(grown.length).toBeLessThan(12);
    for (const litres of grown) expect(litres).toBeCloseTo((25.4 * year.areaMm2) / 1e6, 9);
    expect(year.sources.length).toBeGreaterThan(0);
  });

  it("asks for nothing by the rule of thumb while frost has the garden at rest, and all year where none comes", () => {
    const herbs = bed("a", { crops: ["thyme"] });
    const site = { lastFrost: "04-28", firstFrost: "10-14" };
    const watered = (changes: Parameters<typeof gardenWith>[0]) =>
      yearOf(herbs, gardenWith(changes, herbs)).litresAWeek.flatMap((litres, month) =>
        litres > 0 ? [month] : [],
      );
    // From two weeks before the last frost, 14 April, to 14 October.
    expect(watered({ site })).toEqual([3, 4, 5, 6, 7, 8, 9]);
    expect(watered({ site: { latitude: 5, winter: "mild" } })).toHaveLength(12);
  });

  it("says what is wrong with a climate there cannot be, and goes by the rule of thumb", () => {
    const beans = bed("a", { crops: ["bean-bush"] });
    const garden = { ...dry(beans), climate: { ...DRY_SUMMER, gaugeHeight: 100 } };
    expect(yearOf(beans, garden)).toMatchObject({ method: "rule-of-thumb" });
    expect(yearOf(beans, garden).problem).toMatch(/wind gauge/);
  });

  it("holds for crowded plantings: they drink from one soil", () => {
    const patch = { at: [0, 0] as const, width: 5000, length: 5000 };
    const crowded = {
      ...bed("a"),
      plantings: growing("tomato", "kale", "cabbage").map((planting) => ({
        ...planting,
        from: "05-10",
        until: "09-20",
        patch,
      })),
    };
    const year = yearOf(crowded);
    expect(sum(year.litresAWeek)).toBeGreaterThan(0);
    expect(Math.max(...year.months!.map(({ kc }) => kc))).toBeLessThan(1.4);
  });
});

describe("laws of a bed's water", () => {
  const crops: readonly CropId[] = [
    "tomato",
    "lettuce-leaf",
    "carrot",
    "bean-pole",
    "strawberry",
    "squash-summer",
  ];
  const someBed = fc
    .record({
      crops: fc.subarray([...crops]),
      by: fc.constantFrom("drip" as const, "sprinkler" as const, "hand" as const),
      mulch: fc.constantFrom(
        null,
        { material: "straw" as const, depth: 40 },
        { material: "compost" as const, depth: 25 },
      ),
      courses: fc.integer({ min: 1, max: 4 }),
      w: fc.integer({ min: 600, max: 1500 }),
    })
    .map(({ crops: ids, by, mulch, courses, w }) => {
      const plain = bed("a", { w, h: 2300, crops: ids });
      return {
        ...plain,
        mulch,
        watering: { ...plain.watering, by },
        wall: { ...plain.wall, courses } as ItemOf<"bed">["wall"],
      };
    });

  it("moving and turning a bed on the same ground changes nothing of it: the very same value", () => {
    const place = fc.tuple(fc.integer({ min: -9000, max: 9000 }), fc.integer({ min: -9000, max: 9000 }));
    fc.assert(
      fc.property(someBed, place, fc.integer({ min: 0, max: 359 }), (item, at, turn) => {
        const garden = dry(item);
        const [before] = bedWaterYears(garden);
        const [after] = bedWaterYears({ ...garden, items: [{ ...item, at, turn }] });
        expect(after).toBe(before);
      }),
      { numRuns: 40, seed: 7 },
    );
  });

  it("goes with the season half a year round in the other hemisphere", () => {
    const months = DRY_SUMMER.months;
    const swapped = { ...DRY_SUMMER, months: months.map((_, i) => months[(i + 6) % 12]!) };
    fc.assert(
      fc.property(someBed, (item) => {
        const garden = dry(item);
        const south: Garden = {
          ...garden,
          climate: swapped,
          site: { ...garden.site, latitude: -garden.site.latitude },
        };
        const [north] = bedWaterYears(garden);
        const [far] = bedWaterYears(south);
        // Months differ in length by up to three days and the earth's way by 3 % of the sun: within a tenth over the year.
        const [a, b] = [sum(north!.litresAWeek), sum(far!.litresAWeek)];
        expect(Math.abs(a - b)).toBeLessThanOrEqual(0.1 * Math.max(a, b));
      }),
      { numRuns: 25, seed: 11 },
    );
  });

  it("never asks for less than nothing, and in litres what its depths come to", () => {
    fc.assert(
      fc.property(someBed, (item) => {
        const year = yearOf(item);
        const share = { drip: 0.9, sprinkler: 0.6, hand: 0.8 }[item.watering.by];
        for (const { need, cropEt, effectiveRain } of year.months!) {
          expect(need).toBeGreaterThanOrEqual(0);
          expect(effectiveRain).toBeLessThanOrEqual(cropEt + 1e-9);
        }
        const litres = year.months!.reduce(
          (total, { need }) => total + (need * year.areaMm2) / 1e6 / share,
          0,
        );
        expect(year.litresAYear).toBeCloseTo(litres, 6);
      }),
      { numRuns: 25, seed: 13 },
    );
  });
});
