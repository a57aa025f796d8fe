import type { Garden, SunGrid, SunMap } from "../../src/index.ts";

interface Known {
  readonly garden: Garden;
  readonly settled: boolean;
  readonly grid: SunGrid;
}

/**
 * The bare ground of one map after another. While beds are moved it stays the very same grid, so that the lines drawn of
 * it stay too; and where it has been looked at closely, coarser looks at the same ground do not blur it.
 */
export function keepGround(): (garden: Garden, map: SunMap, settled: boolean) => SunGrid {
  let known: Known | null = null;
  return (garden, { yard }, settled) => {
    const isSame = known && sameGround(known.garden, garden);
    if (!(known && isSame && (known.settled || !settled))) known = { garden, settled, grid: yard };
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
