import { listed, say, type Task } from "../../../src/index.ts";

/** In which years a task comes up, where it is not all: "only in 2027", "in year 3, 6 and 9", "from year 3 on". */
export function yearsWords(
  { since, years }: Pick<Task, "since" | "years">,
  firstYear: number | null,
): string {
  const isCounted = firstYear === null;
  const named = (after: number) => `${(firstYear ?? 1) + after}`;
  if (years !== null) {
    if (years.length === 0) return "";
    const names = listed(years.map(named));
    if (years.length === 1) return isCounted ? say`only in year ${names}` : say`only in ${names}`;
    return isCounted ? say`in year ${names}` : say`in ${names}`;
  }
  if (since === 0) return "";
  return isCounted ? say`from year ${named(since)} on` : say`from ${named(since)} on`;
}
