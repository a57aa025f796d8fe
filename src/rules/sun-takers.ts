import type { Garden } from "../garden/garden.ts";
import type { Item } from "../garden/item.ts";
import { nameOf } from "../garden/name-of.ts";
import { applyOps } from "../garden/operations.ts";
import { bedShade } from "../sun/sun-hours.ts";
import type { BedSun } from "../sun/sun-map.ts";
import { formatHours } from "../units/format-figure.ts";
import { say } from "../words/say.ts";
import type { WayOut } from "./rule.ts";

/** What takes less is not worth a word, hours. */
const WORTH_A_WORD = 0.1;

/** What takes most of a bed's sun, as a sentence with a space before it: " House takes 2.1 h of it." Empty for next to nothing. */
export function takerWords({ shade }: BedSun, items: readonly Item[]): string {
  const most = shade?.find(({ hours }) => hours >= WORTH_A_WORD);
  const item = most && items.find(({ id }) => id === most.id);
  return most && item ? say` ${nameOf(item)} takes ${formatHours(most.hours)} of it.` : "";
}

/** Takes out the trellis of another bed that shades this one, where that alone does it, as a way out. */
export function withoutTrellis(
  garden: Garden,
  { id, shade }: BedSun,
  isEnough: (sun: BedSun) => boolean,
): WayOut[] {
  for (const taker of shade ?? []) {
    const other = garden.items.find((item) => item.id === taker.id);
    if (other?.kind !== "bed" || other.trellis === null) continue;
    const ops = [{ op: "set" as const, id: other.id, changes: { trellis: null } }];
    const after = bedShade(applyOps(garden, ops), id);
    if (after && isEnough(after)) return [{ label: say`Take out the trellis of ${nameOf(other)}`, ops }];
  }
  return [];
}
