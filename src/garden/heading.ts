import type { Point } from "../geometry/types.ts";
import { told, word } from "../words/say.ts";

const WINDS = [
  word("north"),
  word("north-east"),
  word("east"),
  word("south-east"),
  word("south"),
  word("south-west"),
  word("west"),
  word("north-west"),
];

/**
 * Which way a move goes, in words: "north-east".
 * @param by the move on the plan, not [0, 0]
 * @param north true north, degrees clockwise from up the plan
 */
export function headingOf([x, y]: Point, north: number): string {
  const fromUp = (Math.atan2(x, -y) * 180) / Math.PI;
  const eighth = Math.round((((fromUp - north) % 360) + 360) / 45) % 8;
  return told(WINDS[eighth]!);
}
