import { describe, expect, it } from "vitest";
import { advanceOf, fontTables, glyphOf, outlineOf, partsOf } from "../../scripts/font-file.mjs";
import { LETTER_WIDTHS } from "../../src/sheet/letter-widths.ts";
import { shortened, textWidth, wrapped } from "../../src/sheet/lettering.ts";

const file = (path: string) => fontTables(new URL(`../../${path}`, import.meta.url));

/** The lettering of a weight, and the file with the eighths that it leaves out. */
const files = (weight: 400 | 600) => [
  file(
    `node_modules/@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-${weight}-normal.woff`,
  ),
  file(`app/style/fractions/eighths-${weight}.ttf`),
];

const glyphIn = (tables: Map<string, Buffer>, letter: string): number =>
  glyphOf(tables.get("cmap")!, letter.codePointAt(0)!);

function widthInFont(tables: Map<string, Buffer>, letter: string): number {
  const perEm = tables.get("head")!.readUInt16BE(18);
  return Math.round((advanceOf(tables, glyphIn(tables, letter)) * 1000) / perEm);
}

describe("letter widths", () => {
  it.each([
    [400, 0],
    [600, 1],
  ] as const)("are those of the font the page ships, weight %i", (weight, column) => {
    for (const [letter, widths] of Object.entries(LETTER_WIDTHS)) {
      const tables = files(weight).find((one) => glyphIn(one, letter) > 0);
      if (!tables) throw new Error(`"${letter}" is in no file of the lettering`);
      expect(widths[column], `width of "${letter}"`).toBe(widthInFont(tables, letter));
    }
  });

  it.each([400, 600] as const)("has the eighths set of the font's own parts, weight %i", (weight) => {
    const [latin, eighths] = files(weight) as [Map<string, Buffer>, Map<string, Buffer>];
    const outline = (tables: Map<string, Buffer>, glyph: number) => outlineOf(tables, glyph).toString("hex");
    const parts = partsOf(outlineOf(latin, glyphIn(latin, "¼")));
    for (const sign of "⅛⅜⅝⅞") {
      const own = partsOf(outlineOf(eighths, glyphIn(eighths, sign)));
      expect(own, sign).toHaveLength(3);
      // The stroke is the font's own, and what stands after it stands as far from it as the four of ¼ does.
      expect(outline(eighths, own[1]!.glyph)).toContain(outline(latin, parts[1]!.glyph));
      expect(own[2]!.x - own[1]!.x).toBe(parts[2]!.x - parts[1]!.x);
    }
    expect(partsOf(outlineOf(eighths, glyphIn(eighths, "⅛")))[1]!.x).toBe(parts[1]!.x);
  });

  it("add up to the width of a line", () => {
    // M 618, o 0.., by the table: 10 pt is 3.5278 mm.
    expect(textWidth("MM", 10)).toBeCloseTo((2 * 618 * 10 * 25.4) / 72 / 1000, 6);
    expect(textWidth("MM", 10, "bold")).toBeGreaterThan(textWidth("MM", 10));
  });
});

describe("breaking lines", () => {
  it("keeps every word, in order, and no line wider than the column", () => {
    const words = "Drive P1 and P2. Tape the corners, string each bed, and prove it by its diagonals.";
    const lines = wrapped(words, 30, 8);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join(" ")).toBe(words);
    for (const line of lines) expect(textWidth(line, 8)).toBeLessThanOrEqual(30);
  });

  it("breaks a word that is wider than the column, and loses none of it", () => {
    const lines = wrapped("Donaudampfschifffahrtsgesellschaft", 12, 8);
    expect(lines.join("")).toBe("Donaudampfschifffahrtsgesellschaft");
    for (const line of lines) expect(textWidth(line, 8)).toBeLessThanOrEqual(12);
  });

  it("shortens with an ellipsis only what does not fit", () => {
    expect(shortened("Salads", 40, 8)).toBe("Salads");
    const short = shortened("A very long name for a very small garden", 20, 8);
    expect(short).toMatch(/^A very.*…$/);
    expect(textWidth(short, 8)).toBeLessThanOrEqual(20);
  });
});
