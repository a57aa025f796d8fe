import {
  add,
  dot,
  formatLength,
  type Garden,
  limitsOf,
  nameOf,
  type Point,
  placed,
  say,
  scale,
  turned,
} from "../../../../src/index.ts";
import { bodyOf, type Face, yardBody } from "../bodies.ts";
import { type Constraint, constraintsOn, type Guide } from "../constraints.ts";
import { type Desk, finestStep, type Gesture, type Hand, SNAP_PIXELS } from "../gesture.ts";
import { gridStep, toStep } from "../grid.ts";
import { resettled } from "../onto-line.ts";
import { boxOf, type Grip, gripAt, resizedTo, type Shaped, sizeFor } from "../resize.ts";
import { snap } from "../snapping.ts";
import { wantedGaps } from "../wanted-gaps.ts";
import { cursorFor } from "./cursors.ts";
import { startPull } from "./pull.ts";

/** Pulls an edge or a corner of a thing with outside sizes; the opposite one stays where it is. */
export function startResize(desk: Desk, item: Shaped, grip: Grip, start: Hand): Gesture {
  const { editor } = desk;
  const { garden } = editor.getState();
  const handle = gripAt(item, grip);
  return startPull(
    desk,
    {
      handle,
      held: [item.id],
      cursor: cursorFor(turned(grip, item.turn)),
      label: say`Resize ${nameOf(item)}`,
      pulledTo(to, hand) {
        const { size, guides } = pulledSize(garden, item, grip, to, hand, editor.getState().view.scale);
        const changes = resizedTo(item, grip, size);
        const [width, length] = boxOf(changes.shape) ?? size;
        const resized = { ...item, ...changes };
        return {
          ops: [{ op: "set", id: item.id, changes }, ...resettled(garden, item, resized)],
          guides,
          text: `${formatLength(width, garden.units)} × ${formatLength(length, garden.units)}`,
        };
      },
    },
    start,
  );
}

/** The outside size the hand asks for: snapped to its neighbours, else to round sizes. */
function pulledSize(garden: Garden, item: Shaped, grip: Grip, to: Point, hand: Hand, pixels: number) {
  const before = boxOf(item.shape) ?? [0, 0];
  const step = hand.free ? finestStep(garden.units) : gridStep(garden.units, pixels);
  const wish = sizeFor(item, grip, to);
  const guides: Guide[] = [];
  const size = ([0, 1] as const).map((axis) => {
    if (grip[axis] === 0) return before[axis];
    if (hand.free || hand.even) return toStep(wish[axis], step);
    const met = metEdge(garden, item, grip, axis, wish[axis] - before[axis], pixels);
    guides.push(...met.guides);
    return met.size ?? toStep(wish[axis], step);
  }) as [number, number];

  if (!hand.even && !isRound(item)) return { size, guides };
  if (grip[0] === 0 || grip[1] === 0) return { size, guides };
  // Kept in proportion by the side that grew more; a round bed stays round.
  const by = Math.max(size[0] / before[0], size[1] / before[1]);
  const across = toStep(before[0] * by, step);
  return { size: [across, (across / before[0]) * before[1]] as [number, number], guides: [] };
}

const isRound = ({ shape }: Shaped): boolean => shape.type === "oval" && shape.width === shape.length;

/** What one pulled edge meets within the hand's reach of the snap; the size is null where it meets nothing. */
function metEdge(garden: Garden, item: Shaped, grip: Grip, axis: 0 | 1, grown: number, pixels: number) {
  const face = pulledFace(item, grip, axis);
  const by = scale(face.normal, grown);
  const tolerance = SNAP_PIXELS / pixels;
  const others = garden.items.filter(({ id }) => id !== item.id).map(bodyOf);
  const edge = { faces: [face], middle: null, solid: bodyOf(item).solid };
  const constraints = [
    ...constraintsOn(edge, [...others, yardBody(garden.yard)], wantedGaps(garden), by, tolerance),
    ...reachSizes(garden, item, face, axis),
  ];
  const met = snap(by, constraints, tolerance, null);
  const before = boxOf(item.shape)?.[axis] ?? 0;
  return {
    guides: met.guides,
    size: met.guides.length > 0 ? before + dot(met.by, face.normal) : null,
  };
}

/** A bed snaps to the widths that are still reached, from one side and from both. */
function reachSizes(garden: Garden, item: Shaped, face: Face, axis: 0 | 1): Constraint[] {
  if (item.kind !== "bed") return [];
  const { reach } = limitsOf(garden);
  const before = boxOf(item.shape)?.[axis] ?? 0;
  return [1, 2].map((sides) => ({
    normal: face.normal,
    along: sides * reach - before,
    weight: 1,
    guide(by) {
      const [from, to] = [add(face.from, by), add(face.to, by)];
      return {
        kind: "line",
        from,
        to,
        label: sides === 1 ? say`reached from one side` : say`reached from both sides`,
      };
    },
  }));
}

/** The straight side of the frame that a grip pulls along one axis of the thing. */
function pulledFace(item: Shaped, grip: Grip, axis: 0 | 1): Face {
  const [width, length] = boxOf(item.shape) ?? [0, 0];
  const half: Point = [width / 2, length / 2];
  const corner = (side: -1 | 1): Point => {
    const own: Point = axis === 0 ? [grip[0] * half[0], side * half[1]] : [side * half[0], grip[1] * half[1]];
    return placed(own, item.at, item.turn);
  };
  const out: Point = axis === 0 ? [grip[0], 0] : [0, grip[1]];
  return { normal: turned(out, item.turn), from: corner(-1), to: corner(1) };
}
