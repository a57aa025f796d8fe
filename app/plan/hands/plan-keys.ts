import { flushSync } from "react-dom";
import { FOOT, INCH, type Point, type Units } from "../../../src/index.ts";
import { focusFirstField } from "../../ledger/card/first-field.ts";
import { alike, order, takeAway } from "./arrange.ts";
import { carryPaper } from "./carry-paper.ts";
import { heldCorner, nextCorner, nudgeCorner, splitEdge, takeCorner } from "./corner-keys.ts";
import { endDrawing, isDrawn, takePointBack } from "./drawing.ts";
import type { Desk } from "./gesture.ts";
import { TURN_STEP } from "./gestures/turn.ts";
import { chosenWords } from "./names.ts";
import { nudge, nudgeTurn } from "./nudge.ts";
import { heldPlanting, nextPatch, nudgePatch, stretchPatch, takePlanting } from "./patch-keys.ts";
import { dropPlacing } from "./placing.ts";
import { putShare, waitingCrop } from "./planting.ts";

/** How far a press of an arrow key moves things, and with Shift. */
const PRESS: Readonly<Record<Units, readonly [plain: number, far: number]>> = {
  us: [INCH, FOOT],
  metric: [10, 100],
};

const ARROWS: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

export type Key = Pick<KeyboardEvent, "key" | "code" | "shiftKey" | "ctrlKey" | "metaKey" | "altKey">;

/**
 * What a key does on the plan and in its list; `keys.ts` tells people of them.
 * @returns whether the key meant something here, so that the page does nothing else with it
 */
export function planKey(desk: Desk, event: Key): boolean {
  const { editor } = desk;
  const { placing } = editor.getState();
  if (isDrawn(placing)) {
    if (event.key === "Enter") endDrawing(desk, placing);
    else if (event.key === "Backspace") takePointBack(desk, placing);
    if (event.key === "Enter" || event.key === "Backspace") return true;
  }
  const crop = waitingCrop(placing);
  if (crop && event.key === "Enter") return putShare(desk, crop) || true;
  if (event.key === "Escape") return letGo(desk);
  if (event.altKey) return false;
  const arrow = ARROWS[event.key];
  const far = PRESS[editor.getState().garden.units][event.shiftKey ? 1 : 0];
  const by: Point | null = arrow ? [arrow[0] * far, arrow[1] * far] : null;
  if (event.ctrlKey || event.metaKey) {
    return by ? stretchPatch(desk, by) : withControl(desk, event.key.toLowerCase());
  }
  if (arrow && by) {
    return nudgePatch(desk, by) || nudgeCorner(desk, by) || nudge(desk, by) || carryPaper(desk, arrow);
  }
  // By place on the keyboard as well as by sign: with Shift, and on many keyboards, the brackets are other signs.
  if (event.key === "[" || event.code === "BracketLeft")
    return nudgeTurn(desk, event.shiftKey ? -1 : -TURN_STEP);
  if (event.key === "]" || event.code === "BracketRight")
    return nudgeTurn(desk, event.shiftKey ? 1 : TURN_STEP);
  switch (event.key) {
    case "Delete":
    case "Backspace":
      return takePlanting(desk) || takeCorner(desk) || takeAway(desk);
    case "c":
      return nextCorner(desk, 1);
    case "C":
      return nextCorner(desk, -1);
    case "v":
      return splitEdge(desk);
    case "p":
      return nextPatch(desk, 1);
    case "P":
      return nextPatch(desk, -1);
    case "PageUp":
      return order(desk, "forward");
    case "PageDown":
      return order(desk, "backward");
    case "Enter":
      return toCard(desk);
    default:
      return false;
  }
}

function withControl(desk: Desk, key: string): boolean {
  const { garden, select } = desk.editor.getState();
  if (key === "d") return alike(desk);
  if (key !== "a") return false;
  select(garden.items.map(({ id }) => id));
  desk.editor.getState().say(chosenWords(garden.items.length));
  return true;
}

/** One thing at a time: what waits to be placed, the corner that is held, the snag looked at, then the selection. */
function letGo(desk: Desk): boolean {
  const { placing, activeSnag, selection, yardSelected, lookAt, select } = desk.editor.getState();
  if (placing !== null) dropPlacing(desk);
  else if (heldCorner(desk)) desk.marks.setState({ corner: null });
  else if (heldPlanting(desk)) desk.marks.setState({ patch: null });
  else if (activeSnag !== null) lookAt(null);
  else if (selection.size > 0 || yardSelected) select([]);
  else return false;
  return true;
}

/** Puts the keyboard into the card of what is selected. */
export function toCard({ editor }: Desk): boolean {
  const { selection, yardSelected } = editor.getState();
  if (selection.size === 0 && !yardSelected) return false;
  // What has just been selected may not be on its card yet.
  flushSync(() => {});
  const card = document.getElementById("card");
  if (card) focusFirstField(card);
  return card !== null;
}
