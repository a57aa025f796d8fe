import type { ItemId } from "../garden/fields.ts";
import type { Source } from "../garden/source.ts";
import type { Ring } from "../geometry/types.ts";

/** A length of board to be cut. */
export interface Piece {
  /** mm in the takeoff; the cut planner itself works in any one unit. */
  readonly length: number;
  readonly count: number;
  readonly label?: string;
  /** How its ends are sawn; square where not given. A mitred piece is as long as its longer face. */
  readonly ends?: Ends;
}

export interface Ends {
  /** "bevel": a board on edge, the blade tilted. "mitre": a board that lies flat, cut across its face. */
  readonly cut: "bevel" | "mitre";
  /**
   * Setting of the saw at each end, degrees off square: half the turn of the corner. Above 0 the outer face is the
   * longer one; below 0, at an inner corner, the inner face is.
   */
  readonly angles: readonly [start: number, end: number];
}

/** A length of board on sale, or at home. */
export interface Stock {
  readonly length: number;
  readonly price: number;
  /** How many there are; as many as wanted if not given. */
  readonly count?: number;
  /** The gardener has it at home. */
  readonly onHand?: boolean;
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
    | "edging"
    | "walls"
    | "water"
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
  readonly source: Source;
  /** Stages of the work it is for, first to last. */
  readonly stages: readonly number[];
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
  /** Names the job: the same pieces from the same boards with the same aim. */
  readonly key: string;
  /** What it may be cut from: boards at home first. */
  readonly stock: readonly Stock[];
  readonly kerf: number;
  readonly aim: Aim;
  /** How far above the least, of money or of length by the aim, the plan may be at most; 0 where it is proven. */
  readonly excess: number;
  /** Left over and worth keeping, longest first. */
  readonly offcuts: readonly { readonly length: number; readonly count: number }[];
  /** Share of the boards that is sawn away or left over too short to keep, 0 to 1. */
  readonly wasteShare: number;
}

/** What a cut plan is to be least in. */
export type Aim = "least-cost" | "least-waste";

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
  readonly stage: number;
  /** Nothing of its wall is left to build. */
  readonly frameStands: boolean;
  readonly coursesStanding: number;
  readonly coursesNew: number;
  /** In it already, litres. */
  readonly soilHaveL: number;
  /** To be brought in, once settled, litres. */
  readonly newSoilL: number;
  /** What settling takes of the order in the first season, litres. */
  readonly settlingL: number;
  /** Null for a wall that is not of boards. */
  readonly joined: "butted" | "mitred" | "bent" | null;
  readonly capRail: readonly Piece[];
  /** Why there are so many; null where there are none. */
  readonly postsWhy: string | null;
  readonly stakesWhy: string | null;
  readonly tiesWhy: string | null;
  /** Soaked fill on each square metre of soil, kg. */
  readonly loadKgM2: number;
}

export interface Takeoff {
  readonly currency: string;
  readonly beds: readonly BedTakeoff[];
  readonly boardPlans: readonly BoardPlan[];
  readonly lines: readonly Line[];
  readonly total: number;
  readonly stage: number | "all";
  /** In the order of the lines; parts that cost nothing are left out. */
  readonly byPart: readonly { readonly part: Line["part"]; readonly cost: number }[];
  /** What no bed bears: paths, their edging and their part of what is delivered. */
  readonly unsharedCost: number;
  /** Share of the total that is what fills the beds (fill, its delivery and mulch), 0 to 1; 0 for a total of 0. */
  readonly fillShare: number;
}
