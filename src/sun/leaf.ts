import type { Tree } from "../garden/kinds/tree.ts";
import { practice, type Source } from "../garden/source.ts";

/** Months in leaf, 1 for January, of trees that drop their leaves. */
export const LEAF_MONTHS: {
  readonly north: readonly number[];
  readonly south: readonly number[];
  readonly source: Source;
} = {
  north: [5, 6, 7, 8, 9, 10],
  south: [11, 12, 1, 2, 3, 4],
  source: practice(
    "Leaves are out from late April or May to late October in most of the temperate north, half a year later south of the equator; a rule of thumb",
  ),
};

/** What is usual in a hemisphere, for trees that do not say. */
export const leafMonths = (latitude: number): readonly number[] =>
  latitude < 0 ? LEAF_MONTHS.south : LEAF_MONTHS.north;

/** The months a tree says it is in leaf, from the first to the last, over new year where that is the earlier; null if it says none. */
export function ownLeafMonths({ leaf, inLeaf }: Pick<Tree, "leaf" | "inLeaf">): readonly number[] | null {
  if (leaf === "evergreen" || inLeaf === null) return null;
  const count = ((inLeaf.to - inLeaf.from + 12) % 12) + 1;
  return Array.from({ length: count }, (_, i) => ((inLeaf.from - 1 + i) % 12) + 1);
}

/** Share of direct light that gets through a tree's crown. */
export const crownLight = (tree: Tree, inLeaf: boolean): number =>
  tree.leaf === "evergreen" || inLeaf ? tree.lightInLeaf : tree.lightBare;
