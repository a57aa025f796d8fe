import type { Point } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { pannedBy } from "../viewport.ts";
import { oncePerFrame } from "./frames.ts";

const MIDDLE_BUTTON = 1;

/**
 * The middle button, or the space bar with the main one, drags the plan along. Such a press is marked as taken
 * (`preventDefault`), so that the hands leave it alone.
 */
export function listenToPan(board: HTMLElement): () => void {
  let space = false;
  let last: Point | null = null;
  let pointer = -1;
  let owed: Point = [0, 0];
  const frame = oncePerFrame(() => {
    const { view, setView } = useEditor.getState();
    setView(pannedBy(view, owed));
    owed = [0, 0];
  });
  const show = () => {
    if (last) board.dataset.panning = "held";
    else if (space) board.dataset.panning = "ready";
    else delete board.dataset.panning;
  };
  const down = (event: PointerEvent) => {
    const pans = event.button === MIDDLE_BUTTON || (event.button === 0 && space);
    if (!pans || event.pointerType === "touch") return;
    event.preventDefault();
    event.stopPropagation();
    board.setPointerCapture(event.pointerId);
    pointer = event.pointerId;
    last = [event.clientX, event.clientY];
    show();
  };
  const move = (event: PointerEvent) => {
    if (!last || event.pointerId !== pointer) return;
    event.stopPropagation();
    owed = [owed[0] + event.clientX - last[0], owed[1] + event.clientY - last[1]];
    last = [event.clientX, event.clientY];
    frame.ask();
  };
  const up = (event: PointerEvent) => {
    if (!last || event.pointerId !== pointer) return;
    event.stopPropagation();
    last = null;
    show();
  };
  const key = (event: KeyboardEvent) => {
    if (event.key !== " ") return;
    const { target } = event;
    // In a field or on a button the space bar is that control's own.
    if (
      event.type === "keydown" &&
      target instanceof HTMLElement &&
      target !== document.body &&
      target !== board
    )
      return;
    space = event.type === "keydown";
    if (space) event.preventDefault();
    show();
  };
  const blur = () => {
    space = false;
    last = null;
    show();
  };
  // Middle press scrolls the page on some systems.
  const mouse = (event: MouseEvent) => {
    if (event.button === MIDDLE_BUTTON) event.preventDefault();
  };
  board.addEventListener("pointerdown", down, { capture: true });
  board.addEventListener("pointermove", move, { capture: true });
  board.addEventListener("pointerup", up, { capture: true });
  board.addEventListener("pointercancel", up, { capture: true });
  board.addEventListener("mousedown", mouse);
  window.addEventListener("keydown", key);
  window.addEventListener("keyup", key);
  window.addEventListener("blur", blur);
  return () => {
    board.removeEventListener("pointerdown", down, { capture: true });
    board.removeEventListener("pointermove", move, { capture: true });
    board.removeEventListener("pointerup", up, { capture: true });
    board.removeEventListener("pointercancel", up, { capture: true });
    board.removeEventListener("mousedown", mouse);
    window.removeEventListener("keydown", key);
    window.removeEventListener("keyup", key);
    window.removeEventListener("blur", blur);
    frame.stop();
  };
}
