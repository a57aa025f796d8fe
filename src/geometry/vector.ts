import type { Point } from "./types.ts";

export const add = ([ax, ay]: Point, [bx, by]: Point): Point => [ax + bx, ay + by];
export const subtract = ([ax, ay]: Point, [bx, by]: Point): Point => [ax - bx, ay - by];
export const scale = ([x, y]: Point, by: number): Point => [x * by, y * by];
export const dot = ([ax, ay]: Point, [bx, by]: Point): number => ax * bx + ay * by;
/** Positive where the second vector lies clockwise (as seen) of the first. */
export const cross = ([ax, ay]: Point, [bx, by]: Point): number => ax * by - ay * bx;
export const distance = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(bx - ax, by - ay);
export const midpoint = ([ax, ay]: Point, [bx, by]: Point): Point => [(ax + bx) / 2, (ay + by) / 2];

/** Cosine and sine of a turn, exact for the quarter turns that most gardens are made of. */
function cosSin(degrees: number): readonly [number, number] {
  switch (((degrees % 360) + 360) % 360) {
    case 0:
      return [1, 0];
    case 90:
      return [0, 1];
    case 180:
      return [-1, 0];
    case 270:
      return [0, -1];
    default: {
      const rad = (degrees * Math.PI) / 180;
      return [Math.cos(rad), Math.sin(rad)];
    }
  }
}

/** Turns a point about the origin, clockwise as seen. */
export function turned([x, y]: Point, degrees: number): Point {
  const [c, s] = cosSin(degrees);
  return [x * c - y * s, x * s + y * c];
}

/** Turns a point about another, clockwise as seen. */
export const turnedAbout = (point: Point, centre: Point, degrees: number): Point =>
  add(centre, turned(subtract(point, centre), degrees));

/** From an item's own frame to the plan: turn, then carry to where the item stands. */
export const placed = (local: Point, at: Point, turn: number): Point => add(at, turned(local, turn));

/** From the plan to an item's own frame: the inverse of `placed`. */
export const unplaced = (point: Point, at: Point, turn: number): Point => turned(subtract(point, at), -turn);
