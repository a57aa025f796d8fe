import type { Point } from "../geometry/types.ts";

const WINDS = [
  "north",
  "north-east",
  "east",
  "south-east",
  "south",
  "south-west",
  "west",
  "north-west",
] as const;

/**
 * Which way a move goes, in words: "north-east".
 * @param by the move on the plan, not [0, 0]
 * @param north true north, degrees clockwise from up the plan
 */
export function headingOf([x, y]: Point, north: number): (typeof WINDS)[number] {
  const fromUp = (Math.atan2(x, -y) * 180) / Math.PI;
  const eighth = Math.round((((fromUp - north) % 360) + 360) / 45) % 8;
  return WINDS[eighth]!;
}
