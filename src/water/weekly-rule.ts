import { fromMemory, published, type Source } from "../garden/source.ts";
import { INCH } from "../units/length.ts";
import { word } from "../words/say.ts";
import { litresOver } from "./depths.ts";
import { atLeastZero } from "./within.ts";

/** What handbooks say for want of anything better: water of a week, rain included, mm. */
export const WEEKLY_RULE = {
  usual: INCH,
  least: 0.5 * INCH,
  most: 1.5 * INCH,
  /** To be shown as a rule of thumb. */
  amount: word("about an inch a week, rain counted"),
  sources: [
    fromMemory("general extension rule: about 1 in a week"),
    published("UF/IFAS Extension, Watering the Vegetable Garden: half an inch to one inch a week"),
    published("UC Master Gardeners, Vegetable Root Depth, F. Nishida 2011, as copied: up to 1.5 in a week"),
  ] as readonly Source[],
} as const;

/**
 * Litres a week for a bed by the rule of thumb, where no climate is known. It knows neither the place nor the crop nor the
 * season, and is to be shown as what it is.
 *
 * @param areaMm2 of the soil
 * @param rain of the week, mm
 */
export const litresByRule = (areaMm2: number, rain = 0): number =>
  litresOver(areaMm2, Math.max(0, WEEKLY_RULE.usual - atLeastZero(rain, "the rain")));
