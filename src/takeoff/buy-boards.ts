import type { GardenPrices } from "../garden/garden.ts";
import { practice, published } from "../garden/source.ts";
import { formatShare } from "../units/format-figure.ts";
import { formatLength, formatShort } from "../units/format-length.ts";
import { say } from "../words/say.ts";
import { type AimedPlan, type CutJob, planAtOnce } from "./aimed-plan.ts";
import type { BedQuantities } from "./bed-quantities.ts";
import { counted } from "./counted.ts";
import type { Good } from "./goods.ts";
import { boardAtHome, boardGood, priceOf } from "./price-table.ts";
import { type Bill, groupedBy, type Purchase, sharesOf, total } from "./purchase.ts";
import { remembered } from "./remembered.ts";
import type { Settings } from "./settings.ts";
import { POST } from "./supports.ts";
import { timberById } from "./timbers.ts";
import type { BoardPlan, CutPlan, Piece, Stock } from "./types.ts";

export interface BoardBill extends Bill {
  readonly plans: readonly BoardPlan[];
}

/** Plans that have been looked into more deeply since, by the key of their job. */
export type ProvenPlans = ReadonlyMap<string, AimedPlan>;

const SECTION = published("dressed sizes by PS 20-25, board counts from the cut plan");
const POSTS = practice("one post in each corner and at each joint, as high as the wall");
/** Distinct cut plans that are kept in mind: a few beds dragged back and forth, with their posts and rolls. */
const PLANS_KEPT = 64;

export const keyOfJob = ({ pieces, stock, kerf, aim }: CutJob): string =>
  `${JSON.stringify(pieces)}${JSON.stringify(stock)}${kerf} ${aim}`;

const plannedJob = remembered(
  PLANS_KEPT,
  (job: CutJob, _key: string) => planAtOnce(job),
  (_, key) => key,
);

/** The cheapest cuts at once, remembered: the same pieces from the same boards need no second thought. */
export function plannedCuts(pieces: readonly Piece[], stock: readonly Stock[], kerf: number): CutPlan {
  const job: CutJob = { pieces, stock, kerf, aim: "least-cost" };
  return plannedJob(job, keyOfJob(job)).plan;
}

interface Wanted {
  readonly quantities: BedQuantities;
  readonly board: string;
  readonly timber: string;
  readonly part: "boards" | "posts";
  readonly pieces: readonly Piece[];
  readonly spliced: readonly Piece[];
}

/** Boards and posts of all beds, each kind cut together from what is at home and the lengths on sale. */
export function buyBoards(
  beds: readonly BedQuantities[],
  prices: GardenPrices,
  settings: Settings,
  proven?: ProvenPlans,
): BoardBill {
  const wanted = beds.flatMap((quantities) => wantedOf(quantities, settings));
  const kinds = [...groupedBy(wanted, ({ board, timber }) => `${board} ${timber}`).values()];
  const bills = kinds.map((kind) => buyKind(kind, prices, settings, proven));
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
  const { rail, posts } = frame;
  const of = (
    from: string,
    part: Wanted["part"],
    pieces: readonly Piece[],
    spliced: readonly Piece[],
  ): Wanted[] => (pieces.length > 0 ? [{ quantities, board: from, timber, part, pieces, spliced }] : []);
  const post =
    posts.count > 0 ? [{ length: posts.length, count: posts.count, label: say`${name}, post` }] : [];
  return [
    ...of(board, "boards", frame.pieces, frame.spliced),
    ...of(rail?.board ?? board, "boards", rail?.pieces ?? [], rail?.spliced ?? []),
    ...of(POST[units], "posts", post, []),
  ];
}

/** Boards of one kind at home and on sale, and what they cost; a good for each stock, in the same order. */
export function boardsOnSale(
  board: string,
  timber: string,
  prices: GardenPrices,
  { stockLengths, onHand, units }: Settings,
): { readonly goods: readonly Good[]; readonly stock: readonly Stock[] } {
  const home = groupedBy(
    onHand.filter((row) => row.board === board && row.timber === timber),
    ({ length }) => length.toFixed(3),
  );
  const atHome = [...home.values()].map((rows) => ({
    good: boardAtHome(board, timber, rows[0]!.length, units),
    stock: { length: rows[0]!.length, price: 0, count: total(rows, ({ count }) => count), onHand: true },
  }));
  const onSale = stockLengths.map((length) => {
    const good = boardGood(board, timber, length, units);
    return { good, stock: { length, price: priceOf(good, prices).price } };
  });
  const all = [...atHome, ...onSale];
  return { goods: all.map(({ good }) => good), stock: all.map(({ stock }) => stock) };
}

