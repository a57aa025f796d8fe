import type { Job } from "./job.ts";

/**
 * What boards can cost together. Prices are whole cents, so between a bound and a plan there are often few totals
 * that any purchase comes to, and of those only the ones that buy enough length matter.
 */
export interface Totals {
  /** The least total a purchase can come to that is not below `cost`; `cost` itself where that is not known. */
  atLeast(cost: number): number;
  /** The greatest total below `cost`. */
  below(cost: number): number;
}

const MOST_STEPS = 60_000;
const SLACK = 1e-6;

/** @param upTo a cost that some plan is known to reach */
export function totalsOf(job: Job, upTo: number): Totals {
  const cents = job.stock.map(({ price }) => Math.round(price * 100));
  const whole = job.stock.every(({ price }, i) => Math.abs(price * 100 - cents[i]!) < 1e-6);
  const step = cents.reduce(greatestCommonDivisor, 0);
  const steps = step > 0 ? Math.ceil((upTo * 100) / step + SLACK) : 0;
  if (!whole || step === 0) return { atLeast: (cost) => cost, below: (cost) => cost - SLACK };
  const unit = step / 100;
  if (steps > MOST_STEPS || cents.includes(0)) {
    return {
      atLeast: (cost) => Math.ceil(cost / unit - SLACK) * unit,
      below: (cost) => (Math.ceil(cost / unit - SLACK) - 1) * unit,
    };
  }
  const longest = longestFor(
    job,
    cents.map((price) => price / step),
    steps,
  );
  const needed = job.sizes.reduce((sum, size, i) => sum + size * job.demand[i]!, 0) - SLACK;
  const from = (start: number, by: 1 | -1): number => {
    let at = start;
    while (at >= 0 && at < steps && longest[at]! < needed) at += by;
    return at;
  };
  return {
    atLeast: (cost) => from(Math.max(0, Math.ceil(cost / unit - SLACK)), 1) * unit,
    below: (cost) => from(Math.ceil(cost / unit - SLACK) - 1, -1) * unit,
  };
}

/** For each total, the length of all pieces, kerfs included, that purchases of exactly that cost can hold at most. */
function longestFor(job: Job, prices: readonly number[], steps: number): Float64Array {
  const longest = new Float64Array(steps + 1).fill(Number.NEGATIVE_INFINITY);
  longest[0] = 0;
  for (let i = 0; i < prices.length; i++) {
    const price = prices[i]!;
    const { capacity } = job.stock[i]!;
    for (let total = price; total <= steps; total++) {
      const length = longest[total - price]! + capacity;
      if (length > longest[total]!) longest[total] = length;
    }
  }
  return longest;
}

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);
