import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import { INCH } from "../units/length.ts";
import { bedQuantities } from "./bed-quantities.ts";
import { boardsOnSale, plannedCuts } from "./buy-boards.ts";
import { quickCost } from "./cutting/quick-cost.ts";
import { type FrameParts, frameParts } from "./frame-parts.ts";
import { remembered } from "./remembered.ts";
import { type Settings, settingsOf } from "./settings.ts";
import { wallSides } from "./sides.ts";
import type { CutPlan, Piece, Stock } from "./types.ts";

/** A size a little smaller that is sawn from cheaper boards. Lengths in mm. */
export interface BoardFriendly {
  readonly shape: Rectangle;
  /** All beds of this size and make, which change together: one alone seldom frees a board. */
  readonly beds: readonly Bed[];
  /** What is saved at least, in the garden's currency: the new plan against the least the old size can cost. */
  readonly saved: number;
  /** Boards fewer; may be 0 where shorter ones do. */
  readonly boardsSaved: number;
}

type Rectangle = Extract<Bed["shape"], { type: "rectangle" }>;
type BoardBed = Bed & { readonly shape: Rectangle; readonly wall: Extract<Bed["wall"], { made: "boards" }> };

/** How much smaller a bed may be made to save a board. */
const MOST_OFF = 3 * INCH;
/** Savings of less than this share of the cheapest board are not worth a snag. */
const WORTHWHILE = 0.5;
/** Sizes a tape is read to: 1/16 in, 1 mm. */
const MARK = { us: INCH / 16, metric: 1 } as const;
const SIZES_KEPT = 128;
/** A smaller size may itself have a better one just below; after so many steps the last is taken. */
const MOST_STEPS = 4;
/** Sizes that are planned together with all other beds; each costs a cut plan. */
const MOST_TRIES = 3;
const MOST_LENGTHS = 28;

/**
 * The nearest smaller size of a rectangular bed of boards that saves money, or null where there is none within 3 in
 * and for a bed that stands already.
 *
 * The case that everybody meets: three 8 ft boards make a 4 x 8 ft frame only if the saw takes nothing; ends of
 * 47 15/16 in make it true.
 */
export function boardFriendlySize(garden: Garden, bed: Bed): BoardFriendly | null {
  if (!isOfBoards(bed) || bed.already !== null) return null;
  const settings = settingsOf(garden);
  const kind = kindOf(garden, bed, settings);
  const alike = kind.beds.filter((item) => isAlike(item, bed));
  // Among so many lengths any cut fits some other, and none can be proven to save.
  if (kind.lengths > MOST_LENGTHS) return null;
  const { stock } = boardsOnSale(bed.wall.board, bed.wall.timber, garden.prices, settings);
  const found = friendlier(bed, alike, kind, stock, settings);
  return found && { ...found, beds: alike };
}

/** All beds of one board: what is cut together. */
interface BoardKind {
  readonly beds: readonly Bed[];
  /** Says which pieces are cut, so that answers can be kept while no size changes. */
  readonly key: string;
  /** Distinct lengths among them. */
  readonly lengths: number;
}

const kinds = new WeakMap<Garden, Map<string, BoardKind>>();

function kindOf(garden: Garden, bed: BoardBed, settings: Settings): BoardKind {
  const byBoard = kinds.get(garden) ?? new Map<string, BoardKind>();
  kinds.set(garden, byBoard);
  const name = `${bed.wall.board} ${bed.wall.timber}`;
  let kind = byBoard.get(name);
  if (!kind) {
    const beds = garden.items.filter((item): item is Bed => item.kind === "bed" && isSameBoard(item, bed));
    const pieces = beds.flatMap((one) => piecesOf(one, settings));
    const lengths = new Set(pieces.map(({ length }) => length)).size;
    kind = { beds, key: pieces.map(pieceKey).join(), lengths };
    byBoard.set(name, kind);
  }
  return kind;
}

const piecesOf = (bed: Bed, settings: Settings): readonly Piece[] => {
  const { frame } = bedQuantities(bed, settings);
  return frame && bed.wall.made === "boards" ? fromBoard(frame, bed.wall.board) : [];
};

/** All that is sawn from the boards of the wall: its sides, and its rail if that is of the same board. */
const fromBoard = ({ pieces, rail }: FrameParts, board: string): readonly Piece[] =>
  rail?.board === board ? [...pieces, ...rail.pieces] : pieces;

const pieceKey = ({ length, count }: Piece): string => `${length}x${count}`;

const friendlier = remembered(
  SIZES_KEPT,
  (
    bed: BoardBed,
    alike: readonly Bed[],
    { beds }: BoardKind,
    stock: readonly Stock[],
    settings: Settings,
  ): Omit<BoardFriendly, "beds"> | null => {
    const others = beds.filter((one) => !alike.includes(one)).flatMap((one) => piecesOf(one, settings));
    const planFor = (shape: Rectangle) =>
      plannedCuts([...others, ...piecesFor(bed, shape, alike.length, settings)], stock, settings.kerf);

    let shape = bed.shape;
    let before: CutPlan | null = null;
    let plan: CutPlan | null = null;
    for (let step = 0; step < MOST_STEPS; step++) {
      const better = promising(bed, shape, alike.length, stock, settings).slice(0, MOST_TRIES);
      if (better.length === 0) break;
      before ??= planFor(bed.shape);
      const cut = firstWorthwhile(better, planFor, (plan ?? before).lowerBound, stock);
      if (!cut) break;
      [shape, plan] = [cut.shape, cut.plan];
    }
    if (!before || !plan) return null;
    return {
      shape,
      saved: Math.round((before.lowerBound - plan.cost) * 100) / 100,
      boardsSaved: before.boards.length - plan.boards.length,
    };
  },
  ({ shape, wall, legs }, alike, { key }, stock, { kerf, units }) =>
    JSON.stringify([shape, wall, legs, alike.length, key, stock, kerf, units]),
);

