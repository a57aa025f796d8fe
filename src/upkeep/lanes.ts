import { type Stretch, YEAR_DAYS } from "../planting/year-day.ts";
import { TASK_KIND_LABELS } from "./kind-labels.ts";
import { TASK_KINDS, type Task, type TaskKind } from "./types.ts";

/** The year as lanes, one for each kind of task, to be drawn as a strip. */

/** A lane of the strip. Stretches run within the year: what goes over new year is two of them. */
export interface Lane {
  readonly kind: TaskKind;
  readonly label: string;
  readonly stretches: readonly Stretch[];
}

/** Lanes of the kinds there are, bars that touch joined. Tasks of the months are left in: they show how long is watered. */
export function lanesOf(tasks: readonly Task[]): readonly Lane[] {
  return TASK_KINDS.flatMap((kind) => {
    const own = tasks.filter((task) => task.kind === kind);
    return own.length > 0 ? [{ kind, label: TASK_KIND_LABELS[kind], stretches: joined(own) }] : [];
  });
}

function joined(tasks: readonly Stretch[]): Stretch[] {
  const busy = new Array<boolean>(YEAR_DAYS).fill(false);
  for (const { from, days } of tasks) {
    for (let i = 0; i < days; i++) busy[(from - 1 + i) % YEAR_DAYS] = true;
  }
  const stretches: { from: number; days: number }[] = [];
  busy.forEach((is, day) => {
    if (!is) return;
    const last = stretches.at(-1);
    if (last && last.from + last.days === day + 1) last.days += 1;
    else stretches.push({ from: day + 1, days: 1 });
  });
  return stretches;
}
