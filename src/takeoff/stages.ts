import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Path } from "../garden/kinds/path.ts";

/** One stage of the work by its number, or all that is yet to be built. */
export type Stage = number | "all";

/** What of a garden is built in a stage. */
export interface Building {
  readonly beds: readonly Bed[];
  readonly paths: readonly Path[];
}

export function buildingIn({ items }: Pick<Garden, "items">, stage: Stage): Building {
  const isIn = (item: Bed | Path) => stage === "all" || item.stage === stage;
  return {
    beds: items.filter((item) => item.kind === "bed").filter(isIn),
    paths: items.filter((item) => item.kind === "path").filter(isIn),
  };
}

/** Stages that any bed or path belongs to, the first to be built first; `[1]` for a garden without. */
export function stagesOf(garden: Pick<Garden, "items">): readonly number[] {
  const { beds, paths } = buildingIn(garden, "all");
  const stages = new Set([...beds, ...paths].map(({ stage }) => stage));
  return stages.size === 0 ? [1] : [...stages].sort((a, b) => a - b);
}
