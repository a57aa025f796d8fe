import { type Crop, cropById } from "../crops/crop-table.ts";
import type { CropId } from "../garden/crop-ids.ts";
import { type FrostSite, type Frosts, frostsOf } from "./frosts.ts";
import {
  AGAIN_DAYS,
  COOL_UNTIL,
  HARDINESS,
  OVER_WINTER,
  SHORT_DAYS,
  type Sowing,
  STANDS_FROST,
  sowingOf,
} from "./sowing-table.ts";
import { roundTheYear, type Stretch } from "./year-day.ts";

/** Days on which a crop may be sown or set out in its bed. */
export interface SetWindow extends Stretch {
  /** The day taken where none is typed. */
  readonly usual: number;
  /** For the season that begins in spring, for a second crop in autumn, or to stand over winter. */
  readonly purpose: "spring" | "autumn" | "over-winter";
}

/** When a crop is sown or set out in the open at a place. Days of a year of 365, day 1 being 1 January. */
export interface SowingWindow {
  readonly crop: CropId;
  /** In the order of the growing year; none where the frost-free season is too short for it. */
  readonly windows: readonly SetWindow[];
  /** The day taken where none is typed: that of the first window, or the one that would be if the season were longer. */
  readonly usual: number;
  /** Under cover before it is set out, days; null where it is sown where it grows. */
  readonly underCover: number | null;
  /** Days from then until it is ready, as the crop table gives them. */
  readonly daysToPick: Crop["daysToMaturity"];
  readonly perennial: boolean;
  /** Whether the days follow from frosts that were typed, or are those usual in the hemisphere. */
  readonly dayBy: Frosts["by"];
}

/**
 * When a crop is sown or set out at a site, by its frosts.
 *
 * Spring: from its hardiness, in days about the last frost. Warm crops may be set for as long as they still ripen before
 * the first frost, cool ones until the heat of summer. Cool crops that are sown again are counted back from the first
 * frost. Where both windows meet they are one. The sources stand in `SOWING_SOURCES`.
 *
 * @throws RangeError for a crop that is not in the crop table
 */
export function sowingWindow(crop: CropId, site: FrostSite): SowingWindow {
  const row = cropById(crop);
  if (!row) throw new RangeError(`no crop of the crop table: "${crop}"`);
  const sowing = sowingOf(crop);
  const frosts = frostsOf(site);
  const windows = windowsOf(row, sowing, frosts);
  return {
    crop,
    windows,
    usual: windows[0]?.usual ?? roundTheYear(frosts.last + usualDays(sowing.hardiness)),
    underCover: sowing.underCover,
    daysToPick: row.daysToMaturity,
    perennial: sowing.picked === "stays",
    dayBy: frosts.by,
  };
}

const usualDays = (hardiness: Sowing["hardiness"]): number =>
  hardiness === "autumn" ? 0 : HARDINESS[hardiness].usual;

/** Reckoned in days from the last frost, so that nothing runs over new year until the end. */
function windowsOf(crop: Crop, { hardiness, again, picked }: Sowing, frosts: Frosts): SetWindow[] {
  const free = frosts.freeDays;
  const window = (from: number, to: number, usual: number, purpose: SetWindow["purpose"]): SetWindow => ({
    from: roundTheYear(frosts.last + from),
    days: Math.min(364, to - from) + 1,
    usual: roundTheYear(frosts.last + usual),
    purpose,
  });
  if (hardiness === "autumn") {
    const { from, usual, until } = OVER_WINTER;
    return [window(free + from, free + until, free + usual, "over-winter")];
  }
  const { from, usual } = HARDINESS[hardiness];
  if (picked === "stays") return [window(from, COOL_UNTIL, usual, "spring")];
  if (crop.season === "warm") {
    const ripens = free - crop.daysToMaturity.most;
    return ripens < from ? [] : [window(from, Math.max(usual, ripens), usual, "spring")];
  }
  if (!again) return [window(from, COOL_UNTIL, usual, "spring")];
  const lastDay = free + STANDS_FROST[hardiness] - crop.daysToMaturity.most - SHORT_DAYS;
  const firstAgain = lastDay - AGAIN_DAYS;
  if (firstAgain > COOL_UNTIL) {
    return [
      window(from, COOL_UNTIL, usual, "spring"),
      window(firstAgain, lastDay, lastDay - AGAIN_DAYS / 2, "autumn"),
    ];
  }
  return [window(from, Math.max(COOL_UNTIL, lastDay), usual, "spring")];
}
