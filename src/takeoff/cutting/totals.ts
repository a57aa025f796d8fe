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
  const enough = affordable(
    job,
    cents.map((price) => price / step),
    steps,
  );
  const from = (start: number, by: 1 | -1): number => {
    let at = start;
    while (at >= 0 && at < steps && !enough[at]) at += by;
    return at;
  };
  return {
    atLeast: (cost) => from(Math.max(0, Math.ceil(cost / unit - SLACK)), 1) * unit,
    below: (cost) => from(Math.ceil(cost / unit - SLACK) - 1, -1) * unit,
  };
}

/** For each total, whether some purchase of exactly that cost holds the length of all pieces. */
function affordable(job: Job, prices: readonly number[], steps: number): boolean[] {
  const needed = job.sizes.reduce((sum, size, i) => sum + size * job.demand[i]!, 0);
  const longest = new Float64Array(steps + 1).fill(-1);
  longest[0] = 0;
  for (let total = 1; total <= steps; total++) {
    for (const [i, { capacity }] of job.stock.entries()) {
      const before = total - prices[i]!;
      if (before < 0 || longest[before]! < 0) continue;
      longest[total] = Math.max(longest[total]!, longest[before]! + capacity);
    }
  }
  return Array.from(longest, (length) => length >= needed - SLACK);
}

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);
