import { monthDayOf, say, type Task } from "../../../src/index.ts";
import { writeMonthDay } from "../site/DateField.tsx";

/** "24 Mar to 13 Apr"; one day alone as such. */
export function daySpan({ from, days }: Pick<Task, "from" | "days">): string {
  const first = writeMonthDay(monthDayOf(from));
  if (days >= 365) return say`all year`;
  return days === 1 ? first : say`${first} to ${writeMonthDay(monthDayOf(from + days - 1))}`;
}
