import type { Garden } from "../garden/garden.ts";
import type { Door, Gate } from "../garden/kinds/opening.ts";
import { difference, intersection } from "../geometry/clip.ts";
import { centroid, ringArea } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { entrancesOf, type Start } from "./entrances.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { Side } from "./types.ts";
import { GATE_ROOM } from "./wheelchair-standards.ts";

/** Ground a wheelchair needs before a gate or door, and how much of it is taken. */
export interface GateRoom {
  readonly opening: Gate | Door;
  readonly needed: { readonly depth: number; readonly beyondLatch: number };
  /** How deep the ground is really clear, square to the opening, mm. */
  readonly clear: number;
  /** What takes it, and where; null where all of it is clear. */
  readonly taken: { readonly by: Side; readonly at: Point } | null;
}

/** For every gate and door, at each side of it that lies in the yard. */
export function gateRooms(garden: Garden): GateRoom[] {
  const entrances = entrancesOf(garden);
  return garden.items.flatMap((item) => {
    if (item.kind !== "gate" && item.kind !== "door") return [];
    const starts = entrances.find(({ id }) => id === item.id)?.starts ?? [];
    return starts.map((start) => roomAt(item, start, garden));
  });
}

function roomAt(opening: Gate | Door, { at, side }: Start, garden: Garden): GateRoom {
  const needed =
    GATE_ROOM[opening.swing === "sliding" ? "sliding" : isPulled(opening, side) ? "pull" : "push"];
  // The wall or fence that the opening is in takes nothing: the room begins at its face.
  const face = Math.max(0, Math.hypot(at[0] - opening.at[0], at[1] - opening.at[1]) - HALF_A_PACE);
  const ground = roomRing(opening, side, face, needed);
  const { obstacles, yard } = surroundingsOf(garden);
  const takers = [
    ...obstacles.map(({ id, ring }) => ({ by: id as Side, pieces: intersection([ground], [ring]) })),
    { by: "yard" as Side, pieces: difference([ground], [yard]) },
  ].flatMap(({ by, pieces }) =>
    pieces.map((piece) => ({ by, piece, out: outFrom(opening, side, face, piece) })),
  );
  const real = takers.filter(({ piece }) => ringArea(piece) > SLIVER);
  const nearest = real.sort((a, b) => a.out - b.out)[0];
  return {
    opening,
    needed,
    clear: nearest ? nearest.out : needed.depth,
    taken: nearest ? { by: nearest.by, at: centroid(nearest.piece) } : null,
  };
}

/** As far off the wall as a start lies (see entrances). */
const HALF_A_PACE = 150;
/** Clipping rounds to a thousandth: less ground than this is none, mm². */
const SLIVER = 1;

/** A leaf that swings towards whoever comes. */
const isPulled = ({ swing }: Gate | Door, side: 1 | -1): boolean => (swing === "out") === (side === 1);

function roomRing(
  opening: Gate | Door,
  side: 1 | -1,
  face: number,
  { depth, beyondLatch }: GateRoom["needed"],
): Ring {
  const half = opening.width / 2;
  const [left, right] = opening.hinge === "left" ? [-half, half + beyondLatch] : [-half - beyondLatch, half];
  // Drawn in by the one tolerance: what stands within it takes nothing.
  const [from, to] = [left + SAME_LENGTH, right - SAME_LENGTH];
  const far = face + depth - SAME_LENGTH;
  const corners: Point[] = [
    [from, side * face],
    [to, side * face],
    [to, side * far],
    [from, side * far],
  ];
  const ring = corners.map((corner) => placed(corner, opening.at, opening.turn));
  return side === 1 ? ring : ring.reverse();
}

function outFrom({ at, turn }: Gate | Door, side: 1 | -1, face: number, piece: Ring): number {
  const rad = (turn * Math.PI) / 180;
  const outs = piece.map(
    ([x, y]) => side * (Math.cos(rad) * (y - at[1]) - Math.sin(rad) * (x - at[0])) - face,
  );
  return Math.max(0, Math.min(...outs));
}
