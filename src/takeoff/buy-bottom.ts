import type { Garden, GardenPrices } from "../garden/garden.ts";
import { practice } from "../garden/source.ts";
import { formatShort } from "../units/format-length.ts";
import { INCH } from "../units/length.ts";
import { say } from "../words/say.ts";
import type { BedQuantities } from "./bed-quantities.ts";
import { type Sheet, type Underlaid, underlaidIn } from "./bottom-ground.ts";
import { plannedCuts } from "./buy-boards.ts";
import { counted } from "./counted.ts";
import { quickCost } from "./cutting/quick-cost.ts";
import { priceOf, type RollGood, staplesGood } from "./price-table.ts";
import { type Bill, groupedBy, joinedBills, type Purchase, sharesOf, total } from "./purchase.ts";
import { remembered } from "./remembered.ts";
import { bothWays, LAP_SOURCE } from "./roll-goods.ts";
import type { Settings } from "./settings.ts";
import { linerGoods, meshGoods, type SheetGoods } from "./sheet-goods.ts";
import { inParts } from "./splice.ts";
import type { Piece, Stock } from "./types.ts";

const STAPLES = practice("a staple every 4 in round the edge");
const STAPLE_EVERY = 4 * INCH;
const STAPLES_IN_BOX = 500;

/**
 * Mesh, liners and what holds them, for all beds that have them; nothing can be laid any more under a bed that is
 * filled. Of a bed that stands on several grounds only that part is laid which needs it.
 */
export function buyBottoms(beds: readonly BedQuantities[], garden: Garden, settings: Settings): Bill {
  const laid = beds.filter(({ bed, standing }) => !standing.filled && (bed.bottom.mesh || bed.bottom.liner));
  if (laid.length === 0) return { purchases: [], offered: [] };
  const { units } = settings;
  const { prices } = garden;
  const underlaid = underlaidIn(garden);
  const laidFor = (sheet: Sheet, of: readonly BedQuantities[]): Laid[] =>
    of.map((quantities) => ({ quantities, ...underlaid(quantities, sheet) }));
  const meshed = groupedBy(
    laid.filter(({ bed }) => bed.bottom.mesh),
    ({ bed }) => `${bed.bottom.mesh?.opening}`,
  );
  const lined = groupedBy(
    laid.filter(({ bed }) => bed.bottom.liner),
    ({ bed }) => `${bed.bottom.liner}`,
  );
  return joinedBills([
    ...[...meshed].map(([opening, group]) =>
      buySheets(laidFor("mesh", group), meshGoods(Number(opening), units), prices, settings),
    ),
    ...[...lined].map(([liner, group]) =>
      buySheets(
        laidFor("liner", group),
        linerGoods(liner === "sheet" ? "sheet" : "fabric", units),
        prices,
        settings,
      ),
    ),
    buyStaples(
      [...laidFor("mesh", [...meshed.values()].flat()), ...laidFor("liner", [...lined.values()].flat())],
      settings,
    ),
  ]);
}

/** A sheet under a bed, or under a part of it. */
interface Laid extends Underlaid {
  readonly quantities: BedQuantities;
}

interface Covered extends Laid {
  readonly strips: number;
  readonly length: number;
}

