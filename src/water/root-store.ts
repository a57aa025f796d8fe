import type { Range } from "../crops/crop-table.ts";
import type { Stages } from "./crop-water.ts";
import { type SoilWater, usableShare } from "./soil-water.ts";
import { atLeastZero, within } from "./within.ts";

/** What roots can reach of a bed: its own soil, and the ground below it where nothing is between. */
export interface RootRoom {
  /** Depth of soil in the bed, mm. */
  readonly depth: number;
  readonly soil: SoilWater;
  /** Null where paving, a deck or a sheet stops the roots. */
  readonly ground: SoilWater | null;
}

/**
 * Total available water TAW down to the end of the roots, mm: the bed's own soil first, then the ground, where roots may go
 * on into it.
 *
 * @param rootDepth how deep the crop roots in open ground, mm
 * @source Allen, Pereira, Raes and Smith 1998, FAO-56, equation 82, layer by layer
 */
export function totalAvailable({ depth, soil, ground }: RootRoom, rootDepth: number): number {
  const inBed = Math.min(atLeastZero(rootDepth, "the root depth"), atLeastZero(depth, "the bed's soil"));
  const below = ground ? usableShare(ground) * (rootDepth - inBed) : 0;
  return usableShare(soil) * inBed + below;
}

/**
 * Share p of the store that a crop takes with ease on a day it gives off so much: the thirstier the day, the sooner it
 * feels the want.
 *
 * @param tabled at 5 mm a day, 0 to 1
 * @param cropEt evapotranspiration of the crop, mm a day
 * @returns 0.1 to 0.8
 * @source FAO-56 Table 22, note 2
 */
export const easyShareAt = (tabled: number, cropEt: number): number =>
  Math.min(
    0.8,
    Math.max(
      0.1,
      within(tabled, 0, 1, "the easy share") + 0.04 * (5 - atLeastZero(cropEt, "the water given off")),
    ),
  );

/** Readily available water RAW, mm. @source FAO-56 equation 83 */
export const readilyAvailable = (total: number, easyShare: number): number =>
  within(easyShare, 0, 1, "the easy share") * atLeastZero(total, "the available water");

/** Depth that seeds and transplants draw from at first, mm: common practice, 0.10 to 0.15 m in most balances. */
const FIRST_ROOTS = 150;

/**
 * How deep roots have come, mm: from where they start, evenly, to their full depth when the crop is grown, at the start
 * of the mid stage. The lesser end of the printed range: beds are watered often, and roots stay where water is.
 *
 * @param day after planting, 0 or more
 */
export function rootDepthOn(day: number, [initial, development]: Stages, { least }: Range): number {
  const grown = Math.min(1, atLeastZero(day, "the day") / Math.max(1, initial + development));
  const first = Math.min(FIRST_ROOTS, least);
  return first + grown * (least - first);
}
