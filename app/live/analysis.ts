import { survey } from "../../src/index.ts";
import { type Editor, shownGarden } from "../store/editor.ts";
import { useFindings } from "./findings.ts";
import { startWorker, type WorkerAnalyst } from "./worker-analyst.ts";

/** A frame is 16.7 ms; the plan's own drawing needs its share of it. */
const FRAME_SHARE_MS = 7;
/** One slow reckoning may be the machine's; so many in a row are the garden's. */
const SLOW_IN_A_ROW = 3;

/**
 * Keeps `useFindings` up with the garden on the screen. Gardens that can be reckoned within their share of a frame
 * are reckoned in the very next frame; larger ones go to a worker, one at a time and always the newest, so that no
 * pointer move waits for either.
 */
export function startAnalysis(editor: Editor): () => void {
  let slow = 0;
  let frame = 0;
  let worker: WorkerAnalyst | null = null;

  const reckon = () => {
    frame = 0;
    const garden = shownGarden(editor.getState());
    if (garden === useFindings.getState().of) return;
    if (worker) {
      worker.analyse(garden);
      return;
    }
    const began = performance.now();
    useFindings.setState({ of: garden, ...survey(garden) });
    slow = performance.now() - began > FRAME_SHARE_MS ? slow + 1 : 0;
    if (slow >= SLOW_IN_A_ROW) worker = startWorker();
  };

  const soon = () => {
    if (frame === 0) frame = requestAnimationFrame(reckon);
  };

  const stopListening = editor.subscribe((state, before) => {
    if (shownGarden(state) !== shownGarden(before)) soon();
  });
  soon();

  return () => {
    stopListening();
    cancelAnimationFrame(frame);
    worker?.stop();
  };
}
