import { describe, expect, it } from "vitest";
import type { Item, Point } from "../../src/index.ts";
import { shadowOf } from "../../src/sun/shadow.ts";
import { block } from "../../src/sun/solid.ts";
import { sunHours } from "../../src/sun/sun-hours.ts";
import { shadowPerHeight } from "../../src/sun/sunward.ts";
import { gardenWith, shed, wall } from "../helpers/garden-of.ts";
import { SUN, tolerance } from "./sun-cases.ts";

/** The cases' unit of length on the plan, mm: small, so that a wall across all a garden may hold is as good as endless. */
const UNIT = 10;
const FAR = 1_000_000;
const THIN = 0.01;

const plot = [
  [-UNIT / 2, -UNIT / 2],
  [UNIT / 2, -UNIT / 2],
  [UNIT / 2, UNIT / 2],
  [-UNIT / 2, UNIT / 2],
] as const;

/** Hours at the middle of the plot, looked at every minute of one day. */
function hoursAt(latitude: number, date: string, north: number, ...items: readonly Item[]): number {
  const garden = gardenWith({ yard: plot, site: { latitude, longitude: 0, north } }, ...items);
  const { hours } = sunHours(garden, { days: [date], step: 1, cell: UNIT }).yard;
  expect(hours).toHaveLength(1);
  return hours[0]!;
}

/** A thin wall south of the plot, from one place to another east of it, its face towards the plot at a distance. */
const southern = (d: number, h: number, from = -FAR, to = FAR) =>
  wall("wall", {
    from: [from, d * UNIT + THIN / 2],
    to: [to, d * UNIT + THIN / 2],
    thickness: THIN,
    height: h * UNIT,
  });

/** The wall stands straight down the plan, at bearing 180: with north turned by n that is azimuth 180 - n. */
const NORTH_FOR = { S: 0, W: 270, N: 180, E: 90 } as const;

describe("direct sun behind an endless wall (computed with astronomy-engine 2.1.19, and by closed form)", () => {
  it.each(SUN.direct_sun.cases)("$id: $h high, $d to the $wall_side of the spot, at $lat on $date", (row) => {
    const open = hoursAt(row.lat, row.date, 0);
    expect(Math.abs(open - row.open_sky_hours)).toBeLessThanOrEqual(tolerance("direct_sun_hours_1min"));
    const hours = hoursAt(row.lat, row.date, NORTH_FOR[row.wall_side], southern(row.d, row.h));
    expect(Math.abs(hours - row.direct_sun_hours)).toBeLessThanOrEqual(toleranceFor(row));
  });
});

/**
 * East and west walls are given 0.1 h, and so are, as the findings of the file say, walls that come within 1 degree of taking
 * all of the winter sun.
 */
function toleranceFor({
  lat,
  h,
  d,
  decl_noon_deg,
  wall_side,
}: (typeof SUN.direct_sun.cases)[number]): number {
  const raised = Math.abs(lat) + (Math.atan2(h, d) * 180) / Math.PI;
  const isEdge = Math.abs(90 - Math.abs(decl_noon_deg) - raised) < 1;
  const isEastWest = wall_side === "E" || wall_side === "W";
  return tolerance(isEdge || isEastWest ? "direct_sun_hours_equinox_E_W_wall" : "direct_sun_hours_1min");
}

describe("direct sun behind a wall with ends (astronomy-engine 2.1.19)", () => {
  it.each(SUN.finite_wall.cases)("$id", (row) => {
    const { lat, date, d, h, x1_east, x2_east } = row;
    const hours = hoursAt(lat, date, 0, southern(d, h, x1_east * UNIT, x2_east * UNIT));
    expect(Math.abs(hours - row.direct_sun_hours)).toBeLessThanOrEqual(tolerance("direct_sun_hours_1min"));
  });
});

