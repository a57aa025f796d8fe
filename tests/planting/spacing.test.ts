import { describe, expect, it } from "vitest";
import {
  bedSpacing,
  CROPS,
  type CropId,
  INCH,
  newPlanting,
  SPACING_SOURCES,
  spacingOf,
} from "../../src/index.ts";

describe("spacing in beds", () => {
  it("is that of beds where one is printed, else that in the row, both ways", () => {
    // Crop facts: carrots 2 to 3 in in beds, garlic 6 in in the row.
    expect(bedSpacing("carrot")).toEqual({ least: 2 * INCH, most: 3 * INCH, source: SPACING_SOURCES.bed });
    expect(bedSpacing("garlic")).toEqual({ least: 6 * INCH, most: 6 * INCH, source: SPACING_SOURCES.row });
  });

  it.each(CROPS)("of $id is known, with its source, and told as recalled where no table gives it", (crop) => {
    const { least, most, source } = bedSpacing(crop.id);
    expect(least).toBeGreaterThan(0);
    expect(most).toBeGreaterThanOrEqual(least);
    expect(source === SPACING_SOURCES.recalled).toBe(crop.bedSpacing === null && crop.inRow === null);
  });

  it("is the wider end unless it is typed", () => {
    expect(spacingOf(newPlanting("tomato"))).toEqual({ apart: 24 * INCH, rowsApart: 24 * INCH });
    expect(spacingOf({ ...newPlanting("tomato"), apart: 500 })).toEqual({ apart: 500, rowsApart: 24 * INCH });
    expect(spacingOf({ ...newPlanting("tomato"), apart: 500, rowsApart: 700 })).toEqual({
      apart: 500,
      rowsApart: 700,
    });
  });

  it("has the rows of a block as near as plants equally far apart bring them", () => {
    const { apart, rowsApart } = spacingOf({
      ...newPlanting("kale"),
      set: "block",
      apart: 400,
      rowsApart: 900,
    });
    expect(Math.hypot(apart / 2, rowsApart)).toBeCloseTo(400, 9);
  });

  it("refuses a crop nothing is known of", () => {
    expect(() => bedSpacing("mandrake" as CropId)).toThrow(RangeError);
  });
});
