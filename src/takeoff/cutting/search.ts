import { Bills } from "./bills.ts";
import type { Relaxed } from "./bound.ts";
import { dive } from "./dive.ts";
import { fractionalFit } from "./fractional-fit.ts";
import type { Job, Pattern } from "./job.ts";
import { type Bill, requirementOf, spare } from "./requirement.ts";
import { wholeFit } from "./whole-fit.ts";

/** How far a search may go before it settles for what it has. Counted in steps, never in time. */
export interface Effort {
  /** Of looking for a way to saw the pieces from the boards of some bill. */
  readonly steps: number;
  /** Times per bill that it is asked whether what is left fits in fractions; 0 where there is no time for it. */
  readonly looks: number;
  /** Patterns that may be considered for one bill. */
  readonly patterns: number;
  /** Steps that costs are told apart by. */
  readonly costs: number;
  /** Of listing bills within some window of costs, and how many times that is done. */
  readonly bills: number;
  readonly listings: number;
  /** Bills that are looked into. */
  readonly fits: number;
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

/** Shares of the steps that are spent on one bill, before dives are tried and after: a dive mostly finds a plan. */
const AT_FIRST = 1 / 40;
const IN_EARNEST = 1 / 4;
/** Dives for one bill, each beginning with another pattern. */
const DIVES = 4;

/**
 * The cheapest plan by way of the bills: what boards could be bought for less than the best plan known, from the
 * cheapest up. Most cannot hold the pieces even in fractions, and why one cannot (a requirement) rules out many
 * others unseen. The first bill that the pieces can be sawn from is proven the cheapest, since all cheaper ones
 * have been ruled out (J. Hooker and G. Ottosson, "Logic-based Benders decomposition", 2003).
 */
export function searched(job: Job, relaxed: Relaxed, start: Plan, effort: Effort): Searched {
  const requirements = [requirementOf(job, relaxed.worth), requirementOf(job, job.sizes)];
  const bills = new Bills(job, [...requirements], start.cost, effort.costs);
  const known: Pattern[] = [...start.patterns, ...relaxed.used.map(({ pattern }) => pattern)];
  let stepsLeft = effort.steps;
  let fitsLeft = effort.fits;
  let bound = Math.min(start.cost, bills.atLeast(relaxed.bound));
  let width = start.cost - bound;
  // Costs too fine for the tables make a search long, and seldom worth while in a moment.
  const most = bills.exact || effort.looks > 0 ? effort.listings : 0;

  for (let listings = most; bound < start.cost - 1e-9 && listings > 0; listings--) {
    const below = Math.min(start.cost, bound + width);
    const listed = bills.between(bound, below, requirements, effort.bills);
    if (!listed) {
      // Too many bills within that much money: the cheapest of them first.
      width /= 8;
      continue;
    }
    const found = firstThatFits(listed);
    if (found.plan) return { ...found.plan, bound: Math.min(found.openFrom, found.plan.cost) };
    if (found.openFrom < below) return { ...start, bound: found.openFrom };
    bound = Math.min(start.cost, below >= start.cost ? below : bills.atLeast(below));
    width *= 2;
  }
  return { ...start, bound };

  /** `openFrom`: what the cheapest bill costs about which nothing could be found out; Infinity if there is none. */
  function firstThatFits(bills: readonly { readonly bill: Bill; readonly cost: number }[]) {
    let openFrom = Number.POSITIVE_INFINITY;
    for (const { bill, cost } of bills) {
      if (requirements.some((requirement) => spare(requirement, bill) < 0)) continue;
      if (stepsLeft <= 0 || --fitsLeft < 0) {
        openFrom = Math.min(openFrom, cost);
        break;
      }
      const patterns = plannedFrom(bill);
      if (patterns === null) openFrom = Math.min(openFrom, cost);
      else if (patterns.length > 0) return { plan: { patterns, cost }, openFrom };
    }
    return { plan: null, openFrom };
  }

  /** Patterns that saw all pieces from a bill; none where that cannot be; null where it could not be found out. */
  function plannedFrom(bill: Bill): readonly Pattern[] | null {
    const fraction = fractionalFit(job, bill, known);
    const requirement = requirementOf(job, fraction.worth);
    if (requirement.needed > 0) requirements.push(requirement);
    if (!fraction.fits) return spare(requirement, bill) < 0 ? [] : null;
    return wholePlan(bill);
  }

  function wholePlan(bill: Bill): readonly Pattern[] | null {
    const { patterns, looks } = effort;
    const first = { patterns, looks: 0, steps: Math.min(stepsLeft, effort.steps * AT_FIRST) };
    const then = { patterns, looks, steps: Math.min(stepsLeft, effort.steps * IN_EARNEST) };
    for (const most of looks > 0 ? [first, then] : [first]) {
      const found = wholeFit(job, bill, requirements, known, most);
      stepsLeft -= found.steps;
      if (found.fits) return found.patterns;
      if (found.certain) return [];
      for (let turn = 0; turn < Math.min(DIVES, looks); turn++) {
        const dived = dive(job, bill, known, turn);
        if (dived) return dived;
      }
    }
    return null;
  }
}
