import type { Units } from "../units/length.ts";

/** A scale as drawings are made to. */
export interface Scale {
  /** Garden mm for one mm on paper. */
  readonly ratio: number;
  readonly text: string;
}

/** Architect's scales, fractions of an inch to the foot; common drawing practice. */
const US: readonly Scale[] = [
  { ratio: 12, text: "1 in = 1 ft" },
  { ratio: 16, text: "¾ in = 1 ft" },
  { ratio: 24, text: "½ in = 1 ft" },
  { ratio: 32, text: "⅜ in = 1 ft" },
  { ratio: 48, text: "¼ in = 1 ft" },
  { ratio: 64, text: "3/16 in = 1 ft" },
  { ratio: 96, text: "⅛ in = 1 ft" },
  { ratio: 128, text: "3/32 in = 1 ft" },
  { ratio: 192, text: "1/16 in = 1 ft" },
  { ratio: 384, text: "1/32 in = 1 ft" },
  { ratio: 768, text: "1/64 in = 1 ft" },
  { ratio: 1200, text: "1 in = 100 ft" },
  { ratio: 2400, text: "1 in = 200 ft" },
  { ratio: 6000, text: "1 in = 500 ft" },
  { ratio: 12000, text: "1 in = 1000 ft" },
];

/** ISO 5455 reduction scales and the half steps between them that land plans use. */
const METRIC: readonly Scale[] = [
  10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 1000, 2000, 2500, 5000, 10000,
].map((ratio) => ({ ratio, text: `1 : ${ratio}` }));

/** Standard scales, the largest drawing first. */
export const scalesFor = (units: Units): readonly Scale[] => (units === "us" ? US : METRIC);
