import type { Item } from "../garden/item.ts";
import type { Path } from "../garden/kinds/path.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatArea, formatShare, formatVolume } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { say } from "../words/say.ts";
import type { BedQuantities } from "./bed-quantities.ts";
import { litresOver, SETTLING } from "./fill-volumes.ts";
import { pathArea } from "./path-ground.ts";
import { groupedBy, total } from "./purchase.ts";
import type { Settings } from "./settings.ts";
import type { Line } from "./types.ts";

/** One use of a loose material. */
export interface Use {
  readonly part: Extract<Line["part"], "fill" | "mulch" | "paths">;
  readonly material: string;
  /** To be had. */
  readonly litres: number;
  /** The bed it is for; null for a path. */
  readonly bed: BedQuantities | null;
  readonly stage: number;
  readonly name: string;
  /** Once it lies in its place, all materials of it together: what the reckoning starts from. */
  readonly inPlace: number;
  /** How one follows from the other: "30 % of it, / (1 − 0.15) for settling". */
  readonly way: string;
}

const SURFACES: Readonly<Record<string, string>> = {
  bark: "bark",
  "loose-gravel": "gravel",
  "firm-gravel": "firm-gravel",
};

const fillUses = (quantities: BedQuantities): Use[] => {
  const { fill, name, bed } = quantities;
  const { compost, topsoil, soilless } = bed.fill.recipe;
  const parts = compost + topsoil + soilless;
  const onTopOf = fill.have > 0 ? say`, on top of the soil that is in it` : "";
  const use = (material: string, inPlace: number, litres: number, way: string): Use => ({
    part: "fill",
    material,
    litres,
    bed: quantities,
    stage: bed.stage,
    name,
    inPlace,
    way,
  });
  const mix = (material: string, share: number) =>
    use(
      material,
      fill.mixNew,
      fill.mixOrder * share,
      say`of mix; ${formatShare(share)} of it / (1 − ${SETTLING.mix}) for settling${onTopOf}`,
    );
  return [
    mix("compost", compost / parts),
    mix("topsoil", topsoil / parts),
    mix("soilless", soilless / parts),
    use("wood", fill.woodyNew, fill.woodyOrder, say`below the mix; / (1 − ${SETTLING.woody}) for settling`),
  ];
};

const mulchUses =
  ({ units }: Settings) =>
  (quantities: BedQuantities): Use[] => {
    const { mulch } = quantities.bed;
    if (!mulch) return [];
    const litres = quantities.mulch;
    const way = say`of mulch ${formatShort(mulch.depth, units)} deep`;
    const { name } = quantities;
    const { stage } = quantities.bed;
    const { material } = mulch;
    return [{ part: "mulch", material, litres, bed: quantities, stage, name, inPlace: litres, way }];
  };

function pathUses(paths: readonly Path[], items: readonly Item[], { units }: Settings): Use[] {
  return paths.flatMap((item): Use[] => {
    const material = SURFACES[item.surface];
    if (material === undefined || item.depth === 0) return [];
    const area = pathArea(item, items);
    const litres = litresOver(area, item.depth);
    const way = say`of path ${formatShort(item.depth, units)} deep, ${formatArea(area, units)} free of beds`;
    const { stage } = item;
    return [{ part: "paths", material, litres, bed: null, stage, name: nameOf(item), inPlace: litres, way }];
  });
}

/** Every use of a loose material: fill and mulch of each bed, surfacing of each path where no item lies on it. */
export const looseUses = (
  beds: readonly BedQuantities[],
  paths: readonly Path[],
  items: readonly Item[],
  settings: Settings,
): readonly Use[] => [
  ...beds.flatMap(fillUses),
  ...beds.flatMap(mulchUses(settings)),
  ...pathUses(paths, items, settings),
];

/** Names that are shown before the rest is counted. */
const SHOWN = 6;

/** How a material's quantity came about; things of the same figure are said once. */
export function howUsed(uses: readonly Use[], { units }: Settings): string {
  const ways = [...groupedBy(uses, ({ way }) => way)].map(([way, group]) => {
    const equal = [...groupedBy(group, ({ inPlace }) => inPlace.toFixed(1)).values()];
    const shown = equal.slice(0, SHOWN).map((same) => {
      const each = `${formatVolume(same[0]!.inPlace, units)}${same.length > 1 ? say` each` : ""}`;
      return `${named(same.map(({ name }) => name))} ${each}`;
    });
    const rest = total(equal.slice(SHOWN), ({ length }) => length);
    return `${shown.join(", ")}${rest > 0 ? say` and ${rest} more` : ""} ${way}`;
  });
  return say`${ways.join("; ")}: ${formatVolume(
    total(uses, ({ litres }) => litres),
    units,
  )} in all`;
}

const named = (names: readonly string[]): string =>
  names.length <= 3
    ? names.join(say` and `)
    : say`${names.slice(0, 2).join(", ")} and ${names.length - 2} more`;
