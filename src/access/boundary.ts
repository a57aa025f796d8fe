import type { Garden } from "../garden/garden.ts";
import type { Ring } from "../geometry/types.ts";
import { INCH } from "../units/length.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { Side } from "./types.ts";

/** Everything a walker may bump into, as points set close together along the outlines. */
export interface Boundary {
  /** x and y of every sample, in turn. */
  readonly coords: Float64Array;
  /** The neighbours of a sample along its own ring. */
  readonly previous: Int32Array;
  readonly next: Int32Array;
  /** Of every sample: index into `sides`. */
  readonly owner: Int32Array;
  readonly sides: readonly Side[];
  /** Greatest distance between neighbours, mm. */
  readonly step: number;
}

/**
 * Steps to choose from, finest first. The widths that follow are made exact by a local step (see `ways-width.ts`), so
 * the step only decides how small a pocket may be overlooked.
 */
const STEPS = [3 * INCH, 6 * INCH, 12 * INCH];

/**
 * How closely to look. While something is dragged the samples are few enough to be looked through within the frame; a
 * pocket or a very crooked gap may then be told a shade wrong, until things are settled.
 */
export type Detail = "dragged" | "settled";

/** The finest step that stays within this many samples is taken: some 2 and 8 ms of triangulation and search. */
const MOST_SAMPLES: Readonly<Record<Detail, number>> = { dragged: 2400, settled: 8000 };

/** The outlines that samples are taken along, whose they are, and how closely. */
export interface Outlines {
  readonly rings: readonly Ring[];
  readonly owners: readonly Side[];
  /** Greatest distance between samples, mm. */
  readonly step: number;
}

/** The yard's outline and those of everything that stands in it. */
export function outlinesOf(garden: Pick<Garden, "items" | "yard">, detail: Detail): Outlines {
  const { obstacles } = surroundingsOf(garden);
  const rings = [garden.yard, ...obstacles.map(({ ring }) => ring)];
  const owners: Side[] = ["yard", ...obstacles.map(({ id }) => id)];
  return { rings, owners, step: stepFor(rings, MOST_SAMPLES[detail]) };
}

/** Samples along the yard's outline and everything that stands in it. */
export const boundaryOf = (garden: Pick<Garden, "items" | "yard">, detail: Detail = "settled"): Boundary =>
  boundaryAlong(outlinesOf(garden, detail));

/** Samples along some outlines, in their order. */
export const boundaryAlong = ({ rings, owners, step }: Outlines): Boundary =>
  joined(
    rings.map((ring) => samplesOf(ring, step)),
    owners,
    step,
  );

function stepFor(rings: readonly Ring[], most: number): number {
  const coarsest = STEPS.at(-1) ?? 0;
  const fits = (step: number) =>
    rings.reduce((sum, ring) => sum + samplesOf(ring, step).length / 2, 0) <= most;
  return STEPS.find(fits) ?? coarsest;
}

const remembered = new WeakMap<Ring, Map<number, Float64Array>>();

/** Corners always, and points between them no farther apart than the step. Remembered by the ring. */
function samplesOf(ring: Ring, step: number): Float64Array {
  let bySteps = remembered.get(ring);
  if (!bySteps) {
    bySteps = new Map();
    remembered.set(ring, bySteps);
  }
  let samples = bySteps.get(step);
  if (!samples) {
    samples = sampled(ring, step);
    bySteps.set(step, samples);
  }
  return samples;
}

function sampled(ring: Ring, step: number): Float64Array {
  const out: number[] = [];
  ring.forEach(([x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length] ?? [x, y];
    const parts = Math.max(1, Math.ceil(Math.hypot(nextX - x, nextY - y) / step));
    for (let part = 0; part < parts; part++) {
      const t = part / parts;
      out.push(x + t * (nextX - x), y + t * (nextY - y));
    }
  });
  return Float64Array.from(out);
}

function joined(rings: readonly Float64Array[], owners: readonly Side[], step: number): Boundary {
  const count = rings.reduce((sum, ring) => sum + ring.length / 2, 0);
  const coords = new Float64Array(2 * count);
  const previous = new Int32Array(count);
  const next = new Int32Array(count);
  const owner = new Int32Array(count);
  let first = 0;
  rings.forEach((ring, side) => {
    const size = ring.length / 2;
    coords.set(ring, 2 * first);
    for (let i = 0; i < size; i++) {
      previous[first + i] = first + ((i + size - 1) % size);
      next[first + i] = first + ((i + 1) % size);
      owner[first + i] = side;
    }
    first += size;
  });
  return { coords, previous, next, owner, sides: owners, step };
}
