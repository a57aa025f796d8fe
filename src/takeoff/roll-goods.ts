import { practice, published, type Source } from "../garden/source.ts";

/** Mesh or fabric cut from rolls to lie under a bed. Lengths in mm. */

export const LAP_SOURCE: Source = published(
  "trade how-to texts: lap 4 to 6 in, turn up 3 to 4 in, staple every 4 in",
);
export const ROLLS_SOURCE: Source = practice("rolls 2, 3 and 4 ft wide; 5 to 100 ft long");

export interface Strips {
  readonly strips: number;
  /** Of each strip. */
  readonly length: number;
  /** Of roll used, all strips together. */
  readonly total: number;
}

/**
 * Strips that cover a sheet across one direction: one where the roll is as wide as the sheet, otherwise
 * ceil((width - lap) / (roll - lap)), so that neighbours lap.
 * @throws RangeError for a roll no wider than the lap
 */
export function stripsAcross(width: number, length: number, roll: number, lap: number): Strips {
  if (roll <= lap) throw new RangeError(`a roll of ${roll} mm with a lap of ${lap} mm covers nothing`);
  const strips = width <= roll + 0.5 ? 1 : Math.ceil((width - lap) / (roll - lap) - 1e-6);
  return { strips, length, total: strips * length };
}

/** The direction that takes less of the roll; of equals the one with fewer strips. */
export const fewestStrips = (width: number, length: number, roll: number, lap: number): Strips =>
  bothWays(width, length, roll, lap)[0];

/** Strips along and across, that first which takes less of the roll. */
export function bothWays(
  width: number,
  length: number,
  roll: number,
  lap: number,
): readonly [fewest: Strips, other: Strips] {
  const along = stripsAcross(width, length, roll, lap);
  const across = stripsAcross(length, width, roll, lap);
  const better = along.total - across.total || along.strips - across.strips;
  return better <= 0 ? [along, across] : [across, along];
}

/**
 * Clear opening of a wire mesh: its size is measured from wire to wire, centre to centre.
 * @source ASTM A740-98 (2003), clauses 3.1.1 and 3.1.2
 */
export const clearOpening = (mesh: number, wire: number): number => mesh - wire;
