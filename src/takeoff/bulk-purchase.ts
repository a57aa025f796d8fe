import type { Material, VolumeGood } from "./goods.ts";

/**
 * The cheapest way to buy loose materials from bags and bulk loads: exact, by dynamic programming over whole units of
 * volume. Bags first (least cost of at least v units, fewer bags among equals); then, for each material, every number
 * of bulk steps with the rest in bags; then all materials together, since one lorry brings several and is paid once.
 */
export interface Need {
  readonly material: Material;
  readonly litres: number;
}

export interface Terms {
  /** Litres in a unit of reckoning; bags are whole numbers of it. */
  readonly unit: number;
  /** Litres in a step of a bulk load. */
  readonly step: number;
  /** Litres a load must come to, and can come to. */
  readonly least: number;
  readonly most: number;
  readonly fee: number;
  priceOf(good: VolumeGood): number;
}

export interface Bought {
  readonly material: Material;
  readonly packs: readonly { readonly good: VolumeGood; readonly count: number }[];
  /** Litres by the load. */
  readonly bulk: number;
  readonly cost: number;
}

export interface BulkPurchase {
  /** In the order of the needs. */
  readonly bought: readonly Bought[];
  readonly loads: number;
  readonly cost: number;
}

/** A need is met when no more than this share of a unit is missing: volumes come from outlines, with rounding. */
const NEAR = 0.01;
/** Beyond this much of one material, all but this much comes by the load without looking for anything cheaper. */
const LARGEST_SEARCH = 400;
/** Beyond this many units without bulk, only the bag that is cheapest for its size is bought. */
const MOST_UNITS = 400_000;

/**
 * @returns null for a material that is sold neither way
 */
export function cheapestPurchase(needs: readonly Need[], terms: Terms): BulkPurchase | null {
  const options = needs.map((need) => optionsFor(need, terms));
  if (options.some(({ list }) => list.every((option) => option === null))) return null;
  const baseSteps = options.reduce((sum, { base }) => sum + base, 0);
  const leastSteps = Math.ceil(terms.least / terms.step - NEAR);
  const mostSteps = Math.max(1, Math.floor(terms.most / terms.step + NEAR));

  // Least cost of all needs so far for each total of bulk steps, and what the last need took of it.
  let costs: readonly number[] = [0];
  const took: number[][] = [];
  for (const { list } of options) {
    const next = new Array<number>(costs.length + list.length - 1).fill(Number.POSITIVE_INFINITY);
    const from = new Array<number>(next.length).fill(0);
    for (const [before, cost] of costs.entries()) {
      for (const [steps, option] of list.entries()) {
        if (!option || cost + option.cost >= next[before + steps]! - 1e-9) continue;
        next[before + steps] = cost + option.cost;
        from[before + steps] = steps;
      }
    }
    costs = next;
    took.push(from);
  }

  let [best, bestSteps] = [Number.POSITIVE_INFINITY, 0];
  for (const [steps, cost] of costs.entries()) {
    const loaded = baseSteps + steps;
    if (loaded > 0 && loaded < leastSteps) continue;
    const total = cost + terms.fee * Math.ceil(loaded / mostSteps);
    if (total < best - 1e-9) [best, bestSteps] = [total, steps];
  }
  if (best === Number.POSITIVE_INFINITY) return null;
  const loads = Math.ceil((baseSteps + bestSteps) / mostSteps);
  const bought: Bought[] = [];
  for (let i = needs.length - 1; i >= 0; i--) {
    const steps = took[i]![bestSteps]!;
    bought.unshift(options[i]!.list[steps]!);
    bestSteps -= steps;
  }
  return { bought, loads, cost: best };
}

interface Options {
  /** Bulk steps bought in any case. */
  readonly base: number;
  /** For each number of steps more, the cheapest way to meet the need; null where it cannot be met so. */
  readonly list: readonly (Bought | null)[];
}

function optionsFor({ material, litres }: Need, terms: Terms): Options {
  const { bulk } = material;
  const neededSteps = Math.max(0, Math.ceil(litres / terms.step - NEAR));
  const base = bulk ? Math.max(0, neededSteps - LARGEST_SEARCH) : 0;
  const units = Math.max(0, Math.ceil((litres - base * terms.step) / terms.unit - NEAR));
  const bags =
    units > MOST_UNITS ? bestSizedBag(material.packs, terms) : bagging(material.packs, units, terms);
  // Enough steps to meet the need, and to reach the least load with it alone.
  const most = bulk && units > 0 ? Math.max(neededSteps - base, Math.ceil(terms.least / terms.step)) : 0;
  const list = Array.from({ length: most + 1 }, (_, steps) => {
    const packs = bags(Math.max(0, units - Math.floor((steps * terms.step) / terms.unit + NEAR)));
    if (!packs) return null;
    const loose = (base + steps) * terms.step;
    const bulkCost = bulk ? (loose / bulk.litres) * terms.priceOf(bulk) : 0;
    return { material, packs: packs.packs, bulk: bulk ? loose : 0, cost: packs.cost + bulkCost };
  });
  return { base, list };
}

type Bags = { readonly packs: Bought["packs"]; readonly cost: number } | null;

/** Only the bag that costs least for its size. */
function bestSizedBag(packs: readonly VolumeGood[], terms: Terms): (units: number) => Bags {
  const [first, ...others] = packs;
  if (!first) return () => null;
  const good = others.reduce(
    (a, b) => (terms.priceOf(b) / b.litres < terms.priceOf(a) / a.litres ? b : a),
    first,
  );
  return (units) => {
    const count = Math.ceil((units * terms.unit) / good.litres - NEAR);
    return { packs: count > 0 ? [{ good, count }] : [], cost: count * terms.priceOf(good) };
  };
}

/** Cheapest bags for any number of units up to `units`; null where there are no bags to be had. */
function bagging(packs: readonly VolumeGood[], units: number, terms: Terms): (units: number) => Bags {
  const sizes = packs.map(({ litres }) => Math.max(1, Math.floor(litres / terms.unit + NEAR)));
  const prices = packs.map((good) => terms.priceOf(good));
  const cost = new Float64Array(units + 1).fill(Number.POSITIVE_INFINITY);
  const bags = new Int32Array(units + 1);
  const last = new Int16Array(units + 1).fill(-1);
  cost[0] = 0;
  for (let v = 1; v <= units; v++) {
    for (let i = 0; i < sizes.length; i++) {
      const rest = Math.max(0, v - sizes[i]!);
      const total = cost[rest]! + prices[i]!;
      const count = bags[rest]! + 1;
      const same = Math.abs(total - cost[v]!) < 1e-9;
      if (total < cost[v]! - 1e-9 || (same && count < bags[v]!)) {
        cost[v] = total;
        bags[v] = count;
        last[v] = i;
      }
    }
  }
  return (need: number) => {
    if (need > 0 && last[need]! < 0) return null;
    const counts = sizes.map(() => 0);
    for (let v = need; v > 0; v -= sizes[last[v]!]!) counts[last[v]!]!++;
    const bought = packs.map((good, i) => ({ good, count: counts[i]! })).filter(({ count }) => count > 0);
    return { packs: bought, cost: cost[need]! };
  };
}
