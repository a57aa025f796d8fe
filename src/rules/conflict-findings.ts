import type { Barrier, Movable } from "../access/barriers.ts";
import type { Conflict } from "../access/place.ts";
import type { Garden } from "../garden/garden.ts";
import type { Item } from "../garden/item.ts";
import { formatShort } from "../units/format-length.ts";
import type { Facts } from "./facts.ts";
import type { Finding } from "./rule.ts";
import { shiftWayOut } from "./shift-way-out.ts";

type Told = Pick<Finding, "title" | "detail">;

/**
 * Findings about beds and sheds that stand where they may not, for the rules that differ only in what stands where.
 * @param what the kinds of ground this rule is about
 * @param tell the words, from the two things and the depth of their overlap as it is shown
 */
export function conflictFindings(
  { garden, place }: Pick<Facts, "garden" | "place">,
  what: readonly Barrier["what"][],
  tell: (movable: Movable, other: Item, depth: string) => Told,
): Finding[] {
  return place.conflicts
    .filter((conflict) => what.includes(conflict.what))
    .flatMap((conflict) => {
      const movable = place.movables.find(({ id }) => id === conflict.of);
      const other = garden.items.find(({ id }) => id === conflict.with);
      if (!movable || !other) return [];
      return [
        {
          itemIds: [conflict.of, conflict.with],
          at: [conflict.at],
          measured: conflict.depth,
          limit: 0,
          unit: "mm" as const,
          ...tell(movable, other, formatShort(conflict.depth, garden.units)),
          get waysOut() {
            return waysApart(garden, conflict, other);
          },
        },
      ];
    });
}

/** Either of two beds or sheds may be the one to give way. */
function waysApart(garden: Garden, conflict: Conflict, other: Item) {
  const named = other.kind === "bed" || other.kind === "shed";
  return [
    ...shiftWayOut(garden, conflict.of, { named }),
    ...(named ? shiftWayOut(garden, conflict.with, { named }) : []),
  ];
}
