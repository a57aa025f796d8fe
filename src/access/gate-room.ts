import type { Garden } from "../garden/garden.ts";
import type { Door, Gate } from "../garden/kinds/opening.ts";
import { limitsOf } from "../garden/limits.ts";
import { difference, intersection } from "../geometry/clip.ts";
import { centroid, ringArea } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { entrancesOf, type Start } from "./entrances.ts";
import { isClear, isFree, type KeptOff, keptOff } from "./kept-off.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { Side } from "./types.ts";
import { type Approach, type GateClearance, gateClearances, type Opens } from "./wheelchair-gates.ts";

/** Where room is missing: square to the opening, or along the wall past one of its ends. */
export type Direction = "depth" | "latch" | "hinge";

/** Ground a wheelchair needs at one side of a gate or door, by the approach that comes nearest to having it. */
export interface GateRoom {
  readonly opening: Gate | Door;
  readonly opens: Opens;
  readonly approach: Approach;
  readonly needed: GateClearance;
  /** What takes of it most, where, and what it leaves; null where all of it is clear. */
  readonly taken: Taken | null;
}

export interface Taken {
  readonly by: Side;
  readonly at: Point;
  readonly in: Direction;
  /** What is clear in that direction, and what would be enough, mm. */
  readonly clear: number;
  readonly needed: number;
  /** Unit vector in which whatever takes it has to draw back. */
  readonly away: Point;
}

/**
 * For every gate and door, at each side of it that lies in the yard. Only approaches from which a wheelchair can really
 * come are held to it, any one of which is enough; the front where it can come from nowhere.
 */
export function gateRooms(garden: Garden): GateRoom[] {
  const entrances = entrancesOf(garden);
  return garden.items.flatMap((item) => {
    if (item.kind !== "gate" && item.kind !== "door") return [];
    const starts = entrances.find(({ id }) => id === item.id)?.starts ?? [];
    return starts.map((start) => roomAt(item, start, garden));
  });
}

function roomAt(opening: Gate | Door, { at, side }: Start, garden: Garden): GateRoom {
  // The wall or fence that the opening is in takes nothing: the room begins at its face.
  const face = Math.max(0, Math.hypot(at[0] - opening.at[0], at[1] - opening.at[1]) - HALF_A_PACE);
  const before = { opening, side, face };
  const opens = opening.swing === "sliding" ? "slide" : isPulled(opening, side) ? "pull" : "push";
  const half = (limitsOf(garden).wheelchairPinch - SAME_LENGTH) / 2;
  const { obstacles, yard } = surroundingsOf(garden);
  const off = keptOff(
    yard,
    obstacles.map(({ ring }) => ring),
    half,
  );
  const rows = gateClearances(opens, garden.gardener.edition);
  const open = rows.filter((needed) => canComeBy(before, needed, off));
  const held = open.length > 0 ? open : rows.filter(({ approach }) => approach === "front");
  const rooms = held.map(
    (needed): GateRoom => ({
      opening,
      opens,
      approach: needed.approach,
      needed,
      taken: mostTaken(before, needed, garden),
    }),
  );
  return rooms.reduce((best, room) => (shortBy(room) < shortBy(best) ? room : best));
}

const shortBy = ({ taken }: GateRoom): number => (taken ? taken.needed - taken.clear : 0);

/** As far off the wall as a start lies (see entrances). */
const HALF_A_PACE = 150;
/** Clipping rounds to a thousandth: less ground than this is none, mm². */
const SLIVER = 1;

/** A leaf that swings towards whoever comes. */
const isPulled = ({ swing }: Gate | Door, side: 1 | -1): boolean => (swing === "out") === (side === 1);

/** One side of an opening. In its frame "along" grows from the hinges to the latch, 0 in the middle, and "out" from the face. */
interface Before {
  readonly opening: Gate | Door;
  readonly side: 1 | -1;
  readonly face: number;
}

function onPlan({ opening, side, face }: Before, along: number, out: number): Point {
  const x = opening.hinge === "left" ? along : -along;
  return placed([x, side * (face + out)], opening.at, opening.turn);
}

