import { type Depth, type Garden, type Survey, survey } from "../../src/index.ts";
import { type Editor, shownGarden } from "../store/editor.ts";
import { carriedOver } from "./carry.ts";
import { useFindings } from "./findings.ts";
import { provideShiftSearch } from "./shift-search.ts";
import { type Answer, startWorker } from "./worker-analyst.ts";

/** A frame is 16.7 ms; the plan's own drawing takes 4 of them with 40 beds. */
const FRAME_SHARE_MS = 12;
/** One slow glance may be the machine's, or the first of its kind; so many in a row are the garden's. */
const SLOW_IN_A_ROW = 4;
/** With each gesture the frame gets another chance, but fewer: what was slow a moment ago mostly still is. */
const SECOND_CHANCES = 2;

/**
 * Keeps `useFindings` up with the garden on the screen.
 *
 * Each change gets a glance in the very next frame, while that fits its share of one, and a closer look from a worker
 * as soon as the worker is free. The sun is asked about when a dragging hand rests, and ways out are looked for once it
 * lets go. Of a garden too large for glances in the frame, the worker does those too. No pointer move waits for any of it.
 */
export function startAnalysis(editor: Editor): () => void {
  let frame = 0;
  let slowInARow = 0;
  /** The last survey with routes, of whichever garden: what glances are filled in from. */
  let last: Survey | null = null;
  /** The garden whose drip lines those of the last survey are. */
  let dripOf: Garden | null = null;
  let glanced: { readonly of: Garden; readonly survey: Survey } | null = null;
  const worker = startWorker(onAnswer);
  provideShiftSearch(worker.searchShift);

  const inFrame = () => slowInARow < SLOW_IN_A_ROW;

  const publish = (of: Garden, { access, takeoff, snags, drip }: Survey, settled: boolean) =>
    useFindings.setState({ of, access, takeoff, snags, drip, dripOf, settled });

  const publishGlance = (of: Garden, found: Survey) =>
    publish(of, carriedOver(found, last, of, "glance"), false);

  function onAnswer({ of, depth, survey: found }: Answer) {
    if (depth === "glance") {
      publishGlance(of, found);
      return;
    }
    if (found.drip) dripOf = of;
    last = carriedOver(found, last, of, depth);
    const shown = shownGarden(editor.getState());
    if (of === shown) publish(of, last, depth === "whole");
    // An answer about a moment ago still tells what the slow rules say: it fills in what is on the screen.
    else if (glanced?.of === shown) publishGlance(shown, glanced.survey);
  }

  function glance(garden: Garden) {
    const began = performance.now();
    glanced = { of: garden, survey: survey(garden, "glance", { drip: last?.drip ?? null }) };
    publishGlance(garden, glanced.survey);
    slowInARow = performance.now() - began > FRAME_SHARE_MS ? slowInARow + 1 : 0;
  }

  const reckon = () => {
    frame = 0;
    const { draft, garden: committed } = editor.getState();
    const garden = draft ?? committed;
    const known = useFindings.getState();
    if (garden === known.of && (known.settled || draft)) return;
    const depths: Depth[] = draft ? ["look", "reading"] : ["look", "whole"];
    if (garden !== known.of) {
      if (inFrame()) glance(garden);
      else depths.unshift("glance");
    }
    worker.ask(garden, depths);
  };

  const soon = () => {
    if (frame === 0) frame = requestAnimationFrame(reckon);
  };

  const stopListening = editor.subscribe((state, before) => {
    if (state.garden !== before.garden) slowInARow = Math.min(slowInARow, SLOW_IN_A_ROW - SECOND_CHANCES);
    const letGo = before.draft !== null && state.draft === null;
    if (letGo || shownGarden(state) !== shownGarden(before)) soon();
  });
  soon();

  return () => {
    stopListening();
    cancelAnimationFrame(frame);
    provideShiftSearch(null);
    worker.stop();
  };
}
