import type { CropId } from "../garden/crop-ids.ts";
import { daysIn, MONTHS, monthOfDay, YEAR_DAYS } from "./calendar.ts";
import type { ReferenceMonth } from "./climate.ts";
import { type KcCurve, kcCurve, kcOn, type StageAir, stagesOver } from "./crop-coefficient.ts";
import { type CropWater, cropWater } from "./crop-water.ts";
import { litresOver } from "./depths.ts";
import { effectiveRain } from "./effective-rain.ts";
import { kcUnderMulch } from "./mulched-soil.ts";
import { easyShareAt, type RootRoom, readilyAvailable, rootDepthOn, totalAvailable } from "./root-store.ts";
import { kcOfWetting, type Wetting } from "./wetted-soil.ts";
import { aboveZero, within } from "./within.ts";

/** A crop that stands in a share of a bed for part of the year. */
export interface WateredCrop {
  readonly crop: CropId;
  /** Day of the year it is sown or planted, 1 to 365. */
  readonly plantedOn: number;
  /** How long it stands, 1 to 365 days; it may run over new year. */
  readonly days: number;
  /** Share of the bed's soil, 0 to 1. */
  readonly share: number;
  readonly onSupports: boolean;
}

export interface BedWater {
  /** Soil inside the wall. */
  readonly areaMm2: number;
  readonly room: RootRoom;
  readonly plantings: readonly WateredCrop[];
  /** False under a roof or a sheet that keeps rain off. */
  readonly rainedOn: boolean;
  /** How the young crop is watered, for its coefficient; null takes the tabled one. */
  readonly wetting: Wetting | null;
  /** Share of the soil under organic mulch, 0 to 1. */
  readonly mulchedShare: number;
}

/** Depths are mm over the whole bed. */
export interface MonthNeed {
  /** Reference evapotranspiration, mm a day. */
  readonly et0: number;
  /** Mean crop coefficient over the bed and the month; ground without a crop counts as 0. */
  readonly kc: number;
  /** What the crops give off in the month. */
  readonly cropEt: number;
  /** Rain of the month that serves them. */
  readonly effectiveRain: number;
  /** What has to be given in the month, at the roots. */
  readonly need: number;
  /** What has to leave the tap in a week. */
  readonly litresAWeek: number;
  /** Days the store of the thirstiest crop lasts between two waterings; null where none is needed. */
  readonly everyDays: number | null;
}

/**
 * Water a bed needs, month by month. Only what stands in a bed is watered: ground without a crop, bare or covered, needs
 * none, whatever the sky draws from it.
 *
 * A mean year: rain and evaporation by the climate's means. A dry month needs more.
 *
 * @param rain of each month, mm, January first
 * @param efficiency share of the water that reaches the roots, above 0, up to 1
 * @returns twelve months, January first
 * @throws RangeError for a share, a day or a climate out of range, or crops that on some day fill more than the bed
 * @source FAO-56 (Allen et al. 1998), chapter 6 (single crop coefficient); rain by USDA SCS Technical Release 21
 */
export function bedNeed(
  bed: BedWater,
  reference: readonly ReferenceMonth[],
  rain: readonly number[],
  efficiency: number,
): readonly MonthNeed[] {
  if (reference.length !== 12 || rain.length !== 12) throw new RangeError("a year has twelve months");
  aboveZero(within(efficiency, 0, 1, "the efficiency"), "the efficiency");
  checkRoom(bed.plantings);
  const grown = bed.plantings.map((planting) => growthOf(planting, bed, reference));
  return MONTHS.map((month) => {
    const { et0 } = reference[month]!;
    const fell = bed.rainedOn ? rain[month]! : 0;
    const parts = grown.map((growth) => partOf(growth, month, et0, fell));
    const total = (of: "cropEt" | "effectiveRain" | "need" | "kcDays") =>
      parts.reduce((sum, part) => sum + part.share * part[of], 0);
    const need = total("need");
    const waits = parts.flatMap(({ everyDays }) => (everyDays === null ? [] : [everyDays]));
    return {
      et0,
      kc: total("kcDays") / daysIn(month),
      cropEt: total("cropEt"),
      effectiveRain: total("effectiveRain"),
      need,
      litresAWeek: (litresOver(bed.areaMm2, need) * 7) / daysIn(month) / efficiency,
      everyDays: waits.length > 0 ? Math.min(...waits) : null,
    };
  });
}

