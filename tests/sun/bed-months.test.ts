import { describe, expect, it } from "vitest";
import {
  bedMonths,
  bedShade,
  formatClock,
  type Garden,
  instantAt,
  itemId,
  shadeSentences,
  sunPosition,
  sunTimes,
} from "../../src/index.ts";
import { bed, gardenWith, house, tree } from "../helpers/garden-of.ts";

const salads = bed("salads", { x: -600, y: -1200, w: 1200, h: 2400 });
const id = itemId("salads");
/** Clocks run seven hours behind Universal Time in winter and six in summer; the sun's mean time of 105° west is the first. */
const denver = { latitude: 39.7, longitude: -105, north: 0, timeZone: "America/Denver" };
const east = house("house", { x: 2000, y: -6000, w: 5000, h: 12_000, height: 5000, roof: "flat" });

const monthOf = (garden: Garden, month: number) => bedMonths(garden, id)[month - 1]!;

/** When the house has let go of half of the bed, minute for minute. */
function clearsAt(garden: Garden, day: string): number {
  const { soil } = bedShade(garden, id, { days: [day] })!;
  const isShort = (minutes: number) => {
    const sun = sunPosition(instantAt(denver, day, minutes), denver.latitude, denver.longitude);
    const [altitude, azimuth] = [(sun.altitude * Math.PI) / 180, (sun.azimuth * Math.PI) / 180];
    return ((5000 - soil) / Math.tan(altitude)) * Math.sin(azimuth) < 2000;
  };
  let minutes = 600;
  while (!isShort(minutes)) minutes++;
  return minutes;
}

