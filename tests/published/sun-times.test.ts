import { describe, expect, it } from "vitest";
import { growingSeason, seasonDays } from "../../src/sun/season.ts";
import { sunPlace } from "../../src/sun/sun-place.ts";
import { sunTimes } from "../../src/sun/sun-times.ts";
import { SUN, tolerance } from "./sun-cases.ts";

/** The date on which an instant falls by the mean time of a longitude: the day its own sun belongs to. */
const localDate = (utc: Date, longitude: number) =>
  new Date(utc.getTime() + longitude * 240_000).toISOString().slice(0, 10);

const toleranceOf = (source: string, latitude: number) =>
  source.includes("SPA")
    ? tolerance("rise_set_vs_spa_s")
    : tolerance(Math.abs(latitude) >= 60 ? "rise_set_lat_60_and_above_s" : "rise_set_vs_usno_s");

describe("sunrise and sunset against the US Naval Observatory and NREL SPA", () => {
  it.each(SUN.rise_set.cases)("$id $place $event $published_utc", (row) => {
    const published = new Date(row.published_utc);
    const times = sunTimes(localDate(published, row.lon), row.lat, row.lon);
    const seconds = (times[row.event]!.getTime() - published.getTime()) / 1000;
    expect(Math.abs(seconds)).toBeLessThanOrEqual(toleranceOf(row.source, row.lat));
  });

  it.each(SUN.polar.cases)("$id: $expected all day on $date", (row) => {
    const { polar, rise, set, dayLength } = sunTimes(row.date, row.lat, row.lon);
    expect(polar).toBe(row.expected.includes("above") ? "day" : "night");
    expect([rise, set]).toEqual([null, null]);
    expect(dayLength).toBe(polar === "day" ? 24 : 0);
  });
});

describe("day length without air against FAO-56 equation 34 (Allen et al. 1998)", () => {
  const dayOfYear = (J: number) => new Date(Date.UTC(2025, 0, J)).toISOString().slice(0, 10);
  const within = tolerance("N_h");
  const length = (day: string, latitude: number) =>
    sunTimes(day, latitude, 0, { refraction: false }).dayLength;

  it.each(SUN.fao_ra_examples.cases)("$id", ({ inputs, expected }) => {
    expect(Math.abs(length(dayOfYear(inputs.J), inputs.lat) - expected.N_h)).toBeLessThanOrEqual(within);
  });

  // Equation 24 puts the declination of the 15th up to 0.7 degrees from the true one; at 50 degrees that is 0.1 h more.
  it.each(SUN.fao_table26_27.cases)("$id, the 15th of each month", ({ lat, N_h }) => {
    const days = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349];
    const off = days.map((J, i) => Math.abs(length(dayOfYear(J), lat) - N_h[i]!));
    expect(Math.max(...off)).toBeLessThanOrEqual(within + 0.05 + 0.05);
  });
});

describe("seasons", () => {
  it.each(SUN.season_daylength.cases)("$id: mean day length, astronomy-engine's declinations", (row) => {
    const year = Number(row.from.slice(0, 4));
    const days = seasonDays({ from: row.from.slice(5), to: row.to.slice(5) }, year);
    expect(days).toHaveLength(row.days);
    const hours = days.map((day) => sunTimes(day, row.lat, 0, { refraction: false }).dayLength);
    const mean = hours.reduce((sum, one) => sum + one, 0) / days.length;
    // The file takes the declination of 12:00 for the whole day, which evens out but for the thousandths.
    expect(Math.abs(mean - row.ae_avg_h)).toBeLessThanOrEqual(0.01);
    const byNoon = days.map((day) => {
      const { declination } = sunPlace(new Date(`${day}T12:00:00Z`));
      const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
      return (24 / Math.PI) * Math.acos(-tan(row.lat) * tan(declination));
    });
    expect(byNoon.reduce((sum, one) => sum + one, 0) / days.length).toBeCloseTo(row.ae_avg_h, 3);
  });

  it("are those of the heliothermal index by default: SE-1, SE-2, SE-4", () => {
    for (const [hemisphere, latitude] of [
      ["north", 41],
      ["south", -34],
    ] as const) {
      const row = SUN.season.cases.find((one) => one.hemisphere === hemisphere)!;
      expect(growingSeason(latitude)).toEqual({ from: row.from, to: row.to });
    }
    expect(seasonDays(growingSeason(41), 2025)).toHaveLength(183);
    expect(seasonDays(growingSeason(-34), 2025)).toHaveLength(182);
    expect(seasonDays(growingSeason(-34), 2027)).toHaveLength(183);
  });
});
