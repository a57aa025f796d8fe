import { type Job, type Pattern, patternSize } from "./job.ts";

/**
 * Quick cut plans. Longest piece first, each into the fullest board already begun that still takes it, or else into
 * a new board of one stock length; tried with every stock length as the new board, then every board is swapped for
 * the cheapest that holds what is sawn from it. The cheapest of those is returned.
 *
 * @returns null where limited stock runs out before every piece is cut
 */
export function greedyPlan(job: Job, demand: readonly number[] = job.demand): Pattern[] | null {
  let best: Pattern[] | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  const consider = (patterns: Pattern[] | null) => {
    if (!patterns) return;
    const swapped = withCheapestStock(job, patterns);
    if (!swapped) return;
    const cost = swapped.reduce((sum, { stock }) => sum + job.stock[stock]!.price, 0);
    if (cost < bestCost) [best, bestCost] = [swapped, cost];
  };
  const pieces = demand.reduce((sum, count) => sum + count, 0);
  for (const opened of job.stock.keys()) {
    if (pieces <= MOST_FITTED) consider(bestFit(job, demand, opened));
    consider(fullestFirst(job, demand, opened));
  }
  return best;
}

/** Best fit looks at every board for every piece; beyond so many pieces only whole boards are thought of. */
const MOST_FITTED = 600;
/** Sizes that are tried beside the longest on a new board; the rest follow longest first. */
const MOST_SECONDS = 12;

interface Begun {
  readonly stock: number;
  readonly counts: number[];
  left: number;
}

/** Best fit decreasing. A piece too long for the stock that is opened takes the cheapest stock that holds it. */
function bestFit(job: Job, demand: readonly number[], opened: number): Pattern[] | null {
  const begun: Begun[] = [];
  for (const [index, size] of job.sizes.entries()) {
    for (let n = 0; n < (demand[index] ?? 0); n++) {
      let into: Begun | undefined;
      for (const board of begun) if (board.left >= size && (!into || board.left < into.left)) into = board;
      if (!into) {
        const stock = job.stock[opened]!.capacity >= size ? opened : cheapestHolding(job, size);
        if (stock === null) return null;
        into = { stock, counts: job.sizes.map(() => 0), left: job.stock[stock]!.capacity };
        begun.push(into);
      }
      into.counts[index]!++;
      into.left -= size;
    }
  }
  return begun;
}

/** Board by board: the longest piece left, then as many of the next longest as fit, and so on. */
function fullestFirst(job: Job, demand: readonly number[], opened: number): Pattern[] | null {
  const left = [...demand];
  const patterns: Pattern[] = [];
  for (;;) {
    const first = left.findIndex((count) => count > 0);
    if (first < 0) return patterns;
    const size = job.sizes[first]!;
    const stock = job.stock[opened]!.capacity >= size ? opened : cheapestHolding(job, size);
    if (stock === null) return null;
    const counts = fullest(job, left, first, job.stock[stock]!.capacity);
    // The same board again for as long as there are pieces for all of it.
    const used = counts.flatMap((n, i) => (n > 0 ? [Math.floor(left[i]! / n)] : []));
    const times = Math.min(...used);
    for (let n = 0; n < times; n++) patterns.push({ stock, counts });
    for (let i = 0; i < left.length; i++) left[i]! -= counts[i]! * times;
  }
}

/** Of the fillings "this piece, then this second size, then longest first", the one that leaves least over. */
function fullest(job: Job, left: readonly number[], first: number, capacity: number): number[] {
  let best: number[] = [];
  let bestRoom = Number.POSITIVE_INFINITY;
  let tried = 0;
  for (let second = first; second < job.sizes.length && tried < MOST_SECONDS; second++) {
    if (left[second] === 0) continue;
    tried++;
    const counts = new Array<number>(job.sizes.length).fill(0);
    counts[first] = 1;
    let room = capacity - job.sizes[first]!;
    const take = (index: number): void => {
      const n = Math.min(left[index]! - counts[index]!, Math.floor(room / job.sizes[index]!));
      if (n <= 0) return;
      counts[index]! += n;
      room -= n * job.sizes[index]!;
    };
    take(second);
    for (let index = first; index < job.sizes.length; index++) take(index);
    if (room < bestRoom - 1e-9) [best, bestRoom] = [counts, room];
  }
  return best;
}

function cheapestHolding(job: Job, size: number, limits?: readonly number[]): number | null {
  let best: number | null = null;
  for (const [i, { capacity, price }] of job.stock.entries()) {
    const some = !limits || limits[i]! > 0;
    if (some && capacity >= size && (best === null || price < job.stock[best]!.price)) best = i;
  }
  return best;
}

/**
 * Every pattern on the cheapest board that holds it, the fullest patterns choosing first where boards are few.
 * @returns null where limited stock runs out
 */
export function withCheapestStock(job: Job, patterns: readonly Pattern[]): Pattern[] | null {
  const cheapest = [...job.stock.keys()].sort(
    (a, b) => job.stock[a]!.price - job.stock[b]!.price || job.stock[a]!.capacity - job.stock[b]!.capacity,
  );
  const left = job.stock.map(({ limit }) => limit);
  const swapped: Pattern[] = [];
  const fullestFirstOrder = patterns
    .map((pattern) => ({ pattern, size: patternSize(job, pattern.counts) }))
    .sort((a, b) => b.size - a.size);
  for (const { pattern, size } of fullestFirstOrder) {
    const stock = cheapest.find((i) => job.stock[i]!.capacity >= size && left[i]! > 0);
    if (stock === undefined) return null;
    left[stock]!--;
    swapped.push({ stock, counts: pattern.counts });
  }
  return swapped;
}

/** As many pieces as limited stock holds, the longest first; what is left over is not in the plan. */
export function partialPlan(job: Job): Pattern[] {
  const begun: Begun[] = [];
  const limits = job.stock.map(({ limit }) => limit);
  for (const [index, size] of job.sizes.entries()) {
    for (let n = 0; n < job.demand[index]!; n++) {
      let into = begun.find((board) => board.left >= size);
      if (!into) {
        const stock = cheapestHolding(job, size, limits);
        if (stock === null) break;
        limits[stock]!--;
        into = { stock, counts: job.sizes.map(() => 0), left: job.stock[stock]!.capacity };
        begun.push(into);
      }
      into.counts[index]!++;
      into.left -= size;
    }
  }
  return begun;
}