/** One width of roll for the whole garden: the one that comes cheapest by a quick look, then planned well. */
function buySheets(
  sheets: readonly Laid[],
  goods: SheetGoods,
  prices: GardenPrices,
  settings: Settings,
): Bill {
  const best = bestWay(sheets, goods, prices);
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

/** The width of roll, and for each size of sheet the way its strips run, that come cheapest. */
const bestWay = (sheets: readonly Laid[], goods: SheetGoods, prices: GardenPrices): Way =>
  [...groupedBy(goods.rolls, ({ width }) => `${width}`).values()]
    .map((rolls) => laidFrom(sheets, goods, rolls, prices))
    .reduce((a, b) => (b.cost < a.cost - 1e-9 ? b : a));

/** Strips begin the way that takes least of the roll; then each size is tried the other way, in turn. */
function laidFrom(
  sheets: readonly Laid[],
  goods: SheetGoods,
  rolls: readonly RollGood[],
  prices: GardenPrices,
): Way {
  const sizes = [...new Set(sheets.map(sizeOf))];
  const stock = rolls.map((good) => ({ length: good.length, price: priceOf(good, prices).price }));
  const laid = (otherWay: ReadonlySet<string>): Way => {
    const covered = sheets.map((sheet) => coveredBy(sheet, goods, rolls, otherWay.has(sizeOf(sheet))));
    const pieces = covered.map(({ quantities, strips, length }) => ({
      length,
      count: strips,
      label: quantities.name,
    }));
    return { covered, rolls, pieces, stock, cost: laidCost(pieces, stock) };
  };
  let turned: ReadonlySet<string> = new Set();
  let best = laid(turned);
  for (const size of sizes.slice(0, MOST_TURNED)) {
    const other = new Set([...turned, size]);
    const way = laid(other);
    if (way.cost < best.cost - 1e-9) [best, turned] = [way, other];
  }
  return best;
}

/** Sizes of sheet that are tried both ways. */
const MOST_TURNED = 4;

const sizeOf = ({ extent: [width, length] }: Laid): string => `${width.toFixed(2)}x${length.toFixed(2)}`;

/** Asked for again and again while a bed is moved. */
const laidCost = remembered(
  256,
  (pieces: readonly Piece[], stock: readonly Stock[]) => quickCost(pieces, stock, 0),
  (pieces, stock) =>
    `${pieces.map(({ length, count }) => `${length}x${count}`).join()} ${stock.map(({ length, price }) => `${length}:${price}`).join()}`,
);

function coveredBy(
  sheet: Laid,
  { lap, turnUp }: SheetGoods,
  rolls: readonly RollGood[],
  otherWay: boolean,
): Covered {
  const [width, length] = sheet.extent.map((side) => side + 2 * turnUp) as [number, number];
  const roll = rolls[0]!.width;
  const [fewest, other] = bothWays(width, length, roll, lap);
  const laid = otherWay ? other : fewest;
  const { parts, each } = inParts(laid.length, Math.max(...rolls.map((good) => good.length)));
  return { ...sheet, strips: laid.strips * parts, length: each };
}

function howLaid(
  covered: readonly Covered[],
  { lap, turnUp }: SheetGoods,
  width: number,
  { units }: Settings,
): string {
  const strips = total(covered, (bed) => bed.strips);
  const length = total(covered, (bed) => bed.strips * bed.length);
  const short = (mm: number) => formatShort(mm, units);
  const partly = covered.filter(({ share }) => share < 1).length;
  const part = partly > 0 ? say`; ${counted(partly, "bed")} only where the ground under it needs it` : "";
  return say`${counted(strips, "strip")} of a ${short(width)} roll under ${counted(covered.length, "bed")}, ${short(length)} in all: each bed's outline and ${short(turnUp)} turned up all round, neighbours lapped ${short(lap)}${part}`;
}

function buyStaples(sheets: readonly Laid[], { units }: Settings): Bill {
  const stapled = sheets.filter(({ quantities }) => quantities.frame);
  if (stapled.length === 0) return { purchases: [], offered: [] };
  const staples = ({ quantities, share }: Laid) =>
    Math.ceil((quantities.perimeter * share) / STAPLE_EVERY - 1e-6);
  const count = total(stapled, staples);
  const good = staplesGood(units);
  const beds = new Set(stapled.map(({ quantities }) => quantities.bed.id)).size;
  const purchase: Purchase = {
    part: "bottom",
    good,
    quantity: Math.ceil(count / STAPLES_IN_BOX),
    how: say`${counted(count, "staple")}: one every ${formatShort(STAPLE_EVERY, units)} round the sheets of ${counted(beds, "bed")}`,
    source: STAPLES,
    shares: sharesOf(stapled, ({ quantities }) => quantities.bed.id, staples),
    filling: 0,
  };
  return { purchases: [purchase], offered: [good] };
}
