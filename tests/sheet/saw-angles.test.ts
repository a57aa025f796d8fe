import { describe, expect, it } from "vitest";
import { buildSheet, INCH, sawAngleWords } from "../../src/index.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";

describe("sawAngleWords", () => {
  it("says nothing of square ends", () => {
    expect(sawAngleWords([{ length: 1000, count: 2 }], "metric")).toEqual([]);
    expect(
      sawAngleWords([{ length: 1000, count: 2, ends: { cut: "mitre", angles: [0, 0] } }], "metric"),
    ).toEqual([]);
  });

  it("says pieces that are sawn alike together, with their lengths", () => {
    const ends = { cut: "bevel", angles: [30, 30] } as const;
    const words = sawAngleWords(
      [
        { length: 24 * INCH, count: 6, ends },
        { length: 18.5 * INCH, count: 2, ends },
        { length: 40 * INCH, count: 1, ends: { cut: "mitre", angles: [45, -45] } },
      ],
      "us",
    );
    expect(words).toEqual([
      "24 in, 18½ in: both ends 30° off square, blade tilted.",
      "40 in: ends 45° and −45° off square, laid flat, mitred; a minus is an inner corner.",
    ]);
  });
});

// A regular hexagon turns by 60° at each corner (exterior angle 360°/6): the saw is set to half of that.
it("is on the sheet for a hexagonal bed, at half the turn of its corners", () => {
  const side = 900;
  const points = Array.from({ length: 6 }, (_, i) => {
    const angle = (i * Math.PI) / 3;
    return [side * Math.cos(angle), side * Math.sin(angle)] as const;
  });
  const hexagon = bed("hexagon", { shape: { type: "polygon", points } });
  const sheet = buildSheet(gardenOf(hexagon), "letter");
  const cut = sheet.outline.find(({ heading }) => heading.startsWith("Cut plan"))?.lines.join(" ");
  expect(cut).toContain("both ends 30° off square, blade tilted");
});
