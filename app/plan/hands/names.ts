import { type Item, nameOf, say, sayCount } from "../../../src/index.ts";

/** Words for one thing or several, for labels of steps and for what is said. */
export function namesOf(items: readonly Item[]): string {
  const [first] = items;
  return items.length === 1 && first
    ? nameOf(first)
    : sayCount(items.length, { one: "{{count}} thing", other: "{{count}} things" });
}

/** What is said of a choice of several things, or of one. */
export const chosenWords = (count: number): string =>
  sayCount(count, { one: "{{count}} thing chosen", other: "{{count}} things chosen" });

/** What is said of a thing with corners; null is the yard. */
export const saidOf = (cornered: Item | null, what: string): string =>
  cornered ? `${nameOf(cornered)}: ${what}` : say`the yard: ${what}`;

/** What a step of history calls another outline. */
export const reshapeLabel = (cornered: Item | null): string =>
  cornered ? say`Reshape ${nameOf(cornered)}` : say`Reshape the yard`;
