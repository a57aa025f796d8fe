import { frameOf } from "../garden/frame.ts";
import type { Bed, BedWall } from "../garden/kinds/bed.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance, midpoint } from "../geometry/vector.ts";
import { boardBow, midStakes } from "../takeoff/structure.ts";

type BoardWall = Extract<BedWall, { made: "boards" }>;

export interface FrameBow {
  /** How far the lowest board of the longest side bows out between its supports, mm. */
  readonly deflection: number;
  /** Between those supports, mm. */
  readonly span: number;
  /** The middle of that side. */
  readonly at: Point;
}

/**
 * How much the worst board of a bed's frame bows, were its wall built as `wall` says: the lowest course carries most,
 * and the longest side gives most.
 * @param stakeEvery spacing of stakes where the wall has them, mm
 * @returns null where the board is of no known size
 */
export function frameBow(bed: Bed, wall: BoardWall, stakeEvery: number): FrameBow | null {
  const board = boardSize(wall.board);
  if (!board) return null;
  const { outside, soilDepth } = frameOf(bed);
  const side = longestSide(outside);
  const staked = wall.bracing !== "none" && stakeEvery > 0;
  const span = !staked ? side.length : midStakes(side.length, stakeEvery).spacing;
  const { deflection } = boardBow({
    thickness: board.thickness,
    height: board.height,
    depth: Math.min(soilDepth, board.height * wall.courses),
    span,
  });
  return { deflection, span, at: side.at };
}

export function longestSide(ring: Ring): { readonly length: number; readonly at: Point } {
  let longest = { length: 0, at: ring[0]! };
  let previous = ring.at(-1);
  for (const corner of ring) {
    if (previous && distance(previous, corner) > longest.length) {
      longest = { length: distance(previous, corner), at: midpoint(previous, corner) };
    }
    previous = corner;
  }
  return longest;
}
