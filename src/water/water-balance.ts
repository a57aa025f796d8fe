import { atLeastZero, within } from "./within.ts";

/** What happens on a day, mm. */
export interface BalanceDay {
  readonly rain: number;
  /** Of the crop as if it never wanted for water, ETc. */
  readonly cropEt: number;
  /** Total available water that day, TAW; grows with the roots. */
  readonly total: number;
  /** Share of it taken with ease that day, p. */
  readonly easyShare: number;
  /** Water given, or "fill" to give what is missing as soon as the easy part is used up. */
  readonly irrigation: number | "fill";
}

/** How the day ends, mm. */
export interface BalanceResult {
  /** Missing from the store in the evening, Dr: 0 to TAW. */
  readonly depletion: number;
  readonly irrigation: number;
  /** What the crop really gave off: less than it would where water was short. */
  readonly cropEt: number;
  /** 1 where the crop took what it wanted, down to 0 at the wilting point: Ks. */
  readonly ease: number;
  /** Run through below the roots, DP. */
  readonly drained: number;
}

/**
 * The store of a bed through a run of days: rain and watering in, the crop and drainage out. Watering is given in the
 * morning. Rain of under a fifth of what the crop would give off is not counted, as it hardly wets more than leaves (the
 * source says a fifth of the reference's). Beds have walls: nothing runs off. Nothing rises from below.
 *
 * @param depletion missing from the store before the first day, mm
 * @throws RangeError for amounts below zero, or more missing than the store holds
 * @source Allen, Pereira, Raes and Smith 1998, FAO-56, equations 84 to 88; the light rains: chapter 8
 */
export function waterBalance(days: readonly BalanceDay[], depletion: number): readonly BalanceResult[] {
  let missing = days[0]
    ? within(depletion, 0, days[0].total, "the water missing at first")
    : atLeastZero(depletion, "the water missing at first");
  return days.map((day) => {
    const result = dayOf(day, missing);
    missing = result.depletion;
    return result;
  });
}

function dayOf(day: BalanceDay, before: number): BalanceResult {
  const total = atLeastZero(day.total, "the available water");
  const wanted = atLeastZero(day.cropEt, "the water given off");
  const fallen = atLeastZero(day.rain, "the rain");
  const rain = fallen < 0.2 * wanted ? 0 : fallen;
  const ready = within(day.easyShare, 0, 1, "the easy share") * total;
  // A store that shrank, at a new planting, cannot miss more than it holds.
  const missing = Math.min(before, total);
  const irrigation =
    day.irrigation === "fill"
      ? missing + wanted - rain > ready
        ? missing
        : 0
      : atLeastZero(day.irrigation, "the watering");
  const watered = missing - irrigation;
  const ease = easeOf(Math.max(0, watered), ready, total);
  const cropEt = Math.min(ease * wanted, Math.max(0, total - watered + rain));
  const after = watered - rain + cropEt;
  return {
    depletion: Math.min(total, Math.max(0, after)),
    irrigation,
    cropEt,
    ease,
    drained: Math.max(0, -after),
  };
}

/** Water stress coefficient Ks (FAO-56 equation 84); a crop without any store wilts at once. */
function easeOf(missing: number, ready: number, total: number): number {
  if (missing <= ready && total > 0) return 1;
  return total > ready ? Math.max(0, (total - missing) / (total - ready)) : 0;
}
