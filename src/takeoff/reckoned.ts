import type { Garden } from "../garden/garden.ts";
import { dripPlan } from "../irrigation/drip-plan.ts";
import type { DripPlan } from "../irrigation/types.ts";
import { asNew } from "./as-new.ts";
import { type BedQuantities, bedQuantities } from "./bed-quantities.ts";
import { type BoardBill, buyBoards, type ProvenPlans } from "./buy-boards.ts";
import { buyBottoms } from "./buy-bottom.ts";
import { buyDrip } from "./buy-drip.ts";
import { buyEdging } from "./buy-edging.ts";
import { buyFixings } from "./buy-fixings.ts";
import { buyLoose, buyPaving } from "./buy-loose.ts";
import { buyWalls } from "./buy-walls.ts";
import { type Bill, joinedBills } from "./purchase.ts";
import { type Settings, settingsOf } from "./settings.ts";
import { buildingIn, type Stage, stagesOf } from "./stages.ts";
import type { BoardPlan } from "./types.ts";

/** All that is counted and bought for a stage, before prices are looked up. */
export interface Reckoned extends Bill {
  readonly beds: readonly BedQuantities[];
  readonly plans: readonly BoardPlan[];
}

/** @param drip the plan of the drip lines, worked out where it is not given; null leaves it out */
export function reckoned(
  garden: Garden,
  stage: Stage = "all",
  proven?: ProvenPlans,
  drip: DripPlan | null = dripPlan(garden),
): Reckoned {
  const settings = settingsOf(garden);
  const { prices, items } = garden;
  const { beds: built, paths } = buildingIn(garden, stage);
  const beds = built.map((bed) => bedQuantities(bed, settings));
  const boards = buyBoards(beds, prices, { ...settings, onHand: leftAtHome(garden, stage) }, proven);
  const bill = joinedBills([
    boards,
    buyWalls(beds, settings),
    buyFixings(beds, prices, settings),
    buyBottoms(beds, garden, settings),
    buyLoose(beds, paths, items, prices, settings),
    buyEdging(paths, items, settings),
    ...(drip ? [buyDrip(drip, garden, stage)] : []),
  ]);
  return { beds, plans: boards.plans, ...bill };
}

/**
 * Walls, bottoms, edging, paving and drip lines as if nothing stood and no board were at home: what it costs to renew them.
 * Loose materials are left out.
 */
export function reckonedAnew(garden: Garden): Bill {
  const fresh = asNew(garden);
  const settings = settingsOf(fresh);
  const { beds: built, paths } = buildingIn(fresh, "all");
  const beds = built.map((bed) => bedQuantities(bed, settings));
  return joinedBills([
    wallsOf(beds, fresh, settings),
    buyBottoms(beds, fresh, settings),
    buyPaving(paths, fresh.items, settings),
    buyEdging(paths, fresh.items, settings),
    buyDrip(dripPlan(garden), fresh, "all"),
  ]);
}

/** Walls and what holds them, all boards bought. */
export const wallsOf = (beds: readonly BedQuantities[], { prices }: Garden, settings: Settings): Bill =>
  joinedBills([
    buyBoards(beds, prices, { ...settings, onHand: [] }),
    buyWalls(beds, settings),
    buyFixings(beds, prices, settings),
  ]);

/** Boards at home that the stages before have left. */
function leftAtHome(garden: Garden, stage: Stage): Settings["onHand"] {
  const settings = settingsOf(garden);
  if (stage === "all" || settings.onHand.length === 0) return settings.onHand;
  let onHand = settings.onHand;
  for (const earlier of stagesOf(garden).filter((one) => one < stage)) {
    const beds = buildingIn(garden, earlier).beds.map((bed) => bedQuantities(bed, settings));
    onHand = without(onHand, buyBoards(beds, garden.prices, { ...settings, onHand }));
  }
  return onHand;
}

/** Rows of boards less those that plans use, the first row of a length first. */
function without(onHand: Settings["onHand"], { plans }: BoardBill): Settings["onHand"] {
  const used = plans.flatMap(({ board, timber, plan }) =>
    plan.boards
      .filter(({ stock }) => stock.onHand)
      .map(({ stock }) => ({ board, timber, length: stock.length })),
  );
  return onHand.flatMap((row) => {
    let count = row.count;
    while (count > 0) {
      const at = used.findIndex(
        ({ board, timber, length }) =>
          board === row.board && timber === row.timber && Math.abs(length - row.length) < 0.5,
      );
      if (at < 0) break;
      used.splice(at, 1);
      count--;
    }
    return count > 0 ? [{ ...row, count }] : [];
  });
}
