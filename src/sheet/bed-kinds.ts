import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";

/** A bed with the mark it carries on the plan: its kind's letter, and a number where there are several of the kind. */
export interface MarkedBed {
  readonly bed: Bed;
  readonly mark: string;
}

/** Beds that are built alike: same outline, wall, bottom, fill and mulch, and as much of them standing already. They share a letter on the sheet. */
export interface BedKind {
  readonly letter: string;
  readonly beds: readonly MarkedBed[];
}

/** The beds of a garden grouped by what has to be built, in the order the garden first names them. */
export function bedKindsOf(garden: Pick<Garden, "items">): readonly BedKind[] {
  const alike = new Map<string, Bed[]>();
  for (const item of garden.items) {
    if (item.kind !== "bed") continue;
    const key = builtAs(item);
    alike.set(key, [...(alike.get(key) ?? []), item]);
  }
  return [...alike.values()].map((beds, index) => {
    const letter = letterOf(index);
    return {
      letter,
      beds: beds.map((bed, i) => ({ bed, mark: beds.length === 1 ? letter : `${letter}${i + 1}` })),
    };
  });
}

const builtAs = ({ shape, wall, bottom, fill, mulch, trellis, legs, already }: Bed): string =>
  JSON.stringify([shape, wall, bottom, fill, mulch, trellis, legs, already]);

const ALPHABET = "ABCDEFGHJKLMNPQRSTUVWXYZ"; // without I and O, which read as figures

function letterOf(index: number): string {
  const last = ALPHABET[index % ALPHABET.length]!;
  return index < ALPHABET.length ? last : letterOf(Math.floor(index / ALPHABET.length) - 1) + last;
}
