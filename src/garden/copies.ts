import type { Point } from "../geometry/types.ts";
import { add } from "../geometry/vector.ts";
import type { ItemId } from "./fields.ts";
import type { Garden } from "./garden.ts";
import type { Item } from "./item.ts";
import { freshId } from "./new-item.ts";
import type { Op } from "./op.ts";

/**
 * Adds copies of things, in front of everything, with ids of their own and numbered names ("Salads 2").
 * @param by how far each copy lies from its original, mm
 * @returns "add" changes; the copies' ids are those of their items
 * @throws RangeError for an id that is not there
 */
export function duplicateOps(
  garden: Pick<Garden, "items">,
  ids: readonly ItemId[],
  by: Point,
): Extract<Op, { op: "add" }>[] {
  const chosen = new Set(ids);
  for (const id of chosen) {
    if (!garden.items.some((item) => item.id === id))
      throw new RangeError(`nothing in this garden is called "${id}"`);
  }
  const copies: Item[] = [];
  // In the garden's own order, so that copies lie over each other as their originals do.
  for (const item of garden.items) {
    if (!chosen.has(item.id)) continue;
    const items = [...garden.items, ...copies];
    const id = freshId({ items }, item.kind);
    copies.push({ ...item, id, name: nextName(item.name, items), at: add(item.at, by) });
  }
  return copies.map((item) => ({ op: "add", item }));
}

/** "Salads" is followed by "Salads 2", that by "Salads 3", whichever is free; no name stays no name. */
function nextName(name: string, items: readonly Item[]): string {
  if (name.trim() === "") return name;
  const stem = name.replace(/ \d+$/, "");
  const taken = new Set(items.map((item) => item.name));
  let number = 2;
  while (taken.has(numbered(stem, number))) number++;
  return numbered(stem, number);
}

/** A name may have 80 letters. */
const LONGEST_STEM = 74;
const numbered = (stem: string, number: number) => `${shortStem(stem)} ${number}`;
/** Cut as a string is counted, and not within a letter. */
const shortStem = (stem: string) => stem.slice(0, LONGEST_STEM).replace(/[\uD800-\uDBFF]$/, "");

export const removeOps = (ids: readonly ItemId[]): Op[] => ids.map((id) => ({ op: "remove", id }));
