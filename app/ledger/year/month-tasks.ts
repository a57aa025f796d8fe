import { daysFrom, meetInTime, type Task, yearDay } from "../../../src/index.ts";

/** Days of the months in a year of 365, as tasks are reckoned, January first. */
export const MONTH_LENGTHS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

export interface MonthTasks {
  /** What begins in the month, in the order of its days. */
  readonly begins: readonly Task[];
  /** What began before and goes on. */
  readonly goesOn: readonly Task[];
}

/** @param month 0 for January */
export function tasksIn(tasks: readonly Task[], month: number): MonthTasks {
  const days = MONTH_LENGTHS[month] ?? 30;
  const from = yearDay(`${String(month + 1).padStart(2, "0")}-01`);
  const begins = (task: Task) => daysFrom(from, task.from) < days;
  return {
    begins: tasks.filter(begins),
    goesOn: tasks.filter((task) => !begins(task) && meetInTime(task, { from, days })),
  };
}
