import { describe, expect, it } from "vitest";
import { clockTime, formatClock, instantAt, isTimeZone, SUN_PLACES, sunTimes } from "../../src/index.ts";

const boise = { longitude: -116.2, timeZone: "America/Boise" };

describe("clockTime", () => {
  // Offsets of the zones from Universal Time as their laws had them in 2026, and half hours; from memory.
  it.each([
    ["America/Boise", "2026-01-15T19:30:00Z", 12, 30],
    ["America/Boise", "2026-07-15T19:30:00Z", 13, 30],
    ["Europe/Lisbon", "2026-07-15T00:05:00Z", 1, 5],
    ["Asia/Kolkata", "2026-07-15T12:00:00Z", 17, 30],
    ["Asia/Kathmandu", "2026-07-15T12:00:00Z", 17, 45],
    ["Australia/Adelaide", "2026-01-15T12:00:00Z", 22, 30],
    ["Australia/Adelaide", "2026-07-15T12:00:00Z", 21, 30],
    ["UTC", "2026-07-15T23:59:40Z", 0, 0],
  ])("in %s at %s is %i:%i", (timeZone, at, hours, minutes) => {
    expect(clockTime({ longitude: 0, timeZone }, new Date(at))).toEqual({ hours, minutes, zone: "clock" });
  });

  it("is the sun's mean time without a zone, or with one that no list has", () => {
    for (const timeZone of [null, "Atlantis/Lost"]) {
      expect(clockTime({ longitude: -105, timeZone }, new Date("2026-04-15T12:00:00Z"))).toEqual({
        hours: 5,
        minutes: 0,
        zone: "sun",
      });
    }
  });
});

describe("instantAt", () => {
  it("is the other way round of clockTime, on every day of the year and on both sides of midnight", () => {
    for (let day = 0; day < 365; day += 5) {
      const date = new Date(Date.UTC(2026, 0, 1 + day)).toISOString().slice(0, 10);
      for (const minutes of [10, 400, 640, 1300]) {
        const { hours, minutes: past } = clockTime(boise, instantAt(boise, date, minutes));
        expect(hours * 60 + past, `${date} ${minutes}`).toBe(minutes);
      }
    }
    expect(instantAt(boise, "2026-04-15", -60).toISOString()).toBe("2026-04-15T05:00:00.000Z");
    expect(instantAt(boise, "2026-04-15", 1500).toISOString()).toBe("2026-04-16T07:00:00.000Z");
  });

  it("changes with the zone on the days that clocks are changed", () => {
    // Clocks go forward on 8 March and back on 1 November 2026.
    expect(instantAt(boise, "2026-03-08", 60).toISOString()).toBe("2026-03-08T08:00:00.000Z");
    expect(instantAt(boise, "2026-03-08", 240).toISOString()).toBe("2026-03-08T10:00:00.000Z");
    expect(instantAt(boise, "2026-11-01", 240).toISOString()).toBe("2026-11-01T11:00:00.000Z");
  });

  it("refuses a day that is none", () => {
    expect(() => instantAt(boise, "2026-02-30", 0)).toThrow(RangeError);
  });
});

describe("formatClock", () => {
  it.each([
    [640, "10:40"],
    [5, "0:05"],
    [719.6, "12:00"],
    [1445, "0:05"],
    [-20, "23:40"],
  ])("%f minutes are %s", (minutes, words) => {
    expect(formatClock(minutes)).toBe(words);
  });
});

describe("the places to begin with", () => {
  it("lie all over the earth, from north to south nearly, each once", () => {
    expect(SUN_PLACES.length).toBeGreaterThanOrEqual(40);
    expect(new Set(SUN_PLACES.map(({ name }) => name)).size).toBe(SUN_PLACES.length);
    expect(SUN_PLACES.filter(({ latitude }) => latitude < 0).length).toBeGreaterThanOrEqual(12);
  });

  it.each(SUN_PLACES.map((place) => [place.name, place] as const))(
    "%s has a zone that the machine knows, and in which the sun is highest about midday",
    (_name, { latitude, longitude, timeZone }) => {
      expect(isTimeZone(timeZone)).toBe(true);
      const { noon } = sunTimes("2026-01-15", latitude, longitude);
      const { hours, minutes } = clockTime({ longitude, timeZone }, noon);
      // A sign of longitude swapped, or a town of another country, would be hours off.
      expect(Math.abs(hours + minutes / 60 - 12)).toBeLessThan(2.3);
    },
  );
});
