import type { Relaxed } from "./bound.ts";
import { type Candidate, candidates } from "./candidates.ts";
import { type Job, type Pattern, patternsCost } from "./job.ts";
import type { Totals } from "./totals.ts";

/** How far a search may go before it settles for what it has. Counted in steps, never in time. */
export interface Effort {
  readonly steps: number;
  readonly patterns: number;
  /** Distinct lengths beyond which only a quick plan and its bound by length are made. */
  readonly sizes: number;
}

export interface Plan {
  readonly patterns: readonly Pattern[];
  readonly cost: number;
}

export interface Searched extends Plan {
  /** No plan costs less. */
  readonly bound: number;
}

/**
 * Looks for the cheapest plan, in passes: first only for plans that cost little more than the bound, then for ever
 * dearer ones up to the best known. A pass that ends without a plan raises the bound, so when the two meet the plan
 * is proven the cheapest.
 */
export function searched(job: Job, relaxed: Relaxed, start: Plan, totals: Totals, effort: Effort): Searched {
  let best = start;
  let bound = Math.min(best.cost, totals.atLeast(relaxed.bound));
  let steps = effort.steps;
  let share = 1 / 16;

  while (bound < best.cost - 1e-9 && steps > 0) {
    const dearest = totals.below(best.cost);
    const target = Math.min(dearest, totals.atLeast(bound + share * (dearest - bound)));
    const budget = target - relaxed.bound + 1e-7;
    const list = candidates(job, relaxed, budget, effort.patterns);
    if (!list) break;
    const pass = cover(job, relaxed, list, budget, steps);
    steps = pass.stepsLeft;
    if (pass.plan && pass.plan.cost < best.cost) best = pass.plan;
    if (!pass.complete) break;
    // Nothing up to the target is cheaper than the best.
    bound = Math.min(best.cost, totals.atLeast(target + 1e-6));
    share = Math.min(1, share * 4);
  }
  return { ...best, bound: Math.min(bound, best.cost) };
}

interface Pass {
  readonly plan: Plan | null;
  /** The whole budget was searched: no plan within it costs less than the one found. */
  readonly complete: boolean;
  readonly stepsLeft: number;
}

/**
 * Depth-first: the longest piece still wanted must lie in some pattern, so each candidate that holds it is tried,
 * least waste first. A state reached before for no more waste is not entered again.
 */
function cover(
  job: Job,
  { worth, bound }: Relaxed,
  list: readonly Candidate[],
  mostWaste: number,
  steps: number,
): Pass {
  const holding = job.sizes.map((_, size) => list.filter(({ counts }) => counts[size]! > 0));
  const left = [...job.demand];
  const boardsLeft = job.stock.map(({ limit }) => limit);
  const stateOf = stateNumbers(job, list.length);
  const seen = new Map<number | string, number>();
  const chosen: Candidate[] = [];
  let budget = mostWaste;
  let plan: Plan | null = null;
  let stepsLeft = steps;

  const wasteWith = ({ counts, waste }: Candidate): number => {
    let total = waste;
    for (let j = 0; j < left.length; j++) total += Math.max(0, counts[j]! - left[j]!) * worth[j]!;
    return total;
  };

  const go = (size: number, from: number, waste: number): void => {
    let at = size;
    let start = from;
    while (at < left.length && left[at]! === 0) [at, start] = [at + 1, 0];
    if (at === left.length) {
      const cost = patternsCost(job, chosen);
      if (!plan || cost < plan.cost) plan = { patterns: [...chosen], cost };
      // From here on only cheaper plans count.
      budget = Math.min(budget, plan.cost - bound - 1e-7);
      return;
    }
    const state = stateOf(left, boardsLeft, start);
    const before = seen.get(state);
    if (before !== undefined && before <= waste + 1e-9) return;
    seen.set(state, waste);

    const tried = holding[at]!;
    for (let i = start; i < tried.length; i++) {
      const pattern = tried[i]!;
      // The list runs from least waste up: what is too wasteful here stays so to its end.
      if (waste + pattern.waste > budget) return;
      if (--stepsLeft < 0) return;
      if (boardsLeft[pattern.stock]! <= 0) continue;
      const total = waste + wasteWith(pattern);
      if (total > budget) continue;
      const taken = pattern.counts.map((n, j) => Math.min(n, left[j]!));
      for (let j = 0; j < taken.length; j++) left[j]! -= taken[j]!;
      boardsLeft[pattern.stock]!--;
      chosen.push(pattern);
      go(at, i, total);
      chosen.pop();
      boardsLeft[pattern.stock]!++;
      for (let j = 0; j < taken.length; j++) left[j]! += taken[j]!;
    }
  };
  go(0, 0, 0);
  return { plan, complete: stepsLeft >= 0, stepsLeft: Math.max(0, stepsLeft) };
}

/**
 * A number for each state of the search, where there are few enough of them to be told apart by one; text otherwise.
 */
function stateNumbers(job: Job, patterns: number) {
  const limited = [...job.stock.keys()].filter((i) => Number.isFinite(job.stock[i]!.limit));
  const states =
    job.demand.reduce((product, count) => product * (count + 1), patterns + 1) *
    limited.reduce((product, i) => product * (job.stock[i]!.limit + 1), 1);
  return (left: readonly number[], boardsLeft: readonly number[], start: number): number | string => {
    if (states > Number.MAX_SAFE_INTEGER) return `${left.join()};${boardsLeft.join()};${start}`;
    let state = start;
    for (let j = 0; j < left.length; j++) state = state * (job.demand[j]! + 1) + left[j]!;
    for (const i of limited) state = state * (job.stock[i]!.limit + 1) + boardsLeft[i]!;
    return state;
  };
}
