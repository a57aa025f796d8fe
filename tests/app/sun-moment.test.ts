import { describe, expect, it } from "vitest";
import { momentWords, sunWords } from "../../app/moment/moment-words.ts";
import { dayMarks, sunSpans, sunThen } from "../../app/moment/sun-then.ts";
import { dayOfYear, dayWords, TURNING_DAYS, YEAR_DAYS } from "../../app/moment/year-days.ts";
import { castShadows } from "../../app/plan/shadows/cast-shadows.ts";
import {
  boundsOf,
  EXAMPLES,
  type Garden,
  instantAt,
  outlineOf,
  type Site,
  sunPosition,
} from "../../src/index.ts";
import { bed, gardenWith, thing } from "../helpers/garden-of.ts";

const at = (latitude: number, changes: Partial<Site> = {}): Site =>
  gardenWith({ site: { latitude, longitude: 0, north: 0, timeZone: null, skyline: [], ...changes } }).site;

const words = (site: Site, day: string, minutes: number) =>
  momentWords(day, minutes, dayMarks(site, day).noon, sunThen(site, day, minutes));

describe("the days that are marked", () => {
  it("are those on which the sun's declination turns or is nothing, to the day", () => {
    // Noon altitude over a place on the equator tells the declination; it is greatest and least at the solstices
    // (23.44°) and changes sign at the equinoxes: J. Meeus, Astronomical Algorithms, chapter 27.
    const declination = (day: string) => {
      const { altitude, azimuth } = sunPosition(new Date(`${day}T12:00:00Z`), 0, 0);
      return (azimuth > 90 && azimuth < 270 ? -1 : 1) * (90 - altitude);
    };
    const [march, june, september, december] = TURNING_DAYS.map(({ month, day }) => dayOfYear(month, day));
    // The sun stands a little beside the meridian at 12:00, hence the tolerance.
    expect(YEAR_DAYS).toHaveLength(365);
    expect(sunPosition(new Date(`${june}T12:00:00Z`), 23.44, 0).altitude).toBeGreaterThan(89);
    expect(sunPosition(new Date(`${december}T12:00:00Z`), -23.44, 0).altitude).toBeGreaterThan(89);
    expect(Math.abs(sunPosition(new Date(`${march}T12:00:00Z`), 60, 0).altitude - 30)).toBeLessThan(0.6);
    expect(Math.abs(sunPosition(new Date(`${september}T12:00:00Z`), 60, 0).altitude - 30)).toBeLessThan(0.6);
    expect(declination(june!)).toBeGreaterThan(0);
  });

  it("are told as people say them; 29 February is the day before March", () => {
    expect(dayWords("2026-04-15")).toBe("15 April");
    expect(dayOfYear(2, 29)).toBe("2026-02-28");
    expect(() => dayOfYear(2, 30)).toThrow(RangeError);
  });
});

describe("the moment in words", () => {
  const noonIn = (latitude: number, day: string) =>
    words(at(latitude), day, dayMarks(at(latitude), day).noon);

  it("has the shadows of noon fall north in the north and south in the south", () => {
    expect(noonIn(45, "2026-12-21")).toMatch(/^Noon, 21 December: shadows fall north, /);
    expect(noonIn(-35, "2026-12-21")).toMatch(/^Noon, 21 December: shadows fall south, /);
    expect(noonIn(-35, "2026-06-21")).toMatch(/^Noon, 21 June: shadows fall south, /);
  });

  it("tells how long they are: as long as things are high where the sun stands at 45°", () => {
    // Shadow = height / tan(altitude); at the equinox the noon altitude at 45° is 45°, at 60° it is 30°.
    expect(noonIn(45, "2026-03-20")).toBe("Noon, 20 March: shadows fall north, as long as things are high.");
    expect(noonIn(60, "2026-03-20")).toContain("1.7 times as long as things are high");
  });

  it("says so when the sun is down, or behind the skyline", () => {
    expect(words(at(45), "2026-03-20", 60)).toBe("1:00, 20 March: the sun is down.");
    const walled = at(45, { skyline: [{ azimuth: 90, altitude: 40 }] });
    expect(words(walled, "2026-03-20", 9 * 60)).toBe(
      "9:00, 20 March: the sun is behind the skyline in the south-east.",
    );
    expect(sunWords(sunThen(walled, "2026-03-20", 9 * 60))).toMatch(
      /^Behind the skyline, \d+° high in the south-east$/,
    );
  });
});

