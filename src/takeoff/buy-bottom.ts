import type { Garden, GardenPrices } from "../garden/garden.ts";
import { practice } from "../garden/source.ts";
import { formatShort } from "../units/format-length.ts";
import { INCH } from "../units/length.ts";
import type { BedQuantities } from "./bed-quantities.ts";
import { plannedCuts } from "./buy-boards.ts";
import { quickCost } from "./cutting/quick-cost.ts";
import { priceOf, type RollGood, staplesGood } from "./price-table.ts";
import { type Bill, counted, groupedBy, joinedBills, type Purchase, sharesOf, total } from "./purchase.ts";
import { fewestStrips, LAP_SOURCE } from "./roll-goods.ts";
import type { Settings } from "./settings.ts";
import { linerGoods, meshGoods, type SheetGoods } from "./sheet-goods.ts";
import { inParts } from "./splice.ts";
import type { Piece, Stock } from "./types.ts";

const STAPLES = practice("a staple every 4 in round the edge");
const STAPLE_EVERY = 4 * INCH;
const STAPLES_IN_BOX = 500;

/** Mesh, liners and what holds them, for all beds that have them. */
export function buyBottoms(beds: readonly BedQuantities[], { prices }: Garden, settings: Settings): Bill {
  const { units } = settings;
  const meshed = groupedBy(
    beds.filter(({ bed }) => bed.bottom.mesh),
    ({ bed }) => `${bed.bottom.mesh?.opening}`,
  );
  const lined = groupedBy(
    beds.filter(({ bed }) => bed.bottom.liner),
    ({ bed }) => `${bed.bottom.liner}`,
  );
  return joinedBills([
    ...[...meshed].map(([opening, group]) =>
      buySheets(group, meshGoods(Number(opening), units), prices, settings),
    ),
    ...[...lined].map(([liner, group]) =>
      buySheets(group, linerGoods(liner === "sheet" ? "sheet" : "fabric", units), prices, settings),
    ),
    buyStaples(beds, settings),
  ]);
}

interface Covered {
  readonly quantities: BedQuantities;
  readonly strips: number;
  readonly length: number;
}

/** One width of roll for the whole garden: the one that comes cheapest by a quick look, then planned well. */
function buySheets(
  beds: readonly BedQuantities[],
  goods: SheetGoods,
  prices: GardenPrices,
  settings: Settings,
): Bill {
  const widths = [...groupedBy(goods.rolls, ({ width }) => `${width}`).values()];
  const ways = widths.map((rolls) => laidFrom(beds, goods, rolls, prices));
  const best = ways.reduce((a, b) => (b.cost < a.cost - 1e-9 ? b : a));
  // Shears take nothing.
  const plan = plannedCuts(best.pieces, best.stock, 0);
  const shares = sharesOf(
    best.covered,
    ({ quantities }) => quantities.bed.id,
    ({ strips, length }) => strips * length,
  );
  const how = howLaid(best.covered, goods, best.rolls[0]!.width, settings);
  const purchases = best.rolls
    .map((good): Purchase => {
      const quantity = plan.boards.filter(({ stock }) => stock.length === good.length).length;
      return { part: "bottom", good, quantity, how, source: LAP_SOURCE, shares, filling: 0 };
    })
    .filter(({ quantity }) => quantity > 0);
  return { purchases, offered: goods.rolls };
}

interface Way {
  readonly covered: readonly Covered[];
  readonly rolls: readonly RollGood[];
  readonly pieces: readonly Piece[];
  readonly stock: readonly Stock[];
  readonly cost: number;
}

function laidFrom(
  beds: readonly BedQuantities[],
  { lap, turnUp }: SheetGoods,
  rolls: readonly RollGood[],
  prices: GardenPrices,
): Way {
  const longest = Math.max(...rolls.map(({ length }) => length));
  const covered = beds.map((quantities): Covered => {
    const [width, length] = quantities.extent;
    const laid = fewestStrips(width + 2 * turnUp, length + 2 * turnUp, rolls[0]!.width, lap);
    const { parts, each } = inParts(laid.length, longest);
    return { quantities, strips: laid.strips * parts, length: each };
  });
  const pieces = covered.map(({ quantities, strips, length }) => ({
    length,
    count: strips,
    label: quantities.name,
  }));
  const stock = rolls.map((good) => ({ length: good.length, price: priceOf(good, prices).price }));
  return { covered, rolls, pieces, stock, cost: quickCost(pieces, stock, 0) };
}

function howLaid(
  covered: readonly Covered[],
  { lap, turnUp }: SheetGoods,
  width: number,
  { units }: Settings,
): string {
  const strips = total(covered, (bed) => bed.strips);
  const length = total(covered, (bed) => bed.strips * bed.length);
  const say = (mm: number) => formatShort(mm, units);
  return `${counted(strips, "strip")} of a ${say(width)} roll under ${counted(covered.length, "bed")}, ${say(length)} in all: each bed's outline and ${say(turnUp)} turned up all round, neighbours lapped ${say(lap)}`;
}

function buyStaples(beds: readonly BedQuantities[], { units }: Settings): Bill {
  const stapled = beds.filter(({ bed, frame }) => frame && (bed.bottom.mesh || bed.bottom.liner));
  if (stapled.length === 0) return { purchases: [], offered: [] };
  const rows = ({ bed }: BedQuantities) => (bed.bottom.mesh ? 1 : 0) + (bed.bottom.liner ? 1 : 0);
  const staples = (quantities: BedQuantities) =>
    rows(quantities) * Math.ceil(quantities.perimeter / STAPLE_EVERY - 1e-6);
  const count = total(stapled, staples);
  const good = staplesGood(units);
  const purchase: Purchase = {
    part: "bottom",
    good,
    quantity: Math.ceil(count / STAPLES_IN_BOX),
    how: `${counted(count, "staple")}: one every ${formatShort(STAPLE_EVERY, units)} round ${counted(stapled.length, "bed")}`,
    source: STAPLES,
    shares: sharesOf(stapled, ({ bed }) => bed.id, staples),
    filling: 0,
  };
  return { purchases: [purchase], offered: [good] };
}
