import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { headingOf } from "../garden/heading.ts";
import { nameOf } from "../garden/name-of.ts";
import type { WayOut } from "../rules/rule.ts";
import { formatShort } from "../units/format-length.ts";
import { say } from "../words/say.ts";
import type { Shift } from "./shift-to-clear.ts";

/** A shift to clear as a way out: what its button says, and the moves it makes. */
export function shiftWay(garden: Garden, ids: readonly ItemId[], { by, clears }: Shift): WayOut {
  const [only, ...others] = garden.items.filter(({ id }) => ids.includes(id));
  const what = only && others.length === 0 ? nameOf(only) : say`all ${ids.length}`;
  const heading = headingOf(by, garden.site.north);
  const far = formatShort(Math.hypot(...by), garden.units);
  return {
    label:
      clears.length > 1
        ? say`Shift ${what} ${far} ${heading} to clear (clears ${clears.length})`
        : say`Shift ${what} ${far} ${heading} to clear`,
    ops: ids.map((id) => ({ op: "move", id, by })),
  };
}
