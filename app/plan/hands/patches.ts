import {
  type Box,
  boundsOf,
  contains,
  frameOf,
  type Garden,
  type ItemId,
  type ItemOf,
  type Op,
  outlineOf,
  type Planting,
  type Point,
  placed,
  plantsOf,
  type Site,
  unplaced,
} from "../../../src/index.ts";
import { paintOrder } from "../paint-order.ts";
import type { Marks } from "./marks.ts";

export type Bed = ItemOf<"bed">;
export type Patch = NonNullable<Planting["patch"]>;

/** A planting that has been taken hold of, and the place it has: its own, or the box round its share. */
export interface HeldPatch {
  readonly bed: Bed;
  readonly index: number;
  readonly planting: Planting;
  readonly patch: Patch;
}

/** A place smaller than this either way is none, mm. */
export const LEAST_PATCH = 25;

/** Pulled sizes are kept to the thousandth of a millimetre: what turning there and back adds is no part of them. */
const tidy = (mm: number): number => Math.round(mm * 1000) / 1000 + 0;

export const sidesOf = ({ at: [x, y], width, length }: Patch): Box => ({
  minX: x - width / 2,
  minY: y - length / 2,
  maxX: x + width / 2,
  maxY: y + length / 2,
});

export const patchWithin = ({ minX, minY, maxX, maxY }: Box): Patch => ({
  at: [tidy((minX + maxX) / 2), tidy((minY + maxY) / 2)],
  width: tidy(maxX - minX),
  length: tidy(maxY - minY),
});

/** The place between two opposite corners; null where there would be next to nothing of it. */
export function patchBetween([ax, ay]: Point, [bx, by]: Point): Patch | null {
  const patch = patchWithin({
    minX: Math.min(ax, bx),
    minY: Math.min(ay, by),
    maxX: Math.max(ax, bx),
    maxY: Math.max(ay, by),
  });
  return patch.width >= LEAST_PATCH && patch.length >= LEAST_PATCH ? patch : null;
}

/** The box round the soil of a bed in the bed's own frame; null where its walls leave none. */
export function soilBox(bed: Bed): Box | null {
  const corners = frameOf(bed).inside.flat();
  if (corners.length === 0) return null;
  const box = boundsOf(corners.map((corner) => unplaced(corner, bed.at, bed.turn)));
  return { minX: tidy(box.minX), minY: tidy(box.minY), maxX: tidy(box.maxX), maxY: tidy(box.maxY) };
}

/** The bed at a place on the plan, the foremost first. */
export const bedAt = ({ items }: Pick<Garden, "items">, at: Point): Bed | null =>
  paintOrder(items)
    .toReversed()
    .filter((item) => item.kind === "bed")
    .find((bed) => contains(outlineOf(bed), at)) ?? null;

export const bedOf = ({ items }: Pick<Garden, "items">, id: ItemId | undefined): Bed | null =>
  items.filter((item) => item.kind === "bed").find((bed) => bed.id === id) ?? null;

/** The only bed selected. */
export function selectedBed(garden: Pick<Garden, "items">, selection: ReadonlySet<ItemId>): Bed | null {
  const [id] = selection.size === 1 ? selection : [];
  return bedOf(garden, id);
}

/** The planting taken hold of, where its bed is what is selected and it is still there. */
export function heldPatch(
  garden: Pick<Garden, "items" | "site">,
  selection: ReadonlySet<ItemId>,
  held: Marks["patch"],
): HeldPatch | null {
  const bed = held ? selectedBed(garden, selection) : null;
  if (!held || !bed || bed.id !== held.id) return null;
  const planting = bed.plantings[held.index];
  const patch = planting && (planting.patch ?? shareOf(bed, held.index, garden.site));
  return planting && patch ? { bed, index: held.index, planting, patch } : null;
}

/** The box round the ground a planting shares in, as a place; null where it has none. */
export function shareOf(bed: Bed, index: number, site: Site): Patch | null {
  const corners = plantsOf(bed, site)[index]?.ground.flat() ?? [];
  return corners.length > 0 ? patchWithin(boundsOf(corners)) : null;
}

/** Gives a planting a place of its own. */
export const placeOps = (bed: Bed, index: number, patch: Patch): readonly Op[] => [
  {
    op: "set",
    id: bed.id,
    changes: { plantings: bed.plantings.with(index, { ...bed.plantings[index]!, patch }) },
  },
];

/** The corner or the middle of a side of a place, or its middle, on the plan. */
export const patchPoint = (bed: Bed, patch: Patch, [gx, gy]: readonly [number, number]): Point =>
  placed([patch.at[0] + (gx * patch.width) / 2, patch.at[1] + (gy * patch.length) / 2], bed.at, bed.turn);

/** The index of the planting whose ground lies under a place on the plan; -1 for none. */
export function plantingAt(bed: Bed, site: Site, at: Point, shown: (index: number) => boolean): number {
  const own = unplaced(at, bed.at, bed.turn);
  return plantsOf(bed, site).findIndex(
    ({ ground, index }) => shown(index) && ground.some((ring) => contains(ring, own)),
  );
}
