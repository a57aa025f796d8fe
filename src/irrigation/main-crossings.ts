import { pathStrip } from "../access/barriers.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { overlaps } from "../geometry/gap.ts";
import type { Point } from "../geometry/types.ts";
import { midpoint } from "../geometry/vector.ts";
import type { Main } from "./garden-main.ts";

/** Where a main crosses a drawn path, once each: whoever walks or rolls there would trip on it. */
export function crossingsOf(
  { runs }: Pick<Main, "runs">,
  { items }: Pick<Garden, "items">,
): readonly { readonly pathId: ItemId; readonly at: Point }[] {
  const legs = runs.flatMap((run) => run.slice(1).map((to, i) => [run[i]!, to] as const));
  return items.flatMap((item) => {
    if (item.kind !== "path") return [];
    const leg = legs.find((candidate) => pathStrip(item).some((ring) => overlaps(candidate, ring)));
    return leg ? [{ pathId: item.id, at: midpoint(...leg) }] : [];
  });
}
