import type { Garden } from "../../src/index.ts";
import { type Editor, shownGarden } from "../store/editor.ts";
import type { Closeness } from "../workers/sun-answers.ts";
import { NO_SUN, useSun } from "./sun.ts";
import { type SunDesk, startSunDesk } from "./sun-desk.ts";
import { keepGround } from "./sun-ground.ts";
import { provideSunQuestions } from "./sun-questions.ts";
import { hoursUnderHand } from "./sun-under-hand.ts";

/** The hand rests when nothing has changed for so long; it may still hold what it drags. */
const REST_MS = 150;

/**
 * Keeps `useSun` up with the garden on the screen until it is stopped, which clears the map.
 *
 * There are two desks. The quick one follows: it has one question at a time, and when that is answered the newest garden is
 * asked about, so a drag is followed as fast as it can. When the hand rests the other one takes a closer look, which takes
 * longer, and the closest when it has let go; it keeps no move waiting that comes meanwhile. It answers all other questions too.
 */
export function startSun(editor: Editor, makeDesk: () => SunDesk = startSunDesk): () => void {
  const [quick, slow] = [makeDesk(), makeDesk()];
  const groundOf = keepGround();
  let following = false;
  let settling = false;
  let stopped = false;
  let rest: ReturnType<typeof setTimeout> | undefined;

  const ask = async (desk: SunDesk, garden: Garden, closeness: Closeness) => {
    const settled = closeness === "settled";
    try {
      const map = await desk.hours(garden, closeness);
      const shown = shownGarden(editor.getState());
      const known = useSun.getState();
      // Of a garden that has changed meanwhile a closer look tells less than the newest coarse one, and a coarse one
      // tells nothing where the garden that is shown has its map already.
      const isCoarse = closeness === "live" || closeness === "following";
      const isLate = isCoarse ? known.of === shown && (garden !== shown || known.closely) : garden !== shown;
      if (stopped || isLate) return;
      const ground = groundOf(garden, map, closeness);
      useSun.setState({ of: garden, map, ground, closely: !isCoarse, settled, problem: null });
    } catch (error) {
      const problem = error instanceof Error ? error.message : String(error);
      // What could not be worked out once is not asked again until the garden changes.
      if (!stopped) useSun.setState({ of: garden, map: null, closely: true, settled: true, problem });
    }
  };

  const isHeld = () => editor.getState().draft !== null;

  const follow = async () => {
    const garden = shownGarden(editor.getState());
    if (following || stopped || garden === useSun.getState().of) return;
    following = true;
    await ask(quick, garden, isHeld() ? "following" : "live");
    following = false;
    void follow();
  };

  const settle = async () => {
    const garden = shownGarden(editor.getState());
    const { of, closely, settled } = useSun.getState();
    const isHeldNow = isHeld();
    if (settling || stopped || (garden === of && (settled || (closely && isHeldNow)))) return;
    settling = true;
    await ask(slow, garden, isHeldNow ? "closer" : "settled");
    settling = false;
    // It has moved on or been let go: unless it moves again, this is the next to look closely at.
    if (garden !== shownGarden(editor.getState()) || isHeldNow !== isHeld()) whenRested();
  };

  const whenRested = () => {
    clearTimeout(rest);
    if (!stopped) rest = setTimeout(() => void settle(), REST_MS);
  };

  const underHand = hoursUnderHand(slow.plane, (dragged) => {
    if (!stopped) useSun.setState({ dragged });
  });

  const changed = () => {
    void follow();
    whenRested();
  };

  const stopListening = editor.subscribe((now, before) => {
    if (now.draft === before.draft && now.garden === before.garden) return;
    underHand(now);
    if (shownGarden(now) !== shownGarden(before)) changed();
    else if (now.draft === null) whenRested();
  });
  useSun.setState(NO_SUN);
  provideSunQuestions(slow);
  changed();

  return () => {
    stopped = true;
    clearTimeout(rest);
    stopListening();
    provideSunQuestions(null);
    quick.stop();
    slow.stop();
    useSun.setState(NO_SUN);
  };
}
