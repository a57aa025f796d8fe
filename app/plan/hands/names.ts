import { BARROW, type Item, type Kind } from "../../../src/index.ts";

const KIND_WORDS = new Map<Kind, string>(
  // The first of a kind names the kind: "Bed", not "Free bed".
  BARROW.toReversed().map(({ kind, label }) => [kind, label]),
);

/** What a thing is called: by its own name, or by its kind's word. */
export const nameOf = (item: Item): string => item.name || (KIND_WORDS.get(item.kind) ?? item.kind);

/** Words for one thing or several, for labels of steps and for what is said. */
export function namesOf(items: readonly Item[]): string {
  const [first] = items;
  return items.length === 1 && first ? nameOf(first) : `${items.length} things`;
}
