import { fractionalFit } from "./fractional-fit.ts";
import type { Job, Pattern } from "./job.ts";
import type { Bill } from "./requirement.ts";

/**
 * A quick try to saw all pieces from exactly the boards of a bill: of the fractional plan keep the patterns that are
 * used in full, or the one used most, and plan what is left anew until nothing is.
 *
 * @param known patterns found so far; grows
 * @param turn which of the most used patterns is kept first: another turn, another plan
 * @returns null where it does not come out; there may still be a way
 */
export function dive(job: Job, bill: Bill, known: Pattern[], turn: number): Pattern[] | null {
  const left = [...job.demand];
  const boardsLeft = [...bill];
  const kept: Pattern[] = [];

  const keep = ({ stock, counts }: Pattern): boolean => {
    const taken = counts.map((count, i) => Math.min(count, left[i]!));
    if (boardsLeft[stock] === 0 || taken.every((count) => count === 0)) return false;
    for (const [i, count] of taken.entries()) left[i]! -= count;
    boardsLeft[stock]!--;
    kept.push({ stock, counts: taken });
    return true;
  };

  for (let first = true; left.some((count) => count > 0); first = false) {
    const { fits, used } = fractionalFit(job, boardsLeft, known, left);
    if (!fits) return null;
    const mostUsed = used.toSorted((a, b) => b.amount - a.amount);
    const chosen = mostUsed[first ? turn % mostUsed.length : 0];
    if (!chosen) return null;
    const whole = first ? [] : mostUsed.filter(({ amount }) => amount > 1 - 1e-6);
    for (const { pattern, amount } of whole) {
      for (let n = 0; n < Math.floor(amount + 1e-6); n++) keep(pattern);
    }
    if (whole.length === 0 && !keep(chosen.pattern)) return null;
  }
  return kept;
}