function inFrame({ opening, side, face }: Before, [x, y]: Point): { along: number; out: number } {
  const rad = (opening.turn * Math.PI) / 180;
  const [dx, dy] = [x - opening.at[0], y - opening.at[1]];
  const across = Math.cos(rad) * dx + Math.sin(rad) * dy;
  return {
    along: opening.hinge === "left" ? across : -across,
    out: side * (Math.cos(rad) * dy - Math.sin(rad) * dx) - face,
  };
}

/** How many places along an edge of the room are tried for a wheelchair to come in by. */
const TRIED = 7;

/** Whether a wheelchair can come straight into the room by the edge at which this approach comes in. */
function canComeBy(
  before: Before,
  { approach, depth, beyondLatch, beyondHinge }: GateClearance,
  off: KeptOff,
) {
  const half = before.opening.width / 2;
  const [from, to] = [-half - beyondHinge, half + beyondLatch];
  const line = (share: number): [Point, Point] => {
    if (approach === "front") {
      const along = from + share * (to - from);
      return [onPlan(before, along, depth + off.half), onPlan(before, along, off.half)];
    }
    const out = share * depth;
    return [
      onPlan(before, approach === "latch side" ? to + off.half : from - off.half, out),
      onPlan(before, 0, out),
    ];
  };
  return Array.from({ length: TRIED }, (_, i) => line((i + 0.5) / TRIED)).some(
    ([outside, inside]) => isFree(off, outside) && isFree(off, inside) && isClear(off, outside, inside),
  );
}

function mostTaken(before: Before, needed: GateClearance, garden: Garden): Taken | null {
  const ground = roomRing(before, needed);
  const { obstacles, yard } = surroundingsOf(garden);
  const takers = [
    ...obstacles.map(({ id, ring }) => ({ by: id as Side, pieces: intersection([ground], [ring]) })),
    { by: "yard" as Side, pieces: difference([ground], [yard]) },
  ];
  const taken = takers.flatMap(({ by, pieces }) =>
    pieces.filter((piece) => ringArea(piece) > SLIVER).map((piece) => takenBy(before, needed, by, piece)),
  );
  return taken.sort((a, b) => b.needed - b.clear - (a.needed - a.clear))[0] ?? null;
}

/** In the direction in which least is missing: what lies past an end of the opening may draw back along the wall. */
function takenBy(before: Before, needed: GateClearance, by: Side, piece: Ring): Taken {
  const half = before.opening.width / 2;
  const corners = piece.map((corner) => inFrame(before, corner));
  const out = Math.min(...corners.map((corner) => corner.out));
  const pastLatch = Math.min(...corners.map(({ along }) => along)) - half;
  const pastHinge = -half - Math.max(...corners.map(({ along }) => along));
  const away = (along: number, out: number): Point => {
    const [from, to] = [onPlan(before, 0, 0), onPlan(before, along, out)];
    return [to[0] - from[0], to[1] - from[1]];
  };
  const at = centroid(piece);
  const found: Taken[] = [
    { by, at, in: "depth", clear: Math.max(0, out), needed: needed.depth, away: away(0, 1) },
  ];
  if (pastLatch >= 0)
    found.push({ by, at, in: "latch", clear: pastLatch, needed: needed.beyondLatch, away: away(1, 0) });
  if (pastHinge >= 0)
    found.push({ by, at, in: "hinge", clear: pastHinge, needed: needed.beyondHinge, away: away(-1, 0) });
  return found.reduce((least, one) => (one.needed - one.clear < least.needed - least.clear ? one : least));
}

function roomRing(before: Before, { depth, beyondLatch, beyondHinge }: GateClearance): Ring {
  const half = before.opening.width / 2;
  // Drawn in by the one tolerance: what stands within it takes nothing.
  const [from, to] = [-half - beyondHinge + SAME_LENGTH, half + beyondLatch - SAME_LENGTH];
  const far = depth - SAME_LENGTH;
  const ring = [
    onPlan(before, from, 0),
    onPlan(before, to, 0),
    onPlan(before, to, far),
    onPlan(before, from, far),
  ];
  const isClockwise = (before.opening.hinge === "left") === (before.side === 1);
  return isClockwise ? ring : ring.reverse();
}
