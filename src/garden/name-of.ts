import type { Item, Kind } from "./item.ts";
import { plainText } from "./plain-text.ts";

/** What each kind is called where a thing has no name of its own. */
export const KIND_WORDS: Readonly<Record<Kind, string>> = {
  bed: "Bed",
  path: "Path",
  ground: "Ground",
  house: "House",
  shed: "Shed",
  wall: "Wall",
  fence: "Fence",
  tree: "Tree",
  gate: "Gate",
  door: "Door",
  tap: "Tap",
  "keep-clear": "Keep-clear",
};

/** The name a thing was given, fit to be shown; empty where it has none. */
export const ownName = ({ name }: Pick<Item, "name">): string => plainText(name).trim();

/** What the gardener calls a thing; its kind, with the number its id ends in, where it has no name ("Bed 3"). */
export function nameOf(item: Pick<Item, "name" | "kind" | "id">): string {
  const { kind, id } = item;
  const name = ownName(item);
  if (name !== "") return name;
  const number = /-(\d+)$/.exec(id)?.[1];
  return number ? `${KIND_WORDS[kind]} ${number}` : KIND_WORDS[kind];
}
