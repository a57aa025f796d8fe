import type { Crop } from "../crops/crop-table.ts";
import { rootRun } from "../crops/root-run.ts";
import { type GroundUnder, isHard } from "../garden/ground-under.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Cover } from "../garden/kinds/ground.ts";
import type { Limits } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { centroid } from "../geometry/ring.ts";
import type { Point } from "../geometry/types.ts";
import { say, told, word } from "../words/say.ts";

/** What roots meet below the soil of a bed. */
export interface Below {
  readonly words: string;
  readonly at: Point;
  /** Soil asked for whatever is grown. */
  readonly least: number;
  readonly asks: (crop: Crop) => number;
}

const COVER_WORDS: Partial<Record<Cover, string>> = {
  paving: word("over paving"),
  deck: word("on a deck"),
  roof: word("on a roof"),
};
const HARD_GROUND = word("over hard ground");

/**
 * What stops roots below a bed, and how much soil it then has to hold.
 *
 * Paving, a deck, a roof, a sheet, and contaminated ground (which roots must not enter) stop roots: there a crop asks for its
 * whole root run. A table bed is watered and fed like a pot, so it is held to the bed depth of its crops only.
 */
export function belowBed(bed: Bed, grounds: readonly GroundUnder[], limits: Limits): Below {
  const middle = centroid(outlineOf(bed));
  const whole = (crop: Crop) => rootRun(crop, "hard");
  const open = (crop: Crop) => rootRun(crop, "soil");
  const stopped = (words: string, at: Point): Below => ({
    words,
    at,
    least: limits.hardDepth,
    asks: whole,
  });
  if (bed.legs !== null) return { words: say`in a table bed`, at: middle, least: 0, asks: open };
  const hard = grounds.find(({ ground }) => isHard(ground.cover));
  if (hard) return stopped(told(COVER_WORDS[hard.ground.cover] ?? HARD_GROUND), hard.at);
  if (bed.bottom.liner === "sheet") return stopped("over a sheet", middle);
  const bad = grounds.find(({ ground }) => ground.contaminated);
  if (bad) return stopped(say`over contaminated ground`, bad.at);
  return { words: say`over open ground`, at: middle, least: limits.openDepth, asks: open };
}
