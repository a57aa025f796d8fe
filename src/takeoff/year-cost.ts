import type { Garden } from "../garden/garden.ts";
import type { Source } from "../garden/source.ts";
import { formatArea, formatVolume } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { say, sayCount } from "../words/say.ts";
import { asNew } from "./as-new.ts";
import { bedQuantities } from "./bed-quantities.ts";
import { costOfLoose } from "./buy-loose.ts";
import { isTapDevice } from "./drip-goods.ts";
import { litresOver } from "./fill-volumes.ts";
import { type Life, lifeOf, lifeOfTimber, renewals } from "./lives.ts";
import { looseUses, type Use } from "./loose-uses.ts";
import { priceOf } from "./price-table.ts";
import { groupedBy, type Purchase, total } from "./purchase.ts";
import { reckoned, reckonedAnew } from "./reckoned.ts";
import { settingsOf } from "./settings.ts";
import { buildingIn } from "./stages.ts";
import { takeoff } from "./takeoff.ts";
import { timberById } from "./timbers.ts";
import { TOP_UPS, topUpDepth } from "./top-ups.ts";
import type { Takeoff } from "./types.ts";

/** Something that has to be bought again and again. Years; money in the garden's currency. */
export interface Renewal {
  /** "mesh", "timber:larch", "mulch straw", "top-up": the same for the same thing. */
  readonly id: string;
  readonly what: string;
  /** Of one time. */
  readonly cost: number;
  readonly life: readonly [shortest: number, longest: number];
  /** Bought again within the horizon, after the first time. */
  readonly times: number;
  /** Its part of what is bought now, and all that is bought again, over the horizon. */
  readonly perYear: number;
  readonly how: string;
  readonly source: Source;
}

/** What a garden costs a year. */
export interface YearCost {
  readonly horizon: number;
  /** The takeoff's total. */
  readonly first: number;
  /** All that is bought again within the horizon. */
  readonly renewals: number;
  readonly perYear: number;
  readonly rows: readonly Renewal[];
}

/** Begins the id of a wall of boards; the timber's own id follows. */
const TIMBER = "timber:";
/** The id of the row of what beds are topped up with. */
export const TOP_UP = "top-up";

/**
 * What the garden costs a year over the horizon of its prices: all that is bought now, walls, mesh, liners, edging,
 * mulch and surfacing each time their life is over, and the compost that beds are topped up with, by the habit or
 * the advice as the garden says, each year after the first.
 * @param whole the garden's takeoff where it is known, perhaps with proven cut plans: the same first cost is then told
 */
export function costAYear(garden: Garden, whole: Pick<Takeoff, "total"> = takeoff(garden)): YearCost {
  const { horizon } = garden.prices;
  const first = whole.total;
  const now = costsByLasting(reckoned(garden).purchases, garden);
  const rows = [
    ...[...costsByLasting(reckonedAnew(garden).purchases, asNew(garden))].map(([id, { what, cost }]) =>
      renewalOf(id, what, cost, now.get(id)?.cost ?? 0, horizon),
    ),
    ...looseRenewals(garden),
    ...topUp(garden),
  ].filter(({ cost }) => cost > 0);
  const again = cents(total(rows, ({ cost, times }) => cost * times));
  return { horizon, first, renewals: again, perYear: cents((first + again) / horizon), rows };
}

interface Lasting {
  readonly what: string;
  readonly cost: number;
}

/** What lasts some years and is not loose: walls by their timber or kind, bottoms, edging, paving. */
function costsByLasting(purchases: readonly Purchase[], garden: Garden): Map<string, Lasting> {
  const costs = new Map<string, Lasting>();
  const costOf = ({ good, quantity }: Purchase) => priceOf(good, garden.prices).price * quantity;
  let fixings = 0;
  for (const purchase of purchases) {
    const lasting = lastingOf(purchase);
    if (lasting === "fixings") fixings += costOf(purchase);
    else if (lasting) {
      const before = costs.get(lasting.id)?.cost ?? 0;
      costs.set(lasting.id, { what: lasting.what, cost: before + costOf(purchase) });
    }
  }
  shareOut(costs, fixings);
  return costs;
}

/** Stakes, screws and ties are renewed with the boards they hold. */
function shareOut(costs: Map<string, Lasting>, fixings: number): void {
  const timbers = [...costs].filter(([id]) => id.startsWith(TIMBER));
  const boards = total(timbers, ([, { cost }]) => cost);
  for (const [id, { what, cost }] of timbers) {
    const share = boards > 0 ? cost / boards : 1 / timbers.length;
    costs.set(id, { what, cost: cost + fixings * share });
  }
}

