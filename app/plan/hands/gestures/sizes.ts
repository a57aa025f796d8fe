import {
  cross,
  distance,
  formatLength,
  type Garden,
  type Item,
  type ItemOf,
  LIMITS,
  limitsOf,
  nameOf,
  placed,
  say,
  scale,
  subtract,
  unplaced,
} from "../../../../src/index.ts";
import { type Desk, finestStep, type Gesture, type Hand, SNAP_PIXELS } from "../gesture.ts";
import { gridStep, toStep } from "../grid.ts";
import type { Handle } from "../handles.ts";
import { planPoints } from "../plan-points.ts";
import { innerPulledTo, type Shaped } from "../resize.ts";
import { cursorFor } from "./cursors.ts";
import { type Pull, startPull } from "./pull.ts";

type HandleOf<D extends Handle["does"]> = Extract<Handle, { does: D }>;
/** No opening, path or crown is pulled smaller than this, mm. */
const LEAST = 100;

/** Sizes in steps that the hand can aim at in this view. */
function rounding(garden: Garden, hand: Hand, pixels: number): (mm: number) => number {
  const step = hand.free ? finestStep(garden.units) : gridStep(garden.units, pixels);
  return (mm) => toStep(mm, step);
}

/** What the pulls of single sizes share. */
const pullOf = (item: Item, handle: Handle): Pick<Pull, "handle" | "held" | "label" | "cursor"> => ({
  handle: handle.at,
  held: [item.id],
  label: say`Resize ${nameOf(item)}`,
  cursor: cursorFor(subtract(handle.at, item.at)),
});

export function startInner(desk: Desk, item: Shaped, handle: HandleOf<"inner">, start: Hand): Gesture {
  const { garden } = desk.editor.getState();
  const tell = (mm: number) => formatLength(mm, garden.units);
  return startPull(
    desk,
    {
      ...pullOf(item, handle),
      cursor: "move",
      pulledTo(to, hand) {
        const shape = innerPulledTo(item, to, rounding(garden, hand, desk.editor.getState().view.scale));
        const sizes =
          shape.type === "l"
            ? [shape.armWidth, shape.armLength]
            : shape.type === "u"
              ? [shape.bayWidth, shape.bayLength]
              : shape.type === "keyhole"
                ? [shape.middleDiameter]
                : [];
        return { ops: [{ op: "set", id: item.id, changes: { shape } }], text: sizes.map(tell).join(" × ") };
      },
    },
    start,
  );
}

export function startCanopy(
  desk: Desk,
  tree: ItemOf<"tree">,
  handle: HandleOf<"canopy">,
  start: Hand,
): Gesture {
  const { garden } = desk.editor.getState();
  return startPull(
    desk,
    {
      ...pullOf(tree, handle),
      pulledTo(to, hand) {
        const round = rounding(garden, hand, desk.editor.getState().view.scale);
        const canopy = Math.max(LEAST, tree.trunk, round(2 * distance(tree.at, to)));
        return {
          ops: [{ op: "set", id: tree.id, changes: { canopy } }],
          text: say`crown ${formatLength(canopy, garden.units)}`,
        };
      },
    },
    start,
  );
}

/** Pulls one end of an opening along its line; the other end stays. */
export function startOpening(
  desk: Desk,
  item: ItemOf<"gate" | "door">,
  handle: HandleOf<"opening">,
  start: Hand,
): Gesture {
  const { garden } = desk.editor.getState();
  return startPull(
    desk,
    {
      ...pullOf(item, handle),
      pulledTo(to, hand) {
        const round = rounding(garden, hand, desk.editor.getState().view.scale);
        const [x] = unplaced(to, item.at, item.turn);
        const width = Math.max(LEAST, round(item.width / 2 + handle.end * x));
        const at = placed([(handle.end * (width - item.width)) / 2, 0], item.at, item.turn);
        return {
          ops: [{ op: "set", id: item.id, changes: { width, at } }],
          text: formatLength(width, garden.units),
        };
      },
    },
    start,
  );
}

/** Widens or narrows a path about its middle line, to the widths its users need. */
export function startPathWidth(
  desk: Desk,
  path: ItemOf<"path">,
  handle: HandleOf<"path-width">,
  start: Hand,
): Gesture {
  const { garden } = desk.editor.getState();
  const [from, to] = planPoints(path) as [readonly [number, number], readonly [number, number]];
  const along = scale(subtract(to, from), 1 / (distance(from, to) || 1));
  const limits = limitsOf(garden);
  const ways = (["kneelingWay", "barrowWay", "wheelchairWay"] as const).map((id) => ({
    width: limits[id],
    label: LIMITS[id].label,
  }));
  return startPull(
    desk,
    {
      ...pullOf(path, handle),
      cursor: cursorFor([along[1], -along[0]]),
      pulledTo(place, hand) {
        const pixels = desk.editor.getState().view.scale;
        const wish = 2 * Math.abs(cross(along, subtract(place, from)));
        const near = ways.find(({ width }) => Math.abs(width - wish) <= (2 * SNAP_PIXELS) / pixels);
        const width = near && !hand.free ? near.width : rounding(garden, hand, pixels)(wish);
        const held = Math.max(LEAST, width);
        const why = near && !hand.free ? ` (${near.label})` : "";
        return {
          ops: [{ op: "set", id: path.id, changes: { width: held } }],
          text: `${formatLength(held, garden.units)}${why}`,
        };
      },
    },
    start,
  );
}
