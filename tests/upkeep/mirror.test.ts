import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Garden, monthDayOf } from "../../src/index.ts";
import type { Task } from "../../src/upkeep/types.ts";
import { yearRound } from "../../src/upkeep/year-round.ts";
import { mixedGarden, RIVERSIDE } from "./tasks.ts";

/**
 * The southern year is the northern one half a year later. Half a year is 182 days of the year of 365 that all days are
 * reckoned in; months are no days, so watering by the month is compared month by month, six later.
 */
const HALF_YEAR = 182;
const later = (day: number): number => ((day - 1 + HALF_YEAR) % 365) + 1;

const isOfMonth = ({ dayBy }: Task): boolean => dayBy === "months";
const mirrored = (tasks: readonly Task[]) =>
  tasks
    .filter((task) => !isOfMonth(task))
    .map(({ id, kind, title, from, days, dayBy, quantities, bedIds }) => ({
      ...{ id, kind, title, days, dayBy, quantities, bedIds },
      from: later(from),
    }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
const plain = (tasks: readonly Task[]) =>
  tasks
    .filter((task) => !isOfMonth(task))
    .map(({ id, kind, title, from, days, dayBy, quantities, bedIds }) => ({
      ...{ id, kind, title, days, dayBy, quantities, bedIds },
      from,
    }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));

const winter = fc.constantFrom<Garden["site"]["winter"]>("freezing", "mild");
const frosts = fc.option(
  fc.record({ last: fc.integer({ min: 40, max: 160 }), free: fc.integer({ min: 90, max: 200 }) }),
);

describe("the year south of the equator", () => {
  it("is the northern year half a year later, whatever the frosts and the winter, typed or usual", () => {
    fc.assert(
      fc.property(winter, frosts, fc.integer({ min: 24, max: 60 }), (kind, typed, latitude) => {
        const north = {
          ...{ winter: kind, latitude },
          lastFrost: typed && monthDayOf(typed.last),
          firstFrost: typed && monthDayOf(typed.last + typed.free),
        };
        const south = {
          ...{ winter: kind, latitude: -latitude },
          lastFrost: typed && monthDayOf(later(typed.last)),
          firstFrost: typed && monthDayOf(later(typed.last + typed.free)),
        };
        expect(plain(yearRound(mixedGarden(south)))).toEqual(mirrored(yearRound(mixedGarden(north))));
      }),
      { numRuns: 40, seed: 20261125 },
    );
  });

  it("waters in the months six later", () => {
    const months = (site: Partial<Garden["site"]>) =>
      yearRound(mixedGarden(site)).flatMap(({ id }) =>
        /^water-\d\d$/.test(id) ? [Number(id.slice(6))] : [],
      );
    const north = months(RIVERSIDE);
    const south = months({ ...RIVERSIDE, latitude: -44.1, lastFrost: "10-27", firstFrost: "04-14" });
    expect(south).toEqual(north.map((month) => ((month + 5) % 12) + 1).sort((a, b) => a - b));
  });
});
