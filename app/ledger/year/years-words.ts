import type { Task } from "../../../src/index.ts";

/** In which years a task comes up, where it is not all: "only in 2027", "in year 3, 6 and 9", "from year 3 on". */
export function yearsWords(
  { since, years }: Pick<Task, "since" | "years">,
  firstYear: number | null,
): string {
  const named = (after: number) => (firstYear === null ? `${after + 1}` : `${firstYear + after}`);
  const year = firstYear === null ? "year " : "";
  if (years !== null) {
    const last = years.at(-1);
    if (last === undefined) return "";
    if (years.length === 1) return `only in ${year}${named(last)}`;
    return `in ${year}${years.slice(0, -1).map(named).join(", ")} and ${named(last)}`;
  }
  return since === 0 ? "" : `from ${year}${named(since)} on`;
}
