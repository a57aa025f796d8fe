import type { ItemId } from "../garden/fields.ts";
import { frameOf } from "../garden/frame.ts";
import { type Item, unreachable } from "../garden/item.ts";
import type { Fence, Wall } from "../garden/kinds/barrier.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Tree } from "../garden/kinds/tree.ts";
import { practice, type Source } from "../garden/source.ts";
import { convexPieces } from "../geometry/convex-pieces.ts";
import { boundsOf, clockwise } from "../geometry/ring.ts";
import { shapeRing } from "../geometry/shape.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { add, distance, placed, scale, subtract } from "../geometry/vector.ts";
import { buildingSolids } from "./building-solids.ts";
import { crownLight, ownLeafMonths } from "./leaf.ts";
import { type Body, block } from "./solid.ts";

/** A part of a thing that lets the same light through all over: light through two bodies of one part is dimmed once. */
export interface CasterPart {
  readonly bodies: readonly Body[];
  /** Share of direct light that passes, 0 to 1, in the months of leaf and in the others. */
  readonly lightInLeaf: number;
  readonly lightBare: number;
  /** Its own months in leaf, 1 for January; null for those of the hemisphere. */
  readonly leafMonths: readonly number[] | null;
}

/** A thing that throws a shadow. */
export interface Caster {
  readonly id: ItemId;
  readonly parts: readonly CasterPart[];
}

/** A trellised crop as it stands in summer; taken at its full height all season, as it is when it matters. */
export const TRELLIS: { readonly thickness: number; readonly light: number; readonly source: Source } = {
  thickness: 300,
  light: 0.3,
  source: practice(
    "A row of climbers about a foot thick that lets some three tenths of the sun through; a rule of thumb",
  ),
};

const casters = new WeakMap<Item, Caster | null>();

/**
 * What throws shadows in a garden, in its order. A gate is taken to be as tall and as open as the fence or wall it stands
 * in, which runs through it.
 */
export const castersOf = (items: readonly Item[]): Caster[] => items.flatMap((item) => casterOf(item) ?? []);

/** The bodies of one thing; null for what lies flat. Remembered by the thing itself, which never changes. */
export function casterOf(item: Item): Caster | null {
  let caster = casters.get(item);
  if (caster === undefined) {
    const parts = partsOf(item).filter(({ bodies }) => bodies.length > 0);
    caster = parts.length > 0 ? { id: item.id, parts } : null;
    casters.set(item, caster);
  }
  return caster;
}

function partsOf(item: Item): readonly CasterPart[] {
  switch (item.kind) {
    case "house":
    case "shed":
      return [part(buildingSolids(item))];
    case "wall":
      return [part(barrierSolids(item))];
    case "fence":
      return [part(barrierSolids(item), item.open)];
    case "bed":
      return bedParts(item);
    case "tree":
      return treeParts(item);
    case "path":
    case "ground":
    case "gate":
    case "door":
    case "tap":
    case "keep-clear":
      return [];
    default:
      return unreachable(item);
  }
}

const part = (bodies: readonly Body[], light = 0): CasterPart => ({
  bodies,
  lightInLeaf: light,
  lightBare: light,
  leafMonths: null,
});

/** A box for each side, pushed on by half the thickness where it meets the next, so that no light falls in at a bend. */
function barrierSolids(barrier: Wall | Fence): Body[] {
  const line = barrier.points.map((point) => placed(point, barrier.at, barrier.turn));
  const closed = distance(line[0]!, line.at(-1)!) === 0;
  return line.slice(1).flatMap((to, i): Body[] => {
    const from = line[i]!;
    const length = distance(from, to);
    if (length === 0) return [];
    const half = scale(subtract(to, from), barrier.thickness / 2 / length);
    const first = i === 0 && !closed ? from : subtract(from, half);
    const last = i === line.length - 2 && !closed ? to : add(to, half);
    return [block(strip(first, last, half), 0, barrier.height)];
  });
}

function strip(from: Point, to: Point, [x, y]: Point): Ring {
  const side: Point = [-y, x];
  return clockwise([subtract(from, side), subtract(to, side), add(to, side), add(from, side)]);
}

function bedParts(bed: Bed): CasterPart[] {
  const { outside, rim, wallHeight, soilDepth } = frameOf(bed);
  const box = part(
    wallHeight > 0 ? convexPieces([outside]).map((ring) => block(ring, bed.legs ?? 0, rim)) : [],
  );
  if (bed.trellis === null) return [box];
  const soil = (bed.legs ?? 0) + soilDepth;
  return [box, part([block(trellisRing(bed), soil, soil + bed.trellis)], TRELLIS.light)];
}

/** Along the middle of the longer side of the box round the bed's shape, from end to end. */
function trellisRing(bed: Bed): Ring {
  const { minX, minY, maxX, maxY } = boundsOf(shapeRing(bed.shape));
  const middle: Point = [(minX + maxX) / 2, (minY + maxY) / 2];
  const half = Math.min(TRELLIS.thickness, maxX - minX, maxY - minY) / 2;
  const upright = maxY - minY >= maxX - minX;
  const [x, y] = upright ? [half, (maxY - minY) / 2] : [(maxX - minX) / 2, half];
  const corners: Ring = [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ];
  return corners.map((corner) => placed(add(middle, corner), bed.at, bed.turn));
}

const TRUNK_CORNERS = 8;
/** A crown drawn without height is a leaf thick. */
const THINNEST_CROWN = 1;

/** An egg-shaped crown from its lowest twig to the top, on a trunk that reaches to its middle. */
function treeParts(tree: Tree): CasterPart[] {
  const base = Math.min(tree.crownBase, tree.height);
  const middle = (base + tree.height) / 2;
  const trunk = Array.from({ length: TRUNK_CORNERS }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / TRUNK_CORNERS;
    return [tree.at[0] + (tree.trunk / 2) * Math.cos(angle), tree.at[1] + (tree.trunk / 2) * Math.sin(angle)];
  });
  const crown: Body = {
    body: "crown",
    at: tree.at,
    middle,
    across: tree.canopy / 2,
    up: Math.max(THINNEST_CROWN, (tree.height - base) / 2),
  };
  return [
    part([block(trunk, 0, middle)]),
    {
      bodies: [crown],
      lightInLeaf: crownLight(tree, true),
      lightBare: crownLight(tree, false),
      leafMonths: ownLeafMonths(tree),
    },
  ];
}
