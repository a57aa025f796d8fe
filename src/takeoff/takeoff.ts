import type { Garden } from "../garden/garden.ts";
import type { DripPlan } from "../irrigation/types.ts";
import { bedTakeoff } from "./bed-takeoff.ts";
import type { ProvenPlans } from "./buy-boards.ts";
import { priceOf } from "./price-table.ts";
import { type Purchase, total } from "./purchase.ts";
import { type Reckoned, reckoned } from "./reckoned.ts";
import type { Stage } from "./stages.ts";
import type { Line, Takeoff } from "./types.ts";

export interface TakeoffOptions {
  /** All that is yet to be built unless one stage is asked for, which then has what the stages before have left at home. */
  readonly stage?: Stage;
  /** Cut plans that have been proven since, by the key of their job: they take the place of those made at once. */
  readonly proven?: ProvenPlans;
  /**
   * The plan of the drip lines where it is known already, perhaps from a moment ago; null leaves them out. Worked out where
   * it is not given, which takes longer than a frame in a garden of many beds.
   */
  readonly drip?: DripPlan | null;
}

/**
 * The quantities read off the plan, what has to be bought and what it costs.
 *
 * Each bed is counted once and remembered; what is bought for several beds (boards, rolls, loads) is planned for all
 * of them together. Prices are the gardener's own where given, the shipped examples otherwise. What stands in the yard
 * already is not bought again.
 */
export function takeoff(garden: Garden, { stage = "all", proven, drip }: TakeoffOptions = {}): Takeoff {
  const all = reckoned(garden, stage, proven, drip);
  const { beds, purchases, plans } = all;
  const lines = linesOf(all, garden);
  const sum = cents(total(lines, ({ cost }) => cost));
  const filling = total(
    purchases.map((purchase, i) => purchase.filling * lines[i]!.cost),
    (cost) => cost,
  );
  const costs = costsByBed(purchases, lines);
  const bedTakeoffs = beds.map((quantities) =>
    bedTakeoff(quantities, cents(costs.get(quantities.bed.id) ?? 0)),
  );
  return {
    currency: garden.prices.currency,
    stage,
    beds: bedTakeoffs,
    boardPlans: plans,
    lines,
    total: sum,
    byPart: byPart(lines),
    unsharedCost: cents(sum - total(bedTakeoffs, ({ cost }) => cost)),
    fillShare: sum > 0 ? Math.min(1, filling / sum) : 0,
  };
}

/** A row of the price table that this garden has a use for. */
export interface PriceRow {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  /** The price that counts. */
  readonly price: number;
  /** It is the gardener's own. */
  readonly own: boolean;
  /** The shipped example. */
  readonly example: number;
}

/** Everything on offer for this garden, bought or not: a dearer bag may be the cheaper one at another yard. */
export function priceKeysOf(garden: Garden): readonly PriceRow[] {
  const rows = new Map<string, PriceRow>();
  for (const { key, label, unit, example } of reckoned(garden).offered) {
    if (!rows.has(key))
      rows.set(key, { key, label, unit, example, ...priceOf({ key, label, unit, example }, garden.prices) });
  }
  return [...rows.values()];
}

function linesOf({ purchases, beds }: Reckoned, { prices }: Garden): Line[] {
  const stageOf = new Map(beds.map(({ bed }) => [bed.id, bed.stage]));
  return purchases.map(({ part, good, quantity, how, source, shares, pathStages = [] }): Line => {
    const { price, own } = priceOf(good, prices);
    const stages = new Set([...[...shares.keys()].map((id) => stageOf.get(id) ?? 1), ...pathStages]);
    return {
      key: good.key,
      part,
      what: good.label,
      quantity,
      unit: good.unit,
      price,
      ownPrice: own,
      cost: cents(price * quantity),
      how,
      source,
      stages: [...stages].sort((a, b) => a - b),
    };
  });
}

function byPart(lines: readonly Line[]): Takeoff["byPart"] {
  const costs = new Map<Line["part"], number>();
  for (const { part, cost } of lines) costs.set(part, (costs.get(part) ?? 0) + cost);
  return [...costs].filter(([, cost]) => cost > 0).map(([part, cost]) => ({ part, cost: cents(cost) }));
}

/** Each line divided among the beds by what each has of it. */
function costsByBed(purchases: readonly Purchase[], lines: readonly Line[]): Map<string, number> {
  const costs = new Map<string, number>();
  for (const [i, { shares, filling, part }] of purchases.entries()) {
    const all = total([...shares.values()], (amount) => amount);
    // Of a material that serves paths too, beds bear only their part.
    const loose = part === "fill" || part === "mulch" || part === "paths" || part === "delivery";
    const cost = lines[i]!.cost * (loose ? filling : 1);
    for (const [id, amount] of shares) costs.set(id, (costs.get(id) ?? 0) + (cost * amount) / all);
  }
  return costs;
}

const cents = (amount: number): number => Math.round(amount * 100) / 100;
