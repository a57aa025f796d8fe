import { frameOf } from "../garden/frame.ts";
import type { Garden } from "../garden/garden.ts";
import { type BedQuantities, bedQuantities } from "./bed-quantities.ts";
import { buyBoards } from "./buy-boards.ts";
import { buyBottoms } from "./buy-bottom.ts";
import { buyFixings } from "./buy-fixings.ts";
import { buyLoose } from "./buy-loose.ts";
import { buyWalls } from "./buy-walls.ts";
import { priceOf } from "./price-table.ts";
import { joinedBills, type Purchase, total } from "./purchase.ts";
import { settingsOf } from "./settings.ts";
import type { BedTakeoff, Line, Takeoff } from "./types.ts";

/**
 * The quantities read off the plan, what has to be bought and what it costs.
 *
 * Each bed is counted once and remembered; what is bought for several beds (boards, rolls, loads) is planned for all
 * of them together. Prices are the gardener's own where given, the shipped examples otherwise.
 */
export function takeoff(garden: Garden): Takeoff {
  const { beds, purchases, plans } = reckoned(garden);
  const lines = purchases.map((purchase) => lineOf(purchase, garden));
  const sum = cents(total(lines, ({ cost }) => cost));
  const filling = total(
    purchases.map((purchase, i) => purchase.filling * lines[i]!.cost),
    (cost) => cost,
  );
  const costs = costsByBed(purchases, lines);
  return {
    currency: garden.prices.currency,
    beds: beds.map((quantities) => bedTakeoff(quantities, costs.get(quantities.bed.id) ?? 0)),
    boardPlans: plans,
    lines,
    total: sum,
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

function reckoned(garden: Garden) {
  const settings = settingsOf(garden);
  const { prices, items } = garden;
  const beds = items.flatMap((item) => (item.kind === "bed" ? [bedQuantities(item, settings)] : []));
  const boards = buyBoards(beds, prices, settings);
  const bill = joinedBills([
    boards,
    buyWalls(beds, settings),
    buyFixings(beds, prices, settings),
    buyBottoms(beds, prices, settings),
    buyLoose(beds, items, prices, settings),
  ]);
  return { beds, plans: boards.plans, ...bill };
}

function lineOf({ part, good, quantity, how, source }: Purchase, { prices }: Garden): Line {
  const { price, own } = priceOf(good, prices);
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
  };
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

function bedTakeoff(quantities: BedQuantities, cost: number): BedTakeoff {
  const { bed, frame, fill, soilAreaMm2, soilDepth, wallHeight, mulch } = quantities;
  const { outside, inside } = frameOf(bed);
  return {
    id: bed.id,
    outside,
    inside,
    soilAreaMm2,
    wallHeight,
    soilDepth,
    soilVolumeL: fill.soil,
    mixVolumeL: fill.mix,
    woodyVolumeL: fill.woody,
    orderVolumeL: fill.mixOrder + fill.woodyOrder,
    mulchVolumeL: mulch,
    weightKg: fill.weight,
    boards: frame?.pieces ?? [],
    posts: frame?.posts.count ?? 0,
    stakes: frame?.stakes.count ?? 0,
    ties: frame?.ties ?? 0,
    screws: frame?.screws.count ?? 0,
    cost: cents(cost),
  };
}

const cents = (amount: number): number => Math.round(amount * 100) / 100;
