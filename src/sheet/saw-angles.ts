import type { Ends, Piece } from "../takeoff/types.ts";
import { formatShort } from "../units/format-length.ts";
import type { Units } from "../units/length.ts";
import { say } from "../words/say.ts";

/** Pieces whose ends are sawn alike, not square: "22.5° both ends, blade tilted: 16½, 21 in". */
export function sawAngleWords(pieces: readonly Piece[], units: Units): readonly string[] {
  const alike = new Map<string, Set<string>>();
  for (const { length, ends } of pieces) {
    if (!ends || ends.angles.every((angle) => Math.abs(angle) < LEAST_ANGLE)) continue;
    const words = endsWords(ends);
    alike.set(words, (alike.get(words) ?? new Set()).add(formatShort(length, units)));
  }
  return Array.from(alike, ([words, lengths]) => `${[...lengths].join(", ")}: ${words}.`);
}

/** Degrees that no saw is set to. */
const LEAST_ANGLE = 0.05;

function endsWords({ cut, angles: [start, end] }: Ends): string {
  const how = cut === "bevel" ? say`blade tilted` : say`laid flat, mitred`;
  const inner = start < 0 || end < 0 ? say`; a minus is an inner corner` : "";
  const one = degrees(start);
  const other = degrees(end);
  return one === other
    ? say`both ends ${one} off square, ${how}${inner}`
    : say`ends ${one} and ${other} off square, ${how}${inner}`;
}

const degrees = (angle: number): string => {
  const rounded = Math.round(Math.abs(angle) * 10) / 10;
  return `${angle < 0 && rounded > 0 ? "−" : ""}${rounded}°`;
};
