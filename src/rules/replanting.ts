import { cropById } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import type { Garden, Site } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Op } from "../garden/op.ts";
import type { Planting } from "../garden/plantings.ts";
import { plantsOf } from "../planting/plants.ts";
import { say } from "../words/say.ts";
import { patchOverlaps } from "./patch-overlaps.ts";
import type { WayOut } from "./rule.ts";
import { outOfSeason } from "./season-fit.ts";
import { listedOrCounted } from "./words.ts";

/** What a planting is called inside a sentence: its crop. */
export function plantingWord({ crop }: Planting): string {
  const row = cropById(crop);
  return row ? cropWord(row) : crop;
}

/** What some plantings are called inside a sentence, each crop once, or how many crops they are. */
export const plantingWords = (plantings: readonly Planting[]): string =>
  listedOrCounted([...new Set(plantings.map(plantingWord))], "crops");

/** A way out that has other plantings in the place of some of a bed; those for which `by` gives null are left out. */
export function replanted(
  label: string,
  bed: Bed,
  out: readonly Planting[],
  by: (planting: Planting) => Planting | null,
): WayOut {
  const plantings = bed.plantings.flatMap((planting) =>
    out.includes(planting) ? (by(planting) ?? []) : planting,
  );
  const ops: readonly Op[] = [{ op: "set", id: bed.id, changes: { plantings } }];
  return { label, ops };
}

/** Leaving some plantings out, as a way out. */
export const withoutPlantings = (bed: Bed, out: readonly Planting[]): WayOut =>
  replanted(say`Leave out ${plantingWords(out)}`, bed, out, () => null);

/**
 * Whether what is planted in a bed stands no worse after a change: no more lies over anything else or is without room, and
 * no crop meets frost that did not before.
 */
export function standsNoWorse(before: Bed, after: Garden): boolean {
  const bed = bedAfter(before, after);
  const [was, is] = [faultsOf(before, after.site), bed && faultsOf(bed, after.site)];
  return (
    is !== null &&
    is.overlaps <= was.overlaps &&
    is.withoutRoom <= was.withoutRoom &&
    is.late.every((crop) => was.late.includes(crop))
  );
}

/** A bed as it is in a later garden. */
export function bedAfter({ id }: Pick<Bed, "id">, { items }: Pick<Garden, "items">): Bed | null {
  const bed = items.find((item) => item.id === id);
  return bed?.kind === "bed" ? bed : null;
}

function faultsOf(bed: Bed, site: Site) {
  const patches = plantsOf(bed, site);
  return {
    overlaps: patchOverlaps(bed, site).length,
    withoutRoom: patches.filter(({ count }) => count === 0).length,
    late: patches.filter(({ standing }) => outOfSeason(standing, site)).map(({ crop }) => crop),
  };
}