/** The nearest size that is cheaper with all other beds too. Planned one by one: the first is mostly the answer. */
function firstWorthwhile(
  sizes: readonly Rectangle[],
  planFor: (shape: Rectangle) => CutPlan,
  leastNow: number,
  stock: readonly Stock[],
): { readonly shape: Rectangle; readonly plan: CutPlan } | null {
  for (const shape of sizes) {
    const plan = planFor(shape);
    if (worthwhile(leastNow - plan.cost, stock)) return { shape, plan };
  }
  return null;
}

const isOfBoards = (bed: Bed): bed is BoardBed =>
  bed.shape.type === "rectangle" && bed.wall.made === "boards" && boardSize(bed.wall.board) !== null;

const isSameBoard = (bed: Bed, { wall }: BoardBed): boolean =>
  bed.wall.made === "boards" && bed.wall.board === wall.board && bed.wall.timber === wall.timber;

const isAlike = (bed: Bed, other: BoardBed): boolean =>
  isOfBoards(bed) &&
  isSameBoard(bed, other) &&
  bed.wall.courses === other.wall.courses &&
  bed.wall.corner === other.wall.corner &&
  bed.wall.capRail === other.wall.capRail &&
  bed.already === null &&
  bed.legs === other.legs &&
  Math.abs(bed.shape.width - other.shape.width) < 0.01 &&
  Math.abs(bed.shape.length - other.shape.length) < 0.01;

const worthwhile = (saved: number, stock: readonly Stock[]): boolean =>
  saved > 0.005 && saved >= WORTHWHILE * Math.min(...stock.map(({ price }) => price));

/** Boards of so many beds of this shape. The labels matter to nobody here. */
function piecesFor(bed: BoardBed, shape: Rectangle, beds: number, settings: Settings): Piece[] {
  const parts = frameParts({ ...bed, shape }, bed.wall, "", settings);
  return (parts ? fromBoard(parts, bed.wall.board) : []).map(({ length, count }) => ({
    length,
    count: count * beds,
  }));
}

/**
 * Smaller sizes that come cheaper for these beds alone, the nearest first. A quick look with no proof: what passes is
 * planned properly, with all other beds. The same sizes are asked for sixty times a second, so answers are kept.
 */
const promising = remembered(
  SIZES_KEPT,
  (
    bed: BoardBed,
    shape: Rectangle,
    beds: number,
    stock: readonly Stock[],
    settings: Settings,
  ): Rectangle[] => {
    const cost = (size: Rectangle) => quickCost(piecesFor(bed, size, beds, settings), stock, settings.kerf);
    const now = cost(shape);
    return smallerSizes(bed, shape, stock, settings)
      .filter((size) => worthwhile(now - cost(size), stock))
      .sort((a, b) => off(shape, a) - off(shape, b));
  },
  (bed, shape, beds, stock, settings) =>
    JSON.stringify([shape, bed.wall, bed.legs !== null, beds, stock, settings.kerf, settings.units]),
);

const off = (from: Rectangle, to: Rectangle): number =>
  Math.abs(from.width - to.width) + Math.abs(from.length - to.length);

/** Sizes at which a board on sale comes out even: so many of this piece, or of this piece with some of the other. */
function smallerSizes(
  bed: BoardBed,
  shape: Rectangle,
  stock: readonly Stock[],
  { kerf, units }: Settings,
): Rectangle[] {
  const thickness = boardSize(bed.wall.board)?.thickness ?? 0;
  const { sides } = wallSides(shape, thickness, bed.wall.corner);
  const boardAlong = (outside: number) =>
    sides.find((side) => Math.abs(side.outside - outside) < 0.01)?.board ?? outside;
  const [across, along] = [boardAlong(shape.width), boardAlong(shape.length)];
  const sized = (field: "width" | "length", board: number, other: number) =>
    evenLengths(board, other, stock, kerf).flatMap((even): Rectangle[] => {
      const mark = MARK[units];
      const size = Math.floor((shape[field] - (board - even)) / mark + 1e-6) * mark;
      const smaller = { ...shape, [field]: size };
      // A length that falls below the width would turn sides into ends.
      const turned = smaller.length < smaller.width !== shape.length < shape.width;
      return size > 0 && size < shape[field] && !turned ? [smaller] : [];
    });
  return [...sized("width", across, along), ...sized("length", along, across)];
}

/** Lengths a little shorter than a board's, of which a stock length is cut without a rest; none for a stump. */
function evenLengths(board: number, other: number, stock: readonly Stock[], kerf: number): number[] {
  // Pieces of no length would go into any board without end.
  if (board <= MOST_OFF) return [];
  const even = new Set<number>();
  for (const { length } of stock) {
    for (let others = 0; others <= 3; others++) {
      const room = length - others * (other + kerf);
      for (let n = 1; n * (board - MOST_OFF) <= room; n++) {
        const each = (room - (n - 1) * kerf) / n;
        if (each < board - 1e-6 && each >= board - MOST_OFF - 1e-6) even.add(each);
      }
    }
  }
  return [...even];
}
