import type { Site } from "../garden/garden.ts";
import { practice, type Source } from "../garden/source.ts";
import { daysFrom, roundTheYear, yearDay } from "./year-day.ts";

/** What of a site decides when things are sown. */
export type FrostSite = Pick<Site, "lastFrost" | "firstFrost" | "latitude" | "winter">;

/** The frosts a garden's year is hung up on, as days of the year. */
export interface Frosts {
  /** Mean last frost of spring. */
  readonly last: number;
  /** Mean first frost of autumn. */
  readonly first: number;
  /** From the one to the other, days. */
  readonly freeDays: number;
  /** Whether the gardener typed both, or some of it is only what is usual in the hemisphere and its kind of winter. */
  readonly by: "frosts" | "hemisphere";
}

/** Where the gardener has typed none. Far off in many a place: whoever knows their frosts should type them. */
export const USUAL_FROSTS: Readonly<
  Record<Site["winter"], { readonly last: string; readonly first: string }>
> & { readonly source: Source } = {
  freezing: { last: "05-01", first: "10-10" },
  mild: { last: "03-01", first: "11-25" },
  source: practice("round dates for the middle latitudes, half a year later south of the equator"),
};

/** Half a year, in days: what sets the seasons of the hemispheres apart. */
export const HALF_YEAR = 182;

/** The frosts of a site as typed; what is not typed is what is usual in its hemisphere and its kind of winter. */
export function frostsOf({ lastFrost, firstFrost, latitude, winter }: FrostSite): Frosts {
  const usual = USUAL_FROSTS[winter];
  const later = latitude < 0 ? HALF_YEAR : 0;
  const day = (typed: string | null, otherwise: string) =>
    typed === null ? roundTheYear(yearDay(otherwise) + later) : yearDay(typed);
  const last = day(lastFrost, usual.last);
  const first = day(firstFrost, usual.first);
  const typed = lastFrost !== null && firstFrost !== null;
  return { last, first, freeDays: daysFrom(last, first), by: typed ? "frosts" : "hemisphere" };
}

/** Latitude of the tropics, degrees. */
const TROPIC = 23.44;

/** Whether frost comes to a site at all: not within the tropics where winter is mild and none was typed. */
export const hasFrost = ({ lastFrost, firstFrost, latitude, winter }: FrostSite): boolean =>
  lastFrost !== null || firstFrost !== null || winter === "freezing" || Math.abs(latitude) > TROPIC;

/** The same for sites that sow on the same days. */
export const frostKey = ({ lastFrost, firstFrost, latitude, winter }: FrostSite): string =>
  `${lastFrost} ${firstFrost} ${latitude < 0} ${winter}`;
