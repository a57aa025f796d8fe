import type { Garden, SunGrid, SunMap } from "../../src/index.ts";
import type { Closeness } from "../workers/sun-answers.ts";

/** How closely a map has looked, coarsest first. */
const CLOSENESS: readonly Closeness[] = ["following", "live", "closer", "settled"];

interface Known {
  readonly garden: Garden;
  /** Index in `CLOSENESS`; following looks as closely as live. */
  readonly closely: number;
  readonly grid: SunGrid;
}

/**
 * The bare ground of one map after another. While beds are moved it stays the very same grid, so that the lines drawn of
 * it stay too; and where it has been looked at closely, coarser looks at the same ground do not blur it.
 */
export function keepGround(): (garden: Garden, map: SunMap, closeness: Closeness) => SunGrid {
  let known: Known | null = null;
  return (garden, { yard }, closeness) => {
    const closely = Math.max(1, CLOSENESS.indexOf(closeness));
    const isSame = known && sameGround(known.garden, garden);
    if (!(known && isSame && known.closely >= closely)) known = { garden, closely, grid: yard };
    return known.grid;
  };
}

function sameGround(before: Garden, now: Garden): boolean {
  const [were, are] = [before, now].map(({ items }) => items.filter(({ kind }) => kind !== "bed"));
  return (
    before.yard === now.yard &&
    before.site === now.site &&
    were!.length === are!.length &&
    were!.every((item, i) => item === are![i])
  );
}
