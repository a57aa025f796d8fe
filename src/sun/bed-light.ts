import type { ItemId } from "../garden/fields.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { BedSoil } from "./bed-soil.ts";
import { LightCounters } from "./bit-counter.ts";
import type { Caster } from "./casters.ts";
import { bitCount, type Mask, wordsInRow } from "./cells.ts";
import type { Instant } from "./instants.ts";
import { countOf } from "./light-field.ts";
import type { SunSettings } from "./options.ts";
import { castPart, lightOf, rasterOver, type StandingPart, standingOver } from "./plane.ts";
import type { Shade, Spell } from "./sun-map.ts";

/** The light on a bed's soil at each look at the sun, and who takes what of it. */
export interface BedLight {
  readonly totals: Float64Array;
  readonly shares: Float64Array;
  readonly shade: readonly Shade[];
  /** For each thing the share of the bed's sun it takes at each look, whatever else does. */
  readonly taken: ReadonlyMap<ItemId, Float64Array>;
}

/** A shadow that takes so large a share of a bed's sun is told of. */
const TOLD = 0.5;

/**
 * A bed's own frame and trellis are left out: what climbs the trellis is what the sun is wanted for, and the frame stands
 * a hand above the soil at most.
 */
export const castersFor = (bed: Bed, casters: readonly Caster[]): Caster[] =>
  casters.filter(({ id }) => id !== bed.id);

/** Looks at the light on a bed's soil as `lightField` does, and asks of every cell what each shading thing costs it. */
export function bedLight(
  { cells, soil, level }: BedSoil,
  casters: readonly Caster[],
  instants: readonly Instant[],
  settings: SunSettings,
): BedLight {
  const parts = standingOver(casters, cells, level);
  const raster = rasterOver(cells);
  const losses = new LightCounters(soil.length);
  const shares = new Float64Array(instants.length).fill(1);
  const soilCells = countOf(soil);
  const costs = new Costs(instants, settings);
  const words = wordsInRow(cells);

  instants.forEach((instant, look) => {
    const casting: StandingPart[] = [];
    let first = cells.rows;
    let last = -1;
    for (const part of parts) {
      if (!raster.isReached(part.bounds, instant.perX, instant.perY) || lightOf(part, instant) >= 1) continue;
      if (!castPart(raster, part, instant, part.mask)) continue;
      casting.push(part);
      first = Math.min(first, raster.firstRow);
      last = Math.max(last, raster.lastRow);
    }
    if (casting.length === 0) return;
    const span = { casting, instant, from: first * words, to: (last + 1) * words };
    const groups = casting.length === 1 ? underOne(span, soil, losses) : underMany(span, soil, losses);
    for (const { over, light, cells: shaded } of groups) {
      const share = shaded / soilCells;
      shares[look]! -= share * (1 - light);
      costs.count(over, instant, look, light, share);
    }
    for (const { mask } of casting) mask.fill(0, span.from, span.to);
  });
  const taken = losses.totals(cells);
  return {
    totals: taken.map((loss) => instants.length - loss),
    shares,
    shade: costs.shade(),
    taken: costs.taken,
  };
}

/** Cells that lie under the same parts at one look. */
interface Group {
  readonly over: readonly StandingPart[];
  readonly light: number;
  cells: number;
}

/** The parts whose shadows fall at one look, and the words of their masks that hold them. */
interface Span {
  readonly casting: readonly StandingPart[];
  readonly instant: Instant;
  readonly from: number;
  readonly to: number;
}

/** Most shadows fall on a bed alone: no cell has to be asked what else it lies under. */
function underOne({ casting, instant, from, to }: Span, soil: Mask, losses: LightCounters): Group[] {
  const { mask } = casting[0]!;
  const light = lightOf(casting[0]!, instant);
  const counter = losses.of(1 - light);
  let cells = 0;
  for (let word = from; word < to; word++) {
    const bits = soil[word]! & mask[word]!;
    if (bits === 0) continue;
    counter.add(word, bits);
    cells += bitCount(bits);
  }
  return cells > 0 ? [{ over: casting, light, cells }] : [];
}

