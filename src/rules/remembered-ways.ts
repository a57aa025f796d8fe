import { surroundingsOf } from "../access/surroundings.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import { boxOf } from "../geometry/gap.ts";
import { FOOT } from "../units/length.ts";
import type { WayOut } from "./rule.ts";

/** How far round a bed its ways out look: the farthest shift that is offered, and a path beyond it, mm. */
const LOOKS = 14 * FOOT;

interface Remembered {
  readonly circumstances: readonly unknown[];
  readonly ways: readonly WayOut[];
}

/**
 * Ways out are tried one by one, which takes longer than a frame where many things are wrong. They stay the same while
 * everything near the bed does: a snag at the other end of the yard answers from memory.
 */
export class RememberedWays {
  readonly #known = new WeakMap<Bed, Map<string, Remembered>>();

  /**
   * @param about tells several snags of one bed apart
   * @param more what else the ways out depend on; compared by identity
   */
  of(
    bed: Bed,
    garden: Garden,
    about: string,
    more: readonly unknown[],
    make: () => readonly WayOut[],
  ): readonly WayOut[] {
    let ofBed = this.#known.get(bed);
    if (!ofBed) {
      ofBed = new Map();
      this.#known.set(bed, ofBed);
    }
    const circumstances = [...circumstancesOf(bed, garden), ...more];
    const before = ofBed.get(about);
    if (before && same(before.circumstances, circumstances)) return before.ways;
    const ways = make();
    ofBed.set(about, { circumstances, ways });
    return ways;
  }
}

function circumstancesOf(bed: Bed, garden: Garden): unknown[] {
  const { obstacles, near } = surroundingsOf(garden);
  return [
    garden.yard,
    garden.limits,
    garden.gardener,
    garden.units,
    garden.site.north,
    ...near(boxOf(outlineOf(bed)), LOOKS).map((i) => obstacles[i]!.ring),
    ...garden.items.filter(({ kind }) => kind !== "bed"),
  ];
}

const same = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((value, i) => value === b[i]);
