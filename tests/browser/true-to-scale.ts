import { expect } from "@playwright/test";
import { boundsOf, FOOT, type Garden, INCH, type ItemOf, outlineOf, parseLength } from "../../src/index.ts";
import type { PrintedPage } from "./printed-page.ts";

/** True to the stated scale within this share. */
const TRUE = 0.005;
const POINT = INCH / 72;
/** Frames of the scale bar are lower than this on paper, points; beds are higher. */
const BAR = 6;

/** A yard, the beds in it and the scale bar, measured on the paper, against the scale that the page states. */
export function expectTrueToScale(page: PrintedPage, { yard, items, units }: Garden): void {
  const ratio = statedRatio(page.text);
  const onPaper = (mm: number) => mm / ratio / POINT;
  const off = (measured: number, mm: number) => Math.abs(measured / onPaper(mm) - 1);
  const near = (measured: number, mm: number) => off(measured, mm) <= TRUE;
  const drawn = page.paths.filter(({ stroked }) => stroked);

  // No line that is drawn goes round more of the page than the yard's own outline.
  const outermost = drawn.reduce((a, b) => (a.width * a.height >= b.width * b.height ? a : b));
  const [across, down] = extentOf(yard);
  expect(off(outermost.width, across), "the yard's width is true to scale").toBeLessThanOrEqual(TRUE);
  expect(off(outermost.height, down), "the yard's length is true to scale").toBeLessThanOrEqual(TRUE);

  const beds = items.filter((item): item is ItemOf<"bed"> => item.kind === "bed");
  expect(beds.length).toBeGreaterThan(0);
  for (const bed of beds) {
    const [width, length] = extentOf(outlineOf(bed));
    const found = drawn.some((path) => near(path.width, width) && near(path.height, length));
    expect(found, `${bed.name} is true to scale`).toBe(true);
  }

  // The bar that is printed to prove the print, in two halves.
  const [, written = ""] = /(\S+(?: \d\S*| m)); the bar is/.exec(page.text) ?? [];
  const half = parseLength(written, units) / 2;
  const halves = drawn.filter(({ width, height }) => near(width, half) && height < BAR);
  expect(halves.length, "the scale bar is true to scale").toBeGreaterThanOrEqual(2);
}

function extentOf(points: Parameters<typeof boundsOf>[0]): readonly [across: number, down: number] {
  const { minX, minY, maxX, maxY } = boundsOf(points);
  return [maxX - minX, maxY - minY];
}

const FRACTIONS: Readonly<Record<string, number>> = {
  "⅛": 1 / 8,
  "¼": 1 / 4,
  "½": 1 / 2,
  "⅜": 3 / 8,
  "¾": 3 / 4,
};

/** Garden mm to a mm of paper, from "Drawn at 3/32 in = 1 ft" or "Drawn at 1 : 75". */
function statedRatio(text: string): number {
  const [, metric] = /Drawn at\s+1 : (\d+)\./.exec(text) ?? [];
  if (metric !== undefined) return Number(metric);
  const [, inches] = /Drawn at\s+(\S+)\s+in\s+=\s+1\s+ft/.exec(text) ?? [];
  if (inches === undefined) throw new Error("the page does not state its scale");
  const [over, under] = inches.split(/[/\u2044]/).map(Number);
  return FOOT / INCH / (FRACTIONS[inches] ?? (over ?? Number.NaN) / (under ?? 1));
}
