import type { Job } from "./job.ts";
import { fullestBoard } from "./knapsack.ts";

/**
 * What any purchase of boards must meet to hold all pieces. Give each piece a worth: no board of a stock can hold
 * pieces worth more than its fullest filling, so the boards bought must together hold at least the worth of all.
 * Every worth gives such a requirement; pieces worth their length give the plainest one.
 */
export interface Requirement {
  readonly worth: readonly number[];
  /** The most that one board of each stock can hold, in that worth. */
  readonly holds: readonly number[];
  /** What all pieces are worth. */
  readonly needed: number;
}

/** How many boards of each stock are bought. */
export type Bill = readonly number[];

/** Below this share of what is needed a difference is rounding. */
const ROUNDING = 1e-9;

export const requirementOf = ({ sizes, demand, stock }: Job, worth: readonly number[]): Requirement => ({
  worth,
  holds: stock.map(({ capacity }) => fullestBoard(sizes, worth, demand, capacity).atMost),
  needed: dot(worth, demand),
});

/** What a bill could hold beyond what is needed; below 0 where it cannot hold the pieces. */
export const spare = ({ holds, needed }: Requirement, bill: Bill): number =>
  dot(holds, bill) - needed + needed * ROUNDING;

export function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
