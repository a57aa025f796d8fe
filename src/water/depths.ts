import { atLeastZero } from "./within.ts";

const MM2_PER_M2 = 1e6;

/** Litres that stand a depth in mm over an area in mm²: 1 mm over 1 m² is 1 L. @throws RangeError below zero */
export const litresOver = (areaMm2: number, depth: number): number =>
  (atLeastZero(areaMm2, "the area") * atLeastZero(depth, "the depth of water")) / MM2_PER_M2;
