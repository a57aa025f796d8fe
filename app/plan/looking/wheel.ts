import type { Point } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { pannedBy, zoomedAbout } from "../viewport.ts";
import { oncePerFrame } from "./frames.ts";
import { within } from "./within.ts";

/** How much one unit of wheel travel zooms: a notch of 100 is about a seventh. A pinch on a trackpad counts finer. */
const WHEEL_ZOOM = 0.0014;
const PINCH_ZOOM = 0.01;
const LINE = 16;
/** One event of a fast wheel never jumps farther than this. */
const MOST_TRAVEL = 240;

/** The wheel and a trackpad's pinch zoom about the pointer; with Shift, or sideways, the plan runs sideways. */
export function listenToWheel(board: HTMLElement): () => void {
  let factor = 1;
  let pan: Point = [0, 0];
  let about: Point = [0, 0];
  const frame = oncePerFrame(() => {
    const { view, setView } = useEditor.getState();
    setView(pannedBy(factor === 1 ? view : zoomedAbout(view, about, factor), pan));
    factor = 1;
    pan = [0, 0];
  });
  const wheel = (event: WheelEvent) => {
    event.preventDefault();
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE : 1;
    const [dx, dy] = [event.deltaX * unit, event.deltaY * unit];
    if (event.shiftKey) pan = [pan[0] - (dx || dy), pan[1]];
    else {
      const travel = Math.max(-MOST_TRAVEL, Math.min(MOST_TRAVEL, dy));
      factor *= Math.exp(-travel * (event.ctrlKey ? PINCH_ZOOM : WHEEL_ZOOM));
      pan = [pan[0] - dx, pan[1]];
    }
    about = within(board, event);
    frame.ask();
  };
  board.addEventListener("wheel", wheel, { passive: false });
  return () => {
    board.removeEventListener("wheel", wheel);
    frame.stop();
  };
}
