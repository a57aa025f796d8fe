import { expect, it } from "vitest";
import { poundsPerAcre, seedFor } from "../../src/crops/seed-rate.ts";

it("reckons seed by the area of a bed: 2 g on each of 3 square metres", () =>
  expect(seedFor(2, 3e6)).toBe(6));

it("refuses a rate or an area below nothing", () => {
  expect(() => poundsPerAcre(-1)).toThrow(RangeError);
  expect(() => poundsPerAcre(Number.NaN)).toThrow(RangeError);
  expect(() => seedFor(2, -1)).toThrow(RangeError);
  expect(() => seedFor(-2, 1)).toThrow(RangeError);
});
