import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";

const made = new WeakMap<Bed, Bed>();

/** A bed with nothing of it standing yet: what it costs to build it all anew. */
function newBed(bed: Bed): Bed {
  if (bed.already === null) return bed;
  let fresh = made.get(bed);
  if (!fresh) {
    fresh = { ...bed, already: null };
    made.set(bed, fresh);
  }
  return fresh;
}

/** A garden in which nothing stands yet. The same beds give the same new beds, so that all that is known of them is kept. */
export function asNew(garden: Garden): Garden {
  if (!garden.items.some((item) => item.kind === "bed" && item.already !== null)) return garden;
  return { ...garden, items: garden.items.map((item) => (item.kind === "bed" ? newBed(item) : item)) };
}
