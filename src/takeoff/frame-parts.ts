import type { Bed, BedWall } from "../garden/kinds/bed.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import { INCH } from "../units/length.ts";
import { say } from "../words/say.ts";
import { type CapRail, capRailOf } from "./cap-rail.ts";
import { namedPieces } from "./named-pieces.ts";
import type { Settings } from "./settings.ts";
import { partLabel, sideLabel } from "./side-labels.ts";
import { type WallSides, wallSides } from "./sides.ts";
import { inParts } from "./splice.ts";
import { standingOf } from "./standing.ts";
import { screwsPerEnd } from "./structure.ts";
import { type FrameFacts, postsOf, type Support, stakesOf, tiesOf } from "./supports.ts";
import type { Piece } from "./types.ts";

/** What is to be made for the frame of one bed of boards: of a bed that stands, only what is still to be added. */
export interface FrameParts {
  readonly joined: WallSides["joined"];
  readonly pieces: readonly Piece[];
  /** Sides longer than any board on sale, which `pieces` has in parts. */
  readonly spliced: readonly Piece[];
  readonly rail: CapRail | null;
  readonly posts: Support;
  readonly stakes: Support;
  readonly ties: Support;
  readonly screws: { readonly count: number; readonly length: number };
  /** Long screws that hold heavy timbers to one another. */
  readonly spikes: { readonly count: number; readonly length: number };
}

type BoardWall = Extract<BedWall, { made: "boards" }>;

/** Timbers this thick stand on one another and need no posts (common practice). */
const SELF_STANDING = 60;
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
  const standing = standingOf({ already: bed.already, wall });
  const { coursesNew } = standing;
  const parts = sides.map((side) => ({ side, ...inParts(side.board, settings.longestStock) }));
  const facts: FrameFacts = {
    bed,
    wall,
    height: size.height * wall.courses,
    heavy: size.thickness >= SELF_STANDING,
    sides,
    corners: joined === "bent" ? 1 : sides.length,
    joints: parts.reduce((sum, part) => sum + part.parts - 1, 0),
    standing,
  };
  const stakes = stakesOf(facts, settings);
  const posts = postsOf(facts, settings.units);
  return {
    joined,
    pieces: [
      ...namedPieces(
        parts.flatMap(({ side, parts: count, each }) =>
          partEnds(side.angles, count).map((angles) => ({
            length: each,
            count: coursesNew,
            label: count > 1 ? partLabel(name, side.called) : sideLabel(name, side.called),
            ends: { cut: "bevel" as const, angles },
          })),
        ),
      ),
      ...(coursesNew > 0 ? slats(bed, size, name, settings) : []),
    ].filter(({ count }) => count > 0),
    spliced: parts
      .filter((part) => part.parts > 1 && coursesNew > 0)
      .map(({ side }) => ({ length: side.board, count: coursesNew, label: `${name}, ${side.called}` })),
    rail: coursesNew > 0 ? capRailOf(bed, wall, name, settings) : null,
    posts,
    stakes,
    ties: tiesOf(facts, stakes, settings),
    screws: screwsOf(facts, parts, stakes, posts, size, settings),
    spikes: {
      count: facts.heavy ? (facts.corners + facts.joints) * coursesNew * SPIKES_PER_CORNER : 0,
      length: settings.units === "us" ? 8 * INCH : 200,
    },
  };
}

/** Of a side in parts only the outer ends meet a corner. */
const partEnds = ([start, end]: readonly [number, number], count: number) =>
  Array.from({ length: count }, (_, i) => [i === 0 ? start : 0, i === count - 1 ? end : 0] as const);

/**
 * Into posts, both ends of every board; without posts, from one board into the end of the other, longer, since the
 * end of a board holds a screw badly. Posts of a raised frame are screwed to its old courses too.
 */
function screwsOf(
  { heavy, wall, standing, corners, joints }: FrameFacts,
  parts: readonly { readonly parts: number }[],
  stakes: Support,
  posts: Support,
  size: { readonly height: number; readonly thickness: number },
  { units }: Settings,
): { readonly count: number; readonly length: number } {
  const { thickness, height } = size;
  const intoEnds = posts.count <= joints && !heavy;
  const into = intoEnds ? 2.5 : 1.5;
  const length =
    units === "us" ? thickness + into * INCH : Math.ceil(thickness / 10) * 10 + (intoEnds ? 60 : 40);
  if (heavy || standing.coursesNew === 0) return { count: 0, length };
  const courses = posts.count > 0 && standing.courses > 0 ? wall.courses : standing.coursesNew;
  const boards = parts.reduce((sum, part) => sum + part.parts, 0);
  const held = intoEnds ? corners + 2 * joints : 2 * boards;
  return {
    count: held * courses * screwsPerEnd(height) + stakes.count * wall.courses * PER_STAKE,
    length,
  };
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
  return [{ length: each, count: count * parts, label: say`${name}, floor` }];
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
