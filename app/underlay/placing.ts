import {
  type Box,
  cross,
  distance,
  dot,
  midpoint,
  type Point,
  placed,
  type Ring,
  say,
  subtract,
  type Underlay,
  unplaced,
} from "../../src/index.ts";

/*
 * Where a picture lies beneath the plan, worked out from points of it. A point of the picture is told in its own pixels,
 * from its upper left corner.
 */

/** A picture as it is kept. */
export interface Picture {
  /** SHA-256 of its bytes. */
  readonly picture: string;
  readonly pixels: readonly [width: number, height: number];
}

const FIRST_OPACITY = 0.6;

/** A picture laid down for the first time: in the middle of a view, as wide as the yard, to be scaled next. */
export function laidDown({ picture, pixels }: Picture, at: Point, yard: Box): Underlay {
  const mmPerPixel = Math.max(yard.maxX - yard.minX, yard.maxY - yard.minY) / Math.max(...pixels);
  return {
    picture,
    pixels: [...pixels],
    at,
    turn: 0,
    mmPerPixel,
    opacity: FIRST_OPACITY,
    locked: false,
    data: null,
  };
}

/** Another picture in place of one that lies there already: as wide, and all else as it was. */
export const exchanged = (underlay: Underlay, { picture, pixels }: Picture): Underlay => ({
  ...underlay,
  picture,
  pixels: [...pixels],
  mmPerPixel: (underlay.mmPerPixel * underlay.pixels[0]) / pixels[0],
});

/** The place on the plan of a point of the picture. */
export function onPlan({ pixels, at, turn, mmPerPixel }: Underlay, [x, y]: Point): Point {
  return placed([(x - pixels[0] / 2) * mmPerPixel, (y - pixels[1] / 2) * mmPerPixel], at, turn);
}

/** The point of the picture at a place on the plan; outside the picture it goes on. */
export function inPicture({ pixels, at, turn, mmPerPixel }: Underlay, place: Point): Point {
  const [x, y] = unplaced(place, at, turn);
  return [x / mmPerPixel + pixels[0] / 2, y / mmPerPixel + pixels[1] / 2];
}

export function liesUnder(underlay: Underlay, place: Point): boolean {
  const [x, y] = inPicture(underlay, place);
  return x >= 0 && y >= 0 && x <= underlay.pixels[0] && y <= underlay.pixels[1];
}

export function cornersOf(underlay: Underlay): Ring {
  const [width, height] = underlay.pixels;
  const corners: Ring = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  return corners.map((corner) => onPlan(underlay, corner));
}

/** Nearer together than this, in pixels, two points tell no scale. */
export const LEAST_APART = 10;

/**
 * The picture scaled so that two of its points are so far apart on the ground. What lies in the middle between them stays
 * where it is.
 * @throws RangeError where the points are too near to each other to tell
 */
export function scaled(underlay: Underlay, [a, b]: readonly [Point, Point], mm: number): Underlay {
  const apart = distance(a, b);
  if (!(apart >= LEAST_APART)) throw new RangeError(say`The two points lie too near to each other.`);
  return keeping(underlay, midpoint(a, b), { ...underlay, mmPerPixel: mm / apart });
}

export type Lie = "level" | "upright";

/**
 * The picture turned so that the line between two of its points lies level or upright on the plan, by the smaller of the
 * two turns that do. What lies in the middle between them stays where it is.
 * @throws RangeError where the points are too near to each other to tell
 */
export function turnedTo(underlay: Underlay, [a, b]: readonly [Point, Point], lie: Lie): Underlay {
  if (!(distance(a, b) >= LEAST_APART)) throw new RangeError(say`The two points lie too near to each other.`);
  const along = subtract(onPlan(underlay, b), onPlan(underlay, a));
  const axis: Point = lie === "level" ? [1, 0] : [0, 1];
  const from = dot(along, axis) < 0 ? ([-along[0], -along[1]] as const) : along;
  const by = (Math.atan2(cross(from, axis), dot(from, axis)) * 180) / Math.PI;
  return keeping(underlay, midpoint(a, b), { ...underlay, turn: wholeTurn(underlay.turn + by) });
}

/** `changed`, moved so that a point of the picture lies where it lay before. */
function keeping(before: Underlay, pixel: Point, changed: Underlay): Underlay {
  const off = subtract(onPlan(before, pixel), onPlan(changed, pixel));
  return { ...changed, at: [changed.at[0] + off[0], changed.at[1] + off[1]] };
}

/** Within ±180. */
export const wholeTurn = (degrees: number): number => {
  const within = (((degrees + 180) % 360) + 360) % 360;
  return within - 180;
};
