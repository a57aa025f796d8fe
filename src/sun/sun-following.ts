import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { bedLight, castersFor } from "./bed-light.ts";
import { type BedSoil, bedSoil } from "./bed-soil.ts";
import { bedSun } from "./bed-sun.ts";
import { LightCounters } from "./bit-counter.ts";
import { type Caster, casterOf, castersOf } from "./casters.ts";
import { bitCount, type Cells, emptyMask, type Mask, wordsInRow } from "./cells.ts";
import { type Instant, instantsOf } from "./instants.ts";
import { countOf, eachLight, type KeptLight, type LightField, lightField } from "./light-field.ts";
import { type SunOptions, settingsFor } from "./options.ts";
import { castAll, type Dim, rasterOver, standingOver } from "./plane.ts";
import { bedsOf, isNoBed, sunHours } from "./sun-hours.ts";
import type { BedSun, SunMap } from "./sun-map.ts";
import { type LitBed, yardCells, yardSun } from "./yard-sun.ts";

/**
 * The sun hours of a garden in which one thing is being moved, turned or resized: the same as `sunHours`, many times faster.
 *
 * Begun once when the hand takes hold: what the others leave is kept, for each look at the sun a bit for each cell of the
 * yard and again for each crown and slatted fence: 1.3 MB for a yard of 60 x 40 ft at the live settings, and as much for
 * every tree. After that each call casts the one thing's shadow alone. If anything but that thing has changed since, the
 * whole is worked out anew.
 *
 * Beds other than the one that moves come without what shades them; see `bedShade`.
 *
 * @param garden as it is when the hand takes hold
 * @param id the thing that will move
 * @throws RangeError for options that cannot be
 */
export function sunFollowing(
  garden: Garden,
  id: ItemId,
  options: SunOptions = {},
): (moved: Garden) => SunMap {
  const settings = settingsFor(garden.site, options);
  const instants = instantsOf(garden.site, settings);
  const others = garden.items.filter((item) => item.id !== id);
  const casters = castersOf(others);
  const cells = yardCells(garden, settings.cell);
  const onGround = settings.bareGround ? castersOf(others.filter(isNoBed)) : casters;
  const ground = keptField(cells, emptyMask(cells), 0, onGround, instants);
  const beds = new Map<Bed, KeptBed>(
    bedsOf({ items: others }, settings.cell).map(({ bed, place }) => {
      const field = keptField(place.cells, place.soil, place.level, castersFor(bed, casters), instants);
      return [bed, { place, field }];
    }),
  );

  return (moved) => {
    if (moved.yard !== garden.yard || moved.site !== garden.site || !sameOthers(moved, id, others)) {
      return sunHours(moved, options);
    }
    const item = moved.items.find((one) => one.id === id);
    const caster = item ? casterOf(item) : null;
    const lit: LitBed[] = [];
    const found: BedSun[] = [];
    const tell = (bed: Bed, place: BedSoil, light: BedLightSums) => {
      lit.push({ bed, place, totals: light.totals });
      found.push(bedSun(bed, place, light, instants, settings, light.shade));
    };
    for (const bed of moved.items) {
      if (bed.kind !== "bed") continue;
      const kept = beds.get(bed);
      if (kept) {
        tell(bed, kept.place, { ...withOneMore(kept.field, caster, instants), shade: null });
        continue;
      }
      const place = bed.id === id ? bedSoil(bed, settings.cell) : null;
      if (place) tell(bed, place, bedLight(place, castersFor(bed, casters), instants, settings));
    }
    const { season, days, step } = settings;
    const isOnGround = item !== undefined && (isNoBed(item) || !settings.bareGround);
    const { totals } = withOneMore(ground, isOnGround ? caster : null, instants);
    return { season, days, step, yard: yardSun(moved, cells, totals, lit, settings), beds: found };
  };
}

interface KeptBed {
  readonly place: BedSoil;
  readonly field: KeptField;
}

interface BedLightSums {
  readonly totals: Float64Array;
  readonly shares: Float64Array;
  readonly shade: BedSun["shade"];
}

/** Light without the thing that moves, with what is needed to put it in. */
interface KeptField extends LightField {
  readonly soil: Mask;
  readonly level: number;
  readonly looks: readonly KeptLight[];
}

function keptField(
  cells: Cells,
  soil: Mask,
  level: number,
  casters: readonly Caster[],
  instants: readonly Instant[],
): KeptField {
  const looks: KeptLight[] = [];
  const field = lightField({ cells, soil, level, casters, instants, keep: (light) => looks.push(light) });
  return { ...field, soil, level, looks };
}

const sameOthers = ({ items }: Garden, id: ItemId, others: Garden["items"]): boolean => {
  const now = items.filter((item) => item.id !== id);
  return now.length === others.length && now.every((item, i) => item === others[i]);
};

/** The light with one more thing in it: what its shadow takes of the light the others leave is counted and taken off. */
function withOneMore(kept: KeptField, caster: Caster | null, instants: readonly Instant[]): LightField {
  const { cells, soil, level, looks } = kept;
  const parts = caster ? standingOver([caster], cells, level) : [];
  if (parts.length === 0) return kept;
  const raster = rasterOver(cells);
  const words = wordsInRow(cells);
  const soilCells = countOf(soil);
  const losses = new LightCounters(soil.length);
  const whole = losses.of(1);
  const shares = kept.shares.slice();
  const dark = emptyMask(cells);

  instants.forEach((instant, look) => {
    const { dims, first, last } = castAll(raster, parts, instant, dark);
    const before = looks[look]!;
    let lost = 0;
    for (let word = first * words; word < (last + 1) * words; word++) {
      const solid = dark[word]! & before.lit[word]!;
      dark[word] = 0;
      if (before.dims.length === 0 && dims.length === 0) {
        if (solid === 0) continue;
        whole.add(word, solid);
        lost += bitCount(solid & soil[word]!);
        continue;
      }
      lost += lossIn(word, solid, before, dims, losses, soil[word]!);
    }
    if (soilCells > 0) shares[look]! -= lost / soilCells;
    for (const { mask } of dims) mask.fill(0, first * words, (last + 1) * words);
  });
  const taken = losses.totals(cells);
  return { cells, totals: kept.totals.map((total, i) => total - taken[i]!), shares };
}

/** Where there are crowns and slats: counts what a word's cells lose. @returns the light lost on cells that matter */
function lossIn(
  word: number,
  solid: number,
  before: KeptLight,
  dims: readonly Dim[],
  losses: LightCounters,
  counted: number,
): number {
  let lost = 0;
  const lose = (bits: number, loss: number) => {
    losses.of(loss).add(word, bits);
    lost += loss * bitCount(bits & counted);
  };
  let dimmed = 0;
  for (const { mask } of dims) dimmed |= mask[word]!;
  const part = dimmed & ~solid & before.lit[word]!;
  if (solid !== 0) eachLight(before.dims, word, solid, lose);
  if (part !== 0) {
    eachLight(before.dims, word, part, (bits, light) => {
      eachLight(dims, word, bits, (same, through) => lose(same, light * (1 - through)));
    });
  }
  return lost;
}
