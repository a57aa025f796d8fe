import type { Block } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";
import { bedsBlock } from "./beds.ts";
import { cutPlanBlocks } from "./cut-plan.ts";
import { orderOfWorkBlock } from "./order-of-work.ts";
import { proofsBlock } from "./proofs.ts";
import { settingOutBlock } from "./setting-out.ts";
import { stillOpenBlock } from "./still-open.ts";
import { sunHoursBlock } from "./sun-hours.ts";
import { takeCareBlock } from "./take-care.ts";
import { toBuyBlock } from "./to-buy.ts";
import { upkeepBlock } from "./upkeep.ts";
import { waysBlock } from "./ways.ts";

/** The sheet's lists in the order they are read: what is measured, what is bought, what is done, what comes after. */
export const blocksOf = (facts: SheetFacts, width: number): Block[] => [
  settingOutBlock(facts, width),
  proofsBlock(facts, width),
  stillOpenBlock(facts, width),
  bedsBlock(facts, width),
  ...cutPlanBlocks(facts, width),
  toBuyBlock(facts, width),
  orderOfWorkBlock(facts, width),
  waysBlock(facts, width),
  sunHoursBlock(facts, width),
  upkeepBlock(facts, width),
  takeCareBlock(facts, width),
];
