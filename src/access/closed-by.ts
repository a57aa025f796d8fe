import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import { boxOf } from "../geometry/gap.ts";
import type { Ring } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { piecesOf, type StandingPiece, standingPieces } from "./standing.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { Side } from "./types.ts";

/**
 * What takes room to stand from a bed's edges, the one that closes most of them first: each by itself, as if nothing
 * else stood there.
 */
export function closedBy(bed: Bed, garden: Pick<Garden, "items" | "yard">, room: number): readonly Side[] {
  const ring = outlineOf(bed);
  const { obstacles, yard, near } = surroundingsOf(garden);
  const open = lengthOf(piecesOf(bed, { others: [], yard: null, room }));
  const left = lengthOf(standingPieces(bed, garden, room));
  if (left === open) return [];
  const sides = new Map<Side, { rings: Ring[]; yard: Ring | null }>([["yard", { rings: [], yard }]]);
  for (const i of near(boxOf(ring), room)) {
    const { id, ring: other } = obstacles[i]!;
    if (id === bed.id) continue;
    sides.set(id, { rings: [...(sides.get(id)?.rings ?? []), other], yard: null });
  }
  return Array.from(sides, ([side, { rings, yard: outline }]) => ({
    side,
    closes: open - lengthOf(piecesOf(bed, { others: rings, yard: outline, room })),
  }))
    .filter(({ closes }) => closes > 0)
    .sort((a, b) => b.closes - a.closes)
    .map(({ side }) => side);
}

const lengthOf = (pieces: readonly StandingPiece[]): number =>
  pieces.reduce((sum, { from, to }) => sum + distance(from, to), 0);
