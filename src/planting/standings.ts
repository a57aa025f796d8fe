import { cropById } from "../crops/crop-table.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Planting } from "../garden/plantings.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { type FrostSite, type Frosts, frostKey, frostsOf } from "./frosts.ts";
import { STANDS_FROST, sowingOf } from "./sowing-table.ts";
import { type SowingWindow, sowingWindow } from "./sowing-window.ts";
import type { Standing } from "./types.ts";
import { daysFrom, meetInTime, roundTheYear, YEAR_DAYS, yearDay } from "./year-day.ts";

const remembered = new WeakMap<Bed["plantings"], { key: string; standings: readonly Standing[] }>();

/**
 * When each planting of a bed stands in it, in the order of the bed's list.
 *
 * A planting stands from its typed day, else from the usual day of its sowing window. Plantings without a patch of their own
 * stand side by side, but a crop that is listed again without a day is a second sowing and takes its next window. Where two
 * patches lie over one another, the one without a typed day waits until the other has gone if its window lasts that long,
 * else it takes its next window; if none fits it keeps its usual day, and the two are crowded. Typed days come first, then
 * the order of the list. A planting goes on its typed last day, else when all of it is picked. Perennials stand all year.
 *
 * @param site its frosts; where they are not typed those usual in its hemisphere, which `dayBy` says
 */
export function standingsOf({ plantings }: Pick<Bed, "plantings">, site: FrostSite): readonly Standing[] {
  const key = frostKey(site);
  let known = remembered.get(plantings);
  if (known?.key !== key) {
    known = { key, standings: workedOut(plantings, site) };
    remembered.set(plantings, known);
  }
  return known.standings;
}

function workedOut(plantings: readonly Planting[], site: FrostSite): readonly Standing[] {
  const frosts = frostsOf(site);
  const standings: Standing[] = [];
  const put = (planting: Planting, index: number, from: number) => {
    standings[index] = standing(planting, index, from, frosts);
  };
  plantings.forEach((planting, index) => {
    if (planting.from !== null) put(planting, index, yearDay(planting.from));
  });
  plantings.forEach((planting, index) => {
    if (planting.from !== null) return;
    const before = Object.values(standings);
    put(planting, index, freeDay(planting, index, before, sowingWindow(planting.crop, site), frosts));
  });
  return standings;
}

function standing(planting: Planting, index: number, from: number, frosts: Frosts): Standing {
  const { least } = daysToPick(planting);
  return {
    planting,
    index,
    from,
    days:
      planting.until === null
        ? daysUntilPicked(planting, from, frosts)
        : daysFrom(from, yearDay(planting.until)) + 1,
    pickFrom: roundTheYear(from + least),
    dayBy: planting.from === null ? frosts.by : "typed",
  };
}

/** The first usual day on which the ground is free, by the windows in turn; the usual day where none has room. */
function freeDay(
  planting: Planting,
  index: number,
  before: readonly Standing[],
  { windows, usual }: SowingWindow,
  frosts: Frosts,
): number {
  const earlier = before.filter((other) => other.index < index && isSecondSowing(planting, other.planting));
  const inTheWay = before.filter((other) => lieOver(planting, other.planting));
  const later = windows.slice(Math.min(earlier.length, windows.length - 1));
  for (const window of later) {
    let from = window.usual;
    for (let tries = 0; tries <= inTheWay.length; tries++) {
      const mine = standing(planting, index, from, frosts);
      const other = inTheWay.find((one) => meetInTime(one, mine));
      if (!other) return from;
      from = roundTheYear(other.from + other.days);
      if (other.days >= YEAR_DAYS || daysFrom(window.from, from) >= window.days) break;
    }
  }
  return later[0]?.usual ?? usual;
}

const isSecondSowing = (planting: Planting, other: Planting): boolean =>
  other.crop === planting.crop && other.from === null && planting.patch === null && other.patch === null;

/** Whether the patches of two plantings lie over one another; those without a patch get out of the way of any. */
export function lieOver({ patch: a }: Planting, { patch: b }: Planting): boolean {
  if (a === null || b === null) return false;
  const across = (a.width + b.width) / 2 - Math.abs(a.at[0] - b.at[0]);
  const down = (a.length + b.length) / 2 - Math.abs(a.at[1] - b.at[1]);
  return across > SAME_LENGTH && down > SAME_LENGTH;
}

function daysUntilPicked(planting: Planting, from: number, { last, freeDays }: Frosts): number {
  const { hardiness, picked } = sowingOf(planting.crop);
  const { least, most } = daysToPick(planting);
  if (picked === "stays") return YEAR_DAYS;
  if (picked === "once" || hardiness === "autumn") return Math.min(YEAR_DAYS, most);
  const days =
    picked === "frost" ? daysFrom(from, last + freeDays + STANDS_FROST[hardiness]) : least + picked;
  return Math.min(YEAR_DAYS, Math.max(most, days));
}

/** From the crop table, whose rows a garden's crops are checked against where it is read. */
function daysToPick({ crop }: Planting): { readonly least: number; readonly most: number } {
  const row = cropById(crop);
  if (!row) throw new RangeError(`no crop of the crop table: "${crop}"`);
  return row.daysToMaturity;
}
