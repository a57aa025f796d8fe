import type { GardenPrices } from "../garden/garden.ts";
import type { Item } from "../garden/item.ts";
import type { Path } from "../garden/kinds/path.ts";
import { computed, practice, published } from "../garden/source.ts";
import { formatArea, formatBulk } from "../units/format-figure.ts";
import { midSentence } from "../words/phrases.ts";
import { say } from "../words/say.ts";
import type { BedQuantities } from "./bed-quantities.ts";
import { type BulkPurchase, cheapestPurchase, type Need } from "./bulk-purchase.ts";
import { counted } from "./counted.ts";
import { SETTLING_SOURCE } from "./fill-volumes.ts";
import { DELIVERY, type Good, type Material, materialById, VOLUME_UNIT } from "./goods.ts";
import { howUsed, looseUses, type Use } from "./loose-uses.ts";
import { pathArea } from "./path-ground.ts";
import { pavingGood, priceOf } from "./price-table.ts";
import { type Bill, groupedBy, joinedBills, type Purchase, sharesOf, total } from "./purchase.ts";
import { remembered } from "./remembered.ts";
import type { Settings } from "./settings.ts";

const DELIVERED = {
  us: practice("loads by the half yard, 1 yd³ at least, 10 yd³ to a lorry, materials side by side"),
  metric: practice("loads by the half cubic metre, 1 m³ at least, 8 m³ to a lorry, materials side by side"),
} as const;
const BAGGED = published("sold by loose volume: NIST Handbook 133, section 3.10");
const PAVED = computed(
  "the area of the path less what stands on it, in whole units; no allowance for cutting",
);
const GATHERED = practice("prunings, leaves and grass are usually gathered for nothing");

/** Fill, mulch and path surfacing: all that comes in bags and loads, bought together. */
export function buyLoose(
  beds: readonly BedQuantities[],
  paths: readonly Path[],
  items: readonly Item[],
  prices: GardenPrices,
  settings: Settings,
): Bill {
  const uses = looseUses(beds, paths, items, settings);
  const byMaterial = groupedBy(
    uses.filter(({ litres }) => litres > 1e-6),
    ({ material }) => material,
  );
  const wanted = [...byMaterial].map(([id, group]) => ({
    material: materialById(id, settings.units),
    group,
  }));
  const gathered = wanted.filter(({ material }) => isGathered(material));
  const sold = wanted.filter(({ material }) => !isGathered(material));
  return joinedBills([
    ...gathered.map(({ material, group }) => gather(material, group, settings)),
    buySold(sold, prices, settings),
    buyPaving(paths, items, settings),
  ]);
}

/** Found in the garden or given away: neither bagged nor delivered. */
const isGathered = ({ packs, bulk }: Material): boolean => packs.length === 0 && bulk?.example === 0;

interface Wanted {
  readonly material: Material;
  readonly group: readonly Use[];
}

const litresOf = ({ group }: Wanted): number => total(group, ({ litres }) => litres);

function gather(material: Material, group: readonly Use[], settings: Settings): Bill {
  const good = material.bulk;
  if (!good) return { purchases: [], offered: [] };
  const quantity = Math.ceil((litresOf({ material, group }) / good.litres) * 10 - 0.01) / 10;
  const how = say`${howUsed(group, settings)}; not delivered`;
  const purchase: Purchase = { ...describing(group), good, quantity, how, source: GATHERED };
  return { purchases: [purchase], offered: [good] };
}

/** What a purchase says of its uses: where it is listed, which beds share it, how much of it fills beds. */
function describing(group: readonly Use[]): Pick<Purchase, "part" | "shares" | "filling" | "pathStages"> {
  const all = total(group, ({ litres }) => litres);
  const paths = total(
    group.filter(({ part }) => part === "paths"),
    ({ litres }) => litres,
  );
  const largest = group.reduce((a, b) => (b.litres > a.litres ? b : a));
  const inBeds = group.filter(({ bed }) => bed !== null);
  return {
    part: largest.part,
    shares: sharesOf(
      inBeds,
      ({ bed }) => bed!.bed.id,
      ({ litres }) => litres,
    ),
    filling: all > 0 ? 1 - paths / all : 0,
    pathStages: group.filter(({ bed }) => bed === null).map(({ stage }) => stage),
  };
}

