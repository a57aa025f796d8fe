import { centroid, ringArea } from "../geometry/ring.ts";
import { type Shape, shapeRing } from "../geometry/shape.ts";
import type { Ring } from "../geometry/types.ts";
import { add, scale, subtract } from "../geometry/vector.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say } from "../words/say.ts";

/** Another shape for a bed, in the words of a button. */
export interface Narrower {
  readonly shape: Shape;
  /** "Narrow to", "Narrow the arms to": its figure follows. */
  readonly verb: string;
  readonly figure: { readonly mm: number } | { readonly share: number };
}

/**
 * Thickness of soil that is within reach, as a share of the reach: from both sides; from two outer sides and the inner
 * corner between two arms (on the diagonal of that square the two meet at side / (1 + sqrt 1/2)); from one side.
 */
const FROM_BOTH = 2;
const FROM_CORNER = 1 + Math.SQRT1_2;
const FROM_ONE = 1;
const THICKNESSES = [FROM_BOTH, FROM_CORNER, FROM_ONE];

export interface Within {
  readonly reach: number;
  /** Room to stand, mm across. */
  readonly room: number;
  /** How far the farthest soil is now, mm; Infinity if nothing can be reached. */
  readonly farthest: number;
  /** Sizes come out in whole steps, mm. */
  readonly step: number;
}

/**
 * Smaller shapes of the same kind that may be within reach, the most soil first. Which of them is depends on where one
 * can stand: to be tried.
 */
export const narrowerShapes = (shape: Shape, within: Within): Narrower[] =>
  candidates(shape, within).sort((a, b) => areaOf(b.shape) - areaOf(a.shape));

const areaOf = (shape: Shape): number => ringArea(shapeRing(shape));

function candidates(shape: Shape, { reach, room, farthest, step }: Within): Narrower[] {
  const whole = (size: number) => Math.floor((size + SAME_LENGTH) / step) * step;
  const sizes = THICKNESSES.map((share) => whole(share * reach));
  switch (shape.type) {
    case "rectangle":
    case "oval":
      return sizes.flatMap((size) => [
        ...lessOf(shape, "width", size, shape.width <= shape.length ? say`Narrow to` : say`Shorten to`),
        ...lessOf(shape, "length", size, shape.length < shape.width ? say`Narrow to` : say`Shorten to`),
        ...bothLess(shape, size),
      ]);
    case "l":
      return sizes.flatMap((size) => narrowArms(shape, size));
    case "u":
      return sizes.flatMap((size) => narrowSides(shape, size));
    case "keyhole":
      return keyholes(shape, whole(FROM_BOTH * reach), room);
    case "polygon":
      return smallerPolygon(shape.points, reach / farthest);
    default: {
      const never: never = shape;
      throw new RangeError(`unknown shape ${JSON.stringify(never)}`);
    }
  }
}

type Sized = Extract<Shape, { type: "rectangle" | "oval" }>;

const lessOf = (shape: Sized, side: "width" | "length", size: number, verb: string): Narrower[] =>
  shape[side] > size + SAME_LENGTH ? [{ shape: { ...shape, [side]: size }, verb, figure: { mm: size } }] : [];

const bothLess = (shape: Sized, size: number): Narrower[] =>
  shape.type === "oval" && shape.width > size && shape.length > size
    ? [
        {
          shape: { ...shape, width: size, length: size },
          verb: say`Make it round, across`,
          figure: { mm: size },
        },
      ]
    : [];

function narrowArms(shape: Extract<Shape, { type: "l" }>, size: number): Narrower[] {
  const armWidth = Math.min(shape.armWidth, size);
  const armLength = Math.min(shape.armLength, size);
  if (armWidth === shape.armWidth && armLength === shape.armLength) return [];
  return [{ shape: { ...shape, armWidth, armLength }, verb: say`Narrow the arms to`, figure: { mm: size } }];
}

/** The bay keeps its size; the bed draws in round it. */
function narrowSides(shape: Extract<Shape, { type: "u" }>, size: number): Narrower[] {
  const width = Math.min(shape.width, shape.bayWidth + 2 * size);
  const length = Math.min(shape.length, shape.bayLength + size);
  if (width === shape.width && length === shape.length) return [];
  return [{ shape: { ...shape, width, length }, verb: say`Narrow the sides to`, figure: { mm: size } }];
}

/** The middle made wide enough to stand in where it is not, and the ring round it within reach from both its sides. */
function keyholes(shape: Extract<Shape, { type: "keyhole" }>, thickness: number, room: number): Narrower[] {
  const widened = {
    ...shape,
    slotWidth: Math.max(shape.slotWidth, room),
    middleDiameter: Math.max(shape.middleDiameter, room),
  };
  const drawnIn = (of: typeof shape) => ({
    ...of,
    diameter: Math.min(of.diameter, of.middleDiameter + 2 * thickness),
  });
  const across = Math.min(shape.diameter, thickness);
  return [
    { shape: widened, verb: say`Widen the way in to`, figure: { mm: widened.slotWidth } },
    { shape: drawnIn(shape), verb: say`Narrow the ring to`, figure: { mm: thickness } },
    {
      shape: drawnIn(widened),
      verb: say`Widen the way in and narrow the ring to`,
      figure: { mm: thickness },
    },
    {
      shape: { ...shape, diameter: across },
      verb: say`Make the bed smaller, across`,
      figure: { mm: across },
    },
  ];
}

function smallerPolygon(points: Ring, share: number): Narrower[] {
  if (share <= 0 || share >= 1) return [];
  const middle = centroid(points);
  const drawnIn = points.map((corner) => add(middle, scale(subtract(corner, middle), share)));
  return [
    {
      shape: { type: "polygon", points: drawnIn },
      verb: say`Make it smaller, by`,
      figure: { share: 1 - share },
    },
  ];
}