function lastingOf({
  part,
  good,
}: Purchase): { readonly id: string; readonly what: string } | "fixings" | null {
  const [kind = "", , timber] = good.key.split(":");
  if (kind === "board" && timber)
    return { id: `${TIMBER}${timber}`, what: say`Walls of ${timberById(timber)?.label ?? timber}` };
  if (part === "fixings" || (part === "posts" && kind === "stake")) return "fixings";
  if (kind === "metal" || kind === "metal-corner") return { id: "metal", what: say`Metal walls` };
  if (kind === "block") return { id: "masonry", what: say`Block walls` };
  if (kind === "fabric-bed") return { id: "fabric-bed", what: say`Fabric beds` };
  if (kind.startsWith("mesh") || kind === "staples") return { id: "mesh", what: say`Mesh and its staples` };
  if (kind === "liner-fabric" || kind === "liner-sheet") return { id: kind, what: say`Liner` };
  if (kind === "paving") return { id: kind, what: say`Paving` };
  if (kind === "drip-line") return { id: kind, what: say`Drip lines` };
  if (part === "water")
    return isTapDevice(kind)
      ? { id: "tap-devices", what: say`Timer and devices at the tap` }
      : { id: "tubing", what: say`Main, tubing and fittings` };
  if (kind.startsWith("edging-")) return { id: kind, what: say`Edging of paths` };
  return null;
}

function renewalOf(id: string, what: string, cost: number, now: number, horizon: number): Renewal {
  const { years, source } = id.startsWith(TIMBER) ? lifeOfTimber(id.slice(TIMBER.length)) : lifeOf(id);
  const times = renewals(years, horizon);
  return {
    id,
    what,
    cost: cents(cost),
    life: years,
    times,
    perYear: cents((now + cost * times) / horizon),
    how: `${lasting(years)}; ${boughtAgain(times, horizon)}`,
    source,
  };
}

const lasting = ([shortest, longest]: Life["years"]): string =>
  shortest === longest
    ? sayCount(longest, { one: "lasts {{count}} year", other: "lasts {{count}} years" })
    : say`lasts ${shortest} to ${longest} years`;

const boughtAgain = (times: number, horizon: number): string =>
  times === 1
    ? say`within ${horizon} years bought again once, each time the middle of its life is over`
    : say`within ${horizon} years bought again ${times} times, each time the middle of its life is over`;

/** Mulches and surfacings, each material for itself, bags or loads as they come cheapest. */
function looseRenewals(garden: Garden): Renewal[] {
  const settings = settingsOf(garden);
  const { beds, paths } = buildingIn(garden, "all");
  const quantities = beds.map((bed) => bedQuantities(bed, settings));
  const uses = looseUses(quantities, paths, garden.items, settings).filter(
    ({ part, litres }) => part !== "fill" && litres > 0,
  );
  return [...groupedBy(uses, ({ part, material }) => `${part} ${material}`).values()].map((group) => {
    const { part, material } = group[0]!;
    const litres = total(group, (use: Use) => use.litres);
    const cost = costOfLoose([{ material, litres }], garden.prices, settings);
    const row = renewalOf(material, "", cost.money, cost.money, garden.prices.horizon);
    const id = `${part} ${material}`;
    const what = part === "mulch" ? say`${cost.label} mulch` : say`${cost.label} on paths`;
    return { ...row, id, what, how: `${formatVolume(litres, garden.units)}; ${row.how}` };
  });
}

function topUp(garden: Garden): Renewal[] {
  const settings = settingsOf(garden);
  const { horizon } = garden.prices;
  const { upkeep, units } = garden;
  const depth = topUpDepth(upkeep);
  const area = total(buildingIn(garden, "all").beds, (bed) => bedQuantities(bed, settings).soilAreaMm2);
  const litres = litresOver(area, depth);
  if (litres <= 0) return [];
  const { money } = costOfLoose([{ material: "compost", litres }], garden.prices, settings);
  const aYear = money * upkeep.topUpsAYear;
  const times = horizon - 1;
  const each = [formatShort(depth, units), formatArea(area, units), formatVolume(litres, units)] as const;
  return [
    {
      id: TOP_UP,
      what: say`Compost to top up`,
      cost: cents(aYear),
      life: [1, 1],
      times,
      perYear: cents((aYear * times) / horizon),
      how: toppedUp(each, upkeep.topUpsAYear),
      source: TOP_UPS[upkeep.topUp].source,
    },
  ];
}

const toppedUp = (
  [depth, area, volume]: readonly [depth: string, area: string, volume: string],
  timesAYear: number,
): string =>
  timesAYear === 2
    ? say`${depth} on ${area} of soil, ${volume}, twice each year after the first`
    : say`${depth} on ${area} of soil, ${volume}, each year after the first`;

const cents = (amount: number): number => Math.round(amount * 100) / 100;
