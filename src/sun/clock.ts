import type { Site } from "../garden/garden.ts";
import { daysSince1970 } from "./day.ts";

/** What a clock in the garden shows. */
export interface ClockTime {
  readonly hours: number;
  readonly minutes: number;
  /** By the zone's clock; or by the sun's mean time where no zone is set, or none that this machine knows. */
  readonly zone: "clock" | "sun";
}

type Zoned = Pick<Site, "longitude" | "timeZone">;

const MINUTE_MS = 60_000;
const DAY_MS = 1440 * MINUTE_MS;
/** Mean time runs four minutes ahead for each degree east. */
const MS_PER_DEGREE = 4 * MINUTE_MS;

/** Clock time in a garden at an instant, rounded to the minute; summer time as the zone has it then. */
export function clockTime(site: Zoned, at: Date): ClockTime {
  const { ahead, zone } = aheadOf(site, at.getTime());
  const minutes = Math.round((at.getTime() + ahead) / MINUTE_MS);
  const inDay = ((minutes % 1440) + 1440) % 1440;
  return { hours: Math.floor(inDay / 60), minutes: inDay % 60, zone };
}

/**
 * The instant at so many minutes past midnight by a garden's clock.
 * @param day "2026-04-15"
 * @param minutes past midnight; below 0 the day before, from 1440 on the next. In the hour that a clock skips in spring,
 *   an hour later.
 * @throws RangeError for a day that is none
 */
export function instantAt(site: Zoned, day: string, minutes: number): Date {
  const shown = daysSince1970(day) * DAY_MS + minutes * MINUTE_MS;
  const near = shown - aheadOf(site, shown).ahead;
  return new Date(shown - aheadOf(site, near).ahead);
}

/** Minutes past midnight of a day by a garden's clock; below 0 or above 1440 where the instant lies on another day. */
export const minutesOf = (site: Zoned, day: string, ms: number): number =>
  (ms + aheadOf(site, ms).ahead - daysSince1970(day) * DAY_MS) / MINUTE_MS;

/** "10:40", on a clock of 24 hours; a time of the day before or after is shown as a clock would. */
export function formatClock(minutes: number): string {
  const inDay = ((Math.round(minutes) % 1440) + 1440) % 1440;
  return `${Math.floor(inDay / 60)}:${String(inDay % 60).padStart(2, "0")}`;
}

/** Whether this machine has a clock of a zone. */
export const isTimeZone = (timeZone: string): boolean => clockOf(timeZone) !== null;

/** How far the clock is ahead of Universal Time at an instant, ms. */
function aheadOf({ longitude, timeZone }: Zoned, ms: number): { ahead: number; zone: ClockTime["zone"] } {
  const clock = timeZone === null ? null : clockOf(timeZone);
  return clock ? { ahead: clock(ms), zone: "clock" } : { ahead: longitude * MS_PER_DEGREE, zone: "sun" };
}

type Clock = (ms: number) => number;
const clocks = new Map<string, Clock | null>();

/** A clock of a zone; null for one that this machine's list of zones does not have. */
function clockOf(timeZone: string): Clock | null {
  let clock = clocks.get(timeZone);
  if (clock === undefined) {
    clock = makeClock(timeZone);
    clocks.set(timeZone, clock);
  }
  return clock;
}

function makeClock(timeZone: string): Clock | null {
  let format: Intl.DateTimeFormat;
  try {
    format = new Intl.DateTimeFormat("en-US", {
      timeZone,
      calendar: "gregory",
      numberingSystem: "latn",
      hourCycle: "h23",
      year: "numeric",
      month: "numeric",
      day: "numeric",
      hour: "numeric",
      minute: "numeric",
      second: "numeric",
    });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
  return (ms) => {
    const whole = Math.floor(ms / 1000) * 1000;
    const parts = new Map(format.formatToParts(whole).map(({ type, value }) => [type, Number(value)]));
    const field = (name: Intl.DateTimeFormatPartTypes) => parts.get(name) ?? 0;
    const shown = Date.UTC(
      field("year"),
      field("month") - 1,
      field("day"),
      field("hour"),
      field("minute"),
      field("second"),
    );
    return shown - whole;
  };
}