function buyKind(
  kind: readonly Wanted[],
  prices: GardenPrices,
  settings: Settings,
  proven: ProvenPlans | undefined,
): { readonly plan: BoardPlan } & Bill {
  const { board, timber } = kind[0]!;
  // Boards and posts of one section come from the same lengths and are cut together.
  const part = kind.some((wanted) => wanted.part === "boards") ? "boards" : "posts";
  const { goods, stock } = boardsOnSale(board, timber, prices, settings);
  const pieces = kind.flatMap((wanted) => wanted.pieces);
  const job: CutJob = { pieces, stock, kerf: settings.kerf, aim: settings.aim };
  const key = keyOfJob(job);
  const aimed = proven?.get(key) ?? plannedJob(job, key);
  const { plan } = aimed;
  const spliced = kind.flatMap((wanted) => wanted.spliced);
  const boardPlan: BoardPlan = {
    ...{ board, timber, part, spliced, key },
    ...job,
    ...aimed,
    tooLong: plan.uncut,
    ...leftOver(plan, settings.worthKeeping),
  };
  const shares = sharesOf(
    kind,
    ({ quantities }) => quantities.bed.id,
    (wanted) => total(wanted.pieces, ({ length, count }) => length * count),
  );
  const how = howCut(kind, boardPlan, settings);
  const source = part === "posts" ? POSTS : SECTION;
  const purchases = goods
    .map((good, i): Purchase => {
      const { length, onHand } = stock[i]!;
      const quantity = plan.boards.filter(
        (cut) => cut.stock.length === length && cut.stock.onHand === onHand,
      ).length;
      return { part, good, quantity, how, source, shares, filling: 0 };
    })
    .filter(({ quantity }) => quantity > 0);
  return { plan: boardPlan, purchases, offered: goods.filter((_, i) => !stock[i]!.onHand) };
}

/** Offcuts of at least `worthKeeping`, and the share of the boards that is neither sawn pieces nor such offcuts. */
function leftOver({ boards }: CutPlan, worthKeeping: number): Pick<BoardPlan, "offcuts" | "wasteShare"> {
  const kept = boards
    .map(({ offcut }) => offcut)
    .filter((offcut) => offcut > 0 && offcut >= worthKeeping - 0.5);
  const offcuts = [...groupedBy(kept, (offcut) => offcut.toFixed(1)).values()]
    .map((same) => ({ length: same[0]!, count: same.length }))
    .sort((a, b) => b.length - a.length);
  const bought = total(boards, ({ stock }) => stock.length);
  const used =
    total(boards, ({ pieces }) => total(pieces, ({ length }) => length)) + total(kept, (offcut) => offcut);
  return { offcuts, wasteShare: bought > 0 ? 1 - used / bought : 0 };
}

function howCut(kind: readonly Wanted[], boardPlan: BoardPlan, { kerf, units }: Settings): string {
  const { board, timber, plan, pieces, offcuts, wasteShare } = boardPlan;
  const beds = new Set(kind.map(({ quantities }) => quantities.bed.id)).size;
  const length = total(pieces, (piece) => piece.length * piece.count);
  const bought = total(plan.boards, ({ stock }) => stock.length);
  const atHome = plan.boards.filter(({ stock }) => stock.onHand).length;
  const bent = kind.some(({ quantities }) => quantities.frame?.joined === "bent");
  const all = total(pieces, ({ count }) => count);
  return [
    say`${counted(all, "piece")} of ${board} ${timberById(timber)?.label ?? timber} for ${counted(beds, "bed")}, ${formatLength(length, units)} in all`,
    say`${counted(plan.boards.length, "board")}${atHome > 0 ? say`, ${atHome} of them at home` : ""}, ${formatLength(bought, units)}, a saw cut of ${formatShort(kerf, units)} between pieces, ${formatShare(wasteShare)} waste`,
    ...(offcuts.length > 0
      ? [
          say`worth keeping: ${offcuts.map((offcut) => `${offcut.count} × ${formatLength(offcut.length, units)}`).join(", ")}`,
        ]
      : []),
    howSure(boardPlan),
    ...(bent
      ? [
          say`round walls take the length of their outline: saw the inner face part through, or bend thin boards`,
        ]
      : []),
  ].join("; ");
}

function howSure({ plan, aim, excess }: BoardPlan): string {
  const dear = aim === "least-cost";
  if (plan.uncut.length > 0) return say`some pieces are longer than any board`;
  if (plan.proven) return dear ? say`no cheaper purchase exists` : say`no purchase wastes less`;
  const share = `${(Math.ceil(excess * 1000) / 10).toFixed(1)} %`;
  return dear
    ? say`at most ${share} dearer than the least possible`
    : say`at most ${share} longer than the least possible`;
}
