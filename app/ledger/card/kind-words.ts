import { type Kind, word } from "../../../src/index.ts";

/** The kinds in the trade's words, as the card says them beside a thing's name. */
export const KIND_WORDS: Readonly<Record<Kind, string>> = {
  bed: word("bed"),
  path: word("path"),
  ground: word("ground patch"),
  house: word("house"),
  shed: word("shed"),
  wall: word("wall"),
  fence: word("fence"),
  tree: word("tree"),
  gate: word("gate"),
  door: word("door"),
  tap: word("tap"),
  "keep-clear": word("keep clear"),
};
