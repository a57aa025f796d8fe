import { distance, type Garden, midpoint, type Point } from "../../../src/index.ts";
import type { View } from "../../store/editor.ts";
import { toScreen } from "../viewport.ts";
import { distancesOf } from "./distances.ts";
import type { Marks } from "./marks.ts";

/** Half of the loupe's width, and how many times larger things are seen in it. */
export const LOUPE_RADIUS = 64;
export const LOUPE_TIMES = 2;

/** How far from the finger its middle stands: clear of the fingertip. */
const OFF = 118;
/** Farther from the finger than this, a gap is not covered by it, px. */
const COVERED = 90;
/** A gap this wide on the screen needs no loupe, px. */
const WIDE = 60;
const MARGIN = 4;

/**
 * What a finger covers or is too coarse to see, px of the plan: the handle it pulls, or the narrowest gap beside the one
 * thing it carries.
 * @returns null where a loupe would show nothing that cannot be seen as it is
 */
export function lookedAt(
  garden: Garden,
  view: View,
  { finger, readout, held }: Pick<Marks, "finger" | "readout" | "held">,
): Point | null {
  if (!finger) return null;
  if (readout) return toScreen(view, readout.at);
  const [only] = held;
  if (held.length !== 1 || only === undefined) return null;
  const gaps = distancesOf(garden, only);
  if (gaps.length === 0) return null;
  const narrowest = gaps.reduce((least, gap) => (gap.width < least.width ? gap : least));
  const place = toScreen(view, midpoint(narrowest.from, narrowest.to));
  return narrowest.width * view.scale < WIDE || distance(place, finger) < COVERED ? place : null;
}

/** Where the loupe's middle stands, px of the plan: above the finger, or beside it where there is no room above. */
export function loupePlace(finger: Point, width: number): Point {
  const least = LOUPE_RADIUS + MARGIN;
  const above = finger[1] - OFF;
  if (above >= least) return [Math.min(Math.max(finger[0], least), width - least), above];
  const beside = finger[0] < width / 2 ? finger[0] + OFF : finger[0] - OFF;
  return [Math.min(Math.max(beside, least), width - least), Math.max(finger[1], least)];
}
