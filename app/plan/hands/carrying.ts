import { add, boundsOf, type Garden, type Item, type Op, type Point, subtract } from "../../../src/index.ts";
import { bodyOf, boxBody, yardBody } from "./bodies.ts";
import { constraintsOn, type Guide } from "./constraints.ts";
import { finestStep, type Hand, SNAP_PIXELS } from "./gesture.ts";
import { gridOrigin, gridStep } from "./grid.ts";
import { isSetIn, placeOnLine } from "./onto-line.ts";
import { type Snapped, snap } from "./snapping.ts";
import { wantedGaps } from "./wanted-gaps.ts";

/** Where carried things come to stand, and what held them there. */
export interface Carried {
  readonly by: Point;
  /** An opening or a tap takes the place and the turn of the line it sits on. */
  readonly set: { readonly at: Point; readonly turn: number } | null;
  readonly guides: readonly Guide[];
}

/** Lines draw openings from farther off than edges draw beds, in pixels. */
const LINE_PIXELS = 22;

/**
 * Carries things by what the hand says, to what is worth meeting near there.
 *
 * @param garden the things carried may stand in it already or be new to it
 * @param pixels pixels per mm
 */
export function carry(
  garden: Garden,
  moving: readonly Item[],
  by: Point,
  hand: Pick<Hand, "free" | "even">,
  pixels: number,
): Carried {
  const wish = hand.even ? alongAnAxis(by) : by;
  const [only] = moving;
  if (only && moving.length === 1 && isSetIn(only) && !hand.free) {
    const place = placeOnLine(
      garden,
      only,
      add(only.at, wish),
      LINE_PIXELS / pixels,
      gridStep(garden.units, pixels),
    );
    if (place) {
      const { from, to } = place.on;
      const guides: Guide[] = [{ kind: "line", from, to, label: null }];
      return { by: subtract(place.at, only.at), set: { at: place.at, turn: place.turn }, guides };
    }
  }
  return { ...snapped(garden, moving, wish, hand, pixels), set: null };
}

/** The changes that carry things that stand in the garden. */
export function carryOps(moving: readonly Item[], along: readonly Item[], { by, set }: Carried): Op[] {
  const [only] = moving;
  if (set && only) return [{ op: "set", id: only.id, changes: { at: set.at, turn: set.turn } }];
  return [...moving, ...along].map(({ id }) => ({ op: "move", id, by }));
}

function snapped(
  garden: Garden,
  moving: readonly Item[],
  by: Point,
  hand: Pick<Hand, "free" | "even">,
  pixels: number,
): Snapped {
  const [only] = moving;
  if (!only) return { by, guides: [] };
  const bounds = boundsOf(
    moving.flatMap((item): Point[] => {
      const { minX, minY, maxX, maxY } = bodyOf(item).bounds;
      return [
        [minX, minY],
        [maxX, maxY],
      ];
    }),
  );
  const body = moving.length === 1 ? bodyOf(only) : boxBody(bounds);
  const step = hand.free ? finestStep(garden.units) : gridStep(garden.units, pixels);
  const grid = { step, from: subtract([bounds.minX, bounds.minY], gridOrigin(garden)) };
  const tolerance = SNAP_PIXELS / pixels;
  const isNew = !garden.items.includes(only);
  // Carried back to where it came from, it lies as it lay: on no grid, perhaps, but nothing has been done.
  if (!isNew && Math.hypot(...by) <= (hand.free ? step / 2 : tolerance / 2))
    return { by: [0, 0], guides: [] };
  if (hand.free) return snap(by, [], 0, grid);

  const carriedAlong = new Set(moving.map(({ id }) => id));
  const others = garden.items.filter(({ id }) => !carriedAlong.has(id)).map(bodyOf);
  const constraints = constraintsOn(
    body,
    [...others, yardBody(garden.yard)],
    wantedGaps(garden),
    by,
    tolerance,
  );
  // Kept to an axis, only what lies along that axis can be met.
  const kept = hand.even ? constraints.filter(({ normal }) => runsAlong(normal, by)) : constraints;
  return snap(by, kept, tolerance, hand.even ? null : grid);
}

const alongAnAxis = ([x, y]: Point): Point => (Math.abs(x) >= Math.abs(y) ? [x, 0] : [0, y]);

const runsAlong = (normal: Point, by: Point): boolean =>
  by[0] === 0 ? Math.abs(normal[0]) < 1e-9 : Math.abs(normal[1]) < 1e-9;
