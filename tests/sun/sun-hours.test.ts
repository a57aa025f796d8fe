import { describe, expect, it } from "vitest";
import {
  bedShade,
  EXAMPLES,
  itemId,
  sampleDays,
  seasonDays,
  shadowsAt,
  sunHours,
  sunPosition,
  sunTimes,
} from "../../src/index.ts";
import { bed, fence, gardenOf, gardenWith, house, tree, wall } from "../helpers/garden-of.ts";

const site = { latitude: 40, longitude: -105, north: 0 };
const salads = bed("salads", { x: -600, y: -1200, w: 1200, h: 2400 });

describe("sunHours", () => {
  it("gives an open bed all the day, the longest at midsummer, and the same to all its corners", () => {
    const { beds, days } = sunHours(gardenWith({ site }, salads), { step: 2 });
    const [found] = beds;
    const lengths = days.map((day) => sunTimes(day, 40, -105, { refraction: false }).dayLength);
    found!.byDay.forEach(({ hours }, i) => {
      expect(Math.abs(hours - lengths[i]!)).toBeLessThan(0.05);
    });
    expect(found!.worst.hours).toBeCloseTo(found!.hours, 6);
    expect(found!.shade).toEqual([]);
    // Four hours of midday, and a morning as long as the afternoon.
    expect(found!.parts.midday).toBeCloseTo(4, 1);
    expect(found!.parts.morning).toBeCloseTo(found!.parts.afternoon, 1);
    expect(found!.bestDay.day.slice(0, 7)).toBe("2026-06");
  });

  it("tells until when a house to the east shades a bed in the morning, and how much it costs", () => {
    const east = house("house", { x: 2000, y: -4000, w: 5000, h: 8000, height: 5000, roof: "flat" });
    const found = bedShade(gardenWith({ site }, salads, east), itemId("salads"), {
      days: ["2026-04-15"],
      step: 2,
    })!;
    const [shade] = found.shade!;
    expect(shade!.id).toBe("house");
    expect(shade!.spells).toHaveLength(1);
    const { from, to } = shade!.spells[0]!;
    const rise = sunTimes("2026-04-15", 40, -105, { refraction: false }).rise!;
    // By mean time of 105 degrees west, seven hours behind Universal Time.
    expect(Math.abs(from - (rise.getTime() - Date.parse("2026-04-15T07:00:00Z")) / 60_000)).toBeLessThan(3);
    expect(to).toBeGreaterThan(9 * 60);
    expect(to).toBeLessThan(12 * 60);
    expect(shade!.hours).toBeGreaterThan(0.8 * ((to - from) / 60));
    expect(found.parts.morning).toBeLessThan(1.6);
    expect(found.parts.afternoon).toBeGreaterThan(3.5);
  });

  it("weighs light through slats by their open share", () => {
    const behind = (open: number) =>
      sunHours(
        gardenWith(
          { site },
          salads,
          fence("fence", { from: [-9000, 1500], to: [9000, 1500], height: 3000, open }),
        ),
      ).beds[0]!.hours;
    const [solid, half, none] = [behind(0), behind(0.5), behind(1)];
    expect(solid).toBeLessThan(none - 2);
    expect(half).toBeCloseTo((solid + none) / 2, 6);
  });

  it("lets more light through a tree when it is bare", () => {
    const maple = tree("maple", { at: [0, 5000], canopy: 6000, height: 8000, crownBase: 1500 });
    const on = (day: string) => {
      const garden = gardenWith({ site }, salads, maple);
      return bedShade(garden, itemId("salads"), { days: [day] })!.shade![0]!.hours;
    };
    // Days with the sun equally high, before the leaves are out and after.
    expect(on("2026-04-16")).toBeLessThan(0.8 * on("2026-08-27"));
  });

  it("looks at the light at the soil's height: a low wall shades the ground and not a tall bed", () => {
    const low = wall("wall", { from: [-9000, 1400], to: [9000, 1400], height: 900, thickness: 100 });
    const sunOn = (height: number) => {
      const raised = bed("salads", {
        x: -600,
        y: -1200,
        w: 1200,
        h: 2400,
        wall: { made: "metal", height, thickness: 2 },
      });
      return sunHours(gardenWith({ site }, raised, low)).beds[0]!;
    };
    expect(sunOn(1000).worst.hours).toBeCloseTo(sunOn(1000).hours, 6);
    expect(sunOn(200).worst.hours).toBeLessThan(sunOn(200).hours - 2);
  });

  it("says nothing under a house and outside the yard, and gives a bed's cells its soil's light", () => {
    const yard = [
      [0, 0],
      [6000, 0],
      [6000, 4000],
      [3000, 4000],
      [3000, 2500],
      [0, 2500],
    ] as const;
    const shedLike = house("house", { x: 4000, y: 0, w: 2000, h: 1500, height: 2400, roof: "flat" });
    const { yard: grid, beds } = sunHours(
      gardenWith({ site, yard }, shedLike, bed("salads", { x: 500, y: 500, w: 1200, h: 1500 })),
    );
    const at = (x: number, y: number) =>
      grid.hours[Math.floor(y / grid.cell) * grid.columns + Math.floor(x / grid.cell)]!;
    expect(at(5000, 800)).toBeNaN();
    expect(at(1000, 3500)).toBeNaN();
    expect(at(4500, 3500)).toBeGreaterThan(8);
    expect(Math.abs(at(1100, 1200) - beds[0]!.hours)).toBeLessThan(1);
  });

  it("keeps the sun behind a hill until it clears the skyline", () => {
    const hill = [
      { azimuth: 45, altitude: 0 },
      { azimuth: 50, altitude: 20 },
      { azimuth: 130, altitude: 20 },
      { azimuth: 135, altitude: 0 },
    ];
    const options = { days: ["2026-06-21"], step: 1 };
    const garden = gardenWith({ site }, salads);
    const open = sunHours(garden, options).beds[0]!;
    const behind = sunHours(garden, { ...options, skyline: hill }).beds[0]!;
    const rise = sunTimes("2026-06-21", 40, -105, { refraction: false }).rise!.getTime();
    let minutes = 0;
    while (sunPosition(new Date(rise + minutes * 60_000), 40, -105).altitude < 20) minutes++;
    expect(Math.abs((open.hours - behind.hours) * 60 - minutes)).toBeLessThan(2);
    expect(behind.parts.afternoon).toBeCloseTo(open.parts.afternoon, 9);
  });

  it("refuses options that cannot be, and beds that are not there", () => {
    const garden = gardenOf(salads);
    expect(() => sunHours(garden, { step: 7 })).toThrow(RangeError);
    expect(() => sunHours(garden, { cell: 0 })).toThrow(RangeError);
    expect(() => sunHours(garden, { days: 0 })).toThrow(RangeError);
    expect(() => sunHours(garden, { days: ["2026-02-30"] })).toThrow(RangeError);
    expect(() => bedShade(garden, itemId("gone"))).toThrow(RangeError);
  });

  it("finds no sun in the polar night and says so without failing", () => {
    const far = gardenWith({ site: { latitude: 78, longitude: 15, north: 0 } }, salads);
    const { beds } = sunHours(far, { days: ["2026-12-21"] });
    expect([beds[0]!.hours, beds[0]!.worst.hours]).toEqual([0, 0]);
  });
});

