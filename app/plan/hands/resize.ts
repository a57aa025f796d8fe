import { type Item, type Point, placed, type Shape, unplaced } from "../../../src/index.ts";

/** Which edges a handle pulls, in the thing's own frame: -1 left or upper, 1 right or lower, 0 neither. */
export type Grip = readonly [x: -1 | 0 | 1, y: -1 | 0 | 1];

export const GRIPS: readonly Grip[] = [
  [-1, -1],
  [0, -1],
  [1, -1],
  [1, 0],
  [1, 1],
  [0, 1],
  [-1, 1],
  [-1, 0],
];

export type Shaped = Extract<Item, { shape: unknown }>;
type BoxShape = Exclude<Shape, { type: "polygon" }>;

/** Nothing is pulled smaller than this, mm: it could not be taken hold of again. */
export const LEAST_SIZE = 100;

/** Outside size of a shape in its own frame; null for a free outline, which has corners instead. */
export function boxOf(shape: Shape): readonly [width: number, length: number] | null {
  if (shape.type === "polygon") return null;
  return shape.type === "keyhole" ? [shape.diameter, shape.diameter] : [shape.width, shape.length];
}

/** Where a grip is on the plan. */
export function gripAt(item: Shaped, [gx, gy]: Grip): Point {
  const [width, length] = boxOf(item.shape) ?? [0, 0];
  return placed([(gx * width) / 2, (gy * length) / 2], item.at, item.turn);
}

/**
 * The fields of a thing pulled by a grip to new outside sizes. The opposite edge or corner stays where it is.
 * Arms, bays and slots keep their size as long as the outline leaves room for them.
 *
 * @param size outside width and length, mm; for a keyhole the one that was pulled
 */
export function resizedTo(item: Shaped, grip: Grip, size: readonly [width: number, length: number]) {
  const { shape } = item;
  const before = boxOf(shape);
  if (shape.type === "polygon" || !before) throw new RangeError("a free outline has no outside size to set");
  const next = sized(shape, leastHeld(size[0]), leastHeld(size[1]), grip);
  const after = boxOf(next) ?? before;
  const shifted: Point = [(grip[0] * (after[0] - before[0])) / 2, (grip[1] * (after[1] - before[1])) / 2];
  return { shape: next, at: placed(shifted, item.at, item.turn) };
}

/** The outside size a thing would have with the pulled edges at a place on the plan. */
export function sizeFor(item: Shaped, grip: Grip, to: Point): readonly [width: number, length: number] {
  const [width, length] = boxOf(item.shape) ?? [0, 0];
  const [x, y] = unplaced(to, item.at, item.turn);
  return [
    grip[0] === 0 ? width : leastHeld(width / 2 + grip[0] * x),
    grip[1] === 0 ? length : leastHeld(length / 2 + grip[1] * y),
  ];
}

/** The inner corner that an L's arms, a U's bay or a keyhole's middle are pulled by; null where there is none. */
export function innerGripAt(item: Shaped): Point | null {
  const { shape } = item;
  switch (shape.type) {
    case "l":
      return placed(
        [-shape.width / 2 + shape.armWidth, -shape.length / 2 + shape.armLength],
        item.at,
        item.turn,
      );
    case "u":
      return placed([shape.bayWidth / 2, shape.length / 2 - shape.bayLength], item.at, item.turn);
    case "keyhole":
      return placed([0, -shape.middleDiameter / 2], item.at, item.turn);
    default:
      return null;
  }
}

/** The shape with its inner corner pulled to a place on the plan, sizes rounded to a step. */
export function innerPulledTo(item: Shaped, to: Point, round: (mm: number) => number): Shape {
  const { shape } = item;
  const [x, y] = unplaced(to, item.at, item.turn);
  switch (shape.type) {
    case "l":
      return {
        ...shape,
        armWidth: between(round(x + shape.width / 2), shape.width),
        armLength: between(round(y + shape.length / 2), shape.length),
      };
    case "u":
      return {
        ...shape,
        bayWidth: between(round(2 * Math.abs(x)), shape.width),
        bayLength: between(round(shape.length / 2 - y), shape.length),
      };
    case "keyhole": {
      const middleDiameter = between(round(-2 * y), shape.diameter);
      return { ...shape, middleDiameter, slotWidth: Math.min(shape.slotWidth, middleDiameter) };
    }
    default:
      return shape;
  }
}

const leastHeld = (mm: number): number => Math.max(LEAST_SIZE, mm);

/** An inner size that leaves something of the outline standing. */
const between = (mm: number, outside: number): number =>
  Math.min(outside - Math.min(LEAST_SIZE, outside / 4), Math.max(Math.min(LEAST_SIZE, outside / 4), mm));

function sized(shape: BoxShape, width: number, length: number, grip: Grip): BoxShape {
  switch (shape.type) {
    case "rectangle":
    case "oval":
      return { ...shape, width, length };
    case "l":
      return {
        ...shape,
        width,
        length,
        armWidth: between(shape.armWidth, width),
        armLength: between(shape.armLength, length),
      };
    case "u":
      return {
        ...shape,
        width,
        length,
        bayWidth: between(shape.bayWidth, width),
        bayLength: between(shape.bayLength, length),
      };
    case "keyhole": {
      const diameter = grip[0] === 0 ? length : width;
      const middleDiameter = between(shape.middleDiameter, diameter);
      return { ...shape, diameter, middleDiameter, slotWidth: Math.min(shape.slotWidth, middleDiameter) };
    }
  }
}
