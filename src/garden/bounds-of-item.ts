import { thickened } from "../geometry/clip.ts";
import { boundsOf } from "../geometry/ring.ts";
import type { Box, Point, Ring } from "../geometry/types.ts";
import { add, placed } from "../geometry/vector.ts";
import { type Item, unreachable } from "./item.ts";
import { outlineOf } from "./outline.ts";

const bounds = new WeakMap<Item, Box>();

/**
 * The upright box round a thing as it is drawn on the plan, mm: a tree by its crown, a gate or door by its opening. A
 * tap is a point. Remembered by the item itself, which never changes.
 */
export function boundsOfItem(item: Item): Box {
  let box = bounds.get(item);
  if (!box) {
    box = boundsOf(cornersOf(item));
    bounds.set(item, box);
  }
  return box;
}

/** The box round several things. @throws RangeError for none */
export const boundsOfItems = (items: readonly Item[]): Box =>
  boundsOf(
    items.flatMap((item): Point[] => {
      const { minX, minY, maxX, maxY } = boundsOfItem(item);
      return [
        [minX, minY],
        [maxX, maxY],
      ];
    }),
  );

function cornersOf(item: Item): Ring {
  switch (item.kind) {
    case "bed":
    case "ground":
    case "house":
    case "shed":
    case "keep-clear":
      return outlineOf(item);
    case "path":
      return line(item, item.width);
    case "wall":
    case "fence":
      return line(item, item.thickness);
    case "tree": {
      const radius = Math.max(item.canopy, item.trunk) / 2;
      return [add(item.at, [-radius, -radius]), add(item.at, [radius, radius])];
    }
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

const line = (
  { points, at, turn }: { readonly points: readonly Point[]; readonly at: Point; readonly turn: number },
  width: number,
): Ring =>
  thickened(
    points.map((point) => placed(point, at, turn)),
    width,
    "butt",
  ).flat();
