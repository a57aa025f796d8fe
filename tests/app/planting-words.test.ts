import { describe, expect, it } from "vitest";
import {
  countWords,
  cropsInShort,
  cropTitle,
  rowCount,
  spacingWords,
} from "../../app/planting/crop-words.ts";
import { standingWords, yearDayWords } from "../../app/planting/day-words.ts";
import { fullestDay, standingThen, standsOn } from "../../app/planting/standing-on.ts";
import {
  INCH,
  newPlanting,
  type PlantedPatch,
  type Planting,
  type Point,
  plantsOf,
} from "../../src/index.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";

const patch = (
  changes: Partial<PlantedPatch> & { readonly planting?: Partial<Planting> } = {},
): PlantedPatch => {
  const { planting, ...rest } = changes;
  return {
    index: 0,
    crop: "beet",
    standing: {
      planting: { ...newPlanting("beet"), ...planting },
      index: 0,
      from: 100,
      days: 60,
      pickFrom: 150,
      dayBy: "frosts",
    },
    ground: [],
    areaMm2: 1e6,
    share: 1,
    apart: 4 * INCH,
    rowsApart: 4 * INCH,
    rows: [],
    plants: [],
    count: 18,
    notPlaced: 0,
    ...rest,
  };
};
const level = (y: number, from = 0, to = 1000): readonly [Point, Point] => [
  [from, y],
  [to, y],
];

describe("words for plantings", () => {
  it("call a crop as people do", () => {
    expect(cropTitle("lettuce-leaf")).toBe("Leaf lettuce");
    expect(cropTitle("brussels-sprouts")).toBe("Brussels sprouts");
    expect(cropsInShort(["tomato"])).toBe("tomato");
    expect(cropsInShort(["tomato", "basil"])).toBe("tomato and basil");
    expect(cropsInShort(["tomato", "basil", "leek"])).toBe("3 crops");
    expect(cropsInShort([])).toBe("");
  });

  it.each([
    [patch({ rows: [level(0), level(100)] }), "18 plants in 2 rows, 4 in apart"],
    [
      patch({ rows: [level(0), level(100)], rowsApart: 12 * INCH }),
      "18 plants in 2 rows, 4 in apart, rows 12 in apart",
    ],
    [patch({ rows: [level(0)], rowsApart: 12 * INCH, count: 1 }), "1 plant in 1 row, 4 in apart"],
    [patch({ planting: { set: "block" } }), "18 plants, 4 in apart every way"],
    [patch({ rows: [level(0)], notPlaced: 7 }), "18 plants in 1 row, 4 in apart; 7 more would not fit"],
    [patch({ count: 0, notPlaced: 1 }), "no room for a plant"],
    // So many that they are counted by their area have no rows to count.
    [patch({ count: 25_000 }), "25000 plants, 4 in apart"],
  ] as const)("count plants: case %#", (one, words) => {
    expect(countWords(one, "us")).toBe(words);
  });

  it("count a row that the soil parts once, whichever way it runs", () => {
    expect(rowCount(patch({ rows: [level(50, 0, 200), level(50, 600, 900), level(150)] }))).toBe(2);
    const upright = [level(50, 0, 200), level(50, 600, 900)].map(
      ([[ax, ay], [bx, by]]): readonly [Point, Point] => [
        [ay, ax],
        [by, bx],
      ],
    );
    expect(rowCount(patch({ rows: upright }))).toBe(1);
  });

  it("tell a spacing once where it is the same both ways", () => {
    expect(spacingWords(patch(), "us")).toBe("4 in");
    expect(spacingWords(patch({ rowsApart: 12 * INCH }), "us")).toBe("4 × 12 in");
    expect(spacingWords(patch({ apart: 100, rowsApart: 300 }), "metric")).toBe("10 × 30 cm");
    expect(spacingWords(patch({ planting: { set: "block" }, rowsApart: 3.46 * INCH }), "us")).toBe("4 in");
  });

  it("tell the days of the year, round new year too", () => {
    expect([1, 118, 365, 366, 0].map(yearDayWords)).toEqual(["1 Jan", "28 Apr", "31 Dec", "1 Jan", "31 Dec"]);
    expect(standingWords({ ...patch().standing, from: 148, days: 140, pickFrom: 208 })).toBe(
      "28 May to 14 Oct, picked from 27 Jul",
    );
    expect(standingWords({ ...patch().standing, from: 300, days: 260, pickFrom: 190 })).toBe(
      "27 Oct to 13 Jul, picked from 9 Jul",
    );
    expect(standingWords({ ...patch().standing, days: 365, pickFrom: 95 })).toBe(
      "all year, picked from 5 Apr",
    );
  });
});

describe("what stands on a day", () => {
  it("is what has been set and not yet cleared, over new year as well", () => {
    const winter = { from: 300, days: 100 };
    expect([299, 300, 365, 1, 34, 35].map((day) => standsOn(winter, day))).toEqual([
      false,
      true,
      true,
      true,
      true,
      false,
    ]);
    expect([1, 100, 365].every((day) => standsOn({ from: 100, days: 365 }, day))).toBe(true);
  });

  const whole = { at: [0, 0] as const, width: 1000, length: 2000 };
  const planted = bed("beans", {
    x: 0,
    y: 0,
    w: 1219.2,
    h: 2438.4,
    plantings: [
      { ...newPlanting("pea"), patch: whole },
      { ...newPlanting("bean-bush"), patch: whole },
    ],
  });
  const { site } = gardenOf();
  const patches = plantsOf(planted, { ...site, lastFrost: "04-28", firstFrost: "10-12" });

  it("is what is listed first where two follow one another in the same ground", () => {
    expect(standingThen(patches, null).map(({ crop }) => crop)).toEqual(["pea"]);
    expect(fullestDay(patches)).toBe(patches[0]!.standing.from);
  });

  it("is the other once the first is cleared, and nothing in the depth of winter", () => {
    const [pea, bean] = patches.map(({ standing }) => standing);
    expect(bean!.from).toBeGreaterThanOrEqual(pea!.from + pea!.days);
    expect(standingThen(patches, bean!.from).map(({ crop }) => crop)).toEqual(["bean-bush"]);
    expect(standingThen(patches, 10)).toEqual([]);
    expect(standingThen([], null)).toEqual([]);
    expect(fullestDay([])).toBeNull();
  });

  it("is the day with most of the soil planted, not the first on which something is", () => {
    const [pea, bean] = patches;
    const two = [
      { ...pea!, areaMm2: 10 },
      { ...bean!, areaMm2: 1000 },
    ];
    expect(standingThen(two, null).map(({ crop }) => crop)).toEqual(["bean-bush"]);
  });
});
