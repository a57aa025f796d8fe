import { INCH, say, type Units } from "../../src/index.ts";

/** A scale bar: its length on the ground, mm, and what is written at its end. */
export interface BarLength {
  readonly mm: number;
  readonly words: string;
}

const LONGEST = 220;

const us = (inches: number): BarLength => ({
  mm: inches * INCH,
  words: inches < 12 ? say`${inches} in` : say`${inches / 12} ft`,
});
const metric = (mm: number): BarLength => ({ mm, words: mm < 1000 ? `${mm / 10} cm` : `${mm / 1000} m` });

// Every length halves into something worth reading.
const INCHES = [1, 2, 4, 8, 12, 24, 48, 96, 192].concat([20, 40, 80, 200, 400, 1000].map((ft) => ft * 12));
const MILLIMETRES = [1, 2, 4, 10, 20, 40, 100, 200, 400, 1000]
  .map((cm) => cm * 10)
  .concat([20, 40, 100, 200, 400, 1000].map((m) => m * 1000));

/** The longest bar of round length that fits. @param scale px per mm */
export function scaleBar(scale: number, units: Units): BarLength {
  const lengths = units === "us" ? INCHES.map(us) : MILLIMETRES.map(metric);
  return lengths.findLast(({ mm }) => mm * scale <= LONGEST) ?? lengths[0]!;
}
