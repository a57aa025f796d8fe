import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { type Item, unreachable } from "../garden/item.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { boundsOf } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";
import { say, told, word } from "../words/say.ts";

/** A point that a tape can be held to, or measured up to. */
export interface KnownPoint {
  /** Stays the same while the thing keeps its corners: "yard 2", "house corner 1". */
  readonly key: string;
  /** "Yard, corner 2, top right". */
  readonly label: string;
  readonly at: Point;
}

/** Outlines with more corners than this are round, or as good as: nobody measures from them. */
const MOST_CORNERS = 16;

/**
 * Points of a garden that people measure from: corners of the yard and of buildings, ends of walls and fences, middles of
 * gates, doors and trees, taps.
 * @param except the thing that is being measured: it is no place to measure from
 */
export function knownPoints({ yard, items }: Pick<Garden, "yard" | "items">, except: ItemId): KnownPoint[] {
  return [
    ...cornersOf("Yard", "yard", yard),
    ...items.flatMap((item) => (item.id === except ? [] : pointsToMeasureFrom(item))),
  ];
}

function pointsToMeasureFrom(item: Item): KnownPoint[] {
  const name = nameOf(item);
  switch (item.kind) {
    case "house":
    case "shed":
    case "bed":
      return cornersOf(name, item.id, outlineOf(item));
    case "wall":
    case "fence":
      return item.points.map((local, i) => ({
        key: `${item.id} point ${i + 1}`,
        label:
          i === 0
            ? say`${name}, start`
            : i === item.points.length - 1
              ? say`${name}, end`
              : say`${name}, bend ${i}`,
        at: placed(local, item.at, item.turn),
      }));
    case "gate":
    case "door":
    case "tree":
      return [middleOf(item)];
    case "tap":
      return [{ key: `${item.id} middle`, label: name, at: item.at }];
    case "path":
    case "ground":
    case "keep-clear":
      return [];
    default:
      return unreachable(item);
  }
}

/** Points of a thing that can be measured up to: its middle, and its corners or the ends of its line where it has some. */
export function ownPoints(item: Item): readonly KnownPoint[] {
  const name = nameOf(item);
  if ("shape" in item) return [middleOf(item), ...cornersOf(name, item.id, outlineOf(item))];
  if ("points" in item) {
    return item.points.map((local, i) => ({
      key: `${item.id} point ${i + 1}`,
      label: say`${name}, point ${i + 1}`,
      at: placed(local, item.at, item.turn),
    }));
  }
  return [middleOf(item)];
}

const middleOf = (item: Item): KnownPoint => ({
  key: `${item.id} middle`,
  label: say`${nameOf(item)}, middle`,
  at: item.at,
});

function cornersOf(name: string, id: string, ring: Ring): KnownPoint[] {
  if (ring.length > MOST_CORNERS) return [];
  const box = boundsOf(ring);
  return ring.map((at, i) => {
    const side = where(at, box);
    return {
      key: `${id} corner ${i + 1}`,
      label: side ? say`${name}, corner ${i + 1}, ${told(side)}` : say`${name}, corner ${i + 1}`,
      at,
    };
  });
}

/** By how far down they lie, then how far across. */
const CORNERS = [
  [word("top left"), word("top right")],
  [word("bottom left"), word("bottom right")],
] as const;

/** A corner is called by where it lies on the plan if it lies near a corner of the box round all: "top left". */
function where([x, y]: Point, box: ReturnType<typeof boundsOf>): string | null {
  /** Which end of the box it is near: 0 the low one, 1 the high one. */
  const end = (value: number, least: number, most: number): 0 | 1 | null => {
    const share = (value - least) / (most - least);
    return share < 1 / 3 ? 0 : share > 2 / 3 ? 1 : null;
  };
  const down = end(y, box.minY, box.maxY);
  const across = end(x, box.minX, box.maxX);
  return down === null || across === null ? null : CORNERS[down][across];
}
