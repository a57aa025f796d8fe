import type { Point } from "../../src/index.ts";
import { INK, type InkName, LETTERING } from "../style/ink.ts";
import type { Pen } from "./pen.ts";

export interface Letters {
  readonly size: number;
  readonly weight: 400 | 500 | 600;
  readonly colour: InkName;
  /** Extra room between letters, px. */
  readonly spaced?: number;
}

export const LETTERS = {
  name: { size: 14, weight: 600, colour: "ink" },
  size: { size: 12, weight: 500, colour: "ink" },
  note: { size: 12, weight: 500, colour: "faint" },
  building: { size: 14, weight: 600, colour: "ink", spaced: 3 },
} as const satisfies Record<string, Letters>;

const FALLBACK = '"DIN Alternate", "Roboto Condensed", "Arial Narrow", sans-serif';

export const fontOf = ({ size, weight }: Letters): string =>
  `${weight} ${size}px "${LETTERING}", ${FALLBACK}`;

/** How wide some words are, px. A painter measures on its canvas, a test by rule. */
export type Measure = (text: string, letters: Letters) => number;

const widths = new Map<string, number>();
let age = 0;

/** Grows whenever words may have become wider or narrower, for those who remember where words stand. */
export const letteringAge = (): number => age;
let ruler: CanvasRenderingContext2D | null = null;

/** Measures on a canvas of its own; remembered, for measuring costs more than drawing. */
export const measure: Measure = (text, letters) => {
  const key = `${letters.weight} ${letters.size} ${letters.spaced ?? 0} ${text}`;
  const known = widths.get(key);
  if (known !== undefined) return known;
  ruler ??= document.createElement("canvas").getContext("2d");
  if (!ruler) return 0;
  ruler.font = fontOf(letters);
  const width = ruler.measureText(text).width + (letters.spaced ?? 0) * text.length;
  widths.set(key, width);
  return width;
};

/**
 * Calls back once the lettering is there, which is after the first paint: a canvas does not redraw itself.
 * @returns forgets about it
 */
export function whenLettered(redraw: () => void): () => void {
  const { fonts } = document as { fonts?: FontFaceSet };
  if (!fonts) return () => undefined;
  let wanted = true;
  const loads = ([400, 500, 600] as const).map((weight) => fonts.load(`${weight} 14px "${LETTERING}"`));
  void Promise.allSettled(loads).then(() => {
    widths.clear();
    age += 1;
    if (wanted) redraw();
  });
  return () => {
    wanted = false;
  };
}

/** Words centred on a px, turned, with a halo of paper that keeps them readable on any hatch. */
export function letter(
  { ctx }: Pen,
  text: string,
  [x, y]: Point,
  letters: Letters,
  { turn = 0, align = "center", halo = INK.sheet as string | null } = {},
): void {
  ctx.save();
  ctx.translate(x, y);
  if (turn !== 0) ctx.rotate((turn * Math.PI) / 180);
  ctx.font = fontOf(letters);
  // Said each time: a canvas would take the page's own spacing, which whoever reads may have widened.
  ctx.letterSpacing = `${letters.spaced ?? 0}px`;
  ctx.wordSpacing = "0px";
  ctx.textAlign = align as CanvasTextAlign;
  ctx.textBaseline = "middle";
  // The last letter's spacing would push centred words to the left.
  const shift = letters.spaced && align === "center" ? letters.spaced / 2 : 0;
  if (halo) {
    ctx.lineJoin = "round";
    ctx.strokeStyle = halo;
    ctx.lineWidth = 4;
    ctx.strokeText(text, shift, 0.5);
  }
  ctx.fillStyle = INK[letters.colour];
  ctx.fillText(text, shift, 0.5);
  ctx.restore();
}
