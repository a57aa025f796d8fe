import { boundsOf, contains, type Point, type Ring, type Shape } from "../../src/index.ts";

/** A box in a shape's own frame that lies inside it: where its label may stand. mm */
export interface Room {
  readonly centre: Point;
  readonly width: number;
  readonly length: number;
}

const rooms = new WeakMap<Shape, readonly Room[]>();

/** Boxes for words in a shape, the best first and one at least; remembered by the shape. */
export function labelRooms(shape: Shape): readonly Room[] {
  let known = rooms.get(shape);
  if (!known) {
    known = roomsIn(shape).toSorted((a, b) => worth(b) - worth(a));
    rooms.set(shape, known);
  }
  return known;
}

/** A round is drawn with chords, which lie inside it by up to 0.12 % of its radius. */
const WITHIN_CHORDS = 0.998;

/** Sides of boxes in a round of diameter 1, all with corners on it: a square, a broad one, a tall one. */
const IN_ROUND = [
  [Math.SQRT1_2, Math.SQRT1_2],
  [0.94, Math.sqrt(1 - 0.94 ** 2)],
  [Math.sqrt(1 - 0.94 ** 2), 0.94],
] as const;

function roomsIn(shape: Shape): readonly Room[] {
  switch (shape.type) {
    case "rectangle":
      return [{ centre: [0, 0], width: shape.width, length: shape.length }];
    case "oval":
      return IN_ROUND.map(([across, along]) => ({
        centre: [0, 0],
        width: shape.width * across * WITHIN_CHORDS,
        length: shape.length * along * WITHIN_CHORDS,
      }));
    case "l": {
      const { width, length, armWidth, armLength } = shape;
      return [
        { centre: [0, (armLength - length) / 2], width, length: armLength },
        { centre: [(armWidth - width) / 2, 0], width: armWidth, length },
      ];
    }
    case "u": {
      const { width, length, bayWidth, bayLength } = shape;
      const arm = (width - bayWidth) / 2;
      return [
        { centre: [0, -bayLength / 2], width, length: length - bayLength },
        { centre: [(arm - width) / 2, 0], width: arm, length },
      ];
    }
    case "keyhole": {
      // Above the standing place: the largest box there touches the middle and two points of the round.
      const [outer, middle] = [(shape.diameter / 2) * WITHIN_CHORDS, shape.middleDiameter / 2];
      const top = Math.min(outer * 0.85, Math.max(middle * 1.3, outer * 0.75));
      const width = 2 * Math.sqrt(outer ** 2 - top ** 2);
      return [{ centre: [0, -(middle + top) / 2], width, length: top - middle }];
    }
    case "polygon":
      return [roomInPolygon(shape.points)];
    default: {
      const never: never = shape;
      throw new RangeError(`unknown shape ${JSON.stringify(never)}`);
    }
  }
}

/** Words run across: width is worth more than height. */
const wider = (first: Room, second: Room): Room => (worth(first) >= worth(second) ? first : second);
const worth = ({ width, length }: Room): number => width * Math.sqrt(length);

const CELLS = 12;
const PROPORTIONS = [4, 2.2, 1, 0.45] as const;

/** The best box of a few proportions grown from the points of a lattice. */
function roomInPolygon(ring: Ring): Room {
  const { minX, minY, maxX, maxY } = boundsOf(ring);
  let best: Room = { centre: [(minX + maxX) / 2, (minY + maxY) / 2], width: 0, length: 0 };
  for (let i = 1; i < CELLS; i++) {
    for (let j = 1; j < CELLS; j++) {
      const centre: Point = [minX + ((maxX - minX) * i) / CELLS, minY + ((maxY - minY) * j) / CELLS];
      if (!contains(ring, centre)) continue;
      for (const proportion of PROPORTIONS) best = wider(best, grown(ring, centre, proportion));
    }
  }
  return best;
}

/** The largest box of a proportion about a point that no edge of the ring enters. */
function grown(ring: Ring, centre: Point, proportion: number): Room {
  let half = Infinity;
  ring.forEach((from, i) => {
    half = Math.min(half, reachOfBox(from, ring[(i + 1) % ring.length]!, centre, proportion));
  });
  return { centre, width: 2 * half * proportion, length: 2 * half };
}

/** How large a box (half its length) may grow before it meets a segment: least of max(|x|/proportion, |y|) along it. */
function reachOfBox([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point, proportion: number): number {
  const from: Point = [(ax - cx) / proportion, ay - cy];
  const to: Point = [(bx - cx) / proportion, by - cy];
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  // The least of a convex piecewise linear function lies at an end or where |x| = |y|, x = 0 or y = 0.
  const stops = [
    0,
    1,
    -from[0] / dx,
    -from[1] / dy,
    (from[0] - from[1]) / (dy - dx),
    -(from[0] + from[1]) / (dx + dy),
  ];
  return Math.min(
    ...stops
      .filter((t) => t >= 0 && t <= 1)
      .map((t) => Math.max(Math.abs(from[0] + t * dx), Math.abs(from[1] + t * dy))),
  );
}
