import { told } from "../words/say.ts";
import type { Crop } from "./crop-table.ts";

/** Names that begin with a place keep their capital. */
const PLACES = /^(Brussels|Chinese|Swiss)\b/;

/**
 * What a crop is called inside a sentence: "leaf lettuce" for the table's "Lettuce, leaf", without what stands in
 * brackets or after a stroke.
 */
export function cropWord({ name }: Pick<Crop, "name">): string {
  const plain = name.replace(/ \(.*\)$/, "").replace(/ \/ .*$/, "");
  const [what = plain, sort] = plain.split(", ");
  const word = PLACES.test(what) ? what : what.toLowerCase();
  return told(sort ? `${sort} ${word}` : word);
}
