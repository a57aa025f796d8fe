import type { Relaxed } from "./bound.ts";
import { greedyPlan, withCheapestStock } from "./greedy.ts";
import type { Job, Pattern } from "./job.ts";

/**
 * A plan from the relaxed one: its patterns as often as they are used in full, some of the rest rounded up, and what
 * is then still wanted cut greedily.
 * @returns null where limited stock runs out
 */
export function roundedPlan(job: Job, { used }: Relaxed): Pattern[] | null {
  // Where to round up is a matter of luck, so several thresholds are tried.
  const plans = [0.5, 0.8, 1].map((up) => roundedAt(job, used, up)).filter((plan) => plan !== null);
  const cost = (plan: readonly Pattern[]) => plan.reduce((sum, p) => sum + job.stock[p.stock]!.price, 0);
  return plans.length === 0 ? null : plans.reduce((a, b) => (cost(b) < cost(a) ? b : a));
}

function roundedAt(job: Job, used: Relaxed["used"], up: number): Pattern[] | null {
  const left = [...job.demand];
  const kept: Pattern[] = [];
  for (const { pattern, amount } of used.toSorted((a, b) => b.amount - a.amount)) {
    const times = Math.floor(amount + 1 - up + 1e-9);
    for (let n = 0; n < times; n++) {
      const counts = pattern.counts.map((count, i) => Math.min(count, left[i]!));
      if (counts.every((count) => count === 0)) break;
      for (const [i, count] of counts.entries()) left[i]! -= count;
      kept.push({ stock: pattern.stock, counts });
    }
  }
  const rest = greedyPlan(job, left);
  return rest && withCheapestStock(job, [...kept, ...rest]);
}
