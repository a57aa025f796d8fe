import type { ItemId } from "../garden/fields.ts";
import { MONTHS } from "../water/calendar.ts";
import { pipeLossKPa } from "../water/pipe.ts";
import { zoneMinutes, zoneYear } from "../water/run-time.ts";
import { pressureAtLines, type TapToLines } from "../water/tap-flow.ts";
import { type BedLines, planZones, type Zone } from "../water/zones.ts";
import type { BedWaterYear, DripSupply, DripZone } from "./types.ts";

export interface ZonedBeds {
  readonly zones: readonly DripZone[];
  readonly fewest: boolean;
  /** Beds of which no zone can have even one line. */
  readonly tooThirsty: readonly string[];
}

interface Zoned {
  readonly id: ItemId;
  readonly lines: number;
  readonly flowLh: number;
}

/** Beds shared out into as few zones as the tap allows, and how long each runs through the year. */
export function zonesOf(
  beds: readonly Zoned[],
  years: ReadonlyMap<ItemId, BedWaterYear>,
  supply: DripSupply,
  way: TapToLines,
): ZonedBeds {
  const alike = beds.map(({ id, lines, flowLh }): BedLines => ({ id, lines, lineLh: flowLh / lines }));
  const { zones, fewest, tooThirsty } = planZones(alike, supply.zoneLimitLh);
  const byId = new Map<string, Zoned>(beds.map((bed) => [bed.id, bed]));
  return { zones: zones.map((zone) => zoneOf(zone, byId, years, supply, way)), fewest, tooThirsty };
}

function zoneOf(
  { parts, flowLh }: Zone,
  byId: ReadonlyMap<string, Zoned>,
  years: ReadonlyMap<ItemId, BedWaterYear>,
  supply: DripSupply,
  way: TapToLines,
): DripZone {
  const beds = parts.map(({ id }) => byId.get(id)!);
  // A part of a bed has as much of its flow as of its need: it runs as long as the whole would.
  const needs = beds.map(({ id, flowLh: whole }) => ({ year: years.get(id)!, flowLh: whole }));
  const minutesAWeek = MONTHS.map((month) =>
    zoneMinutes(needs.map((need) => ({ litresAWeek: need.year.litresAWeek[month]!, flowLh: need.flowLh }))),
  );
  const known = needs.flatMap(({ year, flowLh: whole }) =>
    year.months ? [{ months: year.months, flowLh: whole }] : [],
  );
  const litresAWeek = minutesAWeek.map((minutes) => (minutes / 60) * flowLh);
  const askedIn = (month: number) =>
    needs.reduce(
      (sum, { year, flowLh: whole }, i) => sum + (year.litresAWeek[month]! * parts[i]!.flowLh) / whole,
      0,
    );
  return {
    bedIds: beds.map(({ id }) => id),
    lines: parts.map(({ lines }) => lines),
    flowLh,
    pressureKPa: pressureAtLines(supply, way, flowLh),
    mainLossKPa: way.main ? pipeLossKPa({ ...way.main, flowLh }) : 0,
    months: known.length === needs.length ? zoneYear(known) : null,
    minutesAWeek,
    litresAWeek,
    surplusAWeek: litresAWeek.map((litres, month) => Math.max(0, litres - askedIn(month))),
  };
}
