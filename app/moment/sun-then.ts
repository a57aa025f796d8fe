import {
  clockTime,
  instantAt,
  type Site,
  type SunPosition,
  skylineAt,
  sunPosition,
  sunTimes,
} from "../../src/index.ts";

/** Where the sun stands at a moment, and whether it shines into the yard. */
export interface SunThen extends SunPosition {
  /** "down": under the level horizon; "hidden": behind the skyline. */
  readonly shines: "yes" | "hidden" | "down";
}

/** The sun over a garden at so many minutes past midnight by its clock. */
export function sunThen(site: Site, day: string, minutes: number): SunThen {
  const sun = sunPosition(instantAt(site, day, minutes), site.latitude, site.longitude);
  if (sun.altitude <= 0) return { ...sun, shines: "down" };
  return { ...sun, shines: sun.altitude > skylineAt(site.skyline, sun.azimuth) ? "yes" : "hidden" };
}

/** Clock times of a day, minutes past midnight from 0 up to 1440. */
export interface DayMarks {
  /** The sun's middle over a level horizon without air, as hours of sun are counted; null where it stays up or down. */
  readonly rise: number | null;
  readonly noon: number;
  readonly set: number | null;
  readonly polar: "day" | "night" | null;
}

const known = new WeakMap<Site, { readonly day: string; readonly marks: DayMarks }>();

/** Sunrise, noon by the sun and sunset by the garden's clock. The last day asked of is remembered: it plays for a while. */
export function dayMarks(site: Site, day: string): DayMarks {
  let last = known.get(site);
  if (last?.day !== day) {
    last = { day, marks: marksOf(site, day) };
    known.set(site, last);
  }
  return last.marks;
}

function marksOf(site: Site, day: string): DayMarks {
  const { rise, noon, set, polar } = sunTimes(day, site.latitude, site.longitude, { refraction: false });
  const toClock = (at: Date): number => {
    const { hours, minutes } = clockTime(site, at);
    return hours * 60 + minutes;
  };
  return { rise: rise && toClock(rise), noon: toClock(noon), set: set && toClock(set), polar };
}

/** A part of the day in which one thing holds of the sun. */
export interface SunSpan {
  readonly from: number;
  readonly to: number;
  readonly shines: SunThen["shines"];
}

const LOOK = 10;

/** The day from midnight to midnight, cut where the sun rises, sets, or goes behind the skyline; to ten minutes. */
export function sunSpans(site: Site, day: string): SunSpan[] {
  const spans: SunSpan[] = [];
  for (let from = 0; from < 1440; from += LOOK) {
    const { shines } = sunThen(site, day, from + LOOK / 2);
    const last = spans.at(-1);
    if (last?.shines === shines) spans[spans.length - 1] = { ...last, to: from + LOOK };
    else spans.push({ from, to: from + LOOK, shines });
  }
  return spans;
}
