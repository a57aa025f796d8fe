import { type ItemOf, outlineOf } from "../../../src/index.ts";
import { INK, type InkName } from "../../style/ink.ts";
import { fillHatched } from "../hatch.ts";
import type { HatchName } from "../hatch-tiles.ts";
import { type Pen, rule, traceRing } from "../pen.ts";
import { toScreen } from "../viewport.ts";

type Cover = ItemOf<"ground">["cover"];

export const GROUND_HATCH: Readonly<Record<Cover, HatchName>> = {
  soil: "earth",
  lawn: "lawn",
  weeds: "weeds",
  bark: "bark",
  "loose-gravel": "loose-gravel",
  "firm-gravel": "firm-gravel",
  paving: "paving",
  deck: "deck",
  roof: "roof",
};

/** The tint under a hatch. */
export const GROUND_TINT: Readonly<Record<Cover, InkName>> = {
  soil: "groundSoil",
  lawn: "groundLawn",
  weeds: "groundWeeds",
  bark: "groundBark",
  "loose-gravel": "groundLooseGravel",
  "firm-gravel": "groundFirmGravel",
  paving: "groundPaving",
  deck: "groundDeck",
  roof: "groundRoof",
};

/** A patch of ground by the hatch of what lies there; a dashed edge where the soil under it is contaminated. */
export function paintGround(pen: Pen, item: ItemOf<"ground">): void {
  const { ctx } = pen;
  ctx.beginPath();
  traceRing(pen, outlineOf(item), 1);
  ctx.fillStyle = INK[GROUND_TINT[item.cover]];
  ctx.fill();
  fillHatched(pen, GROUND_HATCH[item.cover], toScreen(pen.view, item.at));
  if (item.contaminated) rule(pen, { colour: INK.accent, width: 1.5, dash: [7, 3, 1.5, 3] });
  else rule(pen, { colour: INK.faint, width: 1 });
}
