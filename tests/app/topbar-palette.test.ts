import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { INK, LETTERING } from "../../app/style/ink.ts";

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

describe("the drawing office's palette", () => {
  it.each(Object.entries(INK))("has the same %s for the page as for the canvas", (key, value) => {
    expect(tokens).toContain(`${cssName(key)}: ${value};`);
  });

  it("letters the page as it letters the canvas", () => {
    expect(tokens).toContain(`--lettering: "${LETTERING}"`);
  });

  it("measures contrast as the guideline's own example does: black on white is 21 to 1", () => {
    expect(contrast("#000000", "#ffffff")).toBe(21);
  });

  it.each(["ink", "faint", "accent", "water", "sun", "leaf"] as const)(
    "keeps %s text at 4.5 to 1 on paper and on the sheet (WCAG 2.2, 1.4.3)",
    (text) => {
      expect(contrast(INK[text], INK.paper)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(INK[text], INK.sheet)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it("keeps ink and what is faint at 4.5 to 1 on shade, and the accent on its wash", () => {
    expect(contrast(INK.ink, INK.shade)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(INK.faint, INK.shade)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(INK.accent, INK.accentWash)).toBeGreaterThanOrEqual(4.5);
  });
});
