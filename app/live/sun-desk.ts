import type { BedMonth, BestPlace, Garden, ItemId, SunCost, SunGrid, SunMap } from "../../src/index.ts";
import type { SunApi } from "../workers/sun.worker.ts";
import type { Closeness } from "../workers/sun-answers.ts";
import { deltaOf } from "./delta.ts";
import { speakingWorker } from "./speaking-worker.ts";

/** Where questions about the sun are answered: a worker on the page, anything in a test. One after another. */
export interface SunDesk {
  hours(garden: Garden, closeness: Closeness): Promise<SunMap>;
  plane(garden: Garden, id: ItemId): Promise<SunGrid | null>;
  bedMonths(garden: Garden, id: ItemId): Promise<readonly BedMonth[]>;
  sunCosts(garden: Garden): Promise<readonly SunCost[]>;
  bestPlace(garden: Garden, id: ItemId): Promise<BestPlace | null>;
  stop(): void;
}

export function startSunDesk(): SunDesk {
  const worker = new Worker(new URL("../workers/sun.worker.ts", import.meta.url), { type: "module" });
  const remote = speakingWorker<SunApi>(worker);
  let known: Garden | null = null;

  /** Messages arrive in the order they are sent, so each delta starts where the one before it led. */
  const tell = (garden: Garden) => {
    const delta = deltaOf(known, garden);
    known = garden;
    return delta;
  };

  return {
    hours: (garden, closeness) => remote.hours(tell(garden), closeness),
    plane: (garden, id) => remote.plane(tell(garden), id),
    bedMonths: (garden, id) => remote.bedMonths(tell(garden), id),
    sunCosts: (garden) => remote.sunCosts(tell(garden)),
    bestPlace: (garden, id) => remote.bestPlace(tell(garden), id),
    stop: () => worker.terminate(),
  };
}
