import {
  type Box,
  boundsOf,
  distance,
  type Item,
  type ItemId,
  outlineOf,
  type Point,
  placed,
  type Ring,
  unreachable,
} from "../../../src/index.ts";
import { type LineItem, planPoints } from "./plan-points.ts";

/** A straight edge on the plan that other edges can be lined up with or kept away from. */
export interface Face {
  /** Length 1, pointing to where there is room: out of a thing, into the yard. */
  readonly normal: Point;
  readonly from: Point;
  readonly to: Point;
}

/** What snapping and picking know of a thing. */
export interface Body {
  readonly of: ItemId | "yard" | "several";
  readonly faces: readonly Face[];
  readonly middle: Point;
  readonly bounds: Box;
  /** It stands in the way, so a gap left beside it is walked through. */
  readonly solid: boolean;
}

/** Edges shorter than this are corners or chords of a curve, mm. */
const SHORTEST_FACE = 100;

const bodies = new WeakMap<Item, Body>();

/** The body of a thing; remembered by the thing itself. */
export function bodyOf(item: Item): Body {
  let body = bodies.get(item);
  if (!body) {
    body = makeBody(item);
    bodies.set(item, body);
  }
  return body;
}

export function yardBody(yard: Ring): Body {
  const faces = ringFaces(yard).map(({ normal, from, to }) => ({
    normal: [-normal[0], -normal[1]] as const,
    from,
    to,
  }));
  return { of: "yard", faces, middle: middleOf(boundsOf(yard)), bounds: boundsOf(yard), solid: true };
}

/** Several things moved as one: the box round them. */
export function boxBody(bounds: Box): Body {
  return {
    of: "several",
    faces: boxFaces(bounds, [0, 0], 0),
    middle: middleOf(bounds),
    bounds,
    solid: true,
  };
}

/** The points that bound a thing on the plan; an opening and a tap by what is drawn of them. */
export function extentOf(item: Item): readonly Point[] {
  switch (item.kind) {
    case "bed":
    case "ground":
    case "house":
    case "shed":
    case "keep-clear":
      return outlineOf(item);
    case "path":
    case "fence":
    case "wall":
      return lineFaces(item).flatMap(({ from, to }) => [from, to]);
    case "tree":
      return frame(item.canopy / 2, item.canopy / 2).map((corner) => placed(corner, item.at, 0));
    case "gate":
    case "door":
      return [
        placed([-item.width / 2, 0], item.at, item.turn),
        placed([item.width / 2, 0], item.at, item.turn),
      ];
    case "tap":
      return [item.at];
    default:
      return unreachable(item);
  }
}

export const thicknessOf = (item: LineItem): number => (item.kind === "path" ? item.width : item.thickness);

function makeBody(item: Item): Body {
  const bounds = boundsOf(extentOf(item));
  const base = { of: item.id, bounds, middle: middleOf(bounds) };
  switch (item.kind) {
    case "bed":
    case "house":
    case "shed":
      return { ...base, faces: shapeFaces(item), solid: true };
    case "ground":
    case "keep-clear":
      return { ...base, faces: shapeFaces(item), solid: false };
    case "fence":
    case "wall":
      return { ...base, faces: lineFaces(item), solid: true };
    case "path":
      return { ...base, faces: lineFaces(item), solid: false };
    case "tree": {
      const [x, y] = item.at;
      const r = item.trunk / 2;
      const trunk = { minX: x - r, minY: y - r, maxX: x + r, maxY: y + r };
      return { ...base, faces: boxFaces(trunk, [0, 0], 0), solid: true };
    }
    case "gate":
    case "door":
    case "tap":
      return { ...base, faces: [], solid: false };
    default:
      return unreachable(item);
  }
}

/** Curved things are bounded by the box of their own frame; all others by their edges. */
function shapeFaces(item: Extract<Item, { shape: unknown }>): readonly Face[] {
  const { shape, at, turn } = item;
  if (shape.type === "keyhole") return roundFaces(shape.diameter, shape.diameter, at, turn);
  if (shape.type === "oval") {
    return roundFaces(shape.width, shape.length, at, shape.width === shape.length ? 0 : turn);
  }
  return ringFaces(outlineOf(item));
}

const roundFaces = (width: number, length: number, at: Point, turn: number) =>
  boxFaces({ minX: -width / 2, minY: -length / 2, maxX: width / 2, maxY: length / 2 }, at, turn);

function boxFaces({ minX, minY, maxX, maxY }: Box, at: Point, turn: number): readonly Face[] {
  const corners: Ring = [
    [minX, minY],
    [maxX, minY],
    [maxX, maxY],
    [minX, maxY],
  ];
  return edgesOf(corners.map((corner) => placed(corner, at, turn)));
}

const ringFaces = (ring: Ring): readonly Face[] =>
  edgesOf(ring).filter(({ from, to }) => distance(from, to) >= SHORTEST_FACE);

/** The edges of a clockwise ring with their outward normals. */
export const edgesOf = (ring: Ring): readonly Face[] =>
  ring.map((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    return { normal: leftOf(from, to), from, to };
  });

/** Both sides and the two ends of a line that has a thickness. */
function lineFaces(item: LineItem): readonly Face[] {
  const half = thicknessOf(item) / 2;
  const points = planPoints(item);
  return points.slice(1).flatMap((to, i) => {
    const from = points[i]!;
    const [x, y] = leftOf(from, to);
    const side = (by: number, [px, py]: Point): Point => [px + x * by, py + y * by];
    const ring: Ring = [side(half, from), side(half, to), side(-half, to), side(-half, from)];
    const [left, end, right, start] = edgesOf(ring);
    const ends = [...(i === 0 ? [start!] : []), ...(i === points.length - 2 ? [end!] : [])];
    return [left!, right!, ...ends];
  });
}

/** Unit vector to the left of the way from one point to another, as seen: out of a clockwise ring. */
function leftOf([ax, ay]: Point, [bx, by]: Point): Point {
  const length = Math.hypot(bx - ax, by - ay) || 1;
  return [(by - ay) / length, -(bx - ax) / length];
}

const frame = (x: number, y: number): Ring => [
  [-x, -y],
  [x, -y],
  [x, y],
  [-x, y],
];

const middleOf = ({ minX, minY, maxX, maxY }: Box): Point => [(minX + maxX) / 2, (minY + maxY) / 2];
