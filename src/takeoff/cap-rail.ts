import type { Bed, BedWall } from "../garden/kinds/bed.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import { INCH } from "../units/length.ts";
import { namedPieces } from "./named-pieces.ts";
import type { Settings } from "./settings.ts";
import { partRailLabel, railLabel } from "./side-labels.ts";
import { railSides } from "./sides.ts";
import { inParts } from "./splice.ts";
import type { Piece } from "./types.ts";

/** The board that lies flat along the top of a wall. */
export interface CapRail {
  readonly board: string;
  readonly pieces: readonly Piece[];
  /** Sides longer than any board on sale, which `pieces` has in parts. */
  readonly spliced: readonly Piece[];
  readonly screws: { readonly count: number; readonly length: number };
}

/** A screw down into the wall at least this often, and at both ends of each piece (common practice). */
const SCREW_EVERY = 16 * INCH;

/**
 * The rail goes on last: it is there to be made wherever a course is.
 * @returns null without one, and on a round wall, which no straight board follows
 */
export function capRailOf(
  { shape }: Pick<Bed, "shape">,
  { capRail }: Pick<Extract<BedWall, { made: "boards" }>, "capRail">,
  name: string,
  { longestStock, units }: Settings,
): CapRail | null {
  const size = capRail === null ? null : boardSize(capRail);
  if (capRail === null || !size) return null;
  const sides = railSides(shape, size.height);
  if (sides.length === 0) return null;
  const parts = sides.map((side) => ({ side, ...inParts(side.board, longestStock) }));
  return {
    board: capRail,
    pieces: namedPieces(
      parts.flatMap(({ side, parts: count, each }) =>
        partsOf(count).map((angles) => ({
          length: each,
          count: 1,
          label: count > 1 ? partRailLabel(name, side.called) : railLabel(name, side.called),
          ends: {
            cut: "mitre" as const,
            angles: [angles.first ? side.angles[0] : 0, angles.last ? side.angles[1] : 0] as const,
          },
        })),
      ),
    ),
    spliced: parts
      .filter((part) => part.parts > 1)
      .map(({ side }) => ({ length: side.board, count: 1, label: railLabel(name, side.called) })),
    screws: {
      count: parts.reduce((sum, { side, parts: n }) => sum + Math.ceil(side.outside / SCREW_EVERY) + n, 0),
      length: units === "us" ? size.thickness + 1.5 * INCH : Math.ceil(size.thickness / 10) * 10 + 40,
    },
  };
}

/** Of a side in parts only the outer ends are mitred. */
const partsOf = (count: number) =>
  Array.from({ length: count }, (_, i) => ({ first: i === 0, last: i === count - 1 }));
