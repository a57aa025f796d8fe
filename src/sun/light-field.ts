import { LightCounters } from "./bit-counter.ts";
import type { Caster } from "./casters.ts";
import { bitCount, type Cells, emptyMask, type Mask, wordsInRow } from "./cells.ts";
import type { Instant } from "./instants.ts";
import { castAll, type Dim, rasterOver, standingOver } from "./plane.ts";

/** The light that falls on the cells of one level plane over all looks at the sun. */
export interface LightField {
  readonly cells: Cells;
  /** Looks at the sun for each cell, each counted by the share of light that came. */
  readonly totals: Float64Array;
  /** For each look at the sun, the share of light over the cells whose mean is wanted, 0 to 1; 0 for none. */
  readonly shares: Float64Array;
}

/** What a field keeps of each look at the sun, so that one more thing can be put in its light. */
export interface KeptLight {
  /** Cells that no solid thing shades. */
  readonly lit: Mask;
  /** Crowns and slats that shade some cell. */
  readonly dims: readonly Dim[];
}

export interface FieldRequest {
  readonly cells: Cells;
  /** Height of the plane above the ground, mm. */
  readonly level: number;
  /** The cells whose mean share is wanted: the soil of a bed. None of them where only the totals are. */
  readonly soil: Mask;
  readonly casters: readonly Caster[];
  readonly instants: readonly Instant[];
  /** Gets what is worth keeping of each look, in order. */
  readonly keep?: (light: KeptLight) => void;
}

/**
 * Sums up the light on a plane: for each look at the sun all shadows are set into masks of a bit a cell, and the cells they
 * shade counted 32 at a time; what is left of all looks is light. The same as a ray from every cell to every look at the sun, but for rounding.
 */
export function lightField({ cells, level, soil, casters, instants, keep }: FieldRequest): LightField {
  const parts = standingOver(casters, cells, level);
  const raster = rasterOver(cells);
  const losses = new LightCounters(soil.length);
  const whole = losses.of(1);
  const shares = new Float64Array(instants.length);
  const soilCells = countOf(soil);
  const dark = emptyMask(cells);
  const everywhere = allOf(cells);
  const words = wordsInRow(cells);

  instants.forEach((instant, look) => {
    const { dims, first, last } = castAll(raster, parts, instant, dark);
    let lost = 0;
    let at = 0;
    const tell = (bits: number, light: number) => {
      losses.of(1 - light).add(at, bits);
      lost += (1 - light) * bitCount(bits & soil[at]!);
    };
    // Rows that no shadow touches lose nothing.
    const [from, to] = [first * words, (last + 1) * words];
    for (let word = from; word < to; word++) {
      const unlit = dark[word]!;
      if (unlit !== 0) {
        whole.add(word, unlit);
        const counted = soil[word]!;
        if (counted !== 0) lost += bitCount(unlit & counted);
      }
      let dimmed = 0;
      for (let i = 0; i < dims.length; i++) dimmed |= dims[i]!.mask[word]!;
      dimmed &= ~unlit;
      at = word;
      if (dimmed !== 0) eachLight(dims, word, dimmed, tell);
    }
    shares[look] = soilCells > 0 ? 1 - lost / soilCells : 0;
    keep?.({ lit: dark.map((bits, word) => ~bits & everywhere[word]!), dims: dims.map(copied) });
    if (from < to) {
      dark.fill(0, from, to);
      for (const { mask } of dims) mask.fill(0, from, to);
    }
  });
  const taken = losses.totals(cells);
  return { cells, totals: taken.map((loss) => instants.length - loss), shares };
}

const copied = ({ mask, light }: Dim): Dim => ({ mask: mask.slice(), light });

/** Parts some cells of a word by the crowns and slats over them, and tells the light that gets through all of those. */
export function eachLight(
  dims: readonly Dim[],
  word: number,
  bits: number,
  tell: (bits: number, light: number) => void,
): void {
  let left = bits;
  while (left !== 0) {
    const lowest = left & -left;
    let same = left;
    let light = 1;
    for (let i = 0; i < dims.length; i++) {
      const here = dims[i]!.mask[word]!;
      if (here & lowest) {
        same &= here;
        light *= dims[i]!.light;
      } else same &= ~here;
    }
    tell(same, light);
    left ^= same;
  }
}

/** All cells there are: the bits beyond the last column stay clear. */
export function allOf(cells: Cells): Mask {
  const words = wordsInRow(cells);
  const last = -1 >>> ((32 - (cells.columns & 31)) & 31);
  return emptyMask(cells).map((_, word) => (word % words === words - 1 ? last : -1));
}

export function countOf(mask: Mask): number {
  let count = 0;
  for (const word of mask) count += bitCount(word);
  return count;
}
