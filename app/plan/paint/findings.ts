import {
  type Access,
  type BedAccess,
  formatShort,
  type Garden,
  type Item,
  type ItemId,
  outlineOf,
  type Ring,
  type Snag,
  say,
} from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { carried } from "../carried.ts";
import { markBox } from "../clear-place.ts";
import { fillHatched } from "../hatch.ts";
import { labelBoxes } from "../label.ts";
import { type Pen, rule, traceRing } from "../pen.ts";
import { snagMarkPlaces } from "../snag-marks.ts";
import { toScreen } from "../viewport.ts";
import { paintBedLabelMasked } from "./bed.ts";
import { paintDimension } from "./dimension.ts";
import { paintGradeMark } from "./grade-mark.ts";
import { ALL_WAYS, paintDeadEnd, paintWays, waysOfRule } from "./ways.ts";

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
  const selected = selectedAlone(shown, active);
  const marks = snagMarkPlaces(shown.garden, shown.snags, pen.view);
  const taken = [...labelBoxes(shown.garden, pen.view), ...marks.map(({ pixel }) => markBox(pixel))];

  for (const bed of shown.access.beds) {
    const [item, before] = [now.get(bed.id), then.get(bed.id)];
    if (item && before) paintOutOfReach(pen, bed, item, before);
  }
  for (const bed of shown.access.beds) {
    if (!now.has(bed.id)) continue;
    if (bed.id === selected) paintWays(pen, bed, shown.access, ALL_WAYS, taken);
    else if (active?.itemIds.includes(bed.id))
      paintWays(pen, bed, shown.access, waysOfRule(active.rule), taken);
  }
  if (active) {
    paintDeadEnd(pen, active, shown.access);
    paintActive(pen, active, now, shown);
  }
  for (const { snag, pixel } of marks) {
    // The heavy dimension of the gap that is looked at says more than its mark, and stands in the same place.
    if (snag !== active || !isGap(snag)) paintGradeMark(pen, snag.grade, pixel, snag === active);
  }
}

/** The one thing selected, unless it is selected because a snag about it is looked at. */
function selectedAlone({ selection }: Shown, active: Snag | null): ItemId | null {
  const [id] = selection;
  return selection.size === 1 && id && !active?.itemIds.includes(id) ? id : null;
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
    paintDimension(pen, { from, to, words: gapWords(snag, pen), colour: "accent", heavy: true });
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
  const now = formatShort(measured, units);
  return measured < limit ? say`${now} · ${off} short` : say`${now} · ${off} over`;
}
