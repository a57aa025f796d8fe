import type { Item } from "../garden/item.ts";
import { formatArea, formatShare, formatVolume } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import type { BedQuantities } from "./bed-quantities.ts";
import { litresOver, SETTLING } from "./fill-volumes.ts";
import { pathArea } from "./path-ground.ts";
import type { Settings } from "./settings.ts";
import type { Line } from "./types.ts";

/** One use of a loose material. */
export interface Use {
  readonly part: Extract<Line["part"], "fill" | "mulch" | "paths">;
  readonly material: string;
  readonly litres: number;
  /** The bed it is for; null for a path. */
  readonly bed: BedQuantities | null;
  readonly how: string;
}

const SURFACES: Readonly<Record<string, string>> = {
  bark: "bark",
  "loose-gravel": "gravel",
  "firm-gravel": "firm-gravel",
};

const fillUses =
  ({ units }: Settings) =>
  (bed: BedQuantities): Use[] => {
    const { mixOrder, woodyOrder, mix, woody } = bed.fill;
    const { compostShare } = bed.bed.fill;
    const settled = (litres: number, loss: number) =>
      `${formatVolume(litres, units)} / (1 − ${loss}) for settling`;
    const part = (share: number) => `${bed.name}: ${formatShare(share)} of ${settled(mix, SETTLING.mix)}`;
    return [
      { part: "fill", material: "compost", litres: mixOrder * compostShare, bed, how: part(compostShare) },
      {
        part: "fill",
        material: "topsoil",
        litres: mixOrder * (1 - compostShare),
        bed,
        how: part(1 - compostShare),
      },
      {
        part: "fill",
        material: "wood",
        litres: woodyOrder,
        bed,
        how: `${bed.name}: ${settled(woody, SETTLING.woody)}`,
      },
    ];
  };

const mulchUses =
  ({ units }: Settings) =>
  (bed: BedQuantities): Use[] => {
    const { mulch } = bed.bed;
    if (!mulch) return [];
    const how = `${bed.name}: ${formatArea(bed.soilAreaMm2, units)} × ${formatShort(mulch.depth, units)} of mulch`;
    return [{ part: "mulch", material: mulch.material, litres: bed.mulch, bed, how }];
  };

function pathUses(items: readonly Item[], { units }: Settings): Use[] {
  return items.flatMap((item): Use[] => {
    const material = item.kind === "path" ? SURFACES[item.surface] : undefined;
    if (item.kind !== "path" || material === undefined || item.depth === 0) return [];
    const area = pathArea(item, items);
    const how = `path ${item.name || item.id}: ${formatArea(area, units)} × ${formatShort(item.depth, units)}`;
    return [{ part: "paths", material, litres: litresOver(area, item.depth), bed: null, how }];
  });
}

/** Every use of a loose material in a garden: fill and mulch of each bed, surfacing of each path. */
export const looseUses = (
  beds: readonly BedQuantities[],
  items: readonly Item[],
  settings: Settings,
): readonly Use[] => [
  ...beds.flatMap(fillUses(settings)),
  ...beds.flatMap(mulchUses(settings)),
  ...pathUses(items, settings),
];
