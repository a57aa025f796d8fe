import { describe, expect, it } from "vitest";
import { along, horizonLine, panoramaOf, pieces, sunTrack } from "../../app/ledger/site/panorama-shape.ts";
import {
  DECLINATION,
  LATITUDE,
  LONGITUDE,
  readAngle,
  readPlace,
  writeAngle,
} from "../../app/ledger/site/read-angle.ts";
import { readDirection, readHeight, writeDirection } from "../../app/ledger/site/read-skyline.ts";
import { withBlock } from "../../app/ledger/site/skyline-block.ts";
import { northByCompass } from "../../app/plan/north.ts";
import { skylineAt } from "../../src/index.ts";
import { gardenWith } from "../helpers/garden-of.ts";

describe("a latitude or longitude as people type it", () => {
  it.each([
    ["43.6 N", 43.6],
    ["43.6° N", 43.6],
    ["N 43.6", 43.6],
    ["43,6 n", 43.6],
    ["+43.6", 43.6],
    ["-43.6", -43.6],
    ["−43,6", -43.6],
    ["43° 36' N", 43.6],
    ["43° 36′ N", 43.6],
    ["43 36 S", -43.6],
    ["33°51′54″S", -(33 + 51 / 60 + 54 / 3600)],
    ["south 33 51 54", -(33 + 51 / 60 + 54 / 3600)],
    ["0 S", 0],
    ["90", 90],
  ])("%s is read", (text, degrees) => {
    expect(readAngle(text, LATITUDE)).toBeCloseTo(degrees, 10);
    expect(Object.is(readAngle(text, LATITUDE), -0)).toBe(false);
  });

  it.each([
    ["", /Type degrees such as 43.6 N/],
    ["north", /Type degrees/],
    ["43.6 E", /Type degrees/],
    ["N 43.6 S", /Type degrees/],
    ["43° 61' N", /60 minutes/],
    ["43° 10' 60\" N", /60 seconds/],
    ["-43.6 S", /not both/],
    ["90.1", /within 90°/],
  ])("“%s” is refused with what is wrong", (text, reason) => {
    expect(() => readAngle(text, LATITUDE)).toThrow(reason);
  });

  it("is read again from how it is written", () => {
    for (const degrees of [43.6, -43.6123, 0, 12.5]) {
      expect(readAngle(writeAngle(degrees, LATITUDE), LATITUDE)).toBeCloseTo(degrees, 10);
      expect(readAngle(writeAngle(-degrees, LONGITUDE), LONGITUDE)).toBeCloseTo(-degrees, 10);
    }
    expect(writeAngle(-116.2, LONGITUDE)).toBe("116.2° W");
  });

  it("comes with its longitude where both are pasted at once", () => {
    const both = { latitude: 43.615, longitude: -116.202 };
    for (const text of [
      "43.615 N, 116.202 W",
      "43.615° N 116.202° W",
      "43.615, -116.202",
      "43.615; -116.202",
    ]) {
      expect(readPlace(text, 5)).toEqual(both);
    }
    expect(readPlace("41,29", 5), "a comma for the point is no pair").toEqual({
      latitude: 41.29,
      longitude: 5,
    });
    expect(() => readPlace("43.6 N, 190 W", 5)).toThrow(/within 180°/);
  });
});

describe("north by compass", () => {
  // The surveyor's rule, common practice: true bearing = magnetic bearing + declination, east positive.
  it.each([
    [0, 0, 0],
    [340, 12, 8],
    [90, 0, 270],
    [20, -5, 345],
    [355, 15, 350],
  ])("reading %d° with declination %d° puts true north %d° right of up", (reading, declination, north) => {
    expect(northByCompass(reading, declination)).toBe(north);
  });

  it("takes a declination with its letter", () => {
    expect(readAngle("12.5 W", DECLINATION)).toBe(-12.5);
    expect(() => readAngle("12.5 N", DECLINATION)).toThrow(/12.5 E/);
  });
});

