import { told, word } from "../words/say.ts";
import type { Item, Kind } from "./item.ts";
import { plainText } from "./plain-text.ts";

/** What each kind is called where a thing has no name of its own. */
export const KIND_WORDS: Readonly<Record<Kind, string>> = {
  bed: word("Bed"),
  path: word("Path"),
  ground: word("Ground"),
  house: word("House"),
  shed: word("Shed"),
  wall: word("Wall"),
  fence: word("Fence"),
  tree: word("Tree"),
  gate: word("Gate"),
  door: word("Door"),
  tap: word("Tap"),
  "keep-clear": word("Keep-clear"),
};

/** The name a thing was given, fit to be shown; empty where it has none. */
export const ownName = ({ name }: Pick<Item, "name">): string => plainText(name).trim();

/** What the gardener calls a thing; its kind, with the number its id ends in, where it has no name ("Bed 3"). */
export function nameOf(item: Pick<Item, "name" | "kind" | "id">): string {
  const { kind, id } = item;
  const name = ownName(item);
  if (name !== "") return name;
  const number = /-(\d+)$/.exec(id)?.[1];
  const what = told(KIND_WORDS[kind]);
  return number ? `${what} ${number}` : what;
}
