import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { type Item, unreachable } from "../garden/item.ts";
import { outlineOf } from "../garden/outline.ts";
import { boxOf } from "../geometry/gap.ts";
import { signedArea } from "../geometry/ring.ts";
import type { Box, Point, Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";
import { obstaclesOf } from "./obstacles.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { Side } from "./types.ts";

export type Direction = "left" | "right" | "up" | "down";

/** How far a thing could go straight one way: a dimension line of the plan. */
export interface SideDimension {
  readonly side: Direction;
  /** On the thing's own outline, and on what it would meet. */
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
  readonly other: Side;
}

/** Turns the plan so that the direction asked for is to the right, and back; neither mirrors it. */
const TURNS: Readonly<Record<Direction, { to: (p: Point) => Point; back: (p: Point) => Point }>> = {
  right: { to: ([x, y]) => [x, y], back: ([x, y]) => [x, y] },
  down: { to: ([x, y]) => [y, -x], back: ([x, y]) => [-y, x] },
  left: { to: ([x, y]) => [-x, -y], back: ([x, y]) => [-x, -y] },
  up: { to: ([x, y]) => [-y, x], back: ([x, y]) => [y, -x] },
};

/** All that lies within or beyond some bounds that way, as far as the plan goes. */
const BEYOND: Readonly<Record<Direction, (box: Box) => Box>> = {
  right: (box) => ({ ...box, maxX: Infinity }),
  down: (box) => ({ ...box, maxY: Infinity }),
  left: (box) => ({ ...box, minX: -Infinity }),
  up: (box) => ({ ...box, minY: -Infinity }),
};

/** How far off the nearest of some bounds is, that way. */
const AWAY: Readonly<Record<Direction, (from: Box, to: Box) => number>> = {
  right: (from, to) => to.minX - from.maxX,
  down: (from, to) => to.minY - from.maxY,
  left: (from, to) => from.minX - to.maxX,
  up: (from, to) => from.minY - to.maxY,
};

/** Below this two widths are the same but for the noise of the arithmetic, mm. */
const NOISE = 1e-6;

/**
 * What is nearest to a thing straight to the left, right, up and down the plan: how far it could be shifted that way
 * before it meets something that stands in the yard, or the yard's outline.
 *
 * @returns up to four, the ways that are open: none where the thing overlaps what lies that way or is outside the yard
 */
export function sideDimensions(garden: Pick<Garden, "items" | "yard">, id: ItemId): SideDimension[] {
  const item = garden.items.find((candidate) => candidate.id === id);
  if (!item) return [];
  const rings = ringsOf(item, garden);
  const sides = Object.keys(TURNS) as Direction[];
  return sides.flatMap((side) => {
    const found = rings.flatMap((ring) => nearestTo(ring, side, id, garden) ?? []);
    const nearest = found.sort((a, b) => a.width - b.width)[0];
    return nearest ? [nearest] : [];
  });
}

/** What one outline would meet first. */
function nearestTo(
  ring: Ring,
  side: Direction,
  id: ItemId,
  garden: Pick<Garden, "items" | "yard">,
): SideDimension | null {
  const { obstacles, yard, near } = surroundingsOf(garden);
  const box = boxOf(ring);
  const sweep = new Sweep(ring, side);
  const ahead = near(BEYOND[side](box), 0)
    .filter((i) => obstacles[i]!.id !== id)
    .map((i) => ({ ...obstacles[i]!, away: AWAY[side](box, boxOf(obstacles[i]!.ring)) }));
  // The nearest first: most of what lies behind it need not be looked at.
  for (const other of ahead.sort((a, b) => a.away - b.away)) {
    if (other.away >= sweep.nearest) break;
    sweep.meet(other.id, other.ring);
  }
  sweep.meet("yard", yard);
  return sweep.found;
}

/** The ground that a thing takes up, for measuring from it. */
function ringsOf(item: Item, garden: Pick<Garden, "items">): readonly Ring[] {
  switch (item.kind) {
    case "bed":
    case "house":
    case "shed":
    case "ground":
    case "keep-clear":
      return [outlineOf(item)];
    case "tree":
    case "wall":
    case "fence":
      return obstaclesOf(garden).flatMap(({ id, ring }) => (id === item.id ? [ring] : []));
    case "path":
      return [item.points.map((corner) => placed(corner, item.at, item.turn))];
    case "gate":
    case "door":
      return [[-item.width / 2, item.width / 2].map((x) => placed([x, 0], item.at, item.turn))];
    case "tap":
      return [[item.at]];
    default:
      return unreachable(item);
  }
}

/** A side of an outline from its upper end to its lower one, or one corner. */
interface Face {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  /** How far it goes to the right for each step down. */
  readonly slope: number;
}

const faceOf = ([ax, ay]: Point, [bx, by]: Point): Face => {
  const [x, top] = ay <= by ? [ax, ay] : [bx, by];
  return { x, top, bottom: Math.max(ay, by), slope: ay === by ? 0 : (bx - ax) / (by - ay) };
};

const xAt = ({ x, top, slope }: Face, y: number): number => x + (y - top) * slope;

/** The sides of a ring that face to the right (`facing` 1) or to the left (-1), if it encloses anything. */
function facesOf(ring: Ring, facing: number): Face[] {
  const down = facing * Math.sign(signedArea(ring));
  return ring.flatMap((corner, i) => {
    const before = ring[i === 0 ? ring.length - 1 : i - 1]!;
    return (corner[1] - before[1]) * down > 0 ? [faceOf(before, corner)] : [];
  });
}

/** A line or a point has no inside: all of it is in front, but for what lies behind it in its own row. */
const frontOfLine = (line: Ring): Face[] =>
  line.flatMap((corner, i) => {
    const before = line[i === 0 ? line.length - 1 : i - 1]!;
    const end: Point = [rightmost(line, corner[1]), corner[1]];
    return before[1] === corner[1] ? [faceOf(end, end)] : [faceOf(end, end), faceOf(before, corner)];
  });

/** The nearest thing to the right of a ring, in a plan turned so that the side asked for is to the right. */
class Sweep {
  found: SideDimension | null = null;
  readonly #ring: Ring;
  readonly #side: Direction;
  readonly #box: Box;
  readonly #front: readonly Face[];

  constructor(ring: Ring, side: Direction) {
    this.#side = side;
    this.#ring = ring.map(TURNS[side].to);
    this.#box = boxOf(this.#ring);
    const faces = facesOf(this.#ring, 1);
    this.#front = faces.length > 0 ? faces : frontOfLine(this.#ring);
  }

  get nearest(): number {
    return this.found?.width ?? Infinity;
  }

  meet(other: Side, drawn: Ring): void {
    const faces = this.#ahead(drawn, other === "yard");
    let width = Infinity;
    this.#eachRow(faces, (_, away) => {
      if (away < width) width = away;
    });
    if (!(width < this.nearest - NOISE)) return;
    let [first, last] = [Infinity, -Infinity];
    this.#eachRow(faces, (y, away) => {
      if (away > width + NOISE) return;
      first = Math.min(first, y);
      last = Math.max(last, y);
    });
    // Along facing sides every row is as near: the dimension line stands in their middle.
    const between = (first + last) / 2;
    const y = this.#widthAt(between, faces) <= width + NOISE ? between : first;
    const from: Point = [rightmost(this.#ring, y), y];
    const { back } = TURNS[this.#side];
    this.found = { side: this.#side, from: back(from), to: back([from[0] + width, y]), width, other };
  }

  /** What one goes into a thing through, or out of the yard, in the rows of the ring and nearer than the nearest yet. */
  #ahead(drawn: Ring, isYard: boolean): Face[] {
    const { maxX, minY, maxY } = this.#box;
    return facesOf(drawn.map(TURNS[this.#side].to), isYard ? 1 : -1).filter(
      (face) =>
        face.bottom >= minY &&
        face.top <= maxY &&
        Math.min(face.x, xAt(face, face.bottom)) - maxX < this.nearest,
    );
  }

  /** The rows at which the width can be least: the ends of what two sides have before each other. */
  #eachRow(faces: readonly Face[], take: (y: number, away: number) => void): void {
    for (const own of this.#front) {
      for (const face of faces) {
        const top = Math.max(own.top, face.top);
        const bottom = Math.min(own.bottom, face.bottom);
        if (top > bottom) continue;
        const above = xAt(face, top) - xAt(own, top);
        const below = xAt(face, bottom) - xAt(own, bottom);
        if (above > -NOISE) take(top, Math.max(0, above));
        if (below > -NOISE) take(bottom, Math.max(0, below));
      }
    }
  }

  #widthAt(y: number, faces: readonly Face[]): number {
    const start = rightmost(this.#ring, y);
    let nearest = Infinity;
    for (const face of faces) {
      if (y < face.top || y > face.bottom) continue;
      const away = xAt(face, y) - start;
      if (away > -NOISE && away < nearest) nearest = Math.max(0, away);
    }
    return nearest;
  }
}

/** The farthest right that a ring, a line or a point goes in a row. */
function rightmost(ring: Ring, y: number): number {
  let most = -Infinity;
  let [ax, ay] = ring.at(-1)!;
  for (const [bx, by] of ring) {
    if (by === y) most = Math.max(most, bx);
    else if (ay < y !== by < y) most = Math.max(most, ax + ((y - ay) * (bx - ax)) / (by - ay));
    ax = bx;
    ay = by;
  }
  return most;
}