describe("the day along the hour's track", () => {
  it("is twelve hours long at the equinox, and cut where the sun goes behind a skyline", () => {
    const spans = sunSpans(at(45), "2026-03-20");
    expect(spans.map(({ shines }) => shines)).toEqual(["down", "yes", "down"]);
    const [, day] = spans;
    expect(Math.abs(day!.to - day!.from - 720)).toBeLessThanOrEqual(20);
    const hill = at(45, { skyline: [{ azimuth: 0, altitude: 20 }] });
    expect(sunSpans(hill, "2026-03-20").map(({ shines }) => shines)).toEqual([
      "down",
      "hidden",
      "yes",
      "hidden",
      "down",
    ]);
  });

  it("has no rise and no set in the polar day and night", () => {
    expect(dayMarks(at(75), "2026-06-21")).toMatchObject({ rise: null, set: null, polar: "day" });
    expect(dayMarks(at(75), "2026-12-21")).toMatchObject({ rise: null, set: null, polar: "night" });
  });

  it("goes by the clock of the zone, summer time and all", () => {
    const site = at(43.6, { longitude: -116.2, timeZone: "America/Boise" });
    const bySun = dayMarks({ ...site, timeZone: null }, "2026-06-21").noon;
    // Boise lies 11.2° west of its zone's meridian, 45 minutes, and is an hour ahead in summer.
    expect(Math.abs(dayMarks(site, "2026-06-21").noon - bySun - (60 + 45))).toBeLessThanOrEqual(1);
  });
});

describe("the shadows to draw", () => {
  const shed = thing("shed", "shed", { at: [0, 0] });
  const low = bed("low", { x: 3000, y: 4000, w: 1200, h: 2400 });
  const garden = (latitude: number, ...items: Garden["items"]) =>
    gardenWith({ site: { latitude, longitude: 0, north: 0, timeZone: null } }, ...items);
  const noon = instantAt({ longitude: 0, timeZone: null }, "2026-12-21", 12 * 60);

  it("lie south of a shed at noon in the south, and north of it in the north", () => {
    const box = boundsOf(outlineOf(shed));
    const [south] = castShadows(garden(-35, shed), noon);
    const [north] = castShadows(garden(45, shed), noon);
    const inSouth = boundsOf(south!.rings.flat());
    const inNorth = boundsOf(north!.rings.flat());
    expect(inSouth.maxY, "down the plan is south").toBeGreaterThan(box.maxY + 100);
    expect(inSouth.minY).toBeCloseTo(box.minY, 3);
    expect(inNorth.minY).toBeLessThan(box.minY - 1000);
    expect(inNorth.maxY).toBeCloseTo(box.maxY, 3);
  });

  it("leave a bed's own ground in the sun, and nothing else's", () => {
    const shadows = castShadows(garden(45, shed, low), noon);
    expect(shadows.map(({ without }) => without)).toEqual([null, outlineOf(low)]);
  });

  it("are none by night, and none of what lets all light through", () => {
    expect(castShadows(garden(45, shed), new Date("2026-12-21T00:00:00Z"))).toEqual([]);
    const bare = thing("tree", "bare", { leaf: "leaf-dropping", lightBare: 1 });
    const crowns = castShadows(garden(45, bare), noon).filter(({ takes }) => takes < 1);
    expect(crowns).toEqual([]);
  });

  it("are the same answer while only the drawing is done again", () => {
    const still = garden(45, shed, low);
    expect(castShadows(still, noon)).toBe(castShadows({ items: still.items, site: still.site }, noon));
    expect(castShadows(still, new Date(noon.getTime() + 60_000))).not.toBe(castShadows(still, noon));
  });

  it("of the worked metric example fall south at noon all year", () => {
    const southern = EXAMPLES.find(({ id }) => id === "southern-yard")!.garden;
    for (const day of ["2026-06-21", "2026-12-21"]) {
      const { noon: minutes } = dayMarks(southern.site, day);
      expect(words(southern.site, day, minutes)).toMatch(/^Noon, \d+ \w+: shadows fall south/);
      expect(castShadows(southern, instantAt(southern.site, day, minutes)).length).toBeGreaterThan(8);
    }
  });
});
