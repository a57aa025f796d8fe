import type { Garden } from "../garden/garden.ts";
import { bioassayTasks } from "./bioassay.ts";
import { careTasks } from "./care-tasks.ts";
import { coverCropTasks } from "./cover-cropping.ts";
import { mulchTasks } from "./mulching.ts";
import { renewalTasks } from "./renewal-tasks.ts";
import { sowAndHarvestTasks } from "./sow-and-harvest.ts";
import { topUpTasks } from "./top-up.ts";
import { TASK_KINDS, type Task } from "./types.ts";
import { waterTasks } from "./water-tasks.ts";
import { winterTasks } from "./winter-tasks.ts";
import { yearContext } from "./year-context.ts";

const known = new WeakMap<Garden, readonly Task[]>();

/**
 * What a garden asks in a year and in the years to come, with its own quantities, by the day of the year on which each
 * begins, then by kind and id. Days follow from the frosts of the site, typed or usual, so that the southern year is the
 * northern one half a year later; watering follows the months. A garden without beds asks nothing.
 *
 * Remembered by the garden.
 */
export function yearRound(garden: Garden): readonly Task[] {
  let tasks = known.get(garden);
  if (!tasks) {
    tasks = workedOut(garden);
    known.set(garden, tasks);
  }
  return tasks;
}

function workedOut(garden: Garden): readonly Task[] {
  const context = yearContext(garden);
  if (context.beds.length === 0) return [];
  return [
    topUpTasks,
    mulchTasks,
    sowAndHarvestTasks,
    coverCropTasks,
    bioassayTasks,
    waterTasks,
    winterTasks,
    renewalTasks,
    careTasks,
  ]
    .flatMap((tasksOf) => tasksOf(context))
    .sort((a, b) => a.from - b.from || place(a) - place(b) || (a.id < b.id ? -1 : 1));
}

const place = ({ kind }: Task): number => TASK_KINDS.indexOf(kind);
