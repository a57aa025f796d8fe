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

/** The bounds of something, in the plan turned so. */
const BOXES: Readonly<Record<Direction, (box: Box) => Box>> = {
  right: (box) => box,
  down: ({ minX, minY, maxX, maxY }) => ({ minX: minY, minY: -maxX, maxX: maxY, maxY: -minX }),
  left: ({ minX, minY, maxX, maxY }) => ({ minX: -maxX, minY: -maxY, maxX: -minX, maxY: -minY }),
  up: ({ minX, minY, maxX, maxY }) => ({ minX: -maxY, minY: minX, maxX: -minY, maxY: maxX }),
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
  const { obstacles, yard } = surroundingsOf(garden);
  const others = obstacles.filter((other) => other.id !== id);
  return (Object.keys(TURNS) as Direction[]).flatMap((side) => {
    const sweeps = rings.map((ring) => new Sweep(ring, side));
    for (const sweep of sweeps) {
      for (const other of others) sweep.meet(other.id, other.ring);
      sweep.meet("yard", yard);
    }
    const nearest = sweeps.flatMap(({ found }) => found ?? []).sort((a, b) => a.width - b.width)[0];
    return nearest ? [nearest] : [];
  });
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

/** The nearest thing to the right of a ring, in a plan turned so that the side asked for is to the right. */
class Sweep {
  found: SideDimension | null = null;
  readonly #ring: Ring;
  readonly #side: Direction;
  readonly #box;

  constructor(ring: Ring, side: Direction) {
    this.#side = side;
    this.#ring = ring.map(TURNS[side].to);
    this.#box = boxOf(this.#ring);
  }

  meet(other: Side, drawn: Ring): void {
    const box = BOXES[this.#side](boxOf(drawn));
    if (box.maxX < this.#box.minX || box.maxY < this.#box.minY || box.minY > this.#box.maxY) return;
    if (box.minX - this.#box.maxX >= (this.found?.width ?? Infinity)) return;
    const ring = drawn.map(TURNS[this.#side].to);
    // One goes into a thing through a side that faces left, and out of the yard through one that faces right.
    const facing = (other === "yard" ? 1 : -1) * Math.sign(signedArea(ring));
    const rows = this.#rows(ring);
    const widths = rows.map((y) => this.#widthAt(y, ring, facing));
    const width = Math.min(...widths);
    if (!(width < (this.found?.width ?? Infinity) - NOISE)) return;
    const ties = rows.filter((_, i) => widths[i]! <= width + NOISE);
    const between = ((ties[0] ?? 0) + (ties.at(-1) ?? 0)) / 2;
    // Along facing sides every row is as near: the dimension line stands in their middle.
    const y = this.#widthAt(between, ring, facing) <= width + NOISE ? between : ties[0]!;
    const from: Point = [rightmost(this.#ring, y), y];
    const { back } = TURNS[this.#side];
    this.found = { side: this.#side, from: back(from), to: back([from[0] + width, y]), width, other };
  }

  /** Rows at which the width can be least: those of a corner of either, as far as both go. */
  #rows(ring: Ring): number[] {
    const ys = [...this.#ring, ...ring].map(([, y]) => y);
    const inBoth = ys.filter((y) => y >= this.#box.minY && y <= this.#box.maxY);
    return [...new Set(inBoth)].sort((a, b) => a - b);
  }

  #widthAt(y: number, ring: Ring, facing: number): number {
    const start = rightmost(this.#ring, y);
    let nearest = Infinity;
    let [ax, ay] = ring.at(-1)!;
    for (const [bx, by] of ring) {
      const runs = (by - ay) * facing;
      if (runs > 0 && y >= Math.min(ay, by) && y <= Math.max(ay, by)) {
        const away = ax + ((y - ay) * (bx - ax)) / (by - ay) - start;
        if (away > -NOISE && away < nearest) nearest = Math.max(0, away);
      }
      ax = bx;
      ay = by;
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
