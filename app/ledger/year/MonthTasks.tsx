import { type Garden, monthName, nameOf, say, sayCount, type Task } from "../../../src/index.ts";
import { tasksIn } from "./month-tasks.ts";
import { TaskEntry } from "./TaskEntry.tsx";

interface Props {
  readonly garden: Garden;
  readonly tasks: readonly Task[];
  readonly month: number;
  readonly onMonth: (month: number) => void;
}

/** What a month asks: what begins in it first, then what goes on. */
export function MonthTasks({ garden, tasks, month, onMonth }: Props) {
  const entry = (task: Task) => (
    <TaskEntry
      key={task.id}
      task={task}
      where={whereWords(task, garden)}
      firstYear={garden.upkeep.firstYear}
    />
  );
  const before = (month + 11) % 12;
  const after = (month + 1) % 12;
  const { begins, goesOn } = tasksIn(tasks, month);
  const name = monthName(month + 1);
  return (
    <section aria-label={say`Tasks of ${name}`}>
      <div className="year-month">
        <h3 aria-live="polite">
          {begins.length === 0 ? say`${name}: nothing new to do` : say`${name}: ${begins.length} to do`}
        </h3>
        <button
          type="button"
          className="button"
          aria-label={say`Back to ${monthName(before + 1)}`}
          onClick={() => onMonth(before)}
        >
          ←
        </button>
        <button
          type="button"
          className="button"
          aria-label={say`On to ${monthName(after + 1)}`}
          onClick={() => onMonth(after)}
        >
          →
        </button>
      </div>
      <ul>{begins.map(entry)}</ul>
      {goesOn.length > 0 ? (
        <>
          <div className="year-month">
            <h3>{say`Goes on`}</h3>
          </div>
          <ul>{goesOn.map(entry)}</ul>
        </>
      ) : null}
    </section>
  );
}

const MOST_NAMED = 2;

/** The beds a task is for, in a word or two. */
function whereWords({ bedIds }: Task, { items }: Garden): string {
  const beds = items.filter((item) => item.kind === "bed");
  if (beds.length > 1 && bedIds.length === beds.length) return say`all beds`;
  if (bedIds.length > MOST_NAMED)
    return sayCount(bedIds.length, { one: "{{count}} bed", other: "{{count}} beds" });
  return beds
    .filter(({ id }) => bedIds.includes(id))
    .map(nameOf)
    .join(", ");
}
