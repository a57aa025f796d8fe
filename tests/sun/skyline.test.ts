import { describe, expect, it } from "vitest";
import { itemId, shadowsAt, skylineAt, sunHours, sunPosition } from "../../src/index.ts";
import { bed, gardenWith, tree } from "../helpers/garden-of.ts";

const site = { latitude: 44, longitude: 0, north: 0 };

describe("skylineAt", () => {
  const hill = [
    { azimuth: 90, altitude: 0 },
    { azimuth: 180, altitude: 30 },
    { azimuth: 270, altitude: 6 },
  ];
  it.each([
    [90, 0],
    [135, 15],
    [180, 30],
    [225, 18],
    [270, 6],
    // Through north from 6 degrees in the west down to level in the east.
    [0, 3],
    [315, 4.5],
    [45, 1.5],
  ])("at %i degrees stands %f high, on straight lines from point to point", (azimuth, altitude) => {
    expect(skylineAt(hill, azimuth)).toBeCloseTo(altitude, 9);
    expect(skylineAt(hill.toReversed(), azimuth)).toBeCloseTo(altitude, 9);
  });

  it("is level without points, and the same all round with one", () => {
    expect(skylineAt([], 123)).toBe(0);
    for (const azimuth of [0, 100, 200, 359])
      expect(skylineAt([{ azimuth: 200, altitude: 7 }], azimuth)).toBe(7);
  });

  it("steps where two points lie in one direction", () => {
    const block = [
      { azimuth: 100, altitude: 0 },
      { azimuth: 100, altitude: 40 },
      { azimuth: 120, altitude: 40 },
      { azimuth: 120, altitude: 0 },
    ];
    expect([99.9, 100, 119.9, 120].map((azimuth) => skylineAt(block, azimuth))).toEqual([0, 40, 40, 0]);
  });
});

describe("the site's skyline and season", () => {
  const salads = bed("salads", { x: 0, y: 0, w: 1200, h: 2400 });
  const block = [
    { azimuth: 0, altitude: 0 },
    { azimuth: 150, altitude: 0 },
    { azimuth: 150, altitude: 89 },
    { azimuth: 210, altitude: 89 },
    { azimuth: 210, altitude: 0 },
  ];

  it("keep the sun off while it is behind them, minute for minute", () => {
    const days = ["2026-03-20"];
    const hours = sunHours(gardenWith({ site: { ...site, skyline: block } }, salads), { days, step: 1 })
      .beds[0]!;
    let minutes = 0;
    for (let minute = 0; minute < 1440; minute++) {
      const sun = sunPosition(new Date(Date.UTC(2026, 2, 20) + (minute + 0.5) * 60_000), 44, 0);
      if (sun.altitude > 0 && (sun.azimuth < 150 || sun.azimuth >= 210)) minutes++;
    }
    expect(hours.hours * 60).toBeCloseTo(minutes, 6);
    // The block hides two thirds of midday at this height.
    expect(hours.parts.midday).toBeLessThan(2);
  });

  it("throw no shadows then", () => {
    const maple = tree("maple", { height: 6000 });
    const noon = new Date("2026-06-21T12:00:00Z");
    expect(shadowsAt(gardenWith({ site }, maple), noon)).not.toEqual([]);
    expect(shadowsAt(gardenWith({ site: { ...site, skyline: block } }, maple), noon)).toEqual([]);
  });

  it("are taken unless others are asked for", () => {
    const season = { from: "11-01", to: "02-28" };
    const winter = sunHours(gardenWith({ site: { ...site, season } }, salads), { days: 6 });
    expect(winter.season).toEqual(season);
    expect(winter.days.every((day) => day >= "2026-11-01" && day <= "2027-02-28")).toBe(true);
    const asked = sunHours(gardenWith({ site: { ...site, season, skyline: block } }, salads), {
      days: 6,
      season: { from: "05-01", to: "05-31" },
      skyline: [],
    });
    expect(asked.days.every((day) => day.startsWith("2026-05"))).toBe(true);
    expect(asked.beds[0]!.hours).toBeGreaterThan(13);
  });

  it("of a season that is none are refused", () => {
    const garden = gardenWith({ site: { ...site, season: { from: "02-30", to: "05-01" } } }, salads);
    expect(() => sunHours(garden)).toThrow(RangeError);
  });
});

describe("a tree's own months in leaf", () => {
  const light = (month: number, inLeaf: { from: number; to: number } | null) => {
    const maple = tree("maple", { height: 6000, lightInLeaf: 0.2, lightBare: 0.6, inLeaf });
    const at = new Date(Date.UTC(2026, month - 1, 15, 12));
    const shadows = shadowsAt(gardenWith({ site }, maple), at).filter(({ id }) => id === itemId("maple"));
    return Math.max(...shadows.map((shadow) => shadow.light));
  };
  const months = (inLeaf: { from: number; to: number } | null) =>
    Array.from({ length: 12 }, (_, i) => i + 1).filter((month) => light(month, inLeaf) === 0.2);

  it("are those from the first to the last, over new year too, and the hemisphere's where it has none", () => {
    expect(months({ from: 4, to: 11 })).toEqual([4, 5, 6, 7, 8, 9, 10, 11]);
    expect(months({ from: 10, to: 2 })).toEqual([1, 2, 10, 11, 12]);
    expect(months({ from: 6, to: 6 })).toEqual([6]);
    expect(months(null)).toEqual([5, 6, 7, 8, 9, 10]);
  });

  it("count in sun hours", () => {
    const salads = bed("salads", { x: -600, y: -3600, w: 1200, h: 2400 });
    const hours = (inLeaf: { from: number; to: number } | null) =>
      sunHours(
        gardenWith(
          { site },
          salads,
          tree("maple", {
            canopy: 6000,
            height: 8000,
            crownBase: 1500,
            lightInLeaf: 0.1,
            lightBare: 0.6,
            inLeaf,
          }),
        ),
        { days: ["2026-04-16"] },
      ).beds[0]!.hours;
    expect(hours({ from: 4, to: 10 })).toBeLessThan(hours(null) - 0.5);
  });
});
