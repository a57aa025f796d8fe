import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CROPS, itemId, LIMITS, limitsOf } from "../../src/index.ts";
import { sunAskedBy } from "../../src/rules/crop-sun.ts";
import { bedShade } from "../../src/sun/sun-hours.ts";
import { bed, gardenWith, house } from "../helpers/garden-of.ts";
import { SUN, SUN_SECTIONS } from "./sun-cases.ts";

const limits = limitsOf({ limits: {} });
const asked = (sun: string) =>
  CROPS.filter((crop) => crop.sun === sun).map((crop) => sunAskedBy(crop, limits));

describe("hours asked for, against the trade's words for sun (Penn State Extension; UF/IFAS SP103; trade usage)", () => {
  it.each(SUN.sun_definitions.cases)("$id: $term", ({ term, hours, hours_min, hours_max, split_allowed }) => {
    if (hours_min !== undefined) {
      // Full sun and the least for a vegetable site: what the limit is set to, and what a crop for full sun asks for.
      expect(LIMITS.sun.default).toBe(hours_min);
      expect(new Set(asked("full"))).toEqual(new Set([hours_min]));
    } else if (term === "partial sun" && hours) {
      expect([LIMITS.sunLeast.default, LIMITS.sun.default]).toEqual(hours);
      expect(new Set([...asked("part"), ...asked("full/part")])).toEqual(new Set([hours[0]]));
    } else {
      // Partial shade and shade lie below what any vegetable is planned for.
      expect(hours?.[1] ?? hours_max).toBeLessThanOrEqual(LIMITS.sunLeast.default);
    }
    if (split_allowed) expect(splitDay()).toBeGreaterThan(LIMITS.sun.default);
  });
});

/** A bed with its noon taken by a tower to the south: hours before and after it, none of which alone would do. */
function splitDay(): number {
  const salads = bed("salads", { x: -600, y: -1200, w: 1200, h: 2400 });
  const tower = house("tower", { x: -2500, y: 3000, w: 5000, h: 3000, height: 30_000, roof: "flat" });
  const garden = gardenWith({ site: { latitude: 40, longitude: 0, north: 0 } }, salads, tower);
  const { hours, parts } = bedShade(garden, itemId("salads"), { days: ["2026-06-21"] })!;
  expect(parts.midday).toBeLessThan(2.5);
  expect(parts.morning).toBeLessThan(LIMITS.sun.default);
  expect(parts.afternoon).toBeLessThan(LIMITS.sun.default);
  expect(parts.morning + parts.midday + parts.afternoon).toBeCloseTo(hours, 9);
  return hours;
}

describe("the published cases of the sun", () => {
  const here = new URL("./", import.meta.url);
  const texts = readdirSync(here)
    .filter((name) => /^sun-.*\.test\.ts$/.test(name))
    .map((name) => readFileSync(new URL(name, here), "utf8"));

  it.each(SUN_SECTIONS)("section %s is run by a test", (section) => {
    const isRun = new RegExp(`SUN\\.${section}\\b`);
    expect(texts.some((text) => isRun.test(text))).toBe(true);
  });
});
