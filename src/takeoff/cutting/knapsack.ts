/**
 * The board worth most: which pieces to saw from one board when each piece has a value. Depth-first branch and bound
 * over the sizes in order of value for length; a branch is left when even a fractional filling of what is left of the
 * board could not beat the best (Dantzig's bound, 1957).
 */
export interface Filling {
  readonly value: number;
  readonly counts: readonly number[];
  /** No filling is worth more than this; the value itself unless the search was cut short. */
  readonly atMost: number;
}

const MOST_NODES = 200_000;

/**
 * @param sizes above 0
 * @param values pieces worth nothing are left out
 * @param most pieces of each size that may be used
 */
export function fullestBoard(
  sizes: readonly number[],
  values: readonly number[],
  most: readonly number[],
  capacity: number,
): Filling {
  const order = byWorth(sizes, values);
  const counts = new Array<number>(sizes.length).fill(0);
  let best = 0;
  let bestCounts = [...counts];
  let nodes = 0;

  const fill = (depth: number, left: number, value: number): void => {
    if (value > best) {
      best = value;
      bestCounts = [...counts];
    }
    const index = order[depth];
    if (index === undefined || ++nodes > MOST_NODES) return;
    const size = sizes[index]!;
    const worth = values[index]!;
    if (value + (left * worth) / size <= best + 1e-12) return;
    for (let n = Math.min(most[index]!, Math.floor(left / size)); n >= 0; n--) {
      counts[index] = n;
      fill(depth + 1, left - n * size, value + n * worth);
    }
    counts[index] = 0;
  };
  fill(0, capacity, 0);

  const first = order[0];
  const atMost =
    nodes <= MOST_NODES || first === undefined ? best : (capacity * values[first]!) / sizes[first]!;
  return { value: best, counts: bestCounts, atMost };
}

/** Indices of the sizes worth something, best value for length first. */
export const byWorth = (sizes: readonly number[], values: readonly number[]): number[] =>
  [...sizes.keys()]
    .filter((i) => values[i]! > 1e-12)
    .sort((a, b) => values[b]! / sizes[b]! - values[a]! / sizes[a]!);
