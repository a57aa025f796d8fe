import type { Point, Ring } from "./types.ts";

/**
 * Outlines in an item's own frame: centred on the item's place, before it is turned. `width` runs along x,
 * `length` along y; both are outside sizes in mm.
 */
export type Shape =
  | { readonly type: "rectangle"; readonly width: number; readonly length: number }
  /** A rectangle less a corner: `armWidth` is the thickness of the arm along y, `armLength` of the arm along x. */
  | {
      readonly type: "l";
      readonly width: number;
      readonly length: number;
      readonly armWidth: number;
      readonly armLength: number;
    }
  /** A rectangle less a bay let into the middle of its lower side (+y). */
  | {
      readonly type: "u";
      readonly width: number;
      readonly length: number;
      readonly bayWidth: number;
      readonly bayLength: number;
    }
  | { readonly type: "oval"; readonly width: number; readonly length: number }
  /** A circle with a way in from below (+y) to a standing place at its middle. */
  | {
      readonly type: "keyhole";
      readonly diameter: number;
      readonly slotWidth: number;
      readonly middleDiameter: number;
    }
  | { readonly type: "polygon"; readonly points: Ring };

/**
 * Chords a full round is drawn with. The corners lie on the circle, so a drawn round of radius r is short of
 * the true one by r(1 - cos(pi/64)), 0.9 mm at a 30 in radius.
 */
export const ROUND_CHORDS = 64;

/** The outline of a shape in its own frame, clockwise as seen. */
export function shapeRing(shape: Shape): Ring {
  switch (shape.type) {
    case "rectangle":
      return box(shape.width, shape.length);
    case "l":
      return lRing(shape.width / 2, shape.length / 2, shape.armWidth, shape.armLength);
    case "u":
      return uRing(shape.width / 2, shape.length / 2, shape.bayWidth / 2, shape.bayLength);
    case "oval":
      return arc(shape.width / 2, shape.length / 2, 0, 2 * Math.PI).slice(0, -1);
    case "keyhole":
      return keyholeRing(shape.diameter / 2, shape.slotWidth / 2, shape.middleDiameter / 2);
    case "polygon":
      return shape.points;
    default:
      return unreachable(shape);
  }
}

function box(width: number, length: number): Ring {
  const [x, y] = [width / 2, length / 2];
  return [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ];
}

function lRing(x: number, y: number, armWidth: number, armLength: number): Ring {
  return [
    [-x, -y],
    [x, -y],
    [x, -y + armLength],
    [-x + armWidth, -y + armLength],
    [-x + armWidth, y],
    [-x, y],
  ];
}

function uRing(x: number, y: number, bay: number, bayLength: number): Ring {
  return [
    [-x, -y],
    [x, -y],
    [x, y],
    [bay, y],
    [bay, y - bayLength],
    [-bay, y - bayLength],
    [-bay, y],
    [-x, y],
  ];
}

function keyholeRing(outer: number, slot: number, middle: number): Ring {
  const fromOuter = Math.asin(slot / outer);
  const fromMiddle = Math.asin(Math.min(1, slot / middle));
  const down = Math.PI / 2;
  return [
    ...arc(outer, outer, down + fromOuter, down + 2 * Math.PI - fromOuter),
    ...arc(middle, middle, down + 2 * Math.PI - fromMiddle, down + fromMiddle),
  ];
}

/** Points along an arc, both ends included; angles run clockwise as seen from +x. */
function arc(radiusX: number, radiusY: number, from: number, to: number): Point[] {
  const chords = Math.max(2, Math.round((Math.abs(to - from) / (2 * Math.PI)) * ROUND_CHORDS));
  return Array.from({ length: chords + 1 }, (_, i): Point => {
    const angle = from + ((to - from) * i) / chords;
    return [radiusX * Math.cos(angle), radiusY * Math.sin(angle)];
  });
}

const unreachable = (shape: never): never => {
  throw new RangeError(`unknown shape ${JSON.stringify(shape)}`);
};
