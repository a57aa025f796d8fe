import { type Item, unreachable } from "../../../src/index.ts";
import type { Pen } from "../pen.ts";
import { paintFence, paintWall } from "./barrier.ts";
import { paintBed } from "./bed.ts";
import { paintBuilding } from "./building.ts";
import { paintGround } from "./ground.ts";
import { paintKeepClear } from "./keep-clear.ts";
import { paintOpening } from "./opening.ts";
import { paintPath } from "./path.ts";
import { paintTap } from "./tap.ts";
import { paintTree } from "./tree.ts";

/** Draws any thing that can stand in a yard. */
export function paintItem(pen: Pen, item: Item): void {
  switch (item.kind) {
    case "bed":
      paintBed(pen, item);
      break;
    case "path":
      paintPath(pen, item);
      break;
    case "ground":
      paintGround(pen, item);
      break;
    case "house":
    case "shed":
      paintBuilding(pen, item);
      break;
    case "wall":
      paintWall(pen, item);
      break;
    case "fence":
      paintFence(pen, item);
      break;
    case "tree":
      paintTree(pen, item);
      break;
    case "gate":
    case "door":
      paintOpening(pen, item);
      break;
    case "tap":
      paintTap(pen, item);
      break;
    case "keep-clear":
      paintKeepClear(pen, item);
      break;
    default:
      unreachable(item);
  }
}
