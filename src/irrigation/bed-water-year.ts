import type { ItemId } from "../garden/fields.ts";
import { frameOf } from "../garden/frame.ts";
import type { Garden } from "../garden/garden.ts";
import { type GroundUnder, groundsUnder, isHard } from "../garden/ground-under.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { practice, published, type Source } from "../garden/source.ts";
import { INCH } from "../units/length.ts";
import { type BedWater, bedNeed, type MonthNeed } from "../water/bed-need.ts";
import { monthOfDay } from "../water/calendar.ts";
import { CROP_WATER_SOURCES } from "../water/crop-water.ts";
import { EFFICIENCY } from "../water/delivery.ts";
import { EFFECTIVE_RAIN_SOURCE } from "../water/effective-rain.ts";
import { MULCHED_SOURCE } from "../water/mulched-soil.ts";
import { rootRoomOf } from "../water/root-room.ts";
import { MIX_SOURCE, TEXTURES_SOURCE, type TextureId } from "../water/soil-water.ts";
import { litresByRule, WEEKLY_RULE } from "../water/weekly-rule.ts";
import { WETTED_SOURCE, WETTING_SOURCE } from "../water/wetted-soil.ts";
import { type ClimateFound, climateOf, type KnownClimate } from "./garden-climate.ts";
import { GROWING_WEATHER_SOURCE, isGrowingWeather } from "./growing-weather.ts";
import { soilOfBed } from "./soil-of-bed.ts";
import type { BedWaterYear } from "./types.ts";
import { growsIn, wateredCrops } from "./watered-crops.ts";
import { YOUNG_WETTING_SOURCE, youngWetting } from "./young-wetting.ts";

/** Nobody is asked for the texture of their ground. */
const USUAL_TEXTURE: TextureId = "loam";
export const USUAL_TEXTURE_SOURCE: Source = practice("the yard's own soil is taken to be loam");

const REFERENCE: Source = published(
  "FAO Irrigation and Drainage Paper 56 (Allen et al. 1998): reference evapotranspiration and single crop coefficients",
);

/**
 * What each bed of a garden asks of water through the year, in the garden's order.
 *
 * By the garden's climate: reference evapotranspiration, the coefficients of what grows in the bed and when, the store of
 * its real depth and mix, rain set against it, and what is lost on the way to the roots. Without a climate, by the rule of
 * thumb of about an inch a week. A bed in which nothing grows asks for none.
 */
export function bedWaterYears(garden: Garden): readonly BedWaterYear[] {
  const climate = climateOf(garden);
  const grounds = groundsUnder(garden);
  return garden.items
    .filter((item) => item.kind === "bed")
    .map((bed) => remembered(bed, garden, climate, isOpenBelow(bed, grounds.get(bed.id) ?? [])));
}

/** Whether roots find ground under a bed: most of it stands on none that is hard, and it has no legs. */
const isOpenBelow = ({ legs }: Bed, grounds: readonly GroundUnder[]): boolean =>
  legs === null &&
  grounds.reduce((sum, { ground, share }) => sum + (isHard(ground.cover) ? share : 0), 0) < 0.5;

interface Known {
  readonly bed: Bed;
  readonly site: Garden["site"];
  readonly climate: ClimateFound;
  readonly open: boolean;
  readonly year: BedWaterYear;
}

/** By what grows, which copies of a bed share, and by bed. */
const known = new WeakMap<Bed["plantings"], Map<ItemId, Known>>();

/** By all that a year follows from: where a bed stands is none of it, so a dragged bed answers from memory. */
function remembered(bed: Bed, { site }: Garden, climate: ClimateFound, open: boolean): BedWaterYear {
  const alike = known.get(bed.plantings) ?? new Map<ItemId, Known>();
  known.set(bed.plantings, alike);
  const before = alike.get(bed.id);
  const isSame =
    before?.site === site &&
    before.climate === climate &&
    before.open === open &&
    drinkAlike(before.bed, bed);
  if (isSame) return before.year;
  const year =
    climate && "reference" in climate ? byClimate(bed, site, climate, open) : byRule(bed, site, climate);
  alike.set(bed.id, { bed, site, climate, open, year });
  return year;
}

const DECIDING = ["shape", "wall", "bottom", "fill", "mulch", "watering", "trellis"] as const;
const drinkAlike = (a: Bed, b: Bed): boolean => DECIDING.every((field) => a[field] === b[field]);

function byClimate(
  bed: Bed,
  site: Garden["site"],
  { reference, rain }: KnownClimate,
  open: boolean,
): BedWaterYear {
  const { areaMm2 } = soilOfBed(bed);
  const plantings = wateredCrops(bed, site);
  const water: BedWater = {
    areaMm2,
    room: rootRoomOf(bed, frameOf(bed).soilDepth, { texture: USUAL_TEXTURE, open }),
    plantings,
    rainedOn: bed.watering.rainedOn,
    wetting: null,
    mulchedShare: mulchedShare(bed),
  };
  const efficiency = EFFICIENCY[bed.watering.by];
  const yearWith = (wetting: BedWater["wetting"]) =>
    bedNeed({ ...water, wetting }, reference, rain, efficiency.share);
  const tabled = yearWith(null);
  const wetting = youngWetting(plantings, tabled, bed.watering);
  const months = wetting ? yearWith(wetting) : tabled;
  return {
    bedId: bed.id,
    areaMm2,
    method: reference.some(({ method }) => method === "penman-monteith") ? "penman-monteith" : "hargreaves",
    guessed: [...new Set(reference.flatMap(({ guessed }) => guessed))],
    months,
    litresAWeek: months.map(({ litresAWeek }) => litresAWeek),
    litresAYear: litresOfYear(months, areaMm2, efficiency.share),
    problem: null,
    sources: [
      REFERENCE,
      CROP_WATER_SOURCES.kc,
      bed.fill.way === "native" ? TEXTURES_SOURCE : MIX_SOURCE,
      ...(open ? [USUAL_TEXTURE_SOURCE] : []),
      EFFECTIVE_RAIN_SOURCE,
      efficiency.source,
      ...(wetting ? [WETTED_SOURCE, WETTING_SOURCE, YOUNG_WETTING_SOURCE] : []),
      ...(water.mulchedShare > 0 ? [MULCHED_SOURCE] : []),
    ],
  };
}

const litresOfYear = (months: readonly MonthNeed[], areaMm2: number, efficiency: number): number =>
  months.reduce((sum, { need }) => sum + (need * areaMm2) / 1e6 / efficiency, 0);

/** Mulch keeps as much as it covers; compost lies as open to the air as soil does. Common practice. */
const COVERS_FROM = 1 * INCH;
function mulchedShare({ mulch }: Bed): number {
  if (!mulch || mulch.material === "compost") return 0;
  return Math.min(1, mulch.depth / COVERS_FROM);
}

function byRule(bed: Bed, site: Garden["site"], climate: ClimateFound): BedWaterYear {
  const { areaMm2 } = soilOfBed(bed);
  const grows = growsIn(wateredCrops(bed, site), monthOfDay);
  // An inch a week is for growing weather: what stands through the frost is at rest.
  const litresAWeek = grows.map((growing, month) =>
    growing && isGrowingWeather(month, site) ? litresByRule(areaMm2) : 0,
  );
  return {
    bedId: bed.id,
    areaMm2,
    method: "rule-of-thumb",
    guessed: [],
    months: null,
    litresAWeek,
    litresAYear: null,
    problem: climate && "problem" in climate ? climate.problem : null,
    sources: [...WEEKLY_RULE.sources, GROWING_WEATHER_SOURCE],
  };
}
