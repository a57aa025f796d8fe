import type { Bed, BedWall } from "../garden/kinds/bed.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import { INCH } from "../units/length.ts";
import type { Settings } from "./settings.ts";
import { type Side, type WallSides, wallSides } from "./sides.ts";
import { inParts } from "./splice.ts";
import { midStakes, screwsPerEnd } from "./structure.ts";
import type { Piece } from "./types.ts";

/** What the frame of one bed of boards is made of. */
export interface FrameParts {
  readonly joined: WallSides["joined"];
  readonly pieces: readonly Piece[];
  /** Sides longer than any board on sale, which `pieces` has in parts. */
  readonly spliced: readonly Piece[];
  readonly posts: { readonly count: number; readonly length: number };
  readonly stakes: { readonly count: number; readonly length: number };
  readonly ties: number;
  readonly screws: { readonly count: number; readonly length: number };
  /** Long screws that hold heavy timbers to one another. */
  readonly spikes: { readonly count: number; readonly length: number };
}

type BoardWall = Extract<BedWall, { made: "boards" }>;

/** Timbers this thick stand on one another and need no posts (common practice). */
const SELF_STANDING = 60;
/** A stake is driven this far below the ground, at least (common practice: 12 in). */
const IN_GROUND = 12 * INCH;
const STAKE_LENGTHS = {
  us: [24, 36, 48, 60].map((inches) => inches * INCH),
  metric: [600, 900, 1200, 1500],
} as const;
/** Screws that hold one board to one stake. */
const PER_STAKE = 2;
/** Between the slats that carry the soil of a table bed: water gets out, soil does not with a liner on them. */
const SLAT_GAP = 6;
const SPIKES_PER_CORNER = 2;

/** @returns null for a board the table of sizes does not have */
export function frameParts(bed: Bed, wall: BoardWall, name: string, settings: Settings): FrameParts | null {
  const size = boardSize(wall.board);
  if (!size) return null;
  const { sides, joined } = wallSides(bed.shape, size.thickness, wall.corner);
  const height = size.height * wall.courses;
  const heavy = size.thickness >= SELF_STANDING;
  const parts = sides.map((side) => ({ side, ...inParts(side.board, settings.longestStock) }));
  const joints = parts.reduce((sum, part) => sum + part.parts - 1, 0);
  const corners = joined === "bent" ? 1 : sides.length;

  const braced = wall.bracing !== "none" && bed.legs === null && !heavy;
  const stakes = braced ? sides.reduce((sum, side) => sum + stakesOn(side, settings), 0) : 0;
  const soilDepth = Math.max(0, height - bed.fill.belowRim);
  const tied = wall.bracing === "stakes-and-ties" && soilDepth >= settings.tiesFrom - 0.5;
  const boardEnds = 2 * wall.courses * parts.reduce((sum, part) => sum + part.parts, 0);
  return {
    joined,
    pieces: [
      ...grouped(
        parts.map(({ side, parts: count, each }) => ({
          length: each,
          count: count * wall.courses,
          label: `${name}, ${count > 1 ? `part of ${side.called}` : side.called}`,
        })),
      ),
      ...slats(bed, size, name, settings),
    ],
    spliced: parts
      .filter((part) => part.parts > 1)
      .map(({ side }) => ({ length: side.board, count: wall.courses, label: `${name}, ${side.called}` })),
    posts: { count: heavy ? 0 : corners + joints, length: height + (bed.legs ?? 0) },
    stakes: { count: stakes, length: stakeLength(height, settings) },
    ties: tied ? Math.max(1, tiesAcross(sides, settings)) : 0,
    screws: {
      count: heavy ? 0 : boardEnds * screwsPerEnd(size.height) + stakes * wall.courses * PER_STAKE,
      // Through the board and at least 1½ in into the post: 3 in for a 2x board, 2¼ in for a 1x.
      length:
        settings.units === "us" ? size.thickness + 1.5 * INCH : Math.ceil(size.thickness / 10) * 10 + 40,
    },
    spikes: {
      count: heavy ? (corners + joints) * wall.courses * SPIKES_PER_CORNER : 0,
      length: settings.units === "us" ? 8 * INCH : 200,
    },
  };
}

const stakesOn = (side: Side, { stakeEvery }: Settings): number => midStakes(side.outside, stakeEvery).count;

/** One tie from each stake of a long side to the one across. */
const tiesAcross = (sides: readonly Side[], settings: Settings): number =>
  Math.ceil(
    sides.filter(({ called }) => called !== "end").reduce((sum, side) => sum + stakesOn(side, settings), 0) /
      2,
  );

function stakeLength(height: number, { units }: Settings): number {
  const sold = STAKE_LENGTHS[units];
  return sold.find((length) => length >= height + IN_GROUND) ?? sold[sold.length - 1]!;
}

/** The floor of a table bed: boards across its shorter way, one beside the other. */
function slats(
  bed: Bed,
  size: { readonly height: number; readonly thickness: number },
  name: string,
  { longestStock }: Settings,
): Piece[] {
  if (bed.legs === null) return [];
  const [across, along] = extentOf(bed.shape).toSorted((a, b) => a - b) as [number, number];
  const length = across - 2 * size.thickness;
  const count = Math.ceil((along - 2 * size.thickness) / (size.height + SLAT_GAP));
  if (!(length > 0 && count > 0)) return [];
  const { parts, each } = inParts(length, longestStock);
  return [{ length: each, count: count * parts, label: `${name}, floor` }];
}

/** Width and length of a shape's box, as it lies before it is turned. */
export function extentOf(shape: Bed["shape"]): readonly [number, number] {
  switch (shape.type) {
    case "keyhole":
      return [shape.diameter, shape.diameter];
    case "polygon": {
      const span = (axis: 0 | 1) => {
        const values = shape.points.map((point) => point[axis]);
        return Math.max(...values) - Math.min(...values);
      };
      return [span(0), span(1)];
    }
    default:
      return [shape.width, shape.length];
  }
}

/** Equal pieces of the same name on one line. */
function grouped(pieces: readonly Piece[]): Piece[] {
  const byName = new Map<string, Piece>();
  for (const piece of pieces) {
    // Rid of the last digits of rounding only: a thousandth of a millimetre decides whether two ends share a board.
    const length = Math.round(piece.length * 1e7) / 1e7;
    const key = `${length} ${piece.label}`;
    byName.set(key, { ...piece, length, count: piece.count + (byName.get(key)?.count ?? 0) });
  }
  return [...byName.values()];
}
