import { boundsOfItem } from "../garden/bounds-of-item.ts";
import type { Item } from "../garden/item.ts";
import type { Path } from "../garden/kinds/path.ts";
import { outlineOf } from "../garden/outline.ts";
import { difference, thickened, union } from "../geometry/clip.ts";
import { signedArea } from "../geometry/ring.ts";
import type { Box, Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";

const strips = new WeakMap<Path, readonly Ring[]>();

/** The ground a drawn path covers, ends cut square. */
export function pathStrip(path: Path): readonly Ring[] {
  let strip = strips.get(path);
  if (!strip) {
    const line = path.points.map((point) => placed(point, path.at, path.turn));
    strip = union(thickened(line, path.width, "butt"));
    strips.set(path, strip);
  }
  return strip;
}

const areas = new WeakMap<Path, { readonly over: readonly Item[]; readonly area: number }>();

/**
 * Area of a path that is really to be surfaced, mm²: less the beds and buildings that stand on it and the surfaced
 * paths drawn before it, so that a crossing is paid for once. Remembered while the same things lie on it.
 */
export function pathArea(path: Path, items: readonly Item[]): number {
  const over = standingOn(path, items);
  const kept = areas.get(path);
  if (kept && kept.over.length === over.length && kept.over.every((item, i) => item === over[i])) {
    return kept.area;
  }
  const free =
    over.length === 0
      ? pathStrip(path)
      : difference(
          pathStrip(path),
          over.flatMap((item) => groundOf(item)),
        );
  const area = free.reduce((sum, ring) => sum + signedArea(ring), 0);
  areas.set(path, { over, area });
  return area;
}

type Covering = Extract<Item, { kind: "bed" | "house" | "shed" | "path" }>;

function standingOn(path: Path, items: readonly Item[]): Covering[] {
  const box = boundsOfItem(path);
  const own = items.indexOf(path);
  return items.filter((item, i): item is Covering => {
    const covers =
      item.kind === "bed" ||
      item.kind === "house" ||
      item.kind === "shed" ||
      (item.kind === "path" && item.depth > 0 && i < own);
    return covers && meet(box, boundsOfItem(item));
  });
}

const groundOf = (item: Covering): readonly Ring[] =>
  item.kind === "path" ? pathStrip(item) : [outlineOf(item)];

const meet = (a: Box, b: Box): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
