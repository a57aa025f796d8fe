import { wrap } from "comlink";
import type { Garden } from "../../src/index.ts";
import { type Editor, shownGarden } from "../store/editor.ts";
import type { SunApi } from "../workers/sun.worker.ts";
import type { SunAnswer } from "../workers/sun-answers.ts";
import { deltaOf, type GardenDelta } from "./delta.ts";
import { NO_SUN, useSun } from "./sun.ts";

/** The settled map takes long enough to keep the next question waiting: it is begun once the hand rests. */
const REST_MS = 350;

/** What works out a map: a worker on the page, anything in a test. */
export interface SunDesk {
  sunHours(delta: GardenDelta, settled: boolean): Promise<SunAnswer>;
  stop(): void;
}

function startDesk(): SunDesk {
  const worker = new Worker(new URL("../workers/sun.worker.ts", import.meta.url), { type: "module" });
  const { sunHours } = wrap<SunApi>(worker);
  return { sunHours, stop: () => worker.terminate() };
}

/**
 * Keeps `useSun` up with the garden on the screen until it is stopped, which clears the map.
 *
 * One question is out at a time, and when it is answered the newest garden is asked about, so a drag is followed as
 * fast as the worker can. When the garden rests, a closer look is taken of it.
 */
export function startSun(editor: Editor, desk: SunDesk = startDesk()): () => void {
  let told: Garden | null = null;
  let busy = false;
  let stopped = false;
  let rest: ReturnType<typeof setTimeout> | undefined;

  const ask = async (garden: Garden, settled: boolean) => {
    const delta = deltaOf(told, garden);
    told = garden;
    busy = true;
    try {
      const { map, ground } = await desk.sunHours(delta, settled);
      if (!stopped) {
        useSun.setState((s) => ({ of: garden, map, ground: ground ?? s.ground, settled, problem: null }));
      }
    } catch (error) {
      const problem = error instanceof Error ? error.message : String(error);
      // What could not be worked out once is not asked again until the garden changes.
      if (!stopped) useSun.setState({ of: garden, map: null, settled: true, problem });
    }
    busy = false;
    next();
  };

  const next = () => {
    clearTimeout(rest);
    if (busy || stopped) return;
    const state = editor.getState();
    const garden = shownGarden(state);
    const { of, settled } = useSun.getState();
    if (garden !== of) void ask(garden, false);
    else if (!settled && state.draft === null) rest = setTimeout(() => void ask(garden, true), REST_MS);
  };

  const stopListening = editor.subscribe((now, before) => {
    if (now.draft !== before.draft || now.garden !== before.garden) next();
  });
  useSun.setState(NO_SUN);
  next();

  return () => {
    stopped = true;
    clearTimeout(rest);
    stopListening();
    desk.stop();
    useSun.setState(NO_SUN);
  };
}
