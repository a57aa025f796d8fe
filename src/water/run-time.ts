import type { MonthNeed } from "./bed-need.ts";
import { MONTHS } from "./calendar.ts";
import { aboveZero, atLeastZero } from "./within.ts";

const MM2_PER_M2 = 1e6;

/** Depth of water that a flow brings over an area in an hour, mm. @throws RangeError for an area of nothing */
export const rainRate = (flowLh: number, areaMm2: number): number =>
  atLeastZero(flowLh, "the flow") / (aboveZero(areaMm2, "the area") / MM2_PER_M2);

/** The same of a field of even emitters, mm an hour. @param spacing and @param lineSpacing mm */
export const dripRate = (emitterLh: number, spacing: number, lineSpacing: number): number =>
  rainRate(
    emitterLh,
    aboveZero(spacing, "the spacing of emitters") * aboveZero(lineSpacing, "the spacing of lines"),
  );

/** Minutes until a flow has brought so many litres. @throws RangeError without a flow */
export const minutesFor = (litres: number, flowLh: number): number =>
  (60 * atLeastZero(litres, "the water")) / aboveZero(flowLh, "the flow");

/** How a zone is run in a week. */
export interface Runs {
  readonly aWeek: number;
  readonly minutesEach: number;
}

/**
 * Runs of a week: as many as the soil's store asks for, all alike, so that no run gives more than the roots' soil takes up.
 *
 * @param minutesAWeek as the neediest bed of the zone asks
 * @param everyDays days the store lasts between two waterings; null where none is needed
 * @returns at most three runs a day: a store that lasts a shorter time is no garden bed
 */
export function runsOf(minutesAWeek: number, everyDays: number | null): Runs {
  const minutes = atLeastZero(minutesAWeek, "the minutes");
  if (minutes === 0 || everyDays === null) return { aWeek: 0, minutesEach: 0 };
  const aWeek = Math.min(21, Math.max(1, Math.ceil(7 / aboveZero(everyDays, "the days between"))));
  return { aWeek, minutesEach: minutes / aWeek };
}

/** A bed in a zone: what it needs and what its lines bring. */
export interface ZoneBed {
  readonly litresAWeek: number;
  readonly flowLh: number;
}

/**
 * Minutes a week for a zone. All its beds run as long, so the neediest for its flow decides, and the others get more than
 * they need: beds alike belong in one zone.
 */
export const zoneMinutes = (beds: readonly ZoneBed[]): number =>
  beds.reduce((most, { litresAWeek, flowLh }) => Math.max(most, minutesFor(litresAWeek, flowLh)), 0);

/**
 * How a zone is run in each month: as long as its neediest bed asks, as often as its shallowest store does.
 * @returns twelve months, January first
 * @throws RangeError for a bed without twelve months or without flow
 */
export function zoneYear(
  beds: readonly { readonly months: readonly MonthNeed[]; readonly flowLh: number }[],
): readonly Runs[] {
  return MONTHS.map((month) => {
    const needs = beds.map(({ months, flowLh }) => {
      const need = months[month];
      if (!need || months.length !== 12) throw new RangeError("a bed's year has twelve months");
      return { litresAWeek: need.litresAWeek, flowLh, everyDays: need.everyDays };
    });
    const waits = needs.flatMap(({ everyDays }) => (everyDays === null ? [] : [everyDays]));
    return runsOf(zoneMinutes(needs), waits.length > 0 ? Math.min(...waits) : null);
  });
}
