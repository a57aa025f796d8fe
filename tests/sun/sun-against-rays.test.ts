import { describe, expect, it } from "vitest";
import { bedSoil } from "../../src/sun/bed-soil.ts";
import { cellMiddle, isSet } from "../../src/sun/cells.ts";
import { growingSeason, sampleDays, seasonDays } from "../../src/sun/season.ts";
import { sunFollowing } from "../../src/sun/sun-following.ts";
import { bedShade, sunHours } from "../../src/sun/sun-hours.ts";
import { looksOf, minutesAt, raysOf } from "../helpers/ray-reference.ts";
import { seeded, withMoved } from "../helpers/scenes.ts";
import { shadyYard } from "../helpers/sun-scenes.ts";

const SEEDS = [1, 2, 3, 4];
const SPOTS = 40;
const MINUTE = 1;
/** A ray a minute takes its time. */
const PATIENCE = 60_000;

describe("the sun map of a seeded yard, against a ray a minute from each spot", () => {
  // The bars: 2 minutes a day on the mean over spots, 10 at the worst of them.
  it.each(SEEDS)(
    "seed %i: on the ground, every 10 and every 2 minutes",
    (seed) => {
      const garden = shadyYard(seed);
      const days = sampleDays(seasonDays(growingSeason(garden.site.latitude)), 12);
      const looks = looksOf(garden, days, MINUTE);
      const rays = raysOf(garden.items);
      const live = sunHours(garden, { days, step: 10 }).yard;
      const settled = sunHours(garden, { days, step: 2 }).yard;

      const random = seeded(seed);
      const errors: { live: number; settled: number }[] = [];
      for (let tries = 0; errors.length < SPOTS && tries < 5000; tries++) {
        const [column, row] = [Math.floor(random() * live.columns), Math.floor(random() * live.rows)];
        const i = row * live.columns + column;
        // A spot on a bed shows the bed's soil and is asked for below; what the beds' shadows change stays in.
        const spot = cellMiddle(live, column, row);
        if (Number.isNaN(live.hours[i]!) || underBed(garden, spot)) continue;
        const truth = minutesAt(rays, looks, MINUTE, spot, 0) / days.length;
        errors.push({
          live: Math.abs(live.hours[i]! * 60 - truth),
          settled: Math.abs(settled.hours[i]! * 60 - truth),
        });
      }
      expect(errors).toHaveLength(SPOTS);
      const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0) / of.length;
      expect(mean(errors.map((error) => error.live))).toBeLessThanOrEqual(2);
      expect(Math.max(...errors.map((error) => error.live))).toBeLessThanOrEqual(10);
      expect(mean(errors.map((error) => error.settled))).toBeLessThanOrEqual(0.5);
      expect(Math.max(...errors.map((error) => error.settled))).toBeLessThanOrEqual(2.5);
    },
    PATIENCE,
  );

  const STEP = 20;
  it.each(SEEDS)(
    "seed %i: on the beds, at the height of their soil, without their own frame",
    (seed) => {
      const garden = shadyYard(seed);
      const days = sampleDays(seasonDays(growingSeason(garden.site.latitude)), 4);
      const looks = looksOf(garden, days, STEP);
      const map = sunHours(garden, { days, step: STEP });
      expect(map.beds.length).toBe(garden.items.filter(({ kind }) => kind === "bed").length);
      for (const bed of garden.items) {
        if (bed.kind !== "bed") continue;
        const found = map.beds.find(({ id }) => id === bed.id)!;
        const rays = raysOf(garden.items.filter(({ id }) => id !== bed.id));
        const { cells, soil, level } = bedSoil(bed, map.yard.cell)!;
        expect(found.soil).toBe(level);
        // The same looks at the sun from the same spots: nothing but rounding is left.
        const minutes: number[] = [];
        for (let row = 0; row < cells.rows; row++) {
          for (let column = 0; column < cells.columns; column++) {
            if (!isSet(soil, cells, column, row)) continue;
            minutes.push(minutesAt(rays, looks, STEP, cellMiddle(cells, column, row), level) / days.length);
          }
        }
        expect(minutes.length).toBeGreaterThanOrEqual(24);
        const mean = minutes.reduce((sum, one) => sum + one, 0) / minutes.length;
        expect(found.hours * 60).toBeCloseTo(mean, 6);
        expect(found.worst.hours * 60).toBeCloseTo(Math.min(...minutes), 6);
      }
    },
    PATIENCE,
  );

  it.each(SEEDS)("seed %i: what each thing costs a bed is what the bed gains without it", (seed) => {
    const garden = shadyYard(seed);
    const options = { days: 4, step: 10 };
    for (const bed of sunHours(garden, options).beds) {
      for (const { id, hours } of bed.shade!) {
        const without = { ...garden, items: garden.items.filter((item) => item.id !== id) };
        expect(bedShade(without, bed.id, options)!.hours - bed.hours).toBeCloseTo(hours, 6);
      }
    }
  });
});

describe("following one thing", () => {
  const OPTIONS = { days: 3, step: 15, cell: 300 };
  it.each(SEEDS)(
    "seed %i: gives what the whole map gives, whatever moves",
    (seed) => {
      const garden = shadyYard(seed);
      const random = seeded(seed + 50);
      for (const { id } of garden.items) {
        const follow = sunFollowing(garden, id, OPTIONS);
        const by = [random() * 3000 - 1500, random() * 3000 - 1500] as const;
        for (const moved of [garden, withMoved(garden, id, by)]) {
          const [quick, whole] = [follow(moved), sunHours(moved, OPTIONS)];
          quick.yard.hours.forEach((hours, i) => {
            const other = whole.yard.hours[i]!;
            if (!(Number.isNaN(hours) && Number.isNaN(other)) && !(Math.abs(hours - other) < 1e-5)) {
              throw new Error(`${id}: cell ${i} has ${hours} h, not ${other}`);
            }
          });
          expect(quick.beds.map((bed) => bed.id)).toEqual(whole.beds.map((bed) => bed.id));
          quick.beds.forEach((bed, i) => {
            expect(bed.hours).toBeCloseTo(whole.beds[i]!.hours, 9);
            expect(bed.worst.hours).toBeCloseTo(whole.beds[i]!.worst.hours, 9);
            expect(bed.parts.midday).toBeCloseTo(whole.beds[i]!.parts.midday, 9);
            expect(bed.worstDay.hours).toBeCloseTo(whole.beds[i]!.worstDay.hours, 9);
          });
        }
      }
    },
    PATIENCE,
  );
});

function underBed(garden: ReturnType<typeof shadyYard>, [x, y]: readonly [number, number]): boolean {
  return garden.items.some(
    (item) => item.kind === "bed" && Math.hypot(item.at[0] - x, item.at[1] - y) < 2200,
  );
}
