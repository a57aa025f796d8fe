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
  const open = openBeside(bed, ring, room, { others: [], yard: null });
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
    closes: open - leftBy(bed, room, rings, outline),
  }))
    .filter(({ closes }) => closes > 0)
    .sort((a, b) => b.closes - a.closes)
    .map(({ side }) => side);
}

function leftBy(bed: Bed, room: number, others: readonly Ring[], yard: Ring | null): number {
  const [only, another] = yard ? [yard] : others;
  if (!only || another) return lengthOf(piecesOf(bed, { others, yard, room }));
  return openBeside(bed, only, room, { others, yard });
}

interface Open {
  readonly room: number;
  readonly length: number;
}

// While one thing is dragged every other pair keeps both its rings, and its answer with them.
const pairs = new WeakMap<Ring, WeakMap<Ring, Open>>();

/** Length of edge that one thing leaves open, mm; what the bed leaves of its own is told beside its own outline. */
function openBeside(
  bed: Bed,
  other: Ring,
  room: number,
  alone: { readonly others: readonly Ring[]; readonly yard: Ring | null },
): number {
  const ring = outlineOf(bed);
  const ofRing = pairs.get(ring) ?? new WeakMap<Ring, Open>();
  pairs.set(ring, ofRing);
  const before = ofRing.get(other);
  if (before?.room === room) return before.length;
  const length = lengthOf(piecesOf(bed, { ...alone, room }));
  ofRing.set(other, { room, length });
  return length;
}

const lengthOf = (pieces: readonly StandingPiece[]): number =>
  pieces.reduce((sum, { from, to }) => sum + distance(from, to), 0);
