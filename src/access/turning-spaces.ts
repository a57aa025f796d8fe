import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Limits } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { contains } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { add, distance, subtract, turned } from "../geometry/vector.ts";
import { INCH, SAME_LENGTH } from "../units/length.ts";
import { isClear, isFree, type KeptOff, keptOff } from "./kept-off.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { TurningSpace } from "./types.ts";
import type { Ways } from "./ways.ts";
import { exactDisc } from "./ways-disc.ts";
import { T_SPACE } from "./wheelchair-standards.ts";

/** A turning space belongs to a bed if its middle lies within this of the bed's edge, mm: a turn or two of the wheels. */
export const TURNING_NEAR = 60 * INCH;
/** Places along a bed's edge at which a circle beside it is tried, mm apart. */
const STEP = 6 * INCH;

/** Looks for room to turn. */
export interface TurningSpaces {
  /** The nearest to a bed, within `TURNING_NEAR` of its edge; null where none fits that a wheelchair can get to. */
  readonly at: (bed: Bed) => TurningSpace | null;
  /** The nearest to a point. */
  readonly near: (point: Point) => TurningSpace | null;
}

export function turningSpaces(garden: Garden, ways: Ways, limits: Limits): TurningSpaces {
  const rings = surroundingsOf(garden).obstacles.map(({ ring }) => ring);
  const canGetTo = ways.reachableAt(limits.wheelchairPinch);
  const off = keptOff(garden.yard, rings, (limits.turningCircle - SAME_LENGTH) / 2);
  const roomy = roomyMiddles(ways, limits);
  const ground: Ground = { garden, off, rings, limits, canGetTo };

  const nearestOf = (middles: readonly Point[], away: (point: Point) => number): TurningSpace | null => {
    const sorted = middles
      .map((at) => ({ at, far: away(at) }))
      .filter(({ far }) => far <= TURNING_NEAR)
      .sort((a, b) => a.far - b.far);
    const found = sorted.find(({ at }) => isFree(off, at) && canGetTo(at));
    return found ? { kind: "circle", at: found.at, diameter: limits.turningCircle } : null;
  };

  return {
    at: (bed) => {
      const outline = outlineOf(bed);
      const away = (point: Point) => distanceTo(outline, point);
      const circle = nearestOf(
        [...besides(outline, limits.turningCircle / 2), ...roomy.map(({ at }) => at)],
        away,
      );
      return circle ?? tNear(ground, crossings(ways, limits), away);
    },
    near: (point) => {
      const away = (other: Point) => distance(point, other);
      return (
        nearestOf(
          roomy.map(({ at }) => at),
          away,
        ) ?? tNear(ground, crossings(ways, limits), away)
      );
    },
  };
}

/** Middles of the discs that are at least a turning circle wide, where a wheelchair gets to. */
function roomyMiddles({ mesh, widest }: Ways, limits: Limits): { at: Point }[] {
  const found: { at: Point }[] = [];
  mesh.radii.forEach((radius, t) => {
    if (2 * radius < limits.turningCircle - SAME_LENGTH) return;
    if (widest && widest[t]! < limits.wheelchairPinch - SAME_LENGTH) return;
    found.push({ at: exactDisc(mesh, t).at });
  });
  return found;
}

/** Middles of circles that touch a bed from outside, all along its edge. */
function besides(outline: Ring, radius: number): Point[] {
  return outline.flatMap(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    const length = Math.hypot(bx - ax, by - ay);
    const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
    const parts = Math.max(1, Math.ceil(length / STEP));
    return Array.from({ length: parts + 1 }, (_, k): Point => {
      const along = (length * k) / parts;
      return [ax + along * ux + radius * uy, ay + along * uy - radius * ux];
    });
  });
}

function distanceTo(ring: Ring, [x, y]: Point): number {
  let least = Infinity;
  let [px, py] = ring.at(-1)!;
  for (const [qx, qy] of ring) {
    const [ux, uy] = [qx - px, qy - py];
    const t = Math.max(0, Math.min(1, ((x - px) * ux + (y - py) * uy) / (ux * ux + uy * uy || 1)));
    least = Math.min(least, Math.hypot(px + t * ux - x, py + t * uy - y));
    [px, py] = [qx, qy];
  }
  return least;
}

interface Ground {
  readonly garden: Garden;
  readonly off: KeptOff;
  readonly rings: readonly Ring[];
  readonly limits: Limits;
  readonly canGetTo: (point: Point) => boolean;
}

/** Where ways meet: a disc that touches in three places, and from which directions. */
interface Crossing {
  readonly at: Point;
  readonly touches: readonly Point[];
  readonly towards: readonly number[];
}