/** `cheapestPurchase` for a garden's prices, remembered while needs and prices stay the same. */
export const planLoose = remembered(
  16,
  (needs: readonly Need[], prices: GardenPrices, { units }: Settings): BulkPurchase | null => {
    const { step, least, most, fee } = DELIVERY[units];
    return cheapestPurchase(needs, {
      unit: VOLUME_UNIT[units],
      step,
      least,
      most,
      fee: priceOf(fee, prices).price,
      priceOf: (good) => priceOf(good, prices).price,
    });
  },
  (needs, prices, { units }) =>
    `${units} ${JSON.stringify(prices.own)} ${needs.map(({ material, litres }) => `${material.id} ${litres}`).join()}`,
);

/** What materials cost by themselves, as bags or loads with their delivery. */
export function costOfLoose(
  wanted: readonly { readonly material: string; readonly litres: number }[],
  prices: GardenPrices,
  settings: Settings,
): { readonly money: number; readonly label: string } {
  const needs = wanted.map(({ material, litres }) => ({
    material: materialById(material, settings.units),
    litres,
  }));
  const sold = needs.filter(({ material, litres }) => litres > 0 && !isGathered(material));
  const label = needs.map(({ material }) => material.label).join(", ");
  return { money: sold.length === 0 ? 0 : (planLoose(sold, prices, settings)?.cost ?? 0), label };
}

function buySold(wanted: readonly Wanted[], prices: GardenPrices, settings: Settings): Bill {
  const { units } = settings;
  const needs = wanted.map(({ material, group }) => ({ material, litres: litresOf({ material, group }) }));
  const plan = planLoose(needs, prices, settings);
  if (!plan) return { purchases: [], offered: [] };
  const delivery = DELIVERY[units];
  const materials = wanted.map(({ material, group }, i): Bill => {
    const bought = plan.bought[i]!;
    const about = describing(group);
    const says = {
      ...about,
      how: howUsed(group, settings),
      source: about.part === "fill" ? SETTLING_SOURCE : BAGGED,
    };
    const bags = bought.packs.map(({ good, count }): Purchase => ({ ...says, good, quantity: count }));
    const { bulk } = material;
    const loose: Purchase[] =
      bulk && bought.bulk > 0
        ? [{ ...says, good: bulk, quantity: tidy(bought.bulk / bulk.litres), source: DELIVERED[units] }]
        : [];
    return { purchases: [...loose, ...bags], offered: bulk ? [bulk, ...material.packs] : material.packs };
  });
  const offersDelivery = wanted.some(({ material }) => material.bulk);
  return joinedBills([
    ...materials,
    buyDelivery(wanted, plan, settings, offersDelivery ? [delivery.fee] : []),
  ]);
}

function buyDelivery(
  wanted: readonly Wanted[],
  plan: BulkPurchase,
  { units }: Settings,
  offered: readonly Good[],
): Bill {
  if (plan.loads === 0) return { purchases: [], offered };
  const loaded = wanted.filter((_, i) => plan.bought[i]!.bulk > 0);
  const uses = loaded.flatMap(({ group }) => group);
  const volumes = loaded.map(
    ({ material }) =>
      `${midSentence(material.label)} ${formatBulk(plan.bought[wanted.findIndex((w) => w.material === material)]!.bulk, units)}`,
  );
  const purchase: Purchase = {
    ...describing(uses),
    part: "delivery",
    good: DELIVERY[units].fee,
    quantity: plan.loads,
    how: say`${counted(plan.loads, "load")}: ${volumes.join(", ")}; cheaper than bags alone`,
    source: DELIVERED[units],
  };
  return { purchases: [purchase], offered };
}

/** Whole steps of a load come out of the division with rounding. */
const tidy = (quantity: number): number => Math.round(quantity * 1000) / 1000;

export function buyPaving(paths: readonly Path[], items: readonly Item[], { units }: Settings): Bill {
  const paved = paths
    .filter(({ surface, depth }) => surface === "paving" && depth > 0)
    .map((path) => ({ path, area: pathArea(path, items) }));
  const area = total(paved, (path) => path.area);
  if (area <= 0) return { purchases: [], offered: [] };
  const good = pavingGood(units);
  const unit = good.unit === "ft²" ? 304.8 ** 2 : 1e6;
  const purchase: Purchase = {
    part: "paths",
    good,
    quantity: Math.ceil(area / unit - 1e-3),
    how: say`${counted(paved.length, "paved path")}, ${formatArea(area, units)} free of beds`,
    source: PAVED,
    shares: new Map(),
    filling: 0,
    pathStages: paved.map(({ path }) => path.stage),
  };
  return { purchases: [purchase], offered: [good] };
}