describe("bedMonths", () => {
  it("tells sunrise and sunset by the clock, an hour later in summer time", () => {
    const months = bedMonths(gardenWith({ site: denver }, salads), id);
    expect(months.map(({ month }) => month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    for (const { day, sunrise, sunset, stretches, hours, spells } of months) {
      const { rise, set, dayLength } = sunTimes(day, denver.latitude, denver.longitude, {
        refraction: false,
      });
      // Summer time from 8 March to 1 November 2026; from memory.
      const summer = day > "2026-03-08" && day < "2026-11-01" ? 60 : 0;
      const clock = (at: Date) => (at.getTime() - Date.parse(`${day}T07:00:00Z`)) / 60_000 + summer;
      expect(sunrise).toBeCloseTo(clock(rise!), 6);
      expect(sunset).toBeCloseTo(clock(set!), 6);
      expect(stretches).toEqual([{ from: sunrise, to: sunset, lit: 1, by: null, skyline: false }]);
      expect(Math.abs(hours - dayLength)).toBeLessThan(0.09);
      expect(spells).toEqual([]);
    }
  });

  it("cuts the day where the light changes, without a gap, and adds up to the hours of the day", () => {
    const maple = tree("maple", { at: [-3000, 3000], canopy: 5000, height: 7000, crownBase: 1500 });
    for (const { day, sunrise, sunset, stretches, hours } of bedMonths(
      gardenWith({ site: denver }, salads, east, maple),
      id,
    )) {
      expect(stretches.at(0)!.from).toBeCloseTo(sunrise!, 9);
      expect(stretches.at(-1)!.to).toBeCloseTo(sunset!, 9);
      stretches.slice(1).forEach(({ from }, i) => {
        expect(from).toBeCloseTo(stretches[i]!.to, 9);
      });
      const lit = stretches.reduce((sum, { from, to, lit: share }) => sum + (share * (to - from)) / 60, 0);
      // Shares are told in tenths, and the ends of the day fall between two looks.
      expect(Math.abs(lit - hours), day).toBeLessThan(0.25);
      const shade = bedShade(gardenWith({ site: denver }, salads, east, maple), id, {
        days: [day],
        step: 5,
      })!;
      expect(hours).toBeCloseTo(shade.hours, 9);
    }
  });

  it("names what shades it, until when by the clock, and how it lies in the day", () => {
    const garden = gardenWith({ site: denver }, salads, east);
    const { spells, stretches, sunrise } = monthOf(garden, 4);
    expect(spells).toHaveLength(1);
    const [spell] = spells;
    expect(spell).toMatchObject({ id: "house", when: "until" });
    expect(spell!.from).toBeCloseTo(sunrise!, 9);
    expect(stretches[0]).toMatchObject({ lit: 0, by: "house" });
    // Half of the bed is lit once the shadow of the eaves, h cot(altitude) sin(azimuth) long across the wall, is shorter
    // than the 2 m from the wall to the bed's middle.
    expect(Math.abs(spell!.to - clearsAt(garden, "2026-04-15"))).toBeLessThan(6);
    const west = { ...east, at: [-4500, 0] as const };
    expect(monthOf(gardenWith({ site: denver }, salads, west), 4).spells[0]).toMatchObject({ when: "from" });
  });

  it("changes from shade to sun when it does, neither sooner nor later on the mean of the months", () => {
    const garden = gardenWith({ site: denver }, salads, east);
    // Sooner would be more light than a look every minute finds, later less.
    const off = bedMonths(garden, id).map(({ day, stretches }) => {
      const minutes = stretches.reduce((sum, { from, to, lit }) => sum + lit * (to - from), 0);
      return minutes - bedShade(garden, id, { days: [day], step: 1 })!.hours * 60;
    });
    expect(Math.abs(off.reduce((sum, by) => sum + by, 0) / off.length)).toBeLessThan(1);
  });

  it("keeps what lies behind the skyline apart from shade", () => {
    const skyline = [
      { azimuth: 0, altitude: 0 },
      { azimuth: 60, altitude: 0 },
      { azimuth: 61, altitude: 25 },
      { azimuth: 150, altitude: 25 },
      { azimuth: 151, altitude: 0 },
    ];
    const { stretches, sunrise } = monthOf(gardenWith({ site: { ...denver, skyline } }, salads), 3);
    expect(stretches[0]).toMatchObject({ from: sunrise, lit: 0, by: null, skyline: true });
    expect(stretches.at(-1)).toMatchObject({ lit: 1, skyline: false });
    expect(stretches).toHaveLength(2);
  });

  it("has no day in the polar night and a whole one in the polar day", () => {
    const months = bedMonths(
      gardenWith({ site: { latitude: 78.2, longitude: 15, north: 0, timeZone: null } }, salads),
      id,
    );
    expect(months[11]).toMatchObject({ sunrise: null, sunset: null, hours: 0, stretches: [], spells: [] });
    const june = months[5]!;
    expect([june.sunrise, june.sunset, june.hours]).toEqual([null, null, 24]);
    expect(june.stretches).toEqual([{ from: 0, to: 1440, lit: 1, by: null, skyline: false }]);
  });

  it("tells which months lie in the season, over new year too", () => {
    const season = { from: "10-16", to: "03-15" };
    const months = bedMonths(gardenWith({ site: { ...denver, season } }, salads), id);
    expect(months.filter(({ inSeason }) => inSeason).map(({ month }) => month)).toEqual([1, 2, 3, 11, 12]);
  });

  it("refuses a bed that is not there", () => {
    expect(() => bedMonths(gardenWith({}, salads), itemId("gone"))).toThrow(RangeError);
  });
});

describe("shadeSentences", () => {
  const said = (...items: Parameters<typeof gardenWith>[1][]) => {
    const garden = gardenWith({ site: denver }, salads, ...items);
    return shadeSentences(garden, bedMonths(garden, id));
  };

  it("tells until when a house shades a bed, in the months it does longest and shortest", () => {
    const [sentence, ...others] = said(east);
    expect(others).toEqual([]);
    const [, late, first, early, last] =
      /^House shades it until (\d+:\d\d) in (\w+) and until (\d+:\d\d) in (\w+)\.$/.exec(sentence!) ?? [];
    const ends = bedMonths(gardenWith({ site: denver }, salads, east), id)
      .filter(({ inSeason }) => inSeason)
      .map(({ month, spells }) => ({ month, to: spells[0]!.to }))
      .sort((a, b) => b.to - a.to);
    expect([late, early]).toEqual([formatClock(ends[0]!.to), formatClock(ends.at(-1)!.to)]);
    const names = ["April", "May", "June", "July", "August", "September"];
    expect([first, last]).toEqual([names[ends[0]!.month - 4], names[ends.at(-1)!.month - 4]]);
  });

  it("says nothing where nothing shades it, nor of what it passes quickly", () => {
    expect(said()).toEqual([]);
    expect(said(tree("twig", { at: [9000, 0], canopy: 800, height: 2500, crownBase: 800 }))).toEqual([]);
  });

  it("tells of the evening, and of all day", () => {
    expect(said({ ...east, at: [-4500, 0] })[0]).toMatch(/^House shades it from \d+:\d\d in \w+/);
    const over = house("carport", {
      name: "Carport",
      x: -5000,
      y: -5000,
      w: 10_000,
      h: 10_000,
      height: 2400,
    });
    expect(said(over)).toEqual([
      "Carport shades it all day in April, May, June, July, August and September.",
    ]);
  });
});
