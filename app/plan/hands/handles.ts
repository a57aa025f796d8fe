import {
  add,
  boundsOf,
  distance,
  type Garden,
  type Item,
  type ItemId,
  midpoint,
  outlineOf,
  type Point,
  placed,
  scale,
  subtract,
  unplaced,
} from "../../../src/index.ts";
import type { EditorState } from "../../store/editor.ts";
import { extentOf } from "./bodies.ts";
import type { Marks } from "./marks.ts";
import { type HeldPatch, heldPatch, patchPoint } from "./patches.ts";
import { hasPoints, isLine, planPoints } from "./plan-points.ts";
import { GRIPS, type Grip, gripAt, innerGripAt } from "./resize.ts";

/** Something to take hold of on what is selected. `at` is on the plan, mm. */
export type Handle =
  | { readonly does: "resize"; readonly id: ItemId; readonly grip: Grip; readonly at: Point }
  /** An L's arms, a U's bay, a keyhole's middle. */
  | { readonly does: "inner"; readonly id: ItemId; readonly at: Point }
  | { readonly does: "canopy"; readonly id: ItemId; readonly at: Point }
  /** One end of a gate or door: -1 its left, 1 its right. */
  | { readonly does: "opening"; readonly id: ItemId; readonly end: -1 | 1; readonly at: Point }
  | { readonly does: "path-width"; readonly id: ItemId; readonly at: Point }
  | { readonly does: "turn"; readonly id: ItemId; readonly at: Point; readonly stem: Point }
  /** A corner of an outline, or a point of a line; of the yard where there is no id. */
  | { readonly does: "corner"; readonly id: ItemId | null; readonly index: number; readonly at: Point }
  /** The middle of an edge: pulled, it becomes a corner at this index. */
  | { readonly does: "new-corner"; readonly id: ItemId | null; readonly index: number; readonly at: Point }
  /** A side or a corner of a planting's place in its bed, and the place's middle. */
  | { readonly does: "patch-size"; readonly id: ItemId; readonly grip: Grip; readonly at: Point }
  | { readonly does: "patch-move"; readonly id: ItemId; readonly at: Point };

/** How far the turn handle stands off, and the least room between two handles, in pixels. */
const TURN_STEM = 30;
const CROWDED = 26;

/** The handles of what is selected, in a view of so many pixels a millimetre; the nearest to the hand first. */
export function handlesOf(
  garden: Garden,
  { selection, yardSelected, view }: Pick<EditorState, "selection" | "yardSelected" | "view">,
  patch: Marks["patch"] = null,
): readonly Handle[] {
  if (yardSelected) return corners(null, garden.yard, true, view.scale);
  const held = heldPatch(garden, selection, patch);
  if (held) return patchHandles(held, view.scale);
  if (selection.size !== 1) return [];
  const item = garden.items.find(({ id }) => selection.has(id));
  return item ? ownHandles(item, view.scale) : [];
}

function ownHandles(item: Item, pixels: number): readonly Handle[] {
  const { id } = item;
  switch (item.kind) {
    case "tap":
      return [];
    case "tree":
      return [{ does: "canopy", id, at: add(item.at, [item.canopy / 2, 0]) }];
    case "gate":
    case "door":
      return [
        ...([-1, 1] as const).map(
          (end): Handle => ({
            does: "opening",
            id,
            end,
            at: placed([(end * item.width) / 2, 0], item.at, item.turn),
          }),
        ),
        turnHandle(item, pixels),
      ];
    default:
      break;
  }
  if (hasPoints(item)) {
    const points = planPoints(item);
    const width: Handle[] =
      item.kind === "path" ? [{ does: "path-width", id, at: pathSide(points, item.width) }] : [];
    return [...corners(id, points, !isLine(item), pixels), ...width, turnHandle(item, pixels)];
  }
  return [...grips(item, pixels), ...inner(item), turnHandle(item, pixels)];
}

/** Of a planting that is held: its bed keeps still meanwhile. */
function patchHandles({ bed, patch }: HeldPatch, pixels: number): readonly Handle[] {
  const roomy = Math.min(patch.width, patch.length) * pixels >= 2 * CROWDED;
  const sizes = GRIPS.filter((_, i) => roomy || i % 2 === 0).map(
    (grip): Handle => ({ does: "patch-size", id: bed.id, grip, at: patchPoint(bed, patch, grip) }),
  );
  return [...sizes, { does: "patch-move", id: bed.id, at: patchPoint(bed, patch, [0, 0]) }];
}

/** Small on the screen, a thing is pulled by its corners alone. */
function grips(item: Extract<Item, { shape: unknown }>, pixels: number): readonly Handle[] {
  const all = GRIPS.map((grip): Handle => ({ does: "resize", id: item.id, grip, at: gripAt(item, grip) }));
  if (item.shape.type === "keyhole") return all.filter((_, i) => i % 2 === 1);
  const roomy = all.every((handle, i) => distance(handle.at, all[(i + 1) % 8]!.at) * pixels >= CROWDED);
  return roomy ? all : all.filter((_, i) => i % 2 === 0);
}

function inner(item: Extract<Item, { shape: unknown }>): readonly Handle[] {
  const at = innerGripAt(item);
  return at ? [{ does: "inner", id: item.id, at }] : [];
}

function corners(id: ItemId | null, points: readonly Point[], closed: boolean, pixels: number): Handle[] {
  const held = points.map((at, index): Handle => ({ does: "corner", id, index, at }));
  const edges = closed ? points.length : points.length - 1;
  const between = Array.from({ length: edges }, (_, i): Handle[] => {
    const [from, to] = [points[i]!, points[(i + 1) % points.length]!];
    const roomy = distance(from, to) * pixels >= 2 * CROWDED;
    return roomy ? [{ does: "new-corner", id, index: i + 1, at: midpoint(from, to) }] : [];
  });
  return [...held, ...between.flat()];
}

/**
 * Above the thing as it is turned, clear of its outline by a fixed distance on the screen, and to the left of the
 * middle, where the dimension line to the next thing above stands.
 */
function turnHandle(item: Item, pixels: number): Handle {
  const extent = "shape" in item ? outlineOf(item) : extentOf(item);
  const own = boundsOf(extent.map((point) => unplaced(point, item.at, item.turn)));
  const x = own.minX + (own.maxX - own.minX) / 4;
  const stem = placed([x, own.minY], item.at, item.turn);
  return {
    does: "turn",
    id: item.id,
    stem,
    at: placed([x, own.minY - TURN_STEM / pixels], item.at, item.turn),
  };
}

/** On the edge of a path, a quarter along its first stretch: out of the way of its points and middles. */
function pathSide(points: readonly Point[], width: number): Point {
  const [from, to] = [points[0]!, points[1]!];
  const length = distance(from, to) || 1;
  const [x, y] = scale(subtract(to, from), 1 / length);
  return add(add(from, scale(subtract(to, from), 0.25)), [(y * width) / 2, (-x * width) / 2]);
}
