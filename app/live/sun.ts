import { create } from "zustand";
import type { Garden, ItemId, SunGrid, SunMap } from "../../src/index.ts";

/** Hours of sun, while somebody looks at them. */
export interface Sun {
  /** The garden the map is of; an older one for the moment until the newest is done. */
  readonly of: Garden | null;
  readonly map: SunMap | null;
  /** Hours on the bare ground, as it would be without the beds. */
  readonly ground: SunGrid | null;
  /** Looked at more closely than it takes to follow a hand. */
  readonly closely: boolean;
  /** Looked at as closely as it gets, not just closely enough to follow a hand. */
  readonly settled: boolean;
  /** A bed under the hand, and the hours it gets where it is now: in the very frame, before the map follows. */
  readonly dragged: { readonly id: ItemId; readonly hours: number } | null;
  /** Why there is no map, where it could not be worked out. */
  readonly problem: string | null;
}

export const NO_SUN: Sun = {
  of: null,
  map: null,
  ground: null,
  closely: false,
  settled: false,
  dragged: null,
  problem: null,
};

/** The last map of the sun. `sun-reckoning.ts` writes it while the Sun leaf is open; the leaf and the plan read it. */
export const useSun = create<Sun>()(() => NO_SUN);
