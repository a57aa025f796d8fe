import type { Job, Pattern } from "./job.ts";
import { fullestBoard } from "./knapsack.ts";
import { type Column, Master } from "./master.ts";

/**
 * What the pieces cost at least: the cutting job as a linear program, boards in any fraction, solved by growing the
 * list of patterns (P. Gilmore and R. Gomory, "A linear programming approach to the cutting-stock problem", 1961).
 */
export interface Relaxed {
  /** No plan costs less. */
  readonly bound: number;
  /**
   * A price for each size and for each board of limited stock, such that no pattern is worth more than its board
   * costs. What a pattern costs beyond the worth of its pieces is what it wastes; see `search.ts`.
   */
  readonly worth: readonly number[];
  readonly limitCost: readonly number[];
  /** The relaxed plan: patterns and how many (in fractions) of each. */
  readonly used: readonly { readonly pattern: Pattern; readonly amount: number }[];
  /** Limited stock cannot hold the pieces, whatever is paid. */
  readonly short: boolean;
}

const MOST_ROUNDS = 600;

/** @param seeds patterns of a plan already found: a better start than none */
export function relaxedPlan(job: Job, seeds: readonly Pattern[]): Relaxed {
  const limited = [...job.stock.keys()].filter((i) => Number.isFinite(job.stock[i]!.limit));
  const dearest = Math.max(1e-6, ...job.stock.map(({ price }) => price));
  const master = new Master(
    job.demand,
    limited.map((i) => job.stock[i]!.limit),
    1000 * dearest,
  );
  const patterns: Pattern[] = [];
  const columnOf = (pattern: Pattern): Column => ({
    cost: job.stock[pattern.stock]!.price,
    entries: [...pattern.counts, ...limited.map((i) => (i === pattern.stock ? 1 : 0))],
  });
  const columns: Column[] = [];
  const offer = (pattern: Pattern): boolean => {
    const column = columnOf(pattern);
    patterns.push(pattern);
    columns.push(column);
    return master.enter(column, patterns.length - 1);
  };
  for (const pattern of [...repeats(job), ...seeds]) offer(pattern);

  let rounds = 0;
  for (let improved = true; improved && rounds < MOST_ROUNDS; ) {
    improved = false;
    // Columns already known first: a look costs a fraction of a search for the fullest board.
    for (const [index, column] of columns.entries()) {
      if (master.enter(column, index)) [improved, rounds] = [true, rounds + 1];
    }
    if (master.relax()) improved = true;
    if (improved) continue;
    for (const stock of job.stock.keys()) {
      const { counts } = fullestBoard(job.sizes, master.worth, job.demand, job.stock[stock]!.capacity);
      if (offer({ stock, counts })) [improved, rounds] = [true, rounds + 1];
    }
  }

  const limitCost = job.stock.map((_, i) => {
    const row = limited.indexOf(i);
    return row < 0 ? 0 : Math.max(0, -master.worth[job.sizes.length + row]!);
  });
  const worth = safeWorth(job, master.worth, limitCost);
  const bound =
    worth.reduce((sum, value, i) => sum + value * job.demand[i]!, 0) -
    limited.reduce((sum, i) => sum + limitCost[i]! * job.stock[i]!.limit, 0);
  const used = master.solution().map(({ index, amount }) => ({ pattern: patterns[index]!, amount }));
  return { bound: Math.max(0, bound), worth, limitCost, used, short: master.short };
}

/** For every size the board that takes most of it: a first plan for every row. */
function repeats(job: Job): Pattern[] {
  return job.sizes.flatMap((size, index) =>
    [...job.stock.keys()]
      .filter((stock) => job.stock[stock]!.capacity >= size)
      .map((stock) => ({
        stock,
        counts: job.sizes.map((_, i) =>
          i === index ? Math.min(job.demand[i]!, Math.floor(job.stock[stock]!.capacity / size)) : 0,
        ),
      })),
  );
}

/**
 * Worths lowered until no pattern is worth more than its board: a bound that holds even where the growing stopped
 * early or lost a digit to rounding (A. Farley, "A note on bounding a class of linear programming problems", 1990).
 */
function safeWorth(job: Job, raw: readonly number[], limitCost: readonly number[]): number[] {
  const worth = job.sizes.map((_, i) => Math.max(0, raw[i]!));
  let factor = 1;
  for (const [stock, { capacity, price }] of job.stock.entries()) {
    const { atMost } = fullestBoard(job.sizes, worth, job.demand, capacity);
    const cost = price + limitCost[stock]!;
    if (atMost > cost) factor = Math.min(factor, cost / atMost);
  }
  return worth.map((value) => value * factor);
}
