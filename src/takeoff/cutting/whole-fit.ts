import { fractionalFit } from "./fractional-fit.ts";
import { type Job, type Pattern, patternSize } from "./job.ts";
import { type Bill, dot, type Requirement, spare } from "./requirement.ts";

export type WholeFit =
  | { readonly fits: true; readonly patterns: readonly Pattern[]; readonly steps: number }
  /** `certain` where every way was looked at; otherwise the steps ran out. */
  | { readonly fits: false; readonly certain: boolean; readonly steps: number };

/** How much may be done for one bill. */
export interface Most {
  readonly steps: number;
  readonly patterns: number;
  /** Times that it is asked whether what is left fits in fractions: dear, but it ends whole branches. */
  readonly looks: number;
}

/** Requirements that are watched at each step: the tightest prune, the others only cost time. */
const WATCHED = 8;
const ROUNDING = 1e-9;

interface Filling extends Pattern {
  /** What of the board's hold this pattern leaves unused, by each requirement that is watched. */
  readonly lost: readonly number[];
}

/**
 * Looks for a way to saw all pieces from exactly the boards of a bill. Each requirement allows the bill to lose no
 * more than its spare, so only patterns that lose less have a place in it, and a branch ends where any of the spares
 * is used up.
 *
 * Depth-first: the longest piece still wanted must lie in some pattern, so each that holds it is tried, least loss
 * first. A state reached before is not entered again.
 *
 * @param known patterns found so far; grows
 */
export function wholeFit(
  job: Job,
  bill: Bill,
  requirements: readonly Requirement[],
  known: Pattern[],
  most: Most,
): WholeFit {
  const watched = requirements
    .map((requirement) => ({ requirement, spare: spare(requirement, bill) }))
    .sort((a, b) => a.spare / a.requirement.needed - b.spare / b.requirement.needed)
    .slice(0, WATCHED);
  const list = fillings(job, bill, watched, most.patterns);
  if (!list) return { fits: false, certain: false, steps: 0 };

  const holding = job.sizes.map((_, size) => list.filter(({ counts }) => counts[size]! > 0));
  const left = [...job.demand];
  const boardsLeft = [...bill];
  const spares = watched.map((one) => one.spare);
  const stateOf = stateNumbers(job, bill, list.length);
  const seen = new Set<number | string>();
  const chosen: Pattern[] = [];
  let stepsLeft = most.steps;
  let looksLeft = most.looks;

  /** @returns true where all pieces are placed, false where they cannot be, null where the steps ran out */
  const place = (size: number, from: number): boolean | null => {
    let at = size;
    let start = from;
    while (at < left.length && left[at] === 0) [at, start] = [at + 1, 0];
    if (at === left.length) return true;
    const state = stateOf(left, boardsLeft, start);
    if (seen.has(state)) return false;
    if (chosen.length > 0 && --looksLeft >= 0 && !fractionalFit(job, boardsLeft, known, left).fits) {
      seen.add(state);
      return false;
    }
    const tried = holding[at]!;
    for (let i = start; i < tried.length; i++) {
      const { stock, counts, lost } = tried[i]!;
      // The list runs from the least loss up: what loses too much here does so to its end.
      if (lost[0]! > spares[0]! + ROUNDING) break;
      if (boardsLeft[stock] === 0) continue;
      if (--stepsLeft < 0) return null;
      const taken = counts.map((count, j) => Math.min(count, left[j]!));
      const loss = watched.map(
        ({ requirement }) => requirement.holds[stock]! - dot(requirement.worth, taken),
      );
      if (loss.some((amount, j) => amount > spares[j]! + ROUNDING)) continue;
      for (let j = 0; j < taken.length; j++) left[j]! -= taken[j]!;
      for (let j = 0; j < loss.length; j++) spares[j]! -= loss[j]!;
      boardsLeft[stock]!--;
      chosen.push({ stock, counts: taken });
      const placed = place(at, i);
      if (placed !== false) return placed;
      chosen.pop();
      boardsLeft[stock]!++;
      for (let j = 0; j < loss.length; j++) spares[j]! += loss[j]!;
      for (let j = 0; j < taken.length; j++) left[j]! += taken[j]!;
    }
    seen.add(state);
    return false;
  };
  const placed = place(0, 0);
  const steps = most.steps - Math.max(0, stepsLeft);
  return placed ? { fits: true, patterns: chosen, steps } : { fits: false, certain: placed === false, steps };
}

type Watched = { readonly requirement: Requirement; readonly spare: number };

/**
 * All full patterns that lose no more than the spares allow. Patterns to which another piece could be added are left
 * out: sawing one piece too many is allowed and counts as loss.
 * @returns null where there are more than `most`, or more than can be looked through
 */
function fillings(job: Job, bill: Bill, watched: readonly Watched[], most: number): Filling[] | null {
  const [main] = watched;
  if (!main) return [];
  const { worth } = main.requirement;
  const { sizes, demand, stock: stocks } = job;
  const order = [...sizes.keys()].sort((a, b) => worth[b]! / sizes[b]! - worth[a]! / sizes[a]!);
  const shortest = Math.min(...sizes);
  const counts = sizes.map(() => 0);
  const found: Filling[] = [];
  let nodes = 0;

  const full = (left: number) =>
    left < shortest || sizes.every((size, i) => size > left || counts[i]! >= demand[i]!);

  const look = (stock: number, depth: number, left: number, value: number): boolean => {
    if (++nodes > 40 * most) return false;
    const index = order[depth];
    if (index === undefined) {
      if (!full(left)) return true;
      const lost = watched.map(({ requirement }) =>
        Math.max(0, requirement.holds[stock]! - dot(requirement.worth, counts)),
      );
      if (lost.every((amount, j) => amount <= watched[j]!.spare + ROUNDING)) {
        found.push({ stock, counts: [...counts], lost });
      }
      return found.length <= most;
    }
    const size = sizes[index]!;
    if (main.requirement.holds[stock]! - value - (left * worth[index]!) / size > main.spare + ROUNDING)
      return true;
    for (let n = Math.min(demand[index]!, Math.floor(left / size)); n >= 0; n--) {
      counts[index] = n;
      if (!look(stock, depth + 1, left - n * size, value + n * worth[index]!)) return false;
    }
    counts[index] = 0;
    return true;
  };

  for (const [stock, { capacity }] of stocks.entries()) {
    counts.fill(0);
    if (bill[stock]! > 0 && !look(stock, 0, capacity, 0)) return null;
  }
  return found.sort(
    (a, b) => a.lost[0]! - b.lost[0]! || patternSize(job, b.counts) - patternSize(job, a.counts),
  );
}

/** A number for each state of the search, where there are few enough to be told apart by one; text otherwise. */
function stateNumbers({ demand }: Job, bill: Bill, patterns: number) {
  const states = [...demand, ...bill].reduce((product, count) => product * (count + 1), patterns + 1);
  const bases = demand.map((count) => count + 1);
  const boardBases = bill.map((count) => count + 1);
  return (left: readonly number[], boardsLeft: Bill, start: number): number | string => {
    if (states > Number.MAX_SAFE_INTEGER) return `${left.join()};${boardsLeft.join()};${start}`;
    let state = start;
    for (let j = 0; j < left.length; j++) state = state * bases[j]! + left[j]!;
    for (let j = 0; j < boardsLeft.length; j++) state = state * boardBases[j]! + boardsLeft[j]!;
    return state;
  };
}
