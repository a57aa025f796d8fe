import type { Kind } from "../../../src/index.ts";

/** The kinds in the trade's words, as the card says them beside a thing's name. */
export const KIND_WORDS: Readonly<Record<Kind, string>> = {
  bed: "bed",
  path: "path",
  ground: "ground patch",
  house: "house",
  shed: "shed",
  wall: "wall",
  fence: "fence",
  tree: "tree",
  gate: "gate",
  door: "door",
  tap: "tap",
  "keep-clear": "keep clear",
};
