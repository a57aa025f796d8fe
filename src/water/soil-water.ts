import type { Bed } from "../garden/kinds/bed.ts";
import { practice, published, type Source } from "../garden/source.ts";
import { within } from "./within.ts";

/** Water a soil holds, as a share of its volume, 0 to 1. */
export interface SoilWater {
  /** Once it has drained: field capacity. */
  readonly drained: number;
  /** When plants wilt for good: wilting point. */
  readonly wilting: number;
}

interface Ends {
  readonly least: number;
  readonly most: number;
}

export interface Texture {
  readonly name: string;
  readonly drained: Ends;
  readonly wilting: Ends;
  /** What plants can use, drained less wilting. */
  readonly usable: Ends;
  /** Readily and totally evaporable water of the top 100 mm, mm. */
  readonly readyEvaporable: Ends;
  readonly totalEvaporable: Ends;
}

export const TEXTURES_SOURCE: Source = published("FAO Irrigation and Drainage Paper 56, Table 19");

const ends = (least: number, most: number): Ends => ({ least, most });
const texture = (
  name: string,
  drained: Ends,
  wilting: Ends,
  usable: Ends,
  readyEvaporable: Ends,
  totalEvaporable: Ends,
): Texture => ({ name, drained, wilting, usable, readyEvaporable, totalEvaporable });

/** Garden soils by texture; the ends are those of the soils called so, not of one soil. */
export const TEXTURES = {
  sand: texture("Sand", ends(0.07, 0.17), ends(0.02, 0.07), ends(0.05, 0.11), ends(2, 7), ends(6, 12)),
  "loamy-sand": texture(
    "Loamy sand",
    ends(0.11, 0.19),
    ends(0.03, 0.1),
    ends(0.06, 0.12),
    ends(4, 8),
    ends(9, 14),
  ),
  "sandy-loam": texture(
    "Sandy loam",
    ends(0.18, 0.28),
    ends(0.06, 0.16),
    ends(0.11, 0.15),
    ends(6, 10),
    ends(15, 20),
  ),
  loam: texture("Loam", ends(0.2, 0.3), ends(0.07, 0.17), ends(0.13, 0.18), ends(8, 10), ends(16, 22)),
  "silt-loam": texture(
    "Silt loam",
    ends(0.22, 0.36),
    ends(0.09, 0.21),
    ends(0.13, 0.19),
    ends(8, 11),
    ends(18, 25),
  ),
  "silty-clay": texture(
    "Silty clay",
    ends(0.3, 0.42),
    ends(0.17, 0.29),
    ends(0.13, 0.19),
    ends(8, 12),
    ends(22, 28),
  ),
} as const satisfies Record<string, Texture>;

export type TextureId = keyof typeof TEXTURES;

/** The soil in the middle of those called so. */
export function soilOfTexture(id: TextureId): SoilWater {
  const { drained, wilting } = TEXTURES[id];
  return { drained: (drained.least + drained.most) / 2, wilting: (wilting.least + wilting.most) / 2 };
}

/**
 * What bought fills hold. Topsoil is sold as loam. Compost and soilless mix differ from heap to heap; the figures lie low
 * among those usually given, so that watering rather comes early than late.
 */
const PARTS: Readonly<Record<keyof Bed["fill"]["recipe"], SoilWater>> = {
  topsoil: soilOfTexture("loam"),
  compost: { drained: 0.45, wilting: 0.25 },
  soilless: { drained: 0.45, wilting: 0.2 },
};
export const MIX_SOURCE: Source = practice(
  "topsoil as the loam of FAO-56 Table 19; usable water 20 % of the volume of compost and 25 % of soilless mix; a mix as its parts",
);

/**
 * The water a mix holds: each part as much as by itself.
 * @throws RangeError for a recipe without parts, or parts below nothing
 */
export function soilOfMix(recipe: Bed["fill"]["recipe"]): SoilWater {
  const parts = [
    [recipe.topsoil, PARTS.topsoil],
    [recipe.compost, PARTS.compost],
    [recipe.soilless, PARTS.soilless],
  ] as const;
  const whole = parts.reduce((sum, [share]) => sum + within(share, 0, Infinity, "a part of the mix"), 0);
  if (!(whole > 0 && whole < Infinity)) throw new RangeError("a mix must have a part of something");
  const mean = (of: keyof SoilWater) =>
    parts.reduce((sum, [share, soil]) => sum + share * soil[of], 0) / whole;
  return { drained: mean("drained"), wilting: mean("wilting") };
}

/** Usable share of a soil's volume. @throws RangeError unless 0 <= wilting < drained <= 1 */
export function usableShare({ drained, wilting }: SoilWater): number {
  within(drained, 0, 1, "the drained soil's water");
  within(wilting, 0, 1, "the wilting soil's water");
  if (!(wilting < drained))
    throw new RangeError(`a soil drained to ${drained} cannot wilt plants at ${wilting}`);
  return drained - wilting;
}