function crossings({ mesh, widest }: Ways, limits: Limits): Crossing[] {
  const found: Crossing[] = [];
  mesh.radii.forEach((radius, t) => {
    if (2 * radius < T_SPACE.arm - 2 * SAME_LENGTH || 2 * radius > limits.turningCircle + T_SPACE.arm) return;
    if (widest && widest[t]! < limits.wheelchairPinch - SAME_LENGTH) return;
    const { at, touches } = exactDisc(mesh, t);
    const towards = touches.map(([x, y]) => (Math.atan2(y - at[1], x - at[0]) * 180) / Math.PI);
    if (isSpread(towards)) found.push({ at, touches, towards });
  });
  return found;
}

/** Touched from all round, as where ways meet, and not only from both sides, as along a way. */
function isSpread(degrees: readonly number[]): boolean {
  const sorted = degrees.toSorted((a, b) => a - b);
  return sorted.every((angle, i) => {
    const next = sorted[i + 1] ?? sorted[0]! + 360;
    return next - angle > 20 && next - angle < 179;
  });
}

/** The T: a bar 60 x 36 in with a base 36 in wide and 24 in long below it, about the middle of its square. */
const HALF = T_SPACE.square / 2;
const T_OUTLINE: Ring = [
  [-HALF, -HALF],
  [HALF, -HALF],
  [HALF, -HALF + T_SPACE.arm],
  [T_SPACE.arm / 2, -HALF + T_SPACE.arm],
  [T_SPACE.arm / 2, HALF],
  [-T_SPACE.arm / 2, HALF],
  [-T_SPACE.arm / 2, -HALF + T_SPACE.arm],
  [-HALF, -HALF + T_SPACE.arm],
];

const EVERY_TURN = 15;
/** How far about a crossing, along the T's own axes, places for it are tried, and how finely, mm. */
const TRY_FROM = 6 * INCH;
const TRY_STEP = 3 * INCH;

function tNear(
  ground: Ground,
  where: readonly Crossing[],
  away: (point: Point) => number,
): TurningSpace | null {
  const sorted = where
    .map((crossing) => ({ crossing, far: away(crossing.at) }))
    .filter(({ far }) => far <= TURNING_NEAR)
    .sort((a, b) => a.far - b.far);
  for (const { crossing } of sorted) {
    const found = tAt(ground, crossing);
    if (found) return found;
  }
  return null;
}

/** Flush with what the crossing is touched by, first; then any way round, all about. */
function tAt(ground: Ground, crossing: Crossing): TurningSpace | null {
  const square = crossing.towards.flatMap((angle) => [0, 90, 180, 270].map((quarter) => angle + quarter));
  const turns = [...square, ...Array.from({ length: 360 / EVERY_TURN }, (_, i) => i * EVERY_TURN)];
  const steps = Math.round(TRY_FROM / TRY_STEP);
  const about = Array.from({ length: 2 * steps + 1 }, (_, i) => (i - steps) * TRY_STEP);
  const shifted = turns.flatMap((turn) =>
    about.flatMap((x) => about.map((y) => ({ turn, middle: add(crossing.at, turned([x, y], turn)) }))),
  );
  for (const { turn, middle } of [...flushPlaces(crossing), ...shifted]) {
    const outline = T_OUTLINE.map((corner) => add(middle, turned(corner, turn)));
    if (isOpen(ground, outline, middle)) return { kind: "t", at: middle, turn, outline };
  }
  return null;
}

interface TPlace {
  readonly turn: number;
  readonly middle: Point;
}

/** The back of the bar along one of the three that touch the crossing, the base between the other two. */
function flushPlaces({ at, touches, towards }: Crossing): TPlace[] {
  return towards.map((angle, k) => {
    const turn = angle + 90;
    const others = touches.filter((_, i) => i !== k).map((touch) => turned(subtract(touch, at), -turn)[0]);
    const x = others.reduce((sum, other) => sum + other, 0) / others.length;
    const y = HALF - distance(at, touches[k]!);
    return { turn, middle: add(at, turned([x, y], turn)) };
  });
}

/** A T is open where it lies in the yard and no outline enters it by more than the one tolerance. */
function isOpen({ garden, off, rings }: Ground, outline: Ring, middle: Point): boolean {
  const shrunk = outline.map(([x, y]): Point => {
    const far = Math.hypot(x - middle[0], y - middle[1]);
    const share = (far - SAME_LENGTH) / far;
    return [middle[0] + share * (x - middle[0]), middle[1] + share * (y - middle[1])];
  });
  const bare = { ...off, half: 0 };
  return (
    shrunk.every(
      (corner, i) => contains(garden.yard, corner) && isClear(bare, corner, shrunk[(i + 1) % shrunk.length]!),
    ) && !rings.some((ring) => ring.some((corner) => contains(shrunk, corner)) || contains(ring, middle))
  );
}
