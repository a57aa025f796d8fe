import type { GardenPrices } from "../garden/garden.ts";
import { practice, published } from "../garden/source.ts";
import { formatShare } from "../units/format-figure.ts";
import { formatLength, formatShort } from "../units/format-length.ts";
import type { BedQuantities } from "./bed-quantities.ts";
import { cutBoards } from "./cutting/cut-boards.ts";
import type { Good } from "./goods.ts";
import { boardGood, priceOf } from "./price-table.ts";
import { type Bill, counted, groupedBy, type Purchase, sharesOf, total } from "./purchase.ts";
import { remembered } from "./remembered.ts";
import type { Settings } from "./settings.ts";
import { timberById } from "./timbers.ts";
import type { BoardPlan, CutPlan, Piece, Stock } from "./types.ts";

export interface BoardBill extends Bill {
  readonly plans: readonly BoardPlan[];
}

const SECTION = published("dressed sizes by PS 20-25, board counts from the cut plan");
const POSTS = practice("one post in each corner and at each joint, as high as the wall");
/** Corner posts: 4x4, or 75 x 75 mm. Common practice. */
const POST = { us: "4x4", metric: "75x75" } as const;
/** Distinct cut plans that are kept in mind: a few beds dragged back and forth, with their posts and rolls. */
const PLANS_KEPT = 64;

/** `cutBoards`, remembered: the same pieces from the same boards need no second thought. */
export const plannedCuts = remembered(
  PLANS_KEPT,
  cutBoards,
  (pieces, stock, kerf) => `${JSON.stringify(pieces)}${JSON.stringify(stock)}${kerf}`,
);

interface Wanted {
  readonly quantities: BedQuantities;
  readonly board: string;
  readonly timber: string;
  readonly part: "boards" | "posts";
  readonly pieces: readonly Piece[];
  readonly spliced: readonly Piece[];
}

/** Boards and posts of all beds, each kind cut together from the lengths on sale. */
export function buyBoards(
  beds: readonly BedQuantities[],
  prices: GardenPrices,
  settings: Settings,
): BoardBill {
  const wanted = beds.flatMap((quantities) => wantedOf(quantities, settings));
  const kinds = [...groupedBy(wanted, ({ board, timber }) => `${board} ${timber}`).values()];
  const bills = kinds.map((kind) => buyKind(kind, prices, settings));
  return {
    purchases: bills.flatMap(({ purchases }) => purchases),
    offered: bills.flatMap(({ offered }) => offered),
    plans: bills.map(({ plan }) => plan),
  };
}

function wantedOf(quantities: BedQuantities, { units }: Settings): Wanted[] {
  const { frame, bed, name } = quantities;
  if (!frame || bed.wall.made !== "boards") return [];
  const { board, timber } = bed.wall;
  const { count, length } = frame.posts;
  const boards: Wanted = {
    quantities,
    board,
    timber,
    part: "boards",
    pieces: frame.pieces,
    spliced: frame.spliced,
  };
  const post = { length, count, label: `${name}, post` };
  const posts: Wanted = { ...boards, board: POST[units], part: "posts", pieces: [post], spliced: [] };
  return count > 0 ? [boards, posts] : [boards];
}

/** Boards of one kind on sale, and what they cost. */
export function boardsOnSale(
  board: string,
  timber: string,
  prices: GardenPrices,
  { stockLengths, units }: Settings,
): { readonly goods: readonly Good[]; readonly stock: readonly Stock[] } {
  const goods = stockLengths.map((length) => boardGood(board, timber, length, units));
  const stock = stockLengths.map((length, i) => ({ length, price: priceOf(goods[i]!, prices).price }));
  return { goods, stock };
}

function buyKind(kind: readonly Wanted[], prices: GardenPrices, settings: Settings) {
  const { board, timber } = kind[0]!;
  // Boards and posts of one section come from the same lengths and are cut together.
  const part = kind.some((wanted) => wanted.part === "boards") ? "boards" : "posts";
  const { goods, stock } = boardsOnSale(board, timber, prices, settings);
  const pieces = kind.flatMap((wanted) => wanted.pieces);
  const plan = plannedCuts(pieces, stock, settings.kerf);
  const boardPlan: BoardPlan = {
    board,
    timber,
    part,
    pieces,
    plan,
    tooLong: plan.uncut,
    spliced: kind.flatMap(({ spliced }) => spliced),
  };
  const shares = sharesOf(
    kind,
    ({ quantities }) => quantities.bed.id,
    (wanted) => total(wanted.pieces, ({ length, count }) => length * count),
  );
  const how = howCut(kind, plan, settings);
  const purchases = goods
    .map((good, i): Purchase => {
      const quantity = plan.boards.filter((cut) => cut.stock.length === stock[i]!.length).length;
      const source = part === "posts" ? POSTS : SECTION;
      return { part, good, quantity, how, source, shares, filling: 0 };
    })
    .filter(({ quantity }) => quantity > 0);
  return { plan: boardPlan, purchases, offered: goods };
}

function howCut(kind: readonly Wanted[], plan: CutPlan, { kerf, units }: Settings): string {
  const { board, timber } = kind[0]!;
  const pieces = kind.flatMap((wanted) => wanted.pieces);
  const length = total(pieces, (piece) => piece.length * piece.count);
  const bought = total(plan.boards, ({ stock }) => stock.length);
  const bent = kind.some(({ quantities }) => quantities.frame?.joined === "bent");
  return [
    `${counted(
      total(pieces, ({ count }) => count),
      "piece",
    )} of ${board} ${timberById(timber)?.label ?? timber} for ${counted(kind.length, "bed")}, ${formatLength(length, units)} in all`,
    `${counted(plan.boards.length, "board")}, ${formatLength(bought, units)}, a saw cut of ${formatShort(kerf, units)} between pieces, ${formatShare(1 - length / bought)} left over`,
    plan.proven ? "no cheaper purchase exists" : `at most ${excess(plan)} dearer than the least possible`,
    ...(bent
      ? ["round walls take the length of their outline: saw the inner face part through, or bend thin boards"]
      : []),
  ].join("; ");
}

const excess = ({ cost, lowerBound }: CutPlan): string =>
  lowerBound > 0 ? `${(Math.ceil((cost / lowerBound - 1) * 1000) / 10).toFixed(1)} %` : "somewhat";
