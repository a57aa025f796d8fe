import { type Garden, LIMITS, limitsOf } from "../../../src/index.ts";
import type { WantedGap } from "./constraints.ts";

/** The gaps worth leaving between things that stand in the way: none, or one that meets a limit. */
export function wantedGaps(garden: Pick<Garden, "gardener" | "limits">): readonly WantedGap[] {
  const limits = limitsOf(garden);
  const { gardener } = garden;
  const ways = [
    ...(gardener.kneeling ? (["kneelingWay"] as const) : (["standingRoom"] as const)),
    ...(gardener.barrow ? (["barrowWay"] as const) : []),
    ...(gardener.wheelchair ? (["wheelchairWay"] as const) : []),
  ];
  const gaps = ways.map((way) => ({ width: limits[way], label: LIMITS[way].label }));
  return [{ width: 0, label: "" }, ...gaps];
}
