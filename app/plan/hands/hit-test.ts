import {
  contains,
  distance,
  dot,
  type Garden,
  type Item,
  type ItemId,
  outlineOf,
  type Point,
  type Ring,
  subtract,
  unplaced,
  unreachable,
} from "../../../src/index.ts";
import { paintOrder } from "../paint-order.ts";
import { thicknessOf } from "./bodies.ts";
import type { Handle } from "./handles.ts";
import { isSetIn } from "./onto-line.ts";
import { planPoints } from "./plan-points.ts";

export type Hit =
  | { readonly on: "handle"; readonly handle: Handle }
  | { readonly on: "snag"; readonly key: string }
  | { readonly on: "item"; readonly id: ItemId }
  /** On the yard's line, between this corner and the next. */
  | { readonly on: "yard-line"; readonly index: number }
  | { readonly on: "nothing" };

/** A mark on the plan that stands for a snag; `at` on the plan, mm. */
export interface SnagPlace {
  readonly key: string;
  readonly at: Point;
}

/** How near a press must come, in mm of the plan: a finger is broader than a pointer. */
export interface Nearness {
  /** To a handle, a snag's mark, a tap or an opening. */
  readonly small: number;
  /** To a line or an edge. */
  readonly line: number;
}

/** From pixels on the screen to what they mean at so many pixels a millimetre. */
export const nearness = (touch: boolean, pixels: number): Nearness => ({
  small: (touch ? 22 : 11) / pixels,
  line: (touch ? 14 : 6) / pixels,
});

/**
 * What a press on the plan means: handles first, then marks, then small things, lines and areas, the foremost first.
 * Paths and ground lie below all that stands on them; a tree is taken by its trunk or the rim of its crown, so that
 * beds under it stay in reach.
 */
export function hitTest(
  garden: Garden,
  handles: readonly Handle[],
  snags: readonly SnagPlace[],
  at: Point,
  near: Nearness,
): Hit {
  const handle = nearest(handles, at, near.small);
  if (handle) return { on: "handle", handle };
  const snag = nearest(snags, at, near.small);
  if (snag) return { on: "snag", key: snag.key };

  const front = paintOrder(garden.items).toReversed();
  const small = front.find((item) => (isSetIn(item) || item.kind === "tree") && isHit(item, at, near));
  const standing = small ?? front.find((item) => !isUnderfoot(item) && isHit(item, at, near));
  if (standing) return { on: "item", id: standing.id };
  const index = edgeAt(garden.yard, at, near.line);
  if (index >= 0) return { on: "yard-line", index };
  const underfoot = front.find((item) => isUnderfoot(item) && isHit(item, at, near));
  if (underfoot) return { on: "item", id: underfoot.id };
  const shaded = front.find((item) => item.kind === "tree" && isOnRim(item, at, near));
  return shaded ? { on: "item", id: shaded.id } : { on: "nothing" };
}

/** Lies flat: it is picked below everything that stands, and a drag across it does not carry it off unasked. */
export const isUnderfoot = (item: Item): boolean =>
  item.kind === "ground" || item.kind === "path" || item.kind === "keep-clear";

/** The edge of a ring nearest to a point, within a distance; -1 for none. Edge i runs from corner i to the next. */
export function edgeAt(ring: Ring, at: Point, within: number, closed = true): number {
  let [best, bestIndex] = [within, -1];
  const edges = closed ? ring.length : ring.length - 1;
  for (let i = 0; i < edges; i++) {
    const off = toSegment(at, ring[i]!, ring[(i + 1) % ring.length]!);
    if (off <= best) [best, bestIndex] = [off, i];
  }
  return bestIndex;
}

function isHit(item: Item, at: Point, near: Nearness): boolean {
  switch (item.kind) {
    case "bed":
    case "ground":
    case "house":
    case "shed":
    case "keep-clear": {
      const outline = outlineOf(item);
      return contains(outline, at) || edgeAt(outline, at, near.line / 2) >= 0;
    }
    case "path":
    case "fence":
    case "wall":
      return edgeAt(planPoints(item), at, Math.max(thicknessOf(item) / 2, near.line), false) >= 0;
    case "tree":
      return distance(item.at, at) <= Math.max(item.trunk / 2, near.small);
    case "gate":
    case "door": {
      const [x, y] = unplaced(at, item.at, item.turn);
      return Math.abs(x) <= item.width / 2 + near.line && Math.abs(y) <= near.small;
    }
    case "tap":
      return distance(item.at, at) <= near.small;
    default:
      return unreachable(item);
  }
}

const isOnRim = (tree: Extract<Item, { kind: "tree" }>, at: Point, near: Nearness): boolean =>
  Math.abs(distance(tree.at, at) - tree.canopy / 2) <= near.line;

function nearest<T extends { readonly at: Point }>(marks: readonly T[], at: Point, within: number): T | null {
  let best: T | null = null;
  let off = within;
  for (const mark of marks) {
    const away = distance(mark.at, at);
    if (away < off || (away === off && !best)) [best, off] = [mark, away];
  }
  return best;
}

function toSegment(p: Point, from: Point, to: Point): number {
  const along = subtract(to, from);
  const length = dot(along, along);
  if (length === 0) return distance(p, from);
  const t = Math.min(1, Math.max(0, dot(subtract(p, from), along) / length));
  return distance(p, [from[0] + along[0] * t, from[1] + along[1] * t]);
}
