import { cutBoards, proveCutPlan } from "./cutting/cut-boards.ts";
import { fewerFrom } from "./fewer-boards.ts";
import type { Aim, CutPlan, Piece, Stock } from "./types.ts";

/** What is cut, from what, and what the plan is to be least in. */
export interface CutJob {
  readonly pieces: readonly Piece[];
  /** Boards at home cost nothing, so they are used first. */
  readonly stock: readonly Stock[];
  readonly kerf: number;
  readonly aim: Aim;
}

export interface AimedPlan {
  readonly plan: CutPlan;
  /** How far above the least it may be at most, as a share of the least; 0 where it is proven. */
  readonly excess: number;
}

/** The cut plan at once: see `cutBoards`. */
export const planAtOnce = (job: CutJob): AimedPlan => restored(job, cutBoards(...aimed(job)));

/** The cut plan as far as it can be proven: see `proveCutPlan`. */
export const planProven = async (job: CutJob): Promise<AimedPlan> =>
  restored(job, await proveCutPlan(...aimed(job)));

/** For the least waste a board is worth its length, and one at home nothing still: no wood is bought for it. */
function aimed({ pieces, stock, kerf, aim }: CutJob): [readonly Piece[], readonly Stock[], number] {
  if (aim === "least-cost") return [pieces, stock, kerf];
  const byLength = stock.map((board) => ({ ...board, price: board.onHand ? 0 : tenths(board.length) }));
  return [pieces, byLength, kerf];
}

/** Lengths to a tenth of a millimetre: as prices they add up without rounding. */
const tenths = (length: number): number => Math.round(length * 10) / 10;

/** The plan in the boards and prices it was asked for. */
function restored({ stock, kerf, aim }: CutJob, plan: CutPlan): AimedPlan {
  const short = plan.uncut.length > 0;
  const excess = plan.proven || short ? 0 : plan.lowerBound > 0 ? plan.cost / plan.lowerBound - 1 : 1;
  const boards = fewerFrom(plan.boards, kerf).map((cut) => ({
    ...cut,
    stock:
      stock.find(({ length, onHand }) => length === cut.stock.length && onHand === cut.stock.onHand) ??
      cut.stock,
  }));
  if (aim === "least-cost") return { plan: { ...plan, boards }, excess };
  const cost = Math.round(boards.reduce((sum, { stock: { price } }) => sum + price, 0) * 100) / 100;
  return { plan: { ...plan, boards, cost, lowerBound: leastCost(plan, stock) }, excess };
}

/** The pieces at the price of the board that is cheapest for its length. */
function leastCost({ boards }: CutPlan, stock: readonly Stock[]): number {
  const length = boards.reduce(
    (sum, { pieces }) => sum + pieces.reduce((all, piece) => all + piece.length, 0),
    0,
  );
  const rate = Math.min(...stock.map(({ price, length: board }) => price / board));
  return Number.isFinite(rate) ? length * rate : 0;
}
