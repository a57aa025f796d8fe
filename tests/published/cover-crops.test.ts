import { describe, expect, it } from "vitest";
import { COVER_CROP_IDS, type CoverCropId, INCH, poundsPerAcre } from "../../src/index.ts";
import { topUpDepth } from "../../src/takeoff/top-ups.ts";
import { COVER_CROPS, livesThrough, usualCover } from "../../src/upkeep/cover-crops.ts";
import { controlPots, potVerdict, suspectPots } from "../../src/upkeep/pot-test.ts";
import { caseOf } from "./cases.ts";
import published from "./cover-crops.json";

/**
 * The table of cover crops against the published rows: rates as printed (SARE, Cornell, University of Georgia; which of
 * them stands in each row), hardiness, and how each is ended.
 */
const IDS: Readonly<Record<string, CoverCropId>> = {
  "CC-D1": "rye",
  "CC-D2": "winter-wheat",
  "CC-D3": "oats",
  "CC-D4": "crimson-clover",
  "CC-D5": "hairy-vetch",
  "CC-D6": "field-pea",
  "CC-D7": "buckwheat",
  "CC-D8": "white-clover",
  "CC-D9": "red-clover",
  "CC-D10": "mustard",
  "CC-D11": "phacelia",
};
/** How the compilation ends each; oats it leaves to the frost. */
const ENDS: Readonly<Record<CoverCropId, RegExp>> = {
  rye: /^Cut .* at or before heading$/,
  "winter-wheat": /^Cut .* at or before heading$/,
  oats: /^Cut .* before it heads$/,
  "crimson-clover": /^Cut .* at bloom$/,
  "hairy-vetch": /^Cut .* at full bloom$/,
  "field-pea": /^Cut .* at bloom$/,
  buckwheat: /^Cut .* about 40 days after sowing, 10 days after its first flowers$/,
  "white-clover": /^Dig it out or turn it in/,
  "red-clover": /^Cut it and turn it in at mid-bloom$/,
  mustard: /^Cut .* at or before flowering$/,
  phacelia: /^Cut .* at bloom$/,
};

const rowOf = (id: string) => {
  const known = IDS[id];
  if (!known) throw new RangeError(`nothing speaks of ${id}`);
  return COVER_CROPS[known];
};

describe("the table of cover crops", () => {
  it.each(published.cases)("$id $crop: seed, hardiness and end", (row) => {
    const ours = rowOf(row.id);
    expect(row.crop).toContain(ours.botanical);
    expect(ours.drilled).toEqual(row.drilled_lb_acre);
    expect(ours.broadcast).toEqual(row.broadcast_lb_acre);
    expect(ours.hardyZone).toBe(row.hardy_zone);
    expect(`${ours.endHow} ${ours.endWhen}`).toMatch(ENDS[ours.id]);
  });

  it("weighs seed as the printed rates for 1000 square feet do (two decimals, so 0.005 lb)", () => {
    const pounds = (rate: number) => (poundsPerAcre(rate) * 1000 * 0.3048 ** 2) / 453.59237;
    for (const row of published.cases) {
      const ours = rowOf(row.id);
      ours.broadcast.forEach((rate, i) => {
        expect(Math.abs(pounds(rate) - row.broadcast_lb_1000sqft[i]!)).toBeLessThanOrEqual(0.0051);
      });
    }
  });

  it("has every cover crop a garden may choose, and no other", () => {
    expect(Object.keys(COVER_CROPS).sort()).toEqual([...COVER_CROP_IDS].sort());
    expect(published.cases.map(({ id }) => rowOf(id).id).sort()).toEqual([...COVER_CROP_IDS].sort());
  });

  // "Killed by frost": Cornell of buckwheat and oats, SARE of oats in zone 6 and colder, of peas sustained below 18 °F.
  it.each([
    ["rye", true, true],
    ["winter-wheat", true, true],
    ["oats", false, true],
    ["field-pea", false, true],
    ["crimson-clover", false, true],
    ["buckwheat", false, false],
    ["hairy-vetch", true, true],
  ] as const)("%s lives through a freezing winter: %s, a mild one: %s", (id, freezing, mild) => {
    expect(livesThrough(COVER_CROPS[id], "freezing", true)).toBe(freezing);
    expect(livesThrough(COVER_CROPS[id], "mild", true)).toBe(mild);
    expect(livesThrough(COVER_CROPS[id], "mild", false)).toBe(true);
  });

  it("offers for each kind of winter what lives through it", () => {
    for (const winter of ["freezing", "mild"] as const) {
      expect(livesThrough(COVER_CROPS[usualCover(winter, true)], winter, true)).toBe(true);
    }
  });
});

/** The pot test, as Oregon State University prints it, quoted: cases HB-01 to HB-03. */
describe("the pot test of compost", () => {
  it("HB-01: three pots of 0.75 L at 2:1, three seeds a pot, and three of potting mix alone", () => {
    expect(caseOf("HB-01").expect).toMatchObject({
      mix_L: 2.25,
      suspect_L: 1.5,
      potting_mix_L: 0.75,
      seeds: 9,
    });
    expect(suspectPots(3)).toEqual({ pots: 3, suspectL: 1.5, pottingMixL: 0.75, seeds: 9 });
    expect(controlPots(3)).toEqual({ pots: 3, suspectL: 0, pottingMixL: 2.25, seeds: 9 });
  });

  it("HB-02: cupped leaves beside a normal control mean weedkiller", () => {
    expect(potVerdict("normal", "cupped")).toBe("contaminated");
    expect(potVerdict("normal", "normal")).toBe("clean");
  });

  it("HB-03: a stunted control proves nothing", () => {
    expect(potVerdict("stunted", "stunted")).toBe("invalid");
    expect(potVerdict("stunted", "normal")).toBe("invalid");
  });
});

// University of Minnesota Extension (2023): about an inch a year or less; the habit of 2 to 3 in from memory.
describe("how deep beds are topped up", () => {
  const depth = (topUp: "habit" | "advice", topUpsAYear: 1 | 2) =>
    topUpDepth({ topUp, topUpsAYear, cover: null, firstYear: null }) / INCH;

  it("is the middle of 2 to 3 in each time by habit, an inch a year by advice", () => {
    expect([depth("habit", 1), depth("habit", 2)]).toEqual([2.5, 2.5]);
    expect([depth("advice", 1), depth("advice", 2)]).toEqual([1, 0.5]);
  });
});
