import type { Bed } from "../garden/kinds/bed.ts";
import type { Ring } from "../geometry/types.ts";
import { boxRing, groundArea } from "./convex-cut.ts";
import { type FrostSite, frostKey } from "./frosts.ts";
import { longSide } from "./long-side.ts";
import { type SetPlants, type Setting, setPlants } from "./set-plants.ts";
import { ownSoil, patchBox, shareGround } from "./share-ground.ts";
import { spacingOf } from "./spacing.ts";
import { standingsOf } from "./standings.ts";
import type { PlantedPatch, Standing } from "./types.ts";

/** More plants than this in one planting are counted by their area and not set one by one. */
const MOST_SET = 20_000;

interface Remembered {
  readonly key: string;
  readonly wall: Bed["wall"];
  readonly patches: readonly PlantedPatch[];
}

/** By the plantings and the shape: copies of a bed share both, until one of them is changed. */
const remembered = new WeakMap<Bed["plantings"], WeakMap<Bed["shape"], Remembered>>();

/**
 * What grows in a bed, to scale: for each planting, in the order of the list, its ground, rows and plants.
 *
 * Plants stand within the real outline of the soil, half a spacing from its edge and from the ground of plantings that stand
 * at the same time: none overlaps another's spacing. Who has which ground is told at `shareGround`, how far apart plants
 * stand at `spacingOf`, how they are set at `setPlants`. What has no room is counted in `notPlaced`.
 *
 * Remembered by what a bed is made of, so that a bed that is moved or turned keeps its plants.
 */
export function plantsOf(bed: Bed, site: FrostSite): readonly PlantedPatch[] {
  const key = frostKey(site);
  let byShape = remembered.get(bed.plantings);
  if (!byShape) {
    byShape = new WeakMap();
    remembered.set(bed.plantings, byShape);
  }
  const known = byShape.get(bed.shape);
  if (known && known.key === key && known.wall === bed.wall) return known.patches;
  const standings = standingsOf(bed, site);
  const soil = ownSoil(bed);
  const grounds = shareGround(soil, longSide(bed.shape), standings);
  const soilArea = groundArea(soil);
  const patches = standings.map((standing, i) => plantedPatch(bed, standing, grounds[i]!, soilArea));
  byShape.set(bed.shape, { key, wall: bed.wall, patches });
  return patches;
}

function plantedPatch(bed: Bed, standing: Standing, ground: readonly Ring[], soilArea: number): PlantedPatch {
  const { planting, index } = standing;
  const setting = settingOf(bed, standing);
  const areaMm2 = groundArea(ground);
  const { rows, plants, count } = planted(ground, areaMm2, setting);
  return {
    index,
    crop: planting.crop,
    standing,
    ground,
    areaMm2,
    share: soilArea > 0 ? areaMm2 / soilArea : 0,
    apart: setting.apart,
    rowsApart: setting.rowsApart,
    rows,
    plants,
    count,
    notPlaced: Math.max(0, wishedFor(standing, areaMm2, setting) - count),
  };
}

function settingOf({ shape }: Bed, { planting }: Standing): Setting {
  const long = longSide(shape);
  const across = long === "x" ? "y" : "x";
  return {
    ...spacingOf(planting),
    set: planting.set,
    rowsRun: planting.run === "along" ? long : across,
  };
}

function planted(ground: readonly Ring[], area: number, setting: Setting): SetPlants & { count: number } {
  const about = area / (setting.apart * setting.rowsApart);
  if (about > MOST_SET) return { rows: [], plants: [], count: Math.round(about) };
  const { rows, plants } = setPlants(ground, setting);
  return { rows, plants, count: plants.length };
}

/** As many as its patch would hold if all of it were soil and nothing else stood there; one where it has no patch. */
function wishedFor({ planting: { patch } }: Standing, area: number, setting: Setting): number {
  if (patch === null) return 1;
  const whole = patch.width * patch.length;
  if (area >= whole - 1) return 0;
  return planted([boxRing(patchBox(patch))], whole, setting).count;
}
