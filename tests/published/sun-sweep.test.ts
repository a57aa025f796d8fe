import * as Astronomy from "astronomy-engine";
import { getPosition } from "suncalc";
import { describe, expect, it } from "vitest";
import { sunPosition } from "../../src/sun/sun-position.ts";
import { sunTimes } from "../../src/sun/sun-times.ts";
import { seeded } from "../helpers/scenes.ts";

const INSTANTS = 2500;
const DEG = Math.PI / 180;

/** Instants and places drawn evenly over 1990 to 2050 and over the face of the earth. */
function* sweep(seed: number) {
  const random = seeded(seed);
  for (let i = 0; i < INSTANTS; i++) {
    const at = new Date(Date.UTC(1990, 0, 1) + random() * 60 * 365.25 * 86_400_000);
    const latitude = Math.asin(2 * random() - 1) / DEG;
    yield { at, latitude, longitude: random() * 360 - 180 };
  }
}

const unit = ({ altitude, azimuth }: { altitude: number; azimuth: number }) =>
  [
    Math.cos(altitude * DEG) * Math.sin(azimuth * DEG),
    Math.cos(altitude * DEG) * Math.cos(azimuth * DEG),
    Math.sin(altitude * DEG),
  ] as const;
const apart = (a: Parameters<typeof unit>[0], b: Parameters<typeof unit>[0]) => {
  const [u, v] = [unit(a), unit(b)];
  return (2 * Math.asin(Math.hypot(u[0] - v[0], u[1] - v[1], u[2] - v[2]) / 2)) / DEG;
};

describe("the sun over the whole earth, 1990 to 2050", () => {
  it("stands within 0.003 degrees of astronomy-engine 2.1.19, by night as by day", () => {
    let worst = 0;
    let seen = 0;
    for (const { at, latitude, longitude } of sweep(1)) {
      const observer = new Astronomy.Observer(latitude, longitude, 0);
      const { ra, dec } = Astronomy.Equator(Astronomy.Body.Sun, at, observer, true, true);
      const theirs = Astronomy.Horizon(at, observer, ra, dec);
      worst = Math.max(worst, apart(sunPosition(at, latitude, longitude), theirs));
      seen++;
    }
    expect(seen).toBe(INSTANTS);
    expect(worst).toBeLessThan(0.003);
  });

  it("is lifted by the air as in astronomy-engine, within 0.02 degrees above 5", () => {
    let worst = 0;
    let seen = 0;
    for (const { at, latitude, longitude } of sweep(2)) {
      const observer = new Astronomy.Observer(latitude, longitude, 0);
      const { ra, dec } = Astronomy.Equator(Astronomy.Body.Sun, at, observer, true, true);
      const theirs = Astronomy.Horizon(at, observer, ra, dec, "normal");
      if (theirs.altitude < 5) continue;
      worst = Math.max(worst, apart(sunPosition(at, latitude, longitude, { refraction: true }), theirs));
      seen++;
    }
    expect(seen).toBeGreaterThan(900);
    expect(worst).toBeLessThan(0.004);
  });

  it("stands within 0.02 degrees of suncalc 2.0.2, which lifts it by the air", () => {
    let worst = 0;
    let seen = 0;
    for (const { at, latitude, longitude } of sweep(3)) {
      const theirs = getPosition(at, latitude, longitude);
      if (theirs.altitude < 5) continue;
      worst = Math.max(worst, apart(sunPosition(at, latitude, longitude, { refraction: true }), theirs));
      seen++;
    }
    expect(seen).toBeGreaterThan(900);
    expect(worst).toBeLessThan(0.02);
  });

  it("rises and sets within 10 seconds of astronomy-engine between the polar circles", () => {
    let worst = 0;
    let seen = 0;
    for (const { at, latitude, longitude } of sweep(4)) {
      if (Math.abs(latitude) > 62 || seen >= 400) continue;
      const { rise, set, noon } = sunTimes(at.toISOString().slice(0, 10), latitude, longitude);
      const observer = new Astronomy.Observer(latitude, longitude, 0);
      const start = new Date(noon.getTime() - 43_200_000);
      const theirRise = Astronomy.SearchRiseSet(Astronomy.Body.Sun, observer, 1, start, 1);
      const theirSet = Astronomy.SearchRiseSet(Astronomy.Body.Sun, observer, -1, noon, 1);
      worst = Math.max(
        worst,
        Math.abs(rise!.getTime() - theirRise!.date.getTime()),
        Math.abs(set!.getTime() - theirSet!.date.getTime()),
      );
      seen++;
    }
    expect(seen).toBe(400);
    expect(worst).toBeLessThan(10_000);
  });
});