describe("shadows", () => {
  it("fall south at noon in the southern example, and north in the northern one", () => {
    for (const { garden } of EXAMPLES) {
      const { latitude, longitude, north } = garden.site;
      const { noon } = sunTimes("2026-04-10", latitude, longitude);
      const pole = tree("pole", { at: [0, 0], trunk: 100, canopy: 1, height: 3000, crownBase: 2999 });
      const [shadow] = shadowsAt({ site: garden.site, items: [pole] }, noon);
      const tip = shadow!.rings[0]!.reduce((far, at) =>
        Math.hypot(at[0], at[1]) > Math.hypot(far[0], far[1]) ? at : far,
      );
      const bearing = (Math.atan2(tip[0], -tip[1]) * 180) / Math.PI - north;
      const southward = -Math.cos((bearing * Math.PI) / 180);
      if (latitude < 0) expect(southward).toBeGreaterThan(0.98);
      else expect(southward).toBeLessThan(-0.98);
    }
    expect(new Set(EXAMPLES.map(({ garden }) => Math.sign(garden.site.latitude)))).toEqual(new Set([1, -1]));
  });

  it("are none by night", () => {
    const garden = gardenWith({ site }, house("house"));
    expect(shadowsAt(garden, new Date("2026-06-21T07:00:00Z"))).toEqual([]);
    expect(shadowsAt(garden, new Date("2026-06-21T19:00:00Z"))).not.toEqual([]);
  });
});

describe("sampleDays", () => {
  it("spreads days over the declinations of a season: the mean day is nearly that of all days", () => {
    const all = seasonDays({ from: "04-01", to: "09-30" });
    const mean = (days: readonly string[]) =>
      days.reduce((sum, day) => sum + sunTimes(day, 50, 0).dayLength, 0) / days.length;
    expect(sampleDays(all, 12)).toHaveLength(12);
    expect(Math.abs(mean(sampleDays(all, 12)) - mean(all))).toBeLessThan(0.02);
    expect(sampleDays(all, 1000)).toEqual(all);
  });
});
