import { describe, expect, it } from "vitest";
import { CROPS, type Crop, cropById, rootRun } from "../../src/index.ts";
import published from "../published/crops.json";

// Inches, feet and metres to mm, by definition.
const INCH = 25.4;
const FOOT = 304.8;

type Pair = readonly number[] | null | undefined;

const pair = (range: Crop["rootDepth"], unit: number): Pair =>
  range && [range.least, range.most].map((mm) => Number((mm / unit).toFixed(6)));
const orNull = <T>(value: T | null | undefined): T | null => value ?? null;

describe("the crop table", () => {
  it("has every published row once and no other, in the same order", () => {
    expect(CROPS.map(({ id }) => id)).toEqual(published.rows.map(({ id }) => id));
    expect(new Set(CROPS.map(({ id }) => id)).size).toBe(55);
  });

  it.each(published.rows)("says of $id what the sources say", (row) => {
    const crop = cropById(row.id);
    if (!crop) throw new Error(`${row.id} is missing`);
    expect({
      name: crop.name,
      botanical: crop.botanical,
      family: crop.family,
      season: crop.season,
      sow: crop.sow,
      sun: crop.sun,
      root_class: crop.rootClass,
      uc_root_depth_in: pair(crop.rootDepth, INCH),
      fao_zr_m: pair(crop.rootZone, 1000),
      min_bed_depth_in: Number((crop.leastBedDepth / INCH).toFixed(6)),
      in_row_in: pair(crop.inRow, INCH),
      between_row_in: pair(crop.betweenRows, INCH),
      row_src: crop.rowSource,
      bed_spacing_in: pair(crop.bedSpacing, INCH),
      support: crop.support,
      support_height_ft: pair(crop.supportHeight, FOOT),
      mature_height_in: pair(crop.matureHeight, INCH),
      height_src: crop.heightSource,
      days_to_maturity: pair(crop.daysToMaturity, 1),
      dtm_src: crop.daysSource,
    }).toEqual({
      name: row.name,
      botanical: row.botanical,
      family: row.family,
      season: row.season,
      sow: row.sow,
      sun: row.sun,
      root_class: row.root_class,
      uc_root_depth_in: orNull(row.uc_root_depth_in),
      fao_zr_m: orNull(row.fao_zr_m),
      min_bed_depth_in: row.min_bed_depth_in,
      in_row_in: orNull(row.in_row_in),
      between_row_in: orNull(row.between_row_in),
      row_src: orNull(row.row_src),
      bed_spacing_in: orNull(row.bed_spacing_in),
      support: row.support,
      support_height_ft: orNull(row.support_height_ft),
      mature_height_in: row.mature_height_in,
      height_src: row.height_src,
      days_to_maturity: row.days_to_maturity,
      dtm_src: row.dtm_src,
    });
  });

  it("knows no crop that is not in it", () => {
    expect(cropById("mandrake")).toBeNull();
  });
});

describe("rootRun", () => {
  // Crop facts: 12 in for tomatoes over open soil (common practice); deep roots 24 in and more (common practice).
  it("asks less of a bed whose roots go on into the ground", () => {
    const tomato = cropById("tomato")!;
    expect(rootRun(tomato, "soil")).toBeCloseTo(12 * INCH, 9);
    expect(rootRun(tomato, "hard")).toBeCloseTo(24 * INCH, 9);
  });
  it("asks 12 in over paving of the shallowest", () => {
    expect(rootRun(cropById("lettuce-head")!, "hard")).toBeCloseTo(12 * INCH, 9);
  });
  it("never asks less over paving than over soil", () => {
    for (const crop of CROPS) expect(rootRun(crop, "hard")).toBeGreaterThanOrEqual(rootRun(crop, "soil"));
  });
});
