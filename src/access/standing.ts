import type { Garden, Gardener } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Limits } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { boxOf } from "../geometry/gap.ts";
import { ROUND_CHORDS } from "../geometry/shape.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { freeIntervals, type Interval } from "./free-intervals.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { Stretch } from "./types.ts";

/**
 * Room that whoever gardens here needs at a bed's edge, mm across. The most that any of them needs: a bed must be of
 * use to all. A wheelchair stands beside the bed on ground as wide as a wheelchair way; the 48 in it takes along the
 * edge are not asked for at every stretch, for the arm reaches along the bed past the end of the chair.
 */
export function roomToStand(gardener: Gardener, limits: Limits): number {
  return Math.max(
    limits.standingRoom,
    gardener.kneeling ? limits.kneelingWay : 0,
    gardener.wheelchair ? limits.wheelchairWay : 0,
  );
}

/** A piece of one side of a bed at which somebody has room, if they can get there. */
export interface StandingPiece {
  readonly from: Point;
  readonly to: Point;
  /** The middle of the body of somebody who stands there. */
  readonly body: Point;
  /** Index of the side it lies on: from that corner of the outline to the next. */
  readonly side: number;
}

/**
 * Where round a bed's outside edge somebody has room to be.
 *
 * A body is a disc of `room` mm across that touches the edge without touching anything else: other beds, what stands in
 * the yard, the yard's outline, the bed's own other sides. As wide as it is it has the edge before it, so that a bed can
 * be worked right up to the fence or the corner it ends at.
 *
 * @param room mm; a place short of it by `SAME_LENGTH` still counts
 * @returns pieces in the order of the outline; empty where nobody has room anywhere
 */
export function standingPieces(
  bed: Bed,
  garden: Pick<Garden, "items" | "yard">,
  room: number,
): readonly StandingPiece[] {
  const ring = outlineOf(bed);
  const { obstacles, yard, near } = surroundingsOf(garden);
  const others = near(boxOf(ring), room)
    .filter((i) => obstacles[i]!.id !== bed.id)
    .map((i) => obstacles[i]!.ring);
  const before = known.get(ring);
  if (before?.room === room && before.yard === yard && sameRings(before.others, others)) return before.pieces;
  const pieces = piecesOf(bed, { others, yard, room });
  known.set(ring, { others, yard, room, pieces });
  return pieces;
}

interface Asked {
  readonly others: readonly Ring[];
  readonly yard: Ring | null;
  readonly room: number;
}

// What is dragged far away changes nothing here: the answer holds while the neighbours are the same.
const known = new WeakMap<Ring, Asked & { readonly pieces: readonly StandingPiece[] }>();

const sameRings = (a: readonly Ring[], b: readonly Ring[]): boolean =>
  a.length === b.length && a.every((ring, i) => ring === b[i]);

/** The same among these neighbours only, without looking up what is known. */
export function piecesOf(bed: Bed, { others, yard, room }: Asked): readonly StandingPiece[] {
  const ring = outlineOf(bed);
  const half = (room - SAME_LENGTH) / 2;
  const free = freeIntervals(ring, half, { others, yard, ownSlack: chordSag(bed), shape: bed.shape });
  return free.flatMap((interval) => {
    const piece = pieceBefore(ring, interval, half);
    return shutInOwnMiddle(bed, piece.body, room) ? [] : [piece];
  });
}

/** The edge before somebody who can be anywhere from `start` to `end`: half a body more each way, within the side. */
function pieceBefore(ring: Ring, { side, start, end }: Interval, half: number): StandingPiece {
  const [ax, ay] = ring[side]!;
  const [bx, by] = ring[(side + 1) % ring.length]!;
  const length = Math.hypot(bx - ax, by - ay);
  const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
  const at = (along: number): Point => [ax + along * ux, ay + along * uy];
  const from = start - half <= 0 ? ring[side]! : at(start - half);
  const to = end + half >= length ? ring[(side + 1) % ring.length]! : at(end + half);
  const [mx, my] = at((start + end) / 2);
  return { side, from, to, body: [mx + half * uy, my - half * ux] };
}

/** A round is drawn with chords, which come nearer its middle than the round itself by this much, mm. */
const chordSag = ({ shape }: Bed): number =>
  shape.type === "keyhole" ? shape.middleDiameter * (1 - Math.cos(Math.PI / (ROUND_CHORDS - 4))) : 0;

/** The middle of a keyhole bed is of no use to somebody who does not fit through its way in. */
function shutInOwnMiddle({ shape, at }: Bed, [x, y]: Point, room: number): boolean {
  if (shape.type !== "keyhole" || shape.slotWidth >= room - SAME_LENGTH) return false;
  return Math.hypot(x - at[0], y - at[1]) < shape.middleDiameter / 2;
}

/**
 * Joins pieces that follow each other round the outline into lines.
 * @returns one line of points for each run of edge; all round a bed it closes on its first point
 */
export function stretchesOf(pieces: readonly StandingPiece[]): readonly Stretch[] {
  const lines: Point[][] = [];
  for (const { from, to } of pieces) {
    const line = lines.at(-1);
    if (line && samePoint(line.at(-1)!, from)) line.push(to);
    else lines.push([from, to]);
  }
  const [first, last] = [lines[0], lines.at(-1)];
  if (first && last && first !== last && samePoint(last.at(-1)!, first[0]!)) {
    lines[0] = [...last, ...first.slice(1)];
    lines.pop();
  }
  return lines;
}

const samePoint = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];
