import {
  type Access,
  type BedAccess,
  type Box,
  formatDistance,
  formatShort,
  type Gap,
  type Garden,
  INCH,
  type Item,
  type ItemId,
  outlineOf,
  type Point,
  type Ring,
  type Snag,
  type TurningSpace,
} from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { carried } from "../carried.ts";
import { clearPlace, markBox } from "../clear-place.ts";
import { fillHatched } from "../hatch.ts";
import { labelBoxes } from "../label.ts";
import { LETTERS, type Letters, letter, measure } from "../lettering.ts";
import { type Pen, rule, traceCircle, traceLine, traceRing } from "../pen.ts";
import { snagMarkPlaces } from "../snag-marks.ts";
import { toScreen } from "../viewport.ts";
import { paintBedLabelMasked } from "./bed.ts";
import { paintDimension } from "./dimension.ts";
import { paintGradeMark } from "./grade-mark.ts";

/** What there is to show of what has been found, and what somebody is looking at. */
export interface Shown {
  /** The garden on the screen. */
  readonly garden: Garden;
  /** The garden that was looked into: the same one, or for a moment an older one. */
  readonly of: Garden;
  readonly snags: readonly Snag[];
  readonly access: Access;
  readonly selection: ReadonlySet<ItemId>;
  readonly activeSnag: string | null;
}

/** Everything found, over the drawing: soil beyond reach, then what is looked at, then the marks of the snags. */
export function paintFindings(pen: Pen, shown: Shown): void {
  const now = new Map(shown.garden.items.map((item) => [item.id, item]));
  const then = new Map(shown.of.items.map((item) => [item.id, item]));
  const active = shown.snags.find(({ key }) => key === shown.activeSnag) ?? null;
  const looked = lookedAt(shown, active);
  const marks = snagMarkPlaces(shown.garden, shown.snags, pen.view);
  const taken = [...labelBoxes(shown.garden, pen.view), ...marks.map(({ pixel }) => markBox(pixel))];

  for (const bed of shown.access.beds) {
    const [item, before] = [now.get(bed.id), then.get(bed.id)];
    if (item && before) paintOutOfReach(pen, bed, item, before);
  }
  for (const bed of shown.access.beds) {
    if (looked.has(bed.id) && now.has(bed.id)) paintWaysOf(pen, bed, shown.access, active, taken);
  }
  if (active) paintActive(pen, active, now, shown);
  for (const { snag, pixel } of marks) {
    // The heavy dimension of the gap that is looked at says more than its mark, and stands in the same place.
    if (snag !== active || !isGap(snag)) paintGradeMark(pen, snag.grade, pixel, snag === active);
  }
}

/** A single thing selected, or what the snag being looked at is about. */
function lookedAt({ selection }: Shown, active: Snag | null): ReadonlySet<ItemId> {
  if (active) return new Set(active.itemIds);
  return selection.size === 1 ? selection : new Set();
}

/** Soil nobody can reach, hatched where it lies; the bed's name stays readable over it. */
function paintOutOfReach(pen: Pen, bed: BedAccess, item: Item, before: Item): void {
  if (bed.outOfReach.length === 0) return;
  const { ctx } = pen;
  const along = (ring: Ring): Ring => ring.map((point) => carried(point, before, item));
  ctx.beginPath();
  for (const { outer, holes } of bed.outOfReach) {
    for (const ring of [outer, ...holes]) traceRing(pen, along(ring));
  }
  ctx.save();
  ctx.globalAlpha = 0.55;
  ctx.fillStyle = INK.accentWash;
  ctx.fill("evenodd");
  ctx.restore();
  fillHatched(pen, "out-of-reach", toScreen(pen.view, item.at), "evenodd");
  rule(pen, { colour: INK.accent, width: 1, dash: [4, 3] });
  if (item.kind === "bed") paintBedLabelMasked(pen, item);
}

/** A way this wide lets two wheelchairs pass; where it is narrowest is of no interest any more, mm. */
const WIDE = 60 * INCH;

/** The ways of the bed that is looked at: to the kitchen, along the hose, the narrowest place, where a wheelchair turns. */
function paintWaysOf(pen: Pen, bed: BedAccess, access: Access, active: Snag | null, taken: Box[]): void {
  const { units } = pen;
  if (bed.kitchen) {
    const words = `kitchen ${formatDistance(bed.kitchen.length, units)}`;
    paintRoute(pen, bed.kitchen.points, words, INK.leaf, [2, 4], taken);
  }
  if (bed.hose) {
    paintRoute(
      pen,
      bed.hose.points,
      `hose ${formatDistance(bed.hose.length, units)}`,
      INK.water,
      [7, 4],
      taken,
    );
  }
  const narrowest = bed.fromGate?.narrowest ?? bed.fromDoor?.narrowest ?? null;
  // The gap a snag is about is drawn heavy already, and what stands round a selected bed is dimensioned with it.
  const told = narrowest && (narrowest.between.includes(bed.id) || isSameGap(active, narrowest));
  if (narrowest && !told && narrowest.width < WIDE) {
    const words = `way ${formatShort(narrowest.width, units)}`;
    paintDimension(pen, { from: narrowest.from, to: narrowest.to, words, colour: INK.faint });
  }
  const space = access.wheelchair?.turningAt.find(({ bed: id }) => id === bed.id)?.space;
  if (space) paintTurningSpace(pen, space);
}

const isSameGap = (snag: Snag | null, { from, to }: Gap): boolean =>
  snag?.at.length === 2 && near(snag.at[0]!, from) && near(snag.at[1]!, to);

const near = ([ax, ay]: Point, [bx, by]: Point): boolean => Math.hypot(ax - bx, ay - by) < 1;

function paintRoute(
  pen: Pen,
  points: readonly Point[],
  words: string,
  colour: string,
  dash: readonly number[],
  taken: Box[],
): void {
  const { ctx } = pen;
  ctx.beginPath();
  ctx.lineJoin = "round";
  ctx.lineCap = "butt";
  traceLine(pen, points);
  rule(pen, { colour, width: 2, dash });
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
  const words = space.kind === "circle" ? `${formatDistance(space.diameter, units)} turn` : "T turn";
  letter(pen, words, toScreen(view, space.at), LETTERS.size);
}

/** The snag being looked at: its things outlined, and its measure drawn where it was taken. */
function paintActive(pen: Pen, snag: Snag, now: ReadonlyMap<ItemId, Item>, shown: Shown): void {
  const { ctx, view } = pen;
  for (const id of snag.itemIds) {
    const item = now.get(id);
    if (!item || !("shape" in item) || shown.selection.has(id)) continue;
    ctx.beginPath();
    traceRing(pen, outlineOf(item), 2);
    rule(pen, { colour: INK.accent, width: 2.5 });
  }
  const [from, to] = snag.at;
  if (from && to && isGap(snag)) {
    paintDimension(pen, { from, to, words: gapWords(snag, pen), colour: INK.accent, heavy: true });
    return;
  }
  for (const place of snag.at) {
    const [x, y] = toScreen(view, place);
    ctx.beginPath();
    ctx.arc(x, y, 5, 0, 2 * Math.PI);
    rule(pen, { colour: INK.accent, width: 2 });
  }
}

/** Something measured between two places. */
const isGap = ({ at, unit, itemIds }: Snag): boolean =>
  at.length === 2 && unit === "mm" && itemIds.length !== 1;

/** "20 in · 4 in short". */
function gapWords({ measured, limit }: Snag, { units }: Pen): string {
  const off = formatShort(Math.abs(limit - measured), units);
  return `${formatShort(measured, units)} · ${off} ${measured < limit ? "short" : "over"}`;
}
