import type { ItemId } from "../garden/fields.ts";
import type { Source } from "../garden/source.ts";
import type { Ring } from "../geometry/types.ts";

/** A length of board to be cut. */
export interface Piece {
  /** mm in the takeoff; the cut planner itself works in any one unit. */
  readonly length: number;
  readonly count: number;
  readonly label?: string;
}

/** A length of board on sale. */
export interface Stock {
  readonly length: number;
  readonly price: number;
  /** How many there are; as many as wanted if not given. */
  readonly count?: number;
}

/** One bought board and what is sawn from it. */
export interface CutBoard {
  readonly stock: Stock;
  readonly pieces: readonly { readonly length: number; readonly label?: string }[];
  /** What is left after the last cut. */
  readonly offcut: number;
}

export interface CutPlan {
  readonly boards: readonly CutBoard[];
  readonly cost: number;
  /** No plan can cost less than this. */
  readonly lowerBound: number;
  /** True where this cost is known to be the least there is. */
  readonly proven: boolean;
  /** Pieces no board can hold, or for which limited stock runs out: not in the boards nor in the cost. */
  readonly uncut: readonly Piece[];
}

/** One line of the shopping list. */
export interface Line {
  /** Key of the price table. */
  readonly key: string;
  readonly part:
    | "boards"
    | "posts"
    | "fixings"
    | "bottom"
    | "fill"
    | "mulch"
    | "paths"
    | "walls"
    | "delivery";
  readonly what: string;
  /** Units bought: whole boards, bags, rolls; loads by the part-unit they are sold in. */
  readonly quantity: number;
  readonly unit: string;
  readonly price: number;
  /** The price is the gardener's own, not the shipped example. */
  readonly ownPrice: boolean;
  readonly cost: number;
  /** How the quantity came about, with this garden's figures in it. */
  readonly how: string;
  readonly source: Source | null;
}

export interface BoardPlan {
  readonly board: string;
  readonly timber: string;
  readonly part: "boards" | "posts";
  readonly pieces: readonly Piece[];
  readonly plan: CutPlan;
  /** Pieces longer than any board on sale: they cannot be cut. */
  readonly tooLong: readonly Piece[];
  /** Whole sides longer than any board on sale: they are in the plan in equal parts, joined on a post. */
  readonly spliced: readonly Piece[];
}

export interface BedTakeoff {
  readonly id: ItemId;
  readonly outside: Ring;
  readonly inside: readonly Ring[];
  readonly soilAreaMm2: number;
  readonly wallHeight: number;
  readonly soilDepth: number;
  /** In the bed, after settling, litres. */
  readonly soilVolumeL: number;
  readonly mixVolumeL: number;
  readonly woodyVolumeL: number;
  /** To be ordered so that this much is there after settling, litres. */
  readonly orderVolumeL: number;
  readonly mulchVolumeL: number;
  /** Soaked fill, kg. */
  readonly weightKg: number;
  readonly boards: readonly Piece[];
  readonly posts: number;
  readonly stakes: number;
  readonly ties: number;
  readonly screws: number;
  /** What this bed's own share of the purchases comes to. */
  readonly cost: number;
}

export interface Takeoff {
  readonly currency: string;
  readonly beds: readonly BedTakeoff[];
  readonly boardPlans: readonly BoardPlan[];
  readonly lines: readonly Line[];
  readonly total: number;
  /** Share of the total that is what fills the beds (fill, its delivery and mulch), 0 to 1; 0 for a total of 0. */
  readonly fillShare: number;
}
