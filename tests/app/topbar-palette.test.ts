import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { DARK, type Inks, LETTERING, LIGHT, SHARPER } from "../../app/style/ink.ts";

const tokens = readFileSync(new URL("../../app/style/tokens.css", import.meta.url), "utf8");
const cssName = (key: string) => `--${key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
}

/** A token's colours by day and under a lamp, as the page's style has them: `within` the whole or the rule of a media query. */
function token(key: string, within = tokens): readonly [string, string] | null {
  const found = new RegExp(`${cssName(key)}: light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\);`).exec(within);
  return found ? [found[1]!, found[2]!] : null;
}
const SHARP_RULE = tokens.slice(
  tokens.indexOf("@media (prefers-contrast: more)"),
  tokens.indexOf("@media print"),
);
/** Only the canvas has them: the page has no ground to tint and casts no shadow. */
const CANVAS_ONLY = /^(ground|building$|shadow$)/;
const SHARED = (Object.keys(LIGHT) as (keyof Inks)[]).filter((key) => !CANVAS_ONLY.test(key));

const BOARDS = [
  ["light", LIGHT],
  ["dark", DARK],
  ["light, with more contrast", { ...LIGHT, ...SHARPER.light }],
  ["dark, with more contrast", { ...DARK, ...SHARPER.dark }],
] as const;

describe("the drawing office's palette", () => {
  it.each(SHARED)("has the same %s for the page as for the canvas, on both boards", (key) => {
    expect(token(key)).toEqual([LIGHT[key], DARK[key]]);
  });

  it.each(Object.keys(SHARPER.light) as (keyof typeof SHARPER.light)[])(
    "sharpens %s on the page as on the canvas",
    (key) => {
      expect(token(key, SHARP_RULE)).toEqual([SHARPER.light[key], SHARPER.dark[key]]);
    },
  );

  it("letters the page as it letters the canvas", () => {
    expect(tokens).toContain(`--lettering: "${LETTERING}"`);
  });

  it("measures contrast as the guideline's own example does: black on white is 21 to 1", () => {
    expect(contrast("#000000", "#ffffff")).toBe(21);
  });
});

describe.each(BOARDS)("the board, %s", (_, inks) => {
  const grounds = (Object.keys(inks) as (keyof Inks)[]).filter((key) =>
    /^(ground|building$|soil$)/.test(key),
  );

  it.each(["ink", "faint", "accent", "water", "sun", "leaf"] as const)(
    "keeps %s text at 4.5 to 1 on paper and on the sheet (WCAG 2.2, 1.4.3)",
    (text) => {
      expect(contrast(inks[text], inks.paper)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(inks[text], inks.sheet)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it("keeps ink and what is faint at 4.5 to 1 on shade, and ink, accent and what is faint on the wash", () => {
    expect(contrast(inks.ink, inks.shade)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(inks.faint, inks.shade)).toBeGreaterThanOrEqual(4.5);
    for (const text of [inks.ink, inks.accent, inks.faint]) {
      expect(contrast(text, inks.accentWash)).toBeGreaterThanOrEqual(4.5);
    }
  });

  it("keeps ink, the accent's text and invalid fields at 4.5 to 1 where something is typed", () => {
    const field = inks.paper === LIGHT.paper ? "#ffffff" : "#15120d";
    expect(tokens).toContain("--field: light-dark(#ffffff, #15120d);");
    expect(contrast(inks.ink, field)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(inks.accent, field)).toBeGreaterThanOrEqual(3);
  });

  it("keeps the words on an inked button and on an accented one at 4.5 to 1", () => {
    expect(contrast(inks.sheet, inks.ink)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(inks.sheet, inks.accent)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(grounds)("keeps words, walls and marks legible on %s", (ground) => {
    expect(contrast(inks.ink, inks[ground])).toBeGreaterThanOrEqual(4.5);
    for (const line of [inks.faint, inks.accent, inks.water, inks.leaf]) {
      expect(contrast(line, inks[ground])).toBeGreaterThanOrEqual(3);
    }
  });

  it("keeps a bed's name at 4.5 to 1 on soil in shadow", () => {
    expect(contrast(inks.ink, over(inks.shadow, 0.26, inks.soil))).toBeGreaterThanOrEqual(4.5);
  });
});

/** A colour laid over another at some strength. */
function over(top: string, strength: number, under: string): string {
  const parts = [1, 3, 5].map((at) => {
    const [a, b] = [top, under].map((hex) => Number.parseInt(hex.slice(at, at + 2), 16)) as [number, number];
    return Math.round(a * strength + b * (1 - strength))
      .toString(16)
      .padStart(2, "0");
  });
  return `#${parts.join("")}`;
}
