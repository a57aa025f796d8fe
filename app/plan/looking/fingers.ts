import type { Point } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { pannedBy, zoomedAbout } from "../viewport.ts";
import { oncePerFrame } from "./frames.ts";
import { within } from "./within.ts";

/**
 * Two fingers carry and zoom the plan: what lies under them stays under them. The hands are told of the second one
 * and let go by themselves.
 */
export function listenToFingers(board: HTMLElement): () => void {
  const fingers = new Map<number, Point>();
  let held: { middle: Point; apart: number } | null = null;
  const frame = oncePerFrame(() => {
    if (!held || fingers.size !== 2) return;
    const now = spread(fingers);
    const { view, setView } = useEditor.getState();
    const moved = pannedBy(view, [now.middle[0] - held.middle[0], now.middle[1] - held.middle[1]]);
    setView(zoomedAbout(moved, now.middle, held.apart > 0 ? now.apart / held.apart : 1));
    held = now;
  });
  const down = (event: PointerEvent) => {
    if (event.pointerType !== "touch") return;
    fingers.set(event.pointerId, within(board, event));
    held = fingers.size === 2 ? spread(fingers) : null;
  };
  const move = (event: PointerEvent) => {
    if (!fingers.has(event.pointerId)) return;
    fingers.set(event.pointerId, within(board, event));
    if (!held) return;
    event.stopPropagation();
    frame.ask();
  };
  const up = (event: PointerEvent) => {
    fingers.delete(event.pointerId);
    held = null;
  };
  board.addEventListener("pointerdown", down, { capture: true });
  board.addEventListener("pointermove", move, { capture: true });
  window.addEventListener("pointerup", up, { capture: true });
  window.addEventListener("pointercancel", up, { capture: true });
  return () => {
    board.removeEventListener("pointerdown", down, { capture: true });
    board.removeEventListener("pointermove", move, { capture: true });
    window.removeEventListener("pointerup", up, { capture: true });
    window.removeEventListener("pointercancel", up, { capture: true });
    frame.stop();
  };
}

function spread(fingers: ReadonlyMap<number, Point>): { middle: Point; apart: number } {
  const [[ax, ay], [bx, by]] = [...fingers.values()] as [Point, Point];
  return { middle: [(ax + bx) / 2, (ay + by) / 2], apart: Math.hypot(bx - ax, by - ay) };
}
