import { clockwise, perimeter } from "../geometry/ring.ts";
import { type Shape, shapeRing } from "../geometry/shape.ts";
import type { Ring } from "../geometry/types.ts";
import { cross, distance, subtract } from "../geometry/vector.ts";
import type { Ends } from "./types.ts";

/** One side of a wall as it is built, for one course. Lengths in mm. */
export interface Side {
  /** Along the outside of the wall. */
  readonly outside: number;
  /** The board that is sawn for it. */
  readonly board: number;
  /** A long side or an end: what the piece is called on the cut plan. */
  readonly called: "side" | "end" | "round";
  /** Setting of the saw at either end, degrees off square: see `Ends`. */
  readonly angles: Ends["angles"];
}

export type Corner = "ends-between-sides" | "ends-over-sides";

/** How the corners of a wall are made. */
export interface WallSides {
  readonly sides: readonly Side[];
  /** Butted where all corners are square, mitred where not, bent where the wall is round. */
  readonly joined: "butted" | "mitred" | "bent";
}

/** Sine of the angle by which a corner may be off the square, or a side off the straight: 0.06 degrees. */
const SQUARE = 1e-3;

/**
 * The boards round an outline, one for each straight side.
 *
 * Square corners are butted. At an outer corner the board that runs through keeps its full outside length and the
 * other stops short by a thickness; at an inner corner (of an L or a U) the through board runs on by a thickness and
 * the other keeps its length. Boards along the longest side are the sides; `corner` says whether they or the ends run
 * through. Any other corner is mitred, so a board is as long as its longer face. A round wall is one bent board.
 *
 * @param thickness of the boards, mm; a side too short for the corner detail has no board
 */
export function wallSides(shape: Shape, thickness: number, corner: Corner): WallSides {
  const ring = withoutStraightCorners(clockwise(shapeRing(shape)));
  if (shape.type === "oval" || shape.type === "keyhole") {
    const around = perimeter(ring);
    return {
      sides: [{ outside: around, board: around, called: "round", angles: SQUARE_ENDS }],
      joined: "bent",
    };
  }
  const edges = edgesOf(ring);
  const square = edges.every(({ turn }) => Math.abs(turn.cos) < SQUARE);
  const longest = longestEdge(edges);
  const sides = edges.map((edge, i): Side => {
    const next = edges[(i + 1) % edges.length] ?? edge;
    const called = isAlong(edge, longest) ? "side" : "end";
    const through = (called === "side") === (corner === "ends-between-sides");
    const at = (turn: Turn) => (square ? buttedAt(turn, through) : mitredAt(turn)) * thickness;
    const board = Math.max(0, edge.length + at(edge.turn) + at(next.turn));
    const angles = square ? SQUARE_ENDS : ([sawAngle(edge.turn), sawAngle(next.turn)] as const);
    return { outside: edge.length, board, called, angles };
  });
  return { sides: sides.filter(({ board }) => board > 0), joined: square ? "butted" : "mitred" };
}

/**
 * Pieces of a rail that lies flat round an outline, its outer edge over the outside of the wall, mitred at every
 * corner: each as long as its longer edge.
 * @param width of the rail, mm
 * @returns none for a round outline, which no straight board follows
 */
export function railSides(shape: Shape, width: number): readonly Side[] {
  const ring = withoutStraightCorners(clockwise(shapeRing(shape)));
  if (shape.type === "oval" || shape.type === "keyhole") return [];
  const edges = edgesOf(ring);
  const longest = longestEdge(edges);
  return edges.map((edge, i): Side => {
    const next = edges[(i + 1) % edges.length] ?? edge;
    return {
      outside: edge.length,
      board: edge.length + (mitredAt(edge.turn) + mitredAt(next.turn)) * width,
      called: isAlong(edge, longest) ? "side" : "end",
      angles: [sawAngle(edge.turn), sawAngle(next.turn)],
    };
  });
}

/** Length of a wall along its middle, mm, which is what blocks are counted by. */
export function middleOfWall(shape: Shape, thickness: number): number {
  const ring = withoutStraightCorners(clockwise(shapeRing(shape)));
  const around = perimeter(ring);
  if (shape.type === "oval") return Math.max(0, around - Math.PI * thickness);
  // Half a thickness on either side of a corner, times the tangent of half its turn; inner corners give it back.
  const corners = edgesOf(ring).reduce((sum, { turn }) => sum + halfTangent(turn), 0);
  return Math.max(0, around - thickness * corners);
}

const SQUARE_ENDS: Ends["angles"] = [0, 0];

/** The corner where an edge begins: cosine of its turn, and its sine, positive at an outer corner. */
interface Turn {
  readonly cos: number;
  readonly sin: number;
}

interface Edge {
  readonly length: number;
  readonly along: readonly [number, number];
  readonly turn: Turn;
}

/** What a corner adds to a butted board, in thicknesses. */
function buttedAt({ sin }: Turn, through: boolean): number {
  const outer = sin > 0;
  if (through) return outer ? 0 : 1;
  return outer ? -1 : 0;
}

/** What a corner adds to a mitred board, in thicknesses: at an inner corner the inside face is the longer. */
const mitredAt = (turn: Turn): number => Math.max(0, -halfTangent(turn));

/** Tangent of half the turn, below 0 at an inner corner. */
const halfTangent = ({ cos, sin }: Turn): number => Math.sign(sin) * Math.sqrt((1 - cos) / (1 + cos));

/** Both boards of a corner share its turn: the saw is set to half of it, in degrees; below 0 at an inner corner. */
const sawAngle = ({ cos, sin }: Turn): number =>
  Math.round((Math.atan2(sin, cos) * 90 * 1e6) / Math.PI) / 1e6;

function edgesOf(ring: Ring): Edge[] {
  const unit = ring.map((point, i) => {
    const to = ring[(i + 1) % ring.length] ?? point;
    const length = distance(point, to);
    const [x, y] = subtract(to, point);
    return { length, along: [x / length, y / length] as const };
  });
  return unit.map(({ length, along }, i) => {
    const before = unit.at(i - 1)?.along ?? along;
    return {
      length,
      along,
      turn: { cos: before[0] * along[0] + before[1] * along[1], sin: cross(before, along) },
    };
  });
}

/** Of edges equally long, the one that runs most nearly along y: the sides of a square bed. */
function longestEdge(edges: readonly Edge[]): Edge {
  const steepness = ({ along }: Edge) => Math.abs(along[1]);
  return edges.reduce((best, edge) => {
    const longer = edge.length - best.length;
    return longer > 0.01 || (longer > -0.01 && steepness(edge) > steepness(best) + SQUARE) ? edge : best;
  });
}

const isAlong = (edge: Edge, other: Edge): boolean => Math.abs(cross(edge.along, other.along)) < 0.5 ** 0.5;

/** Points in the middle of a straight side, or drawn twice, make no corner. */
function withoutStraightCorners(ring: Ring): Ring {
  const distinct = ring.filter(
    (point, i) => distance(point, ring.at(i - 1) ?? point) > 1e-6 || ring.length < 2,
  );
  return distinct.filter((point, i) => {
    const before = subtract(point, distinct.at(i - 1) ?? point);
    const after = subtract(distinct[(i + 1) % distinct.length] ?? point, point);
    const sine = cross(before, after) / (Math.hypot(...before) * Math.hypot(...after));
    return Math.abs(sine) > 1e-6;
  });
}