describe("direct sun behind an endless wall, as the high edge of a lean-to and as a skyline", () => {
  const southWalls = SUN.direct_sun.cases.filter(({ wall_side }) => wall_side === "S");

  /** A lean-to as wide as the wall is endless, its high side towards the spot or away from it. */
  const leanTo = (d: number, h: number, roofFalls: "up" | "down", depth: number, eaves: number) =>
    shed("lean-to", {
      shape: { type: "rectangle", width: 2 * FAR, length: depth },
      at: [0, d * UNIT + depth / 2],
      height: eaves,
      roof: "single-pitch",
      roofRise: h * UNIT - eaves,
      roofFalls,
    });

  it.each(southWalls)("$id: a lean-to with its high edge there shades as the wall does", (row) => {
    // What lies behind the high edge is lower, and hidden by it.
    const hours = hoursAt(row.lat, row.date, 0, leanTo(row.d, row.h, "down", 30, (row.h * UNIT) / 2));
    expect(Math.abs(hours - row.direct_sun_hours)).toBeLessThanOrEqual(toleranceFor(row));
  });

  const withRoom = southWalls.filter(({ d }) => d > 1);
  it.each(withRoom)(
    "$id: a lean-to that rises away from it, steeper than the sun comes over it, too",
    (row) => {
      // Its eaves are a hair above the ground and its high edge lies where the wall's was: the slope between shades nothing more.
      const depth = row.d * UNIT - UNIT;
      const roof = shed("lean-to", {
        shape: { type: "rectangle", width: 2 * FAR, length: depth },
        at: [0, row.d * UNIT - depth / 2],
        height: THIN,
        roof: "single-pitch",
        roofRise: row.h * UNIT - THIN,
        roofFalls: "up",
      });
      const hours = hoursAt(row.lat, row.date, 0, roof);
      expect(Math.abs(hours - row.direct_sun_hours)).toBeLessThanOrEqual(toleranceFor(row));
    },
  );

  it.each(southWalls)("$id: so does a skyline as high as the wall looks in every direction", (row) => {
    const { lat, date, h, d } = row;
    // An endless wall looks atan(h cos(off south) / d) high; beyond east and west it is not there.
    const skyline = Array.from({ length: 73 }, (_, i) => {
      const azimuth = (360 * i) / 72;
      const across = -Math.cos((azimuth * Math.PI) / 180);
      return { azimuth, altitude: across > 0 ? (Math.atan((h * across) / d) * 180) / Math.PI : 0 };
    });
    const garden = gardenWith({ yard: plot, site: { latitude: lat, longitude: 0, north: 0, skyline } });
    const { hours } = sunHours(garden, { days: [date], step: 1, cell: UNIT }).yard;
    // Straight lines every 5 degrees lie up to 0.1 degree under the curve, as well as they follow it.
    expect(Math.abs(hours[0]! - row.direct_sun_hours)).toBeLessThanOrEqual(toleranceFor(row) + 0.05);
  });
});

const lengthOf = ([x, y]: Point) => Math.hypot(x, y);

describe("the shadow of a pole (plain trigonometry)", () => {
  it.each(SUN.shadow.cases)("$id: $height high at $altitude_deg degrees", (row) => {
    const azimuth = row.sun_azimuth_deg ?? 137;
    const north = 23;
    const perHeight = shadowPerHeight({ altitude: row.altitude_deg, azimuth }, north);
    const tip = shadowOf(
      block(
        [
          [0, 0],
          [1e-9, 0],
          [0, 1e-9],
        ],
        0,
        row.height,
      ),
      perHeight,
      0,
    )!.reduce((far, at) => (lengthOf(at) > lengthOf(far) ? at : far));
    // To the last digit printed.
    const digits = row.shadow_direction_deg === undefined ? 4 : 3;
    expect(Math.abs(lengthOf(tip) - row.shadow_length)).toBeLessThanOrEqual(0.51 * 10 ** -digits);
    // Bearing on the plan, clockwise from up, less the bearing of true north.
    const bearing = (Math.atan2(tip[0], -tip[1]) * 180) / Math.PI - north;
    const direction = row.shadow_direction_deg ?? azimuth + 180;
    expect(Math.cos(((bearing - direction) * Math.PI) / 180)).toBeCloseTo(1, 9);
  });
});
