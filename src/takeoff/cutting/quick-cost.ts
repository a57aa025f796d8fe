import type { Piece, Stock } from "../types.ts";
import { greedyPlan } from "./greedy.ts";
import { patternsCost, sortedJob } from "./job.ts";

/**
 * What a quick plan costs, with no look for a better one: for comparing many ways before the best is planned well.
 * @returns Infinity where some piece is too long or limited stock runs out
 */
export function quickCost(pieces: readonly Piece[], stock: readonly Stock[], kerf: number): number {
  const { job, tooLong } = sortedJob(pieces, stock, kerf);
  const plan = tooLong.length > 0 ? null : greedyPlan(job);
  return plan ? patternsCost(job, plan) : Number.POSITIVE_INFINITY;
}
