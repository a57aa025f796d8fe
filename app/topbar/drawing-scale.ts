import type { Units } from "../../src/index.ts";

/** A CSS pixel is 1/96 in: at this many pixels per mm the plan on the screen is as large as the yard. */
const FULL_SIZE = 96 / 25.4;

/** How many times smaller than the yard the plan is shown: 48 for a quarter inch to the foot. */
export const reductionOf = (pixelsPerMm: number): number => FULL_SIZE / pixelsPerMm;

export const scaleOf = (reduction: number): number => FULL_SIZE / reduction;

/** Scales of the architect's rule, inches to the foot. */
const US_SCALES: readonly { readonly reduction: number; readonly name: string }[] = [
  { reduction: 768, name: "1/64″ = 1′" },
  { reduction: 384, name: "1/32″ = 1′" },
  { reduction: 192, name: "1/16″ = 1′" },
  { reduction: 128, name: "3/32″ = 1′" },
  { reduction: 96, name: "⅛″ = 1′" },
  { reduction: 64, name: "3/16″ = 1′" },
  { reduction: 48, name: "¼″ = 1′" },
  { reduction: 32, name: "⅜″ = 1′" },
  { reduction: 24, name: "½″ = 1′" },
  { reduction: 16, name: "¾″ = 1′" },
  { reduction: 12, name: "1″ = 1′" },
  { reduction: 8, name: "1½″ = 1′" },
  { reduction: 4, name: "3″ = 1′" },
];

/** Scales of the metric rule, ISO 5455. */
const METRIC_SCALES = [1000, 500, 200, 100, 75, 50, 25, 20, 10, 5];

const reductions = (units: Units): readonly number[] =>
  units === "us" ? US_SCALES.map(({ reduction }) => reduction) : METRIC_SCALES;

/** Nearer than this share to a scale of the rule is that scale: pixels are whole, rules are not. */
const SAME_SCALE = 0.01;

/** The next larger (`closer`) or smaller scale of the rule from here, as a reduction; null past its end. */
export function nextReduction(from: number, closer: boolean, units: Units): number | null {
  const rule = reductions(units);
  return closer
    ? (rule.find((reduction) => reduction < from * (1 - SAME_SCALE)) ?? null)
    : (rule.findLast((reduction) => reduction > from * (1 + SAME_SCALE)) ?? null);
}

/** The scale as it is written on a drawing: "¼″ = 1′" where it is one of the rule's, else "1 : 53". */
export function writeScale(reduction: number, units: Units): string {
  const named = US_SCALES.find((one) => Math.abs(one.reduction - reduction) <= reduction * SAME_SCALE);
  if (units === "us" && named) return named.name;
  return writeRatio(reduction);
}

export const writeRatio = (reduction: number): string =>
  reduction >= 10 ? `1 : ${Math.round(reduction)}` : `1 : ${Number(reduction.toFixed(1))}`;