/** A planting through its season: by month, the days it stands and the sum of its coefficients. */
interface Growth {
  readonly share: number;
  readonly water: CropWater;
  readonly room: RootRoom;
  readonly months: readonly { readonly days: number; readonly kcDays: number; readonly rootDepth: number }[];
}

function growthOf(planting: WateredCrop, bed: BedWater, reference: readonly ReferenceMonth[]): Growth {
  const water = cropWater(planting.crop);
  const curve = curveOf(planting, water, bed, reference);
  const months = MONTHS.map(() => ({ days: 0, kcDays: 0, rootDepth: 0 }));
  for (let day = 0; day < planting.days; day++) {
    const month = months[monthOfDay(planting.plantedOn + day)]!;
    month.days += 1;
    month.kcDays += kcOn(curve, day + 0.5);
    month.rootDepth += rootDepthOn(day, curve.stages, water.rootZone);
  }
  const mean = months.map(({ days, kcDays, rootDepth }) => ({
    days,
    kcDays,
    rootDepth: days > 0 ? rootDepth / days : 0,
  }));
  return { share: planting.share, water, room: bed.room, months: mean };
}

function curveOf(
  { plantedOn, days, onSupports }: WateredCrop,
  water: CropWater,
  { wetting, mulchedShare }: BedWater,
  reference: readonly ReferenceMonth[],
): KcCurve {
  const [initial, development, mid] = stagesOver(water.stages, days);
  const grown = initial + development;
  const meanOver = (from: number, to: number, of: (month: ReferenceMonth) => number) =>
    meanOfDays(plantedOn + from, plantedOn + to, reference, of);
  const airOf = (from: number, to: number): StageAir => ({
    windMs: meanOver(from, to, ({ windMs }) => windMs),
    lowestHumidityPercent: meanOver(from, to, ({ lowestHumidityPercent }) => lowestHumidityPercent),
  });
  const youngEt0 = meanOver(0, initial, ({ et0 }) => et0);
  const bare = wetting && youngEt0 > 0 ? kcOfWetting(wetting, youngEt0) : water.kcInitial;
  const season = { days, onSupports, initial: kcUnderMulch(bare, mulchedShare) };
  return kcCurve(water, season, { mid: airOf(grown, grown + mid), late: airOf(grown + mid, days) });
}

function meanOfDays(
  from: number,
  to: number,
  reference: readonly ReferenceMonth[],
  of: (month: ReferenceMonth) => number,
): number {
  const first = Math.floor(from);
  const count = Math.max(1, Math.ceil(to) - first);
  let sum = 0;
  for (let day = first; day < first + count; day++) sum += of(reference[monthOfDay(day)]!);
  return sum / count;
}

/** A planting's month, mm over its own ground. Where it stands for part of the month it gets that part of the rain. */
function partOf({ share, water, room, months }: Growth, month: number, et0: number, rain: number) {
  const { days, kcDays, rootDepth } = months[month]!;
  const cropEt = kcDays * et0;
  if (days === 0 || cropEt === 0)
    return { share, kcDays, cropEt: 0, effectiveRain: 0, need: 0, everyDays: null };
  const part = days / daysIn(month);
  const store = readilyAvailable(
    totalAvailable(room, rootDepth),
    easyShareAt(water.easyShare, cropEt / days),
  );
  const served = effectiveRain(rain, cropEt / part, store) * part;
  const need = Math.max(0, cropEt - served);
  return {
    share,
    kcDays,
    cropEt,
    effectiveRain: served,
    need,
    everyDays: need > 0 ? (store * days) / need : null,
  };
}

/** @throws RangeError where on some day the crops of a bed fill more than the bed */
function checkRoom(plantings: readonly WateredCrop[]): void {
  const filled = new Array<number>(YEAR_DAYS).fill(0);
  for (const { plantedOn, days, share } of plantings) {
    within(plantedOn, 1, YEAR_DAYS, "the day of planting");
    within(days, 1, YEAR_DAYS, "the days a crop stands");
    if (!Number.isInteger(plantedOn) || !Number.isInteger(days)) throw new RangeError("days are whole days");
    within(share, 0, 1, "the share of the bed");
    for (let day = 0; day < days; day++) {
      const at = (plantedOn - 1 + day) % YEAR_DAYS;
      filled[at]! += share;
      // Thirds add up to a little more than one.
      if (filled[at]! > 1 + 1e-9) throw new RangeError(`on day ${at + 1} the crops fill more than the bed`);
    }
  }
}
