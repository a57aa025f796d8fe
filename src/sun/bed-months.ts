import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { type BedLight, bedLight, castersFor } from "./bed-light.ts";
import { bedSoil } from "./bed-soil.ts";
import { castersOf } from "./casters.ts";
import { minutesOf } from "./clock.ts";
import { localMidnight } from "./day.ts";
import { type Instant, instantsOf } from "./instants.ts";
import { settingsFor } from "./options.ts";
import { ANY_YEAR, isInSeason, seasonOf } from "./season.ts";
import { bedIn } from "./sun-hours.ts";
import { sunTimes } from "./sun-times.ts";

/** A bed's day in the middle of a month. Times are minutes past midnight by the garden's own clock. */
export interface BedMonth {
  /** 1 for January. */
  readonly month: number;
  /** "2026-04-15". */
  readonly day: string;
  /** Whether it lies in the season that sun hours are averaged over. */
  readonly inSeason: boolean;
  /** When the sun's middle comes over a level horizon and goes; null where it stays up or down. */
  readonly sunrise: number | null;
  readonly sunset: number | null;
  /** Hours of direct sun on its soil that day. */
  readonly hours: number;
  /** From sunrise to sunset without a gap: the whole of a polar day, nothing of a polar night. */
  readonly stretches: readonly SunStretch[];
  /** What shades it when, as it comes in the day. */
  readonly spells: readonly ShadeSpell[];
}

/** A time over which the light on a bed stays the same, to a tenth. */
export interface SunStretch {
  readonly from: number;
  readonly to: number;
  /** Share of the bed's full sun, 0 to 1 in tenths. */
  readonly lit: number;
  /** What takes most of it; null in full sun and while the sun is behind the skyline. */
  readonly by: ItemId | null;
  readonly skyline: boolean;
}

/** A time over which the shadow of one thing takes at least half of a bed's sun. */
export interface ShadeSpell {
  readonly id: ItemId;
  readonly from: number;
  readonly to: number;
  /** "until": from the first sun of the day; "from": to the last. */
  readonly when: "until" | "from" | "all-day" | "between";
}

const MONTHS = Array.from({ length: 12 }, (_, i) => i + 1);
const MIDDLE = 15;
const STEP = 5;

/**
 * How the sun comes to a bed through the year: its day on the 15th of each month, January first.
 * @returns nothing for a bed without area
 * @throws RangeError if there is no such bed
 */
export function bedMonths(garden: Garden, id: ItemId): BedMonth[] {
  const { site } = garden;
  const bed = bedIn(garden, id);
  const days = MONTHS.map((month) => `${ANY_YEAR}-${String(month).padStart(2, "0")}-${MIDDLE}`);
  const settings = settingsFor(site, { days, step: STEP });
  const place = bedSoil(bed, settings.cell);
  if (!place) return [];
  const instants = instantsOf(site, settings);
  const light = bedLight(place, castersFor(bed, castersOf(garden.items)), instants, settings);
  const season = seasonOf(site);
  return days.map((day, i) => {
    const { rise, set, polar } = sunTimes(day, site.latitude, site.longitude, { refraction: false });
    const midnight = localMidnight(day, site.longitude);
    const toClock = (meanMinute: number) => minutesOf(site, day, midnight + meanMinute * MINUTE_MS);
    const inMean = (at: Date) => (at.getTime() - midnight) / MINUTE_MS;
    const up = polar === "night" ? null : { from: rise ? inMean(rise) : 0, to: set ? inMean(set) : 1440 };
    const looks = looksOn(i, instants, light);
    return {
      month: MONTHS[i]!,
      day,
      inSeason: isInSeason(season, day.slice(5)),
      sunrise: rise && toClock(inMean(rise)),
      sunset: set && toClock(inMean(set)),
      // Shares of many cells do not add up to the last digit.
      hours: Math.max(0, (looks.reduce((sum, { share }) => sum + share, 0) * STEP) / 60),
      stretches: up ? stretchesOf(looks, up).map((one) => clocked(one, toClock)) : [],
      spells: up ? spellsOn(day, looks, light, up).map((one) => clocked(one, toClock)) : [],
    };
  });
}

const MINUTE_MS = 60_000;

function clocked<T extends Span>(span: T, toClock: (minute: number) => number): T {
  return { ...span, from: toClock(span.from), to: toClock(span.to) };
}

/** One look at the sun on one day, minutes by mean time. */
interface Look {
  readonly minute: number;
  readonly share: number;
  readonly by: ItemId | null;
}

interface Span {
  readonly from: number;
  readonly to: number;
}

function looksOn(
  day: number,
  instants: readonly Instant[],
  { shares, taken }: Pick<BedLight, "shares" | "taken">,
): Look[] {
  return instants.flatMap((instant, look) =>
    instant.day === day
      ? { minute: instant.minute, share: shares[look]!, by: greatestTaker(look, taken) }
      : [],
  );
}

function greatestTaker(look: number, taken: BedLight["taken"]): ItemId | null {
  let [by, most]: [ItemId | null, number] = [null, 0];
  for (const [id, shares] of taken) if (shares[look]! > most) [by, most] = [id, shares[look]!];
  return by;
}

/** The day cut where the light changes by a tenth or another thing takes most; what no look tells of lies behind the skyline. */
function stretchesOf(looks: readonly Look[], up: Span): SunStretch[] {
  const stretches: SunStretch[] = [];
  const tell = (next: SunStretch) => {
    const last = stretches.at(-1);
    if (last && last.lit === next.lit && last.by === next.by && last.skyline === next.skyline) {
      stretches[stretches.length - 1] = { ...last, to: next.to };
    } else if (next.to > next.from) stretches.push(next);
  };
  let at = up.from;
  const behind = (to: number) => tell({ from: at, to, lit: 0, by: null, skyline: true });
  for (const { minute, share, by } of looks) {
    // The sun comes up between two looks: the first one stands for the minutes before it too.
    if (minute - STEP / 2 > at + STEP) {
      behind(minute - STEP / 2);
      at = minute - STEP / 2;
    }
    const lit = Math.round(share * 10) / 10;
    const to = Math.min(up.to, minute + STEP / 2);
    tell({ from: at, to, lit, by: lit < 1 ? by : null, skyline: false });
    at = to;
  }
  const last = stretches.at(-1);
  if (up.to - at > STEP || !last) behind(up.to);
  else stretches[stretches.length - 1] = { ...last, to: up.to };
  return stretches;
}

function spellsOn(day: string, looks: readonly Look[], { shade }: BedLight, up: Span): ShadeSpell[] {
  const [first, last] = [looks[0], looks.at(-1)];
  if (!first || !last) return [];
  return shade
    .flatMap(({ id, spells }) =>
      spells.flatMap((spell) => {
        if (spell.day !== day) return [];
        const atFirst = spell.from <= first.minute;
        const toLast = spell.to >= last.minute;
        const when = atFirst
          ? toLast
            ? ("all-day" as const)
            : ("until" as const)
          : toLast
            ? ("from" as const)
            : ("between" as const);
        return { id, from: Math.max(up.from, spell.from), to: Math.min(up.to, spell.to), when };
      }),
    )
    .sort((a, b) => a.from - b.from);
}
