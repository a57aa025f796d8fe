import type { ItemId } from "../garden/fields.ts";
import { practice, published, type Source } from "../garden/source.ts";
import { bedWaterYears } from "../irrigation/bed-water-year.ts";
import { dripPlan } from "../irrigation/drip-plan.ts";
import { isGrowingWeather } from "../irrigation/growing-weather.ts";
import type { BedWaterYear, DripZone } from "../irrigation/types.ts";
import { total } from "../takeoff/purchase.ts";
import { formatWater } from "../units/water-measures.ts";
import { dayOfYear, daysIn, MONTHS } from "../water/calendar.ts";
import { WEEKLY_RULE } from "../water/weekly-rule.ts";
import { say, sayCount } from "../words/say.ts";
import type { Task } from "./types.ts";
import { capitalised, counted, listed } from "./words.ts";
import { idsOf, type YearContext } from "./year-context.ts";
import { aboutFirstFrost, aboutLastFrost } from "./year-frame.ts";

const CALCULATED: Source = published(
  "FAO Irrigation and Drainage Paper 56, from the climate kept under Site",
);
const DRIP_CARE = practice("drip lines are flushed and checked in spring and emptied before frost");

/** How much and how long to water month by month, and what pipes ask in spring and before frost. */
export function waterTasks(context: YearContext): Task[] {
  const years = bedWaterYears(context.garden);
  const zones = dripPlan(context.garden).zones;
  return [...MONTHS.flatMap((month) => monthTask(month, years, zones, context)), ...dripCare(context)];
}

function monthTask(
  month: number,
  years: readonly BedWaterYear[],
  zones: readonly DripZone[],
  context: YearContext,
): Task[] {
  const { units } = context;
  const asks = years.filter((year) => asksIn(month, year, context));
  const asking = new Set(asks.map(({ bedId }) => bedId));
  // Where it freezes the lines are empty in winter: what then wants water gets it by hand.
  const laid = isGrowingWeather(month, context.garden.site) ? zones : [];
  const running = laid.flatMap((zone, i) => {
    const minutes = Math.round(zone.minutesAWeek[month] ?? 0);
    const runs = minutes >= LEAST_MINUTES && zone.bedIds.some((id) => asking.has(id));
    return runs ? [say`${zoneName(zone, i, laid, context)}: ${minutesWords(minutes)} a week`] : [];
  });
  const onZones = new Set<ItemId>(laid.flatMap(({ bedIds }) => bedIds));
  const byHand = asks.filter(({ bedId }) => !onZones.has(bedId));
  const litres = total(byHand, ({ litresAWeek }) => litresAWeek[month] ?? 0);
  if (running.length === 0 && litres === 0) return [];
  const beds = context.beds.filter(({ id }) => asking.has(id));
  const byRule = asks.every(({ method }) => method === "rule-of-thumb");
  const rain = byRule
    ? say`about an inch a week, less the rain that falls`
    : say`rain of a mean year is taken off`;
  const drips = running.length > 0;
  return [
    {
      id: `water-${String(month + 1).padStart(2, "0")}`,
      kind: "water",
      title: titleOf(drips, litres > 0),
      detail: `${capitalised(context.named(beds))}: ${rain}. ${drips ? runsWords(laid, month) : say`Seldom and deep: a good soaking two or three times a week.`}`,
      from: dayOfYear(month, 1),
      days: daysIn(month),
      dayBy: "months",
      since: 0,
      years: null,
      bedIds: idsOf(beds),
      quantities: [
        ...running,
        ...(litres > 0
          ? [
              drips
                ? say`${formatWater(litres, units)} a week for ${counted(byHand.length, "bed")} without drip`
                : say`${formatWater(litres, units)} a week in all`,
            ]
          : []),
      ],
      tools: drips ? [say`timer`] : [say`hose or can`],
      why: say`Steady moisture at the roots: too little stunts, too much washes food out of the bed.`,
      cautions: [
        say`Feel the soil a finger deep before you water: this is a mean, not this week’s weather.`,
        ...(drips ? [] : [say`The hose tap needs its backflow device.`]),
      ],
      source: byRule ? WEEKLY_RULE.sources[0]! : CALCULATED,
    },
  ];
}