describe("a point of the skyline as people type it", () => {
  it("has its direction by compass point or in degrees", () => {
    const read = ["N", "se", "South-West", "north north east", "215", "137.5°", "360"].map(readDirection);
    expect(read).toEqual([0, 135, 225, 22.5, 215, 137.5, 0]);
    expect([0, 135, 292.5, 137].map(writeDirection)).toEqual(["N", "SE", "WNW", "137°"]);
    expect(() => readDirection("up")).toThrow(/direction such as SE/);
    expect(() => readDirection("361")).toThrow(/0 to 360/);
    expect(() => readDirection("-10")).toThrow(/direction such as SE/);
  });

  it("has its height in degrees, or as height over distance", () => {
    // The angle whose tangent is height over distance: 1 in 2 is 26.565°, 1 in 1 is 45°.
    const half = 26.565051;
    for (const text of [
      "20 ft over 40 ft",
      "20 ft / 40 ft",
      "20'/40'",
      "20 ft at 40 ft",
      "20/40",
      "6 m over 12 m",
    ]) {
      expect(readHeight(text, "us"), text).toBeCloseTo(half, 5);
    }
    expect(readHeight("7 1/2 ft over 7' 6\"", "us")).toBeCloseTo(45, 9);
    expect(readHeight("12,5°", "metric")).toBe(12.5);
    expect(() => readHeight("91", "us")).toThrow(/0 to 90/);
    expect(() => readHeight("20 ft over 0 ft", "us")).toThrow(/above 0/);
    expect(() => readHeight("tall", "us")).toThrow(/not a number/);
  });
});

describe("a block put in front of a skyline", () => {
  it("is as high as it is said between its ends, and leaves the rest as it was", () => {
    const hill = [
      { azimuth: 100, altitude: 0 },
      { azimuth: 150, altitude: 20 },
      { azimuth: 200, altitude: 0 },
    ];
    const both = withBlock(hill, 130, 170, 16);
    for (let azimuth = 0; azimuth < 360; azimuth += 7) {
      const was = skylineAt(hill, azimuth);
      const within = azimuth >= 130 && azimuth < 170;
      expect(skylineAt(both, azimuth), `at ${azimuth}`).toBeGreaterThanOrEqual(within ? 16 : was - 1e-9);
      if (!within) expect(skylineAt(both, azimuth)).toBeCloseTo(was, 9);
    }
    expect(skylineAt(both, 150), "the hill still stands over it").toBe(20);
  });

  it("may run through north", () => {
    const block = withBlock([], 340, 25, 11);
    expect([341, 0, 24].map((azimuth) => skylineAt(block, azimuth))).toEqual([11, 11, 11]);
    expect([339, 26, 180].map((azimuth) => skylineAt(block, azimuth))).toEqual([0, 0, 0]);
  });
});

describe("the panorama", () => {
  const site = (latitude: number, skyline: { azimuth: number; altitude: number }[] = []) =>
    gardenWith({ site: { latitude, longitude: 0, skyline } }).site;

  it("has the noon sun in its middle in both hemispheres, and its way in one piece", () => {
    for (const latitude of [48, -37]) {
      const track = sunTrack(site(latitude), "2026-03-20");
      const view = panoramaOf([], latitude, [track]);
      const cut = pieces(view, track);
      expect(cut).toHaveLength(1);
      const top = cut[0]!.reduce((best, sun) => (sun.altitude > best.altitude ? sun : best));
      expect(Math.abs(along(view, top.azimuth) - 180)).toBeLessThan(4);
      // At the equinox the noon sun stands the latitude below the zenith.
      expect(top.altitude).toBeCloseTo(90 - Math.abs(latitude), 0);
    }
  });

  it("cuts a way that leaves it at one edge: the polar day goes all round", () => {
    // By Universal Time the day begins here with the sun well past north.
    const track = sunTrack({ ...site(75), longitude: 40, timeZone: "UTC" }, "2026-06-21");
    expect(pieces(panoramaOf([], 75, [track]), track).length).toBeGreaterThan(1);
  });

  it("draws steps of the skyline as steps, from edge to edge", () => {
    const skyline = withBlock([], 90, 135, 26);
    const line = horizonLine(panoramaOf(skyline, 48, []), skyline);
    expect(line[0]).toEqual([0, 0]);
    expect(line.at(-1)![0]).toBeCloseTo(360, 4);
    const heights = (x: number) =>
      line.filter(([at]) => Math.abs(at - x) < 0.001).map(([, height]) => height);
    expect(new Set(heights(90).map(Math.round))).toEqual(new Set([0, 26]));
    expect(new Set(heights(135).map(Math.round))).toEqual(new Set([26, 0]));
  });
});
