import type { Box, Garden, ItemId, Point } from "../../../../src/index.ts";
import { bodyOf } from "../bodies.ts";
import type { Desk, Gesture, Hand } from "../gesture.ts";
import { chosenWords } from "../names.ts";

/** Draws a box; what lies whole inside it becomes selected, together with what was if `more`. */
export function startBoxSelect({ editor, marks }: Desk, start: Hand, more: boolean): Gesture {
  const { garden, selection } = editor.getState();
  let inside: readonly ItemId[] = [];
  return {
    cursor: "crosshair",
    move({ plan }) {
      inside = itemsWithin(garden, boxOf(start.plan, plan));
      marks.setState({ box: [start.plan, plan] });
    },
    end() {
      marks.setState({ box: null });
      editor.getState().select(more ? [...selection, ...inside] : inside);
      editor.getState().say(chosenWords(inside.length));
    },
    cancel() {
      marks.setState({ box: null });
    },
  };
}

/** The things whose whole extent lies within a box. */
export const itemsWithin = (garden: Garden, box: Box): readonly ItemId[] =>
  garden.items
    .filter((item) => {
      const { minX, minY, maxX, maxY } = bodyOf(item).bounds;
      return minX >= box.minX && minY >= box.minY && maxX <= box.maxX && maxY <= box.maxY;
    })
    .map(({ id }) => id);

const boxOf = ([ax, ay]: Point, [bx, by]: Point): Box => ({
  minX: Math.min(ax, bx),
  minY: Math.min(ay, by),
  maxX: Math.max(ax, bx),
  maxY: Math.max(ay, by),
});
