import { FOOT } from "../units/length.ts";

/** 43 560 square feet (NIST Handbook 44, appendix C), m². */
const ACRE_M2 = (43_560 * FOOT ** 2) / 1e6;
const GRAMS_PER_POUND = 453.59237;

/** Seed of a rate printed in pounds an acre, g/m². @throws RangeError below zero */
export function poundsPerAcre(rate: number): number {
  if (!(rate >= 0 && rate < Infinity)) throw new RangeError(`no rate of seed: ${rate}`);
  return (rate * GRAMS_PER_POUND) / ACRE_M2;
}

/** Seed for an area, g. @param rate g/m² @param areaMm2 mm² @throws RangeError below zero */
export function seedFor(rate: number, areaMm2: number): number {
  if (!(rate >= 0 && areaMm2 >= 0)) throw new RangeError(`no seed for ${areaMm2} mm² at ${rate} g/m²`);
  return (rate * areaMm2) / 1e6;
}
