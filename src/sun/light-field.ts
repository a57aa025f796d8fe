import { LightCounters } from "./bit-counter.ts";
import type { Caster } from "./casters.ts";
import { bitCount, type Cells, emptyMask, type Mask, wordsInRow } from "./cells.ts";
import type { Instant } from "./instants.ts";
import { castPart, lightOf, rasterOver, type StandingPart, standingOver } from "./plane.ts";

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

/** Cells that some of the light reaches. */
export interface Dim {
  readonly mask: Mask;
  readonly light: number;
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
 * Sums up the light on a plane: for each look at the sun all shadows are set into masks of a bit a cell, and the cells that
 * are lit counted 32 at a time. The same as a ray from every cell to every look at the sun, but for rounding.
 */
export function lightField({ cells, level, soil, casters, instants, keep }: FieldRequest): LightField {
  const parts = standingOver(casters, cells, level);
  const raster = rasterOver(cells);
  const counters = new LightCounters(soil.length);
  const full = counters.of(1);
  const shares = new Float64Array(instants.length);
  const soilCells = countOf(soil);
  const dark = emptyMask(cells);
  const everywhere = allOf(cells);

  instants.forEach((instant, look) => {
    dark.fill(0);
    const dimming: StandingPart[] = [];
    for (const part of parts) {
      const light = lightOf(part, instant);
      if (light >= 1) continue;
      const touched = castPart(raster, part, instant, light <= 0 ? dark : part.mask);
      if (touched && light > 0) dimming.push(part);
    }
    const dims = dimming.map((part) => ({ mask: part.mask, light: lightOf(part, instant) }));
    let sum = 0;
    let at = 0;
    const tell = (bits: number, light: number) => {
      counters.of(light).add(at, bits);
      sum += light * bitCount(bits & soil[at]!);
    };
    for (let word = 0; word < dark.length; word++) {
      const lit = ~dark[word]! & everywhere[word]!;
      if (lit === 0) continue;
      let dimmed = 0;
      for (let i = 0; i < dims.length; i++) dimmed |= dims[i]!.mask[word]!;
      const plain = lit & ~dimmed;
      if (plain !== 0) {
        full.add(word, plain);
        const counted = soil[word]!;
        if (counted !== 0) sum += bitCount(plain & counted);
      }
      at = word;
      if ((lit & dimmed) !== 0) eachLight(dims, word, lit & dimmed, tell);
    }
    shares[look] = soilCells > 0 ? sum / soilCells : 0;
    keep?.({ lit: dark.map((bits, word) => ~bits & everywhere[word]!), dims: dims.map(copied) });
    for (const { mask } of dimming) mask.fill(0);
  });
  return { cells, totals: counters.totals(cells), shares };
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
