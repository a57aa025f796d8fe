import {
  type Access,
  type BedAccess,
  type Box,
  formatDistance,
  formatShort,
  INCH,
  type Point,
  type Route,
  type Snag,
  say,
  type TurningSpace,
} from "../../../src/index.ts";
import { INK, type InkName } from "../../style/ink.ts";
import { clearPlace } from "../clear-place.ts";
import { LETTERS, type Letters, letter, measure } from "../lettering.ts";
import { type Pen, rule, traceCircle, traceLine, traceRing } from "../pen.ts";
import { toScreen } from "../viewport.ts";
import { paintDimension } from "./dimension.ts";

/** Which of a bed's ways are worth drawing. */
export interface Ways {
  readonly kitchen: boolean;
  readonly hose: boolean;
  readonly narrowest: boolean;
  readonly turning: boolean;
}

const NO_WAYS: Ways = { kitchen: false, hose: false, narrowest: false, turning: false };
export const ALL_WAYS: Ways = { kitchen: true, hose: true, narrowest: true, turning: true };

/** The ways that a snag of some rule is about; for most rules none. */
export function waysOfRule(id: string): Ways {
  if (id === "long-walk") return { ...NO_WAYS, kitchen: true };
  if (id === "long-hose") return { ...NO_WAYS, hose: true };
  if (/wheelchair|turn/.test(id)) return { ...NO_WAYS, narrowest: true, turning: true };
  if (/way|sealed-off/.test(id)) return { ...NO_WAYS, narrowest: true };
  return NO_WAYS;
}

/** A way this wide lets two wheelchairs pass; where it is narrowest is of no interest any more, mm. */
const WIDE = 60 * INCH;
const WALK = { colour: "leaf", dash: [2, 4] } as const;
const HOSE = { colour: "water", dash: [7, 4] } as const;

/** The ways of a bed: to the kitchen, along the hose, the narrowest place, where a wheelchair turns. */
export function paintWays(pen: Pen, bed: BedAccess, access: Access, ways: Ways, taken: Box[]): void {
  const far = ({ length }: Route) => formatDistance(length, pen.units);
  if (ways.kitchen && bed.kitchen)
    paintRoute(pen, bed.kitchen, say`kitchen ${far(bed.kitchen)}`, WALK, taken);
  if (ways.hose && bed.hose) paintRoute(pen, bed.hose, say`hose ${far(bed.hose)}`, HOSE, taken);
  const narrowest = bed.fromGate?.narrowest ?? bed.fromDoor?.narrowest ?? null;
  // What stands beside the bed itself is dimensioned with it.
  if (ways.narrowest && narrowest && narrowest.width < WIDE && !narrowest.between.includes(bed.id)) {
    const words = say`way ${formatShort(narrowest.width, pen.units)}`;
    paintDimension(pen, { from: narrowest.from, to: narrowest.to, words, colour: "faint" });
  }
  const space = access.wheelchair?.turningAt.find(({ bed: id }) => id === bed.id)?.space;
  if (ways.turning && space) paintTurningSpace(pen, space);
}

/** The turning space at the dead end that a snag is about, if there is one. */
export function paintDeadEnd(pen: Pen, snag: Snag, access: Access): void {
  for (const { at, space } of access.wheelchair?.deadEnds ?? []) {
    if (space && snag.at.some((place) => isNear(place, at))) paintTurningSpace(pen, space);
  }
}

const isNear = ([ax, ay]: Point, [bx, by]: Point): boolean => Math.hypot(ax - bx, ay - by) < 1;

function paintRoute(
  pen: Pen,
  { points }: Route,
  words: string,
  { colour, dash }: { readonly colour: InkName; readonly dash: readonly number[] },
  taken: Box[],
): void {
  const { ctx } = pen;
  ctx.beginPath();
  ctx.lineJoin = "round";
  ctx.lineCap = "butt";
  traceLine(pen, points);
  rule(pen, { colour: INK[colour], width: 2, dash });
  const letters: Letters = { ...LETTERS.size, weight: 600, colour };
  const line = points.map((point) => toScreen(pen.view, point));
  const box = clearPlace(line, measure(words, letters), letters.size, taken);
  taken.push(box);
  letter(pen, words, [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2], letters);
}

function paintTurningSpace(pen: Pen, space: TurningSpace): void {
  const { ctx, view, units } = pen;
  ctx.beginPath();
  if (space.kind === "circle") traceCircle(pen, space.at, space.diameter / 2);
  else traceRing(pen, space.outline);
  rule(pen, { colour: INK.ink, width: 1.5, dash: [6, 5] });
  const words = space.kind === "circle" ? say`${formatDistance(space.diameter, units)} turn` : say`T turn`;
  letter(pen, words, toScreen(view, space.at), LETTERS.size);
}
