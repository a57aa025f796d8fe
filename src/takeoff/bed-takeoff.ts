import { frameOf } from "../garden/frame.ts";
import type { BedQuantities } from "./bed-quantities.ts";
import type { BedTakeoff } from "./types.ts";

/** What the takeoff tells of one bed. `cost`: its share of all purchases. */
export function bedTakeoff(quantities: BedQuantities, cost: number): BedTakeoff {
  const { bed, frame, fill, soilAreaMm2, soilDepth, wallHeight, mulch, standing } = quantities;
  const { outside, inside } = frameOf(bed);
  const ordered = fill.mixOrder + fill.woodyOrder;
  const brought = bed.fill.way === "native" ? fill.woodyNew : fill.mixNew + fill.woodyNew;
  return {
    id: bed.id,
    outside,
    inside,
    soilAreaMm2,
    wallHeight,
    soilDepth,
    soilVolumeL: fill.soil,
    mixVolumeL: fill.mix,
    woodyVolumeL: fill.woody,
    orderVolumeL: ordered,
    mulchVolumeL: mulch,
    weightKg: fill.weight,
    boards: frame?.pieces ?? [],
    posts: frame?.posts.count ?? 0,
    stakes: frame?.stakes.count ?? 0,
    ties: frame?.ties.count ?? 0,
    screws: (frame?.screws.count ?? 0) + (frame?.rail?.screws.count ?? 0),
    cost,
    stage: bed.stage,
    frameStands: standing.coursesNew === 0,
    coursesStanding: standing.courses,
    coursesNew: standing.coursesNew,
    soilHaveL: fill.have,
    newSoilL: brought,
    settlingL: ordered - brought,
    joined: frame?.joined ?? null,
    capRail: frame?.rail?.pieces ?? [],
    postsWhy: frame?.posts.why ?? null,
    stakesWhy: frame?.stakes.why ?? null,
    tiesWhy: frame?.ties.why ?? null,
    loadKgM2: soilAreaMm2 > 0 ? fill.weight / (soilAreaMm2 / 1e6) : 0,
  };
}