/**
 * Whether a bed is watered in a month: where winters freeze only in growing weather. What is less than a shower is left to
 * the rain.
 */
function asksIn(month: number, { litresAWeek, areaMm2 }: BedWaterYear, { garden }: YearContext): boolean {
  const depth = ((litresAWeek[month] ?? 0) * MM3_PER_LITRE) / Math.max(1, areaMm2);
  if (depth < LEAST_DEPTH) return false;
  return garden.site.winter === "mild" || isGrowingWeather(month, garden.site);
}

const MM3_PER_LITRE = 1e6;
/** A week's water that is worth going out for, mm. */
const LEAST_DEPTH = 1;
/** Shorter runs of a week do not fill the lines. */
const LEAST_MINUTES = 2;

const titleOf = (drips: boolean, byHand: boolean): string => {
  if (!drips) return say`Water the beds`;
  return byHand ? say`Set the drip timer, water the rest` : say`Set the drip timer`;
};

const minutesWords = (minutes: number): string =>
  minutes < 120 ? say`${minutes} min` : say`${Math.floor(minutes / 60)} h ${minutes % 60} min`;

function zoneName(
  { bedIds }: DripZone,
  index: number,
  zones: readonly DripZone[],
  { beds, named }: YearContext,
): string {
  const watered = named(beds.filter(({ id }) => bedIds.includes(id)));
  return zones.length === 1 ? say`Drip on ${watered}` : say`Zone ${index + 1}, ${watered}`;
}

/** How often each zone runs, where that is known. */
function runsWords(zones: readonly DripZone[], month: number): string {
  const runs = zones.flatMap(({ months }, i) => {
    const run = months?.[month];
    return run && run.aWeek > 0
      ? [runWords(run.aWeek, Math.round(run.minutesEach), zones.length > 1 ? i + 1 : null)]
      : [];
  });
  return runs.length > 0 ? `${capitalised(listed(runs))}.` : say`Two or three runs a week.`;
}

/** "3 runs a week of 40 min", of one zone among several. */
function runWords(aWeek: number, minutes: number, zone: number | null): string {
  const runs = sayCount(
    aWeek,
    { one: "{{count}} run a week of {{minutes}} min", other: "{{count}} runs a week of {{minutes}} min" },
    { minutes },
  );
  return zone === null ? runs : say`zone ${zone} ${runs}`;
}

function dripCare(context: YearContext): Task[] {
  const { beds, frame } = context;
  const watered = beds.filter(({ watering }) => watering.by === "drip");
  if (watered.length === 0) return [];
  const common = { kind: "water" as const, years: null, bedIds: idsOf(watered), quantities: [] };
  const spring: Task = {
    ...common,
    id: "drip-spring",
    title: say`Flush and check the drip lines`,
    detail: say`Open the ends of the lines on ${context.named(watered)}, run until the water is clear, close them, clean the filter, and look for emitters that drip too much or not at all.`,
    ...aboutLastFrost(frame, -14, 14),
    since: 1,
    tools: [say`spare emitters and couplings`, say`punch`],
    why: say`A blocked emitter shows only when the plant beside it has wilted.`,
    cautions: [say`See that the backflow device stands before anything else at the tap.`],
    source: DRIP_CARE,
  };
  if (!frame.freezes) return [spring];
  const hard = frame.winter === "freezing";
  const autumn: Task = {
    ...common,
    id: "drip-winter",
    title: hard ? say`Blow out the drip lines before frost` : say`Drain the drip lines before frost`,
    detail: hard
      ? say`Shut the water off, open the ends on ${context.named(watered)}, blow the lines out with air at low pressure, and bring timer, filter, regulator and backflow device indoors.`
      : say`Shut the water off, open the ends on ${context.named(watered)} and let them drain; bring the timer indoors.`,
    ...aboutFirstFrost(frame, -14, 14),
    since: 0,
    tools: hard ? [say`compressor with a regulator`, say`box for the fittings`] : [say`box for the timer`],
    why: say`Water that freezes in pipe and fittings bursts them.`,
    cautions: hard
      ? [say`Keep the air below the pressure the lines are rated for, and wear eye protection.`]
      : [],
    source: DRIP_CARE,
  };
  return [spring, autumn];
}
