import type { Relaxed } from "./bound.ts";
import { type Job, type Pattern, patternSize } from "./job.ts";

/** A pattern that a plan cheaper than the best so far could still use, and what it wastes. */
export interface Candidate extends Pattern {
  /** Cost of its board beyond the worth of its pieces. */
  readonly waste: number;
}

/**
 * All full patterns that waste no more than `budget`. Any plan costs the bound plus what its patterns waste plus the
 * worth of what it saws too many of, so no other pattern has a place in a plan within the budget.
 *
 * Patterns to which another piece could be added are left out: sawing one piece too many is allowed and counted.
 *
 * @returns null where there are more than `most`, or more than can be looked through
 */
export function candidates(
  job: Job,
  { worth, limitCost }: Relaxed,
  budget: number,
  most: number,
): Candidate[] | null {
  const order = [...job.sizes.keys()].sort((a, b) => worth[b]! / job.sizes[b]! - worth[a]! / job.sizes[a]!);
  const shortest = Math.min(...job.sizes);
  const counts = job.sizes.map(() => 0);
  const found: Candidate[] = [];
  let nodes = 0;

  const full = (left: number) =>
    left < shortest || job.sizes.every((size, i) => size > left || counts[i]! >= job.demand[i]!);

  const look = (stock: number, depth: number, left: number, value: number): boolean => {
    if (++nodes > 40 * most) return false;
    const cost = job.stock[stock]!.price + limitCost[stock]!;
    const index = order[depth];
    if (index === undefined) {
      if (full(left) && !heldForLess(job, stock, counts)) {
        found.push({ stock, counts: [...counts], waste: Math.max(0, cost - value) });
      }
      return found.length <= most;
    }
    const size = job.sizes[index]!;
    if (cost - value - (left * worth[index]!) / size > budget) return true;
    for (let n = Math.min(job.demand[index]!, Math.floor(left / size)); n >= 0; n--) {
      counts[index] = n;
      if (!look(stock, depth + 1, left - n * size, value + n * worth[index]!)) return false;
    }
    counts[index] = 0;
    return true;
  };

  for (const [stock, { capacity }] of job.stock.entries()) {
    counts.fill(0);
    if (!look(stock, 0, capacity, 0)) return null;
  }
  return found.sort((a, b) => a.waste - b.waste);
}

/** Whether a board on sale without limit holds the same pieces for no more. */
function heldForLess(job: Job, stock: number, counts: readonly number[]): boolean {
  const { price } = job.stock[stock]!;
  const size = patternSize(job, counts);
  return job.stock.some(
    (other, i) =>
      i !== stock &&
      other.limit === Number.POSITIVE_INFINITY &&
      other.capacity >= size &&
      (other.price < price || (other.price === price && i < stock)),
  );
}
