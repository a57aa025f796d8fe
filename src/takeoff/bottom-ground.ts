import type { Garden } from "../garden/garden.ts";
import { type GroundUnder, groundsUnder, isHard } from "../garden/ground-under.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { GroundFacts, GroundPatch } from "../garden/kinds/ground.ts";
import { outlineOf } from "../garden/outline.ts";
import { difference, intersection } from "../geometry/clip.ts";
import { boundsOf } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { unplaced } from "../geometry/vector.ts";
import type { BedQuantities } from "./bed-quantities.ts";

export type Sheet = "mesh" | "liner";

/** The part of a bed that a sheet is laid under. */
export interface Underlaid {
  /** Width and length of the box round it, as the bed lies before it is turned, mm. */
  readonly extent: readonly [number, number];
  /** Of the bed's outline, 0 to 1. */
  readonly share: number;
}

/** Asks for each bed where a sheet is needed under it; beds and grounds that stay as they are answer from memory. */
export function underlaidIn({ items, site }: Pick<Garden, "items" | "site">) {
  const grounds = groundsUnder({ items, site });
  const patches = items.filter((item) => item.kind === "ground").toReversed();
  return (quantities: BedQuantities, sheet: Sheet): Underlaid => {
    const under = grounds.get(quantities.bed.id) ?? [];
    const whole: Underlaid = { extent: quantities.extent, share: 1 };
    const wanted = wantedBy(sheet, under);
    const parts = under.filter(({ ground }) => wanted(ground));
    // What is asked for under a bed that stands wholly on paving is laid there: its gardener will know why.
    if (parts.length === 0 || parts.length === under.length) return whole;
    const share = parts.reduce((sum, part) => sum + part.share, 0);
    const kept = boxes.get(under)?.get(sheet);
    if (kept) return { extent: kept, share };
    const extent = boxOf(regionOf(quantities.bed, patches, site.ground, wanted), quantities.bed);
    boxes.set(under, (boxes.get(under) ?? new Map()).set(sheet, extent));
    return { extent, share };
  };
}

const boxes = new WeakMap<readonly GroundUnder[], Map<Sheet, readonly [number, number]>>();

/**
 * Nothing burrows up through paving, and only what lies over contaminated ground has to be kept from it; where none
 * is, a liner keeps soil from whatever is not paved.
 */
function wantedBy(sheet: Sheet, under: readonly GroundUnder[]): (ground: GroundFacts) => boolean {
  const contaminated = sheet === "liner" && under.some(({ ground }) => ground.contaminated);
  return contaminated ? (ground) => ground.contaminated : ({ cover }) => !isHard(cover);
}

/** The outline over ground that wants the sheet; where patches overlap, the one in front counts. */
function regionOf(
  bed: Bed,
  patches: readonly GroundPatch[],
  yard: GroundFacts,
  wanted: (ground: GroundFacts) => boolean,
): readonly Ring[] {
  let rest: readonly Ring[] = [outlineOf(bed)];
  const region: Ring[] = [];
  for (const patch of patches) {
    const outline = [outlineOf(patch)];
    if (wanted(patch)) region.push(...intersection(rest, outline));
    rest = difference(rest, outline);
  }
  return wanted(yard) ? [...region, ...rest] : region;
}

function boxOf(region: readonly Ring[], { at, turn }: Bed): readonly [number, number] {
  const points = region.flatMap((ring) => ring.map((point): Point => unplaced(point, at, turn)));
  const { minX, minY, maxX, maxY } = boundsOf(points);
  return [maxX - minX, maxY - minY];
}
