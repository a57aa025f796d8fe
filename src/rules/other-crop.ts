import { CROPS, type Crop, cropById } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Op } from "../garden/op.ts";
import { applyOps } from "../garden/operations.ts";
import type { Planting } from "../garden/plantings.ts";
import { isPerennial } from "../planting/sowing-table.ts";
import { say } from "../words/say.ts";
import { allSuit, suits } from "./crop-suits.ts";
import type { WayOut } from "./rule.ts";
import { listedOrCounted } from "./words.ts";

/** So many crops that suit the bed are tried for room and time. */
const MOST_TRIED = 12;

interface Wishes {
  /** What else the crop has to be. */
  readonly also?: (crop: Crop) => boolean;
  /** Whether the garden is then rid of what is wrong. */
  readonly clears?: (after: Garden) => boolean;
}

/**
 * Another crop that suits the bed in the place of some of its plantings, as a way out: one of the same season that is sown
 * in the same way where there is one. Plantings without a patch of their own become one; the spacing is that of the new crop.
 */
export function otherCrop(
  garden: Garden,
  bed: Bed,
  out: readonly Planting[],
  { also = () => true, clears = () => true }: Wishes = {},
): WayOut[] {
  const [first] = out;
  const model = first && cropById(first.crop);
  if (!first || !model) return [];
  const there = new Set(bed.plantings.map(({ crop }) => crop));
  const likest = CROPS.filter((crop) => !there.has(crop.id) && isPerennial(crop.id) === isPerennial(model.id))
    .filter((crop) => also(crop) && suits(crop, bed, garden))
    .map((crop) => ({ crop, unlike: unlikeness(crop, model) }))
    .sort((a, b) => a.unlike - b.unlike)
    .slice(0, MOST_TRIED);
  for (const { crop } of likest) {
    const plantings = inPlaceOf(bed.plantings, out, crop);
    const fresh = plantings.filter((planting) => !bed.plantings.includes(planting));
    const left = { ...bed, plantings: plantings.filter((planting) => bed.plantings.includes(planting)) };
    if (!allSuit(fresh, left, garden)) continue;
    const ops: Op[] = [{ op: "set", id: bed.id, changes: { plantings } }];
    if (!clears(applyOps(garden, ops))) continue;
    const names = [...new Set(out.map((planting) => planting.crop))].flatMap((id) => cropById(id) ?? []);
    return [
      { label: say`Grow ${cropWord(crop)} instead of ${listedOrCounted(names.map(cropWord), "crops")}`, ops },
    ];
  }
  return [];
}

const unlikeness = (crop: Crop, model: Crop): number =>
  (crop.season === model.season ? 0 : 4) +
  (crop.sow === model.sow || crop.sow === "either" ? 0 : 1) +
  (crop.sun === model.sun ? 0 : 1);

function inPlaceOf(plantings: readonly Planting[], out: readonly Planting[], { id }: Crop): Planting[] {
  const first = out.find(({ patch }) => patch === null);
  return plantings.flatMap((planting) => {
    if (!out.includes(planting)) return [planting];
    if (planting.patch === null && planting !== first) return [];
    return [{ ...planting, crop: id, from: null, until: null, apart: null, rowsApart: null }];
  });
}
