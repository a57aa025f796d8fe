import { shownGarden } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { useMoment } from "./moment.ts";
import { dayMarks } from "./sun-then.ts";

/** How long a day takes from sunrise to sunset, ms. */
const WHOLE_DAY = 12_000;
/** For who wants no motion the day goes by in leaps, minutes and ms. */
const LEAP = { by: 60, every: 1000 } as const;
/** No frame moves the sun further than this, however late it comes: a page that was hidden goes on where it was, ms. */
const LONGEST_FRAME = 100;
const FULL = 1440;

/** The time in which there is sun on a day: its first minute by the clock, and how many there are. */
function daylight(): { readonly from: number; readonly length: number } {
  const { rise, set, polar } = dayMarks(shownGarden(useEditor.getState()).site, useMoment.getState().day);
  if (polar === "night") return { from: 0, length: 0 };
  const from = rise ?? 0;
  return { from, length: polar === "day" ? FULL : ((set ?? FULL) - from + FULL) % FULL };
}

const untilMidnight = (minutes: number): number => ((minutes % FULL) + FULL) % FULL;

/** Begins to play, at sunrise where the sun is down. It takes `runDay` to make the day run. */
export function playDay(): void {
  const { from, length } = daylight();
  if (length === 0) return;
  const { minutes } = useMoment.getState();
  const done = untilMidnight(minutes - from);
  useMoment.setState({ playing: true, shadows: true, minutes: done >= length - 1 ? from : minutes });
}

export const pauseDay = (): void => useMoment.setState({ playing: false });

/** Moves the day on. @returns whether there is more of it */
function advance(by: number): boolean {
  const { from, length } = daylight();
  const done = untilMidnight(useMoment.getState().minutes - from) + by;
  if (done >= length) {
    useMoment.setState({ minutes: untilMidnight(from + length), playing: false });
    return false;
  }
  useMoment.setState({ minutes: untilMidnight(from + done) });
  return true;
}

/**
 * Runs the day on by the clock of the screen until it is stopped, or the sun sets.
 * @param still in leaps instead of smoothly
 * @returns stops it
 */
export function runDay(still: boolean): () => void {
  if (still) {
    const timer = setInterval(() => advance(LEAP.by) || clearInterval(timer), LEAP.every);
    return () => clearInterval(timer);
  }
  let before: number | null = null;
  let frame = requestAnimationFrame(function step(now) {
    const passed = before === null ? 0 : Math.min(now - before, LONGEST_FRAME);
    before = now;
    if (advance((passed / WHOLE_DAY) * daylight().length)) frame = requestAnimationFrame(step);
  });
  return () => cancelAnimationFrame(frame);
}
