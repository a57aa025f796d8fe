import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { LETTER_WIDTHS } from "../../src/sheet/letter-widths.ts";
import { shortened, textWidth, wrapped } from "../../src/sheet/lettering.ts";

/** The tables of a WOFF file (W3C Recommendation "WOFF File Format 1.0", section 4), inflated. */
function fontTables(weight: 400 | 600): Map<string, Buffer> {
  const name = `barlow-semi-condensed-latin-${weight}-normal.woff`;
  const file = readFileSync(
    new URL(`../../node_modules/@fontsource/barlow-semi-condensed/files/${name}`, import.meta.url),
  );
  const tables = new Map<string, Buffer>();
  for (let i = 0; i < file.readUInt16BE(12); i++) {
    const at = 44 + 20 * i;
    const [offset, packed, size] = [4, 8, 12].map((step) => file.readUInt32BE(at + step)) as [
      number,
      number,
      number,
    ];
    const data = file.subarray(offset, offset + packed);
    tables.set(file.toString("latin1", at, at + 4), packed < size ? inflateSync(data) : data);
  }
  return tables;
}

/** Glyph of a character by the font's format 4 character map (OpenType specification, "cmap"). */
function glyphOf(cmap: Buffer, code: number): number {
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const map = cmap.subarray(cmap.readUInt32BE(4 + 8 * i + 4));
    if (map.readUInt16BE(0) !== 4) continue;
    const doubled = map.readUInt16BE(6);
    for (let segment = 0; segment < doubled; segment += 2) {
      const end = map.readUInt16BE(14 + segment);
      const start = map.readUInt16BE(16 + doubled + segment);
      if (code < start || code > end) continue;
      const delta = map.readUInt16BE(16 + 2 * doubled + segment);
      const rangeAt = 16 + 3 * doubled + segment;
      const range = map.readUInt16BE(rangeAt);
      if (range === 0) return (code + delta) & 0xffff;
      const glyph = map.readUInt16BE(rangeAt + range + 2 * (code - start));
      return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
    }
  }
  return 0;
}

function widthInFont(tables: Map<string, Buffer>, letter: string): number {
  const glyph = glyphOf(tables.get("cmap")!, letter.codePointAt(0)!);
  const perEm = tables.get("head")!.readUInt16BE(18);
  const last = tables.get("hhea")!.readUInt16BE(34) - 1;
  return Math.round((tables.get("hmtx")!.readUInt16BE(4 * Math.min(glyph, last)) * 1000) / perEm);
}

describe("letter widths", () => {
  it.each([
    [400, 0],
    [600, 1],
  ] as const)("are those of the font the page ships, weight %i", (weight, column) => {
    const tables = fontTables(weight);
    for (const [letter, widths] of Object.entries(LETTER_WIDTHS)) {
      expect(
        glyphOf(tables.get("cmap")!, letter.codePointAt(0)!),
        `"${letter}" is in the font`,
      ).toBeGreaterThan(0);
      expect(widths[column], `width of "${letter}"`).toBe(widthInFont(tables, letter));
    }
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
