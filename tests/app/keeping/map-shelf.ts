import type { PackedState, Shelf } from "../../../app/keeping/shelf.ts";
import type { StepRecord, StoredGarden } from "../../../app/keeping/stored.ts";

export interface MapShelf extends Shelf {
  readonly gardens: Map<string, StoredGarden>;
  readonly stepsOf: Map<string, Map<number, StepRecord>>;
  readonly statesOf: Map<string, Map<number, PackedState>>;
  /** How many letters each write took. */
  readonly written: number[];
  /** What a write meets with; null for room enough. */
  trouble: ((letters: number) => void) | null;
}

/** A shelf of maps, which does what the browser's own does. */
export function createMapShelf(): MapShelf {
  const gardens = new Map<string, StoredGarden>();
  const stepsOf = new Map<string, Map<number, StepRecord>>();
  const statesOf = new Map<string, Map<number, PackedState>>();
  const of = <V>(maps: Map<string, Map<number, V>>, id: string): Map<number, V> => {
    const found = maps.get(id) ?? new Map<number, V>();
    maps.set(id, found);
    return found;
  };
  const shelf: MapShelf = {
    gardens,
    stepsOf,
    statesOf,
    written: [],
    trouble: null,
    list: async () => [...gardens.values()].sort((a, b) => b.changed - a.changed),
    get: async (id) => gardens.get(id),
    steps: async (id) => [...of(stepsOf, id).values()].sort((a, b) => a.n - b.n),
    async put({ garden, steps }) {
      const letters = steps.reduce((sum, { text }) => sum + text.length, garden.text.length);
      shelf.trouble?.(letters);
      shelf.written.push(letters);
      gardens.set(garden.id, garden);
      const own = of(stepsOf, garden.id);
      const { first, end } = garden.history ?? { first: 0, end: 0 };
      for (const n of [...own.keys()]) if (n < first || n >= end) own.delete(n);
      for (const step of steps) own.set(step.n, step);
    },
    async remove(id) {
      gardens.delete(id);
      stepsOf.delete(id);
      statesOf.delete(id);
    },
    stateTimes: async (id) => [...of(statesOf, id).keys()].sort((a, b) => a - b),
    states: async (id) => [...of(statesOf, id).values()].sort((a, b) => a.at - b.at),
    async putState(state, thinnedOut) {
      shelf.trouble?.(state.packed.byteLength);
      const own = of(statesOf, state.garden);
      own.set(state.at, state);
      for (const at of thinnedOut) own.delete(at);
    },
  };
  return shelf;
}
