import type { CutBoard, CutPlan, Piece, Stock } from "../types.ts";
import { relaxedPlan } from "./bound.ts";
import { greedyPlan, partialPlan } from "./greedy.ts";
import { type Job, type Pattern, patternsCost, type Sorted, sortedJob } from "./job.ts";
import { roundedPlan } from "./rounding.ts";
import { type Effort, searched } from "./search.ts";

/** Enough to prove the job of a bed or two, never enough to be felt while a bed is dragged. */
const AT_ONCE: Effort = {
  steps: 20_000,
  looks: 0,
  patterns: 400,
  costs: 20_000,
  bills: 2_000,
  listings: 1,
  fits: 2,
  sizes: 30,
};
/** A second or so at the most. */
const IN_DEPTH: Effort = {
  steps: 400_000,
  looks: 150,
  patterns: 20_000,
  costs: 100_000,
  bills: 100_000,
  listings: 40,
  fits: 200,
  sizes: 100,
};

/**
 * A cheap way to saw pieces from boards on sale, at once, with a bound that no plan can beat.
 *
 * A saw cut is needed between neighbours: n pieces fit a board when sum(pieces) + (n - 1) x kerf <= board. Lengths in
 * any one unit; costs are per board.
 *
 * @returns the plan; pieces that no board can hold, or for which limited stock runs out, are listed as `uncut` and
 *   are not in its cost
 * @throws RangeError naming a length, price, count or kerf that cannot be
 */
export const cutBoards = (pieces: readonly Piece[], stock: readonly Stock[], kerf: number): CutPlan =>
  planned(pieces, stock, kerf, AT_ONCE);

/**
 * As `cutBoards`, with far more work allowed: the cheapest plan, `proven` unless the job is larger than that work can
 * settle. For a worker: it runs for a second or so on the hardest jobs.
 */
export const proveCutPlan = async (
  pieces: readonly Piece[],
  stock: readonly Stock[],
  kerf: number,
): Promise<CutPlan> => planned(pieces, stock, kerf, IN_DEPTH);

function planned(pieces: readonly Piece[], stock: readonly Stock[], kerf: number, effort: Effort): CutPlan {
  const sorted = sortedJob(pieces, stock, kerf);
  const { job } = sorted;
  if (job.sizes.length === 0) return asCutPlan(sorted, [], kerf, 0);
  // Where boards cost nothing the least length is the best plan.
  const free = job.stock.every(({ price }) => price === 0);
  const priced = free ? { ...job, stock: job.stock.map((s) => ({ ...s, price: s.from.length })) } : job;
  const { patterns, bound } = cheapest(priced, effort);
  return asCutPlan(sorted, patterns, kerf, free ? 0 : bound);
}

function cheapest(job: Job, effort: Effort): { patterns: readonly Pattern[]; bound: number } {
  const greedy = greedyPlan(job);
  if (greedy && job.sizes.length > effort.sizes) return { patterns: greedy, bound: lengthBound(job) };
  const relaxed = relaxedPlan(job, greedy ?? []);
  if (relaxed.short) return { patterns: partialPlan(job), bound: 0 };
  const plans = [greedy, roundedPlan(job, relaxed)]
    .filter((patterns) => patterns !== null)
    .map((patterns) => ({ patterns, cost: patternsCost(job, patterns) }));
  const start = plans.reduce((a, b) => (b.cost < a.cost ? b : a), { patterns: [], cost: overAll(job) });
  const found = searched(job, relaxed, start, effort);
  return found.patterns.length > 0 ? found : { patterns: partialPlan(job), bound: 0 };
}

/** All pieces at the price of the board that is cheapest for its length: a bound that takes no work. */
function lengthBound({ sizes, demand, stock }: Job): number {
  const length = sizes.reduce((sum, size, i) => sum + size * demand[i]!, 0);
  return length * Math.min(...stock.map(({ price, capacity }) => price / capacity));
}

/** More than any plan of this job costs: a board for every piece, and a little. */
function overAll({ stock, demand }: Job): number {
  const pieces = demand.reduce((sum, count) => sum + count, 0);
  return stock.reduce((sum, { price, limit }) => sum + price * Math.min(limit, pieces), 1);
}

function asCutPlan(
  { job, labels, lengths, tooLong }: Sorted,
  patterns: readonly Pattern[],
  kerf: number,
  bound: number,
): CutPlan {
  const next = labels.map(() => 0);
  const taken = (i: number, count: number) => {
    const from = next[i]!;
    next[i] = Math.min(labels[i]!.length, from + count);
    return labels[i]!.slice(from, next[i]).map((label) => named(lengths[i]!, label));
  };
  const boards = patterns
    .map(({ stock, counts }) => {
      const pieces = counts.flatMap((count, i) => (count > 0 ? taken(i, count) : []));
      return sawn(job.stock[stock]!.from, pieces, kerf);
    })
    .filter(({ pieces }) => pieces.length > 0)
    .sort((a, b) => a.stock.length - b.stock.length || b.pieces[0]!.length - a.pieces[0]!.length);
  const uncut = [
    ...tooLong,
    ...labels.flatMap((list, i) => taken(i, list.length).map((piece) => ({ ...piece, count: 1 }))),
  ];
  const cost = toCents(boards.reduce((sum, { stock }) => sum + stock.price, 0));
  const lowerBound = Math.min(cost, toCents(bound));
  return { boards, cost, lowerBound, proven: uncut.length === 0 && lowerBound >= cost - 1e-9, uncut };
}

const named = (length: number, label: string | undefined) =>
  label === undefined ? { length } : { length, label };

function sawn(stock: Stock, pieces: CutBoard["pieces"], kerf: number): CutBoard {
  const used = pieces.reduce((sum, { length }) => sum + length + kerf, 0);
  // The last cut takes its kerf too; a rest thinner than that is simply sawn away.
  return { stock, pieces, offcut: Math.max(0, stock.length - used) };
}

/** Sums of prices in whole cents lose their last digit to rounding; a bound is kept as it is where it is no price. */
function toCents(amount: number): number {
  const cents = Math.round(amount * 100) / 100;
  return Math.abs(cents - amount) < 1e-7 ? cents : amount;
}
