import {
  add,
  clockwise,
  distance,
  formatLength,
  type Garden,
  type Item,
  type ItemId,
  type Op,
  type Point,
  subtract,
} from "../../../../src/index.ts";
import { type Body, bodyOf, yardBody } from "../bodies.ts";
import { type Constraint, levelWith, pointOnLine } from "../constraints.ts";
import { type Desk, finestStep, type Gesture, type Hand, SNAP_PIXELS } from "../gesture.ts";
import { gridOrigin, gridStep } from "../grid.ts";
import { reshapeLabel } from "../names.ts";
import { resettled } from "../onto-line.ts";
import { changesForPoints, hasPoints, isLine, type PointedItem, planPoints } from "../plan-points.ts";
import { snap } from "../snapping.ts";
import { startPull } from "./pull.ts";

/** What has corners to be pulled: a thing with points of its own, or the yard (null). */
export type Cornered = PointedItem | null;

/** Pulls a corner of an outline or a point of a line; `insert` makes a new one there first. */
export function startCorner(
  desk: Desk,
  cornered: Cornered,
  index: number,
  at: Point,
  insert: boolean,
  start: Hand,
): Gesture {
  const { editor, marks } = desk;
  const { garden } = editor.getState();
  const old = pointsOf(garden, cornered);
  const points = insert ? old.toSpliced(index, 0, at) : old;
  const closed = !cornered || !isLine(cornered);
  const neighbours = neighboursOf(points, index, closed);
  // An outline is not held against itself.
  const bodies = cornered ? bodiesWithout(garden, cornered.id) : garden.items.map(bodyOf);
  marks.setState({ corner: { id: cornered?.id ?? null, index } });
  return startPull(
    desk,
    {
      handle: at,
      held: cornered ? [cornered.id] : [],
      cursor: "move",
      label: reshapeLabel(cornered),
      pulledTo(to, hand) {
        const { view } = editor.getState();
        const { at: held, guides } = heldPoint(garden, bodies, to, neighbours, hand, view.scale);
        return {
          ops: pointOps(garden, cornered, points.with(index, held)),
          guides,
          text: neighbours.map((other) => formatLength(distance(held, other), garden.units)).join(" · "),
        };
      },
    },
    start,
  );
}

export const pointsOf = (garden: Garden, cornered: Cornered): readonly Point[] =>
  cornered ? planPoints(cornered) : garden.yard;

/** The changes that give a thing or the yard other points; what sits on its line stays on it. */
export function pointOps(garden: Garden, cornered: Cornered, points: readonly Point[]): Op[] {
  if (!cornered) {
    const yard = clockwise(points);
    return [{ op: "set-yard", yard }, ...resettled(garden, garden.yard, yard)];
  }
  const changes = changesForPoints(cornered, points);
  const changed = { ...cornered, ...changes } as Item;
  return [{ op: "set", id: cornered.id, changes }, ...resettled(garden, cornered, changed)];
}

/** The thing, if it has points of its own. */
export function corneredBy(garden: Garden, id: ItemId | null): Cornered | undefined {
  if (id === null) return null;
  const item = garden.items.find((one) => one.id === id);
  return item && hasPoints(item) ? item : undefined;
}

/** All that a thing's corner may be held against: every other thing, and the yard's edge. */
const bodiesWithout = (garden: Garden, id: ItemId): readonly Body[] => [
  ...garden.items.filter((item) => item.id !== id).map(bodyOf),
  yardBody(garden.yard),
];

function neighboursOf(points: readonly Point[], index: number, closed: boolean): readonly Point[] {
  const last = points.length - 1;
  const before = index > 0 ? points[index - 1] : closed ? points[last] : undefined;
  const after = index < last ? points[index + 1] : closed ? points[0] : undefined;
  return [before, after].filter((point) => point !== undefined);
}

/**
 * Where a point comes to lie: square with its neighbours, on the line of something near, or on the grid.
 * @param bodies what it may be held against
 */
export function heldPoint(
  garden: Garden,
  bodies: readonly Body[],
  to: Point,
  neighbours: readonly Point[],
  hand: Pick<Hand, "free">,
  pixels: number,
) {
  const origin = gridOrigin(garden);
  const grid = {
    step: hand.free ? finestStep(garden.units) : gridStep(garden.units, pixels),
    from: subtract([0, 0], origin),
  };
  if (hand.free) return { at: snap(to, [], 0, grid).by, guides: [] };
  // A point is carried from the plan's own origin, so that its place is its displacement.
  const origo: Point = [0, 0];
  const level = neighbours.flatMap((other): Constraint[] => [
    levelWith(origo, other, [1, 0]),
    levelWith(origo, other, [0, 1]),
  ]);
  const tolerance = SNAP_PIXELS / pixels;
  const lines = bodies
    .flatMap(({ faces }) => faces)
    .filter(({ from, to: end }) => isBeside(to, from, end, tolerance))
    .map((face) => pointOnLine(origo, face));
  const { by, guides } = snap(to, [...level, ...lines], tolerance, grid);
  return { at: add(origo, by), guides };
}

/** The point stands beside the stretch, not far beyond its ends. */
function isBeside(point: Point, from: Point, to: Point, slack: number): boolean {
  return distance(point, from) + distance(point, to) <= distance(from, to) + 4 * slack;
}
