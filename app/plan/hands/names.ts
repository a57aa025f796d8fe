import { type Item, nameOf } from "../../../src/index.ts";

/** Words for one thing or several, for labels of steps and for what is said. */
export function namesOf(items: readonly Item[]): string {
  const [first] = items;
  return items.length === 1 && first ? nameOf(first) : `${items.length} things`;
}
