import type { Garden, Item, ItemId } from "../../src/index.ts";
import type { EditorState } from "../store/editor.ts";

type Boards = Pick<EditorState, "garden" | "draft">;

const members = new WeakMap<Garden["items"], ReadonlySet<Item>>();

function membersOf(items: Garden["items"]): ReadonlySet<Item> {
  let set = members.get(items);
  if (!set) {
    set = new Set(items);
    members.set(items, set);
  }
  return set;
}

const NONE: readonly never[] = [];

/** The things a gesture has put down anew: in the draft, and not as they stand in the garden. */
export function newInDraft({ garden, draft }: Boards): readonly Item[] {
  if (!draft || draft.items === garden.items) return NONE;
  const before = membersOf(garden.items);
  return draft.items.filter((item) => !before.has(item));
}

/** The things of the garden that a gesture has lifted: gone from the draft, or there in another state. */
export function goneInDraft({ garden, draft }: Boards): readonly ItemId[] {
  if (!draft || draft.items === garden.items) return NONE;
  const after = new Set(draft.items);
  return garden.items.filter((item) => !after.has(item)).map(({ id }) => id);
}
