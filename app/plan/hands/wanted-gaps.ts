import { type Garden, LIMITS, limitsOf } from "../../../src/index.ts";
import type { WantedGap } from "./constraints.ts";

/** How wide a walked gap beside a bed has to be for those who garden here, mm. */
export function wayWanted(garden: Pick<Garden, "gardener" | "limits">): number {
  const limits = limitsOf(garden);
  const { gardener } = garden;
  return Math.max(
    limits.standingRoom,
    gardener.kneeling ? limits.kneelingWay : 0,
    gardener.wheelchair ? limits.wheelchairWay : 0,
  );
}

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
