import { describe, expect, it } from "vitest";
import { sunPlace } from "../../src/sun/sun-place.ts";
import { sunPosition } from "../../src/sun/sun-position.ts";
import { SUN, tolerance } from "./sun-cases.ts";

const RAD = Math.PI / 180;
const around = (a: number, b: number) => Math.abs(a - b - 360 * Math.round((a - b) / 360));
/** Azimuths part where they mean something: as the angle between the two directions in the sky. */
const apartInSky = (a: number, b: number, altitude: number) => around(a, b) * Math.cos(altitude * RAD);

const AIRLESS = tolerance("alt_airless_deg");
const APPARENT = tolerance("alt_apparent_deg_above_5deg");
const AZIMUTH = tolerance("azimuth_deg_alt_below_80");

describe("the sun's position against an almanac's library (astronomy-engine 2.1.19, cross-checked with NREL SPA)", () => {
  it.each(SUN.solar_grid.cases)("$id $place $utc", (row) => {
    const at = new Date(row.utc);
    const airless = sunPosition(at, row.lat, row.lon);
    expect(Math.abs(airless.altitude - row.ae_alt_airless)).toBeLessThanOrEqual(AIRLESS);
    expect(apartInSky(airless.azimuth, row.ae_az, row.ae_alt_airless)).toBeLessThanOrEqual(AZIMUTH);
    const { altitude } = sunPosition(at, row.lat, row.lon, { refraction: true });
    if (row.ae_alt_airless > 0)
      expect(Math.abs(altitude - row.ae_alt_apparent)).toBeLessThanOrEqual(APPARENT);
  });
});

describe("the sun's position against JPL Horizons, apparent, as quoted in suncalc's fixtures", () => {
  it.each(SUN.horizons.cases)("$id $place $utc", (row) => {
    const { altitude, azimuth } = sunPosition(new Date(row.utc), row.lat, row.lon, { refraction: true });
    expect(Math.abs(altitude - row.alt_apparent)).toBeLessThanOrEqual(APPARENT);
    expect(apartInSky(azimuth, row.az, row.alt_apparent)).toBeLessThanOrEqual(AZIMUTH);
  });
});

describe("worked examples", () => {
  it("NREL SPA, table A5.1 (Reda and Andreas, NREL/TP-560-34302, 2008)", () => {
    const { inputs, expected } = SUN.spa_a51;
    const at = new Date(inputs.utc);
    const { altitude, azimuth } = sunPosition(at, inputs.lat, inputs.lon);
    expect(Math.abs(altitude - expected.elevation_airless_deg!)).toBeLessThanOrEqual(AIRLESS);
    expect(around(azimuth, expected.azimuth_deg!)).toBeLessThanOrEqual(AZIMUTH);
    const place = sunPlace(at);
    expect(Math.abs(place.declination - expected.declination_deg!)).toBeLessThan(0.001);
    expect(Math.abs(place.distance - expected.R_AU!)).toBeLessThan(2e-5);
    // Degrees west of the observer's meridian.
    expect(around(place.greenwichHourAngle + inputs.lon, expected.hour_angle_deg!)).toBeLessThan(0.001);
  });

  it("Meeus, Astronomical Algorithms, examples 25.a and 25.b: the sun on 13 October 1992", () => {
    // 0h of the even time of the orbits is 59 s ahead of the clock in 1992 (table 10.A of the same book).
    const at = new Date(Date.UTC(1992, 9, 13) - 59_000);
    const { declination, distance } = sunPlace(at);
    // 25.b, the whole theory, as the notes of the case give it: -7 degrees 47' 01.74", R 0.99760852. A clock ten seconds off
    // is 0.2 seconds of arc.
    expect(Math.abs(declination - -(7 + 47 / 60 + 1.74 / 3600))).toBeLessThan(3 / 3600);
    expect(Math.abs(distance - 0.99760852)).toBeLessThan(2e-5);
    // 25.a, the short method, is itself some 10 seconds of arc off.
    expect(Math.abs(distance - (SUN.meeus_25a.expected.radius_AU as number))).toBeLessThan(1e-4);
    expect(Math.abs(declination - -7.785)).toBeLessThan(5 / 3600);
  });
});
