import { type ItemOf, outlineOf } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { fillHatched } from "../hatch.ts";
import { labelOf } from "../label.ts";
import { type Pen, rule, traceRing } from "../pen.ts";
import { toScreen } from "../viewport.ts";
import { paintLabel } from "./label.ts";

/** A house or shed: hatched all over, its walls the heaviest line on the plan. */
export function paintBuilding(pen: Pen, item: ItemOf<"house" | "shed">): void {
  const { ctx, view, units } = pen;
  const house = item.kind === "house";
  ctx.lineJoin = "miter";
  ctx.beginPath();
  traceRing(pen, outlineOf(item), house ? 3 : 2);
  ctx.fillStyle = INK.building;
  ctx.fill();
  ctx.save();
  ctx.globalAlpha = 0.55;
  fillHatched(pen, house ? "building" : "shed", toScreen(view, item.at));
  ctx.restore();
  rule(pen, { colour: INK.ink, width: house ? 2.5 : 2 });
  paintLabel(pen, labelOf(item, view, units), INK.building);
}
