import type { Limits } from "../garden/limits.ts";
import { contains } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { add, distance, subtract, turned } from "../geometry/vector.ts";
import { INCH, SAME_LENGTH } from "../units/length.ts";
import { isClear, type KeptOff } from "./kept-off.ts";
import type { TurningSpace } from "./types.ts";
import type { Ways } from "./ways.ts";
import { exactDisc } from "./ways-disc.ts";
import { T_SPACE, type TSpace } from "./wheelchair-standards.ts";

/** What a T must not meet. */
export interface TeeGround {
  readonly yard: Ring;
  readonly off: KeptOff;
  readonly rings: readonly Ring[];
}

/** Where ways meet: a disc that touches in three places, and from which directions. */
export interface Crossing {
  readonly at: Point;
  readonly touches: readonly Point[];
  readonly towards: readonly number[];
}

/** @param most a disc wider than this leaves room for something else than a T, mm */
export function crossings({ mesh, widest }: Ways, limits: Limits, { arm }: TSpace, most: number): Crossing[] {
  const found: Crossing[] = [];
  mesh.radii.forEach((radius, t) => {
    if (2 * radius < arm - 2 * SAME_LENGTH || 2 * radius > most) return;
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

/** Half the bar, and half of bar and base together: a T about the middle of all it takes. */
const halves = ({ arm, armClear, baseClear }: TSpace) => ({
  bar: arm / 2 + armClear,
  deep: (arm + baseClear) / 2,
});

/** The bar along the top, the base below it. */
function outlineOfTee(tee: TSpace): Ring {
  const { bar, deep } = halves(tee);
  const { arm } = tee;
  return [
    [-bar, -deep],
    [bar, -deep],
    [bar, -deep + arm],
    [arm / 2, -deep + arm],
    [arm / 2, deep],
    [-arm / 2, deep],
    [-arm / 2, -deep + arm],
    [-bar, -deep + arm],
  ];
}

const EVERY_TURN = 15;
/** How far about a crossing, along the T's own axes, places for it are tried, and how finely, mm. */
const TRY_FROM = 6 * INCH;
const TRY_STEP = 3 * INCH;

export type TeeSpace = Extract<TurningSpace, { kind: "t" }>;

/** A T of a size that fits at a crossing, flush with what touches it or turned any way; null where none does. */
export function teeAt(ground: TeeGround, crossing: Crossing, tee: TSpace): TeeSpace | null {
  const square = crossing.towards.flatMap((angle) => [0, 90, 180, 270].map((quarter) => angle + quarter));
  const turns = [...square, ...Array.from({ length: 360 / EVERY_TURN }, (_, i) => i * EVERY_TURN)];
  const steps = Math.round(TRY_FROM / TRY_STEP);
  const about = Array.from({ length: 2 * steps + 1 }, (_, i) => (i - steps) * TRY_STEP);
  const back = halves(tee).deep - T_MIDDLE;
  const shape = outlineOfTee(tee);
  const placeOf = (turn: number, x: number, y: number): TPlace => ({
    turn,
    middle: add(crossing.at, turned([x, y + back], turn)),
  });
  const shifted = turns.flatMap((turn) => about.flatMap((x) => about.map((y) => placeOf(turn, x, y))));
  for (const { turn, middle } of [...flushPlaces(crossing, tee), ...shifted]) {
    const outline = shape.map((corner) => add(middle, turned(corner, turn)));
    if (isOpen(ground, outline, middle)) return { kind: "t", at: middle, turn, outline };
  }
  return null;
}

/** Half of the square that the turning T takes: a larger T is set back so that its bar lies where this one's does, mm. */
const T_MIDDLE = halves(T_SPACE).deep;

interface TPlace {
  readonly turn: number;
  readonly middle: Point;
}

/** The back of the bar along one of the three that touch the crossing, the base between the other two. */
function flushPlaces({ at, touches, towards }: Crossing, tee: TSpace): TPlace[] {
  return towards.map((angle, k) => {
    const turn = angle + 90;
    const others = touches.filter((_, i) => i !== k).map((touch) => turned(subtract(touch, at), -turn)[0]);
    const x = others.reduce((sum, other) => sum + other, 0) / others.length;
    const y = halves(tee).deep - distance(at, touches[k]!);
    return { turn, middle: add(at, turned([x, y], turn)) };
  });
}

/** A T is open where it lies in the yard and no outline enters it by more than the one tolerance. */
function isOpen({ yard, off, rings }: TeeGround, outline: Ring, middle: Point): boolean {
  const shrunk = outline.map(([x, y]): Point => {
    const far = Math.hypot(x - middle[0], y - middle[1]);
    const share = (far - SAME_LENGTH) / far;
    return [middle[0] + share * (x - middle[0]), middle[1] + share * (y - middle[1])];
  });
  const bare = { ...off, half: 0 };
  return (
    shrunk.every(
      (corner, i) => contains(yard, corner) && isClear(bare, corner, shrunk[(i + 1) % shrunk.length]!),
    ) && !rings.some((ring) => ring.some((corner) => contains(shrunk, corner)) || contains(ring, middle))
  );
}
