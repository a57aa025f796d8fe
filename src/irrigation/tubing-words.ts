import type { GardenWater } from "../garden/watering.ts";
import type { Units } from "../units/length.ts";
import { TUBING } from "../water/tubing.ts";

/** Tubing as it is asked for in a shop: by its trade size, which is no measure of it, or by its outside. */
export const tubingWords = (size: GardenWater["main"], units: Units): string =>
  units === "us" ? TUBING[size].name : `${Math.round(TUBING[size].outside)} mm`;
