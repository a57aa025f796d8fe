import type { Units } from "../units/length.ts";
import { say } from "../words/say.ts";

/** A scale as drawings are made to. */
export interface Scale {
  /** Garden mm for one mm on paper. */
  readonly ratio: number;
  readonly text: string;
}

/** Architect's scales, fractions of an inch to the foot; common drawing practice. */
const US: readonly { readonly ratio: number; readonly inches: string; readonly feet: number }[] = [
  { ratio: 12, inches: "1", feet: 1 },
  { ratio: 16, inches: "¾", feet: 1 },
  { ratio: 24, inches: "½", feet: 1 },
  { ratio: 32, inches: "⅜", feet: 1 },
  { ratio: 48, inches: "¼", feet: 1 },
  { ratio: 64, inches: "3/16", feet: 1 },
  { ratio: 96, inches: "⅛", feet: 1 },
  { ratio: 128, inches: "3/32", feet: 1 },
  { ratio: 192, inches: "1/16", feet: 1 },
  { ratio: 384, inches: "1/32", feet: 1 },
  { ratio: 768, inches: "1/64", feet: 1 },
  { ratio: 1200, inches: "1", feet: 100 },
  { ratio: 2400, inches: "1", feet: 200 },
  { ratio: 6000, inches: "1", feet: 500 },
  { ratio: 12000, inches: "1", feet: 1000 },
];

/** ISO 5455 reduction scales and the half steps between them that land plans use. */
const METRIC: readonly Scale[] = [
  10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 1000, 2000, 2500, 5000, 10000,
].map((ratio) => ({ ratio, text: `1 : ${ratio}` }));

/** Standard scales, the largest drawing first. */
export const scalesFor = (units: Units): readonly Scale[] =>
  units === "us"
    ? US.map(({ ratio, inches, feet }) => ({ ratio, text: say`${inches} in = ${feet} ft` }))
    : METRIC;