function underMany({ casting, instant, from, to }: Span, soil: Mask, losses: LightCounters): Iterable<Group> {
  const groups = new Map<string | number, Group>();
  for (let word = from; word < to; word++) {
    let shaded = 0;
    for (let i = 0; i < casting.length; i++) shaded |= casting[i]!.mask[word]!;
    let left = soil[word]! & shaded;
    while (left !== 0) {
      const { group, bits } = alike(casting, word, left, groups, instant);
      losses.of(1 - group.light).add(word, bits);
      group.cells += bitCount(bits);
      left ^= bits;
    }
  }
  return groups.values();
}

/** More parts than a whole number can tell apart by its binary digits. */
const MOST_DIGITS = 52;

/** The cells of a word under the same parts as its lowest one, and the group they belong to. */
function alike(
  parts: readonly StandingPart[],
  word: number,
  left: number,
  groups: Map<string | number, Group>,
  instant: Instant,
): { readonly group: Group; readonly bits: number } {
  const lowest = left & -left;
  let bits = left;
  let key = 0;
  for (let i = 0, digit = 1; i < parts.length; i++, digit *= 2) {
    const here = parts[i]!.mask[word]!;
    if (here & lowest) {
      bits &= here;
      key += digit;
    } else bits &= ~here;
  }
  const isOver = ({ mask }: StandingPart) => (mask[word]! & lowest) !== 0;
  const name = parts.length <= MOST_DIGITS ? key : parts.map((part) => (isOver(part) ? "1" : "0")).join("");
  let group = groups.get(name);
  if (!group) {
    const over = parts.filter(isOver);
    group = { over, light: lightThrough(over, instant, null), cells: 0 };
    groups.set(name, group);
  }
  return { group, bits };
}

function lightThrough(parts: readonly StandingPart[], instant: Instant, but: ItemId | null): number {
  let light = 1;
  for (const part of parts) if (part.id !== but) light *= lightOf(part, instant);
  return light;
}

/** What each thing costs a bed, gathered look by look. */
class Costs {
  readonly #instants: readonly Instant[];
  readonly #settings: SunSettings;
  readonly #lost = new Map<ItemId, number>();
  readonly taken = new Map<ItemId, Float64Array>();

  constructor(instants: readonly Instant[], settings: SunSettings) {
    this.#instants = instants;
    this.#settings = settings;
  }

  /** Cells that are a share of the bed and lie under the same parts. */
  count(over: readonly StandingPart[], instant: Instant, look: number, light: number, share: number): void {
    const [only, another] = over;
    if (only && !another) {
      this.#add(only.id, look, share * (1 - light), share * (1 - light));
      return;
    }
    over.forEach(({ id }, i) => {
      if (over.findIndex((part) => part.id === id) !== i) return;
      const alone = lightThrough(over, instant, id);
      const ownParts = over.filter((part) => part.id === id);
      const own = lightThrough(ownParts, instant, null);
      this.#add(id, look, share * (alone - light), share * (1 - own));
    });
  }

  #add(id: ItemId, look: number, lost: number, share: number): void {
    this.#lost.set(id, (this.#lost.get(id) ?? 0) + lost);
    let taken = this.taken.get(id);
    if (!taken) {
      taken = new Float64Array(this.#instants.length);
      this.taken.set(id, taken);
    }
    taken[look]! += share;
  }

  shade(): Shade[] {
    const { step, days } = this.#settings;
    return [...this.taken]
      .map(([id, taken]) => ({
        id,
        hours: ((this.#lost.get(id) ?? 0) * step) / 60 / days.length,
        spells: this.#spells(taken),
      }))
      .sort((a, b) => b.hours - a.hours);
  }

  #spells(taken: Float64Array): Spell[] {
    const { step, days } = this.#settings;
    const spells: { day: string; from: number; to: number }[] = [];
    this.#instants.forEach(({ day, minute }, look) => {
      // Halves of many cells do not add up to the last digit.
      if (taken[look]! < TOLD - 1e-9) return;
      const last = spells.at(-1);
      const from = minute - step / 2;
      if (last && last.day === days[day] && last.to === from) last.to = from + step;
      else spells.push({ day: days[day]!, from, to: from + step });
    });
    return spells;
  }
}
