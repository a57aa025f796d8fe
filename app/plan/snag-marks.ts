import { type Box, type Garden, type Item, outlineOf, type Point, type Snag } from "../../src/index.ts";
import type { View } from "../store/editor.ts";
import { labelBoxes } from "./label.ts";
import { letteringAge } from "./lettering.ts";
import { toPlan, toScreen } from "./viewport.ts";

/** Where the mark of a snag stands. */
export interface SnagMark {
  readonly key: string;
  readonly snag: Snag;
  /** Its middle on the plan, mm. */
  readonly at: Point;
  /** The same in px of the plan's element. */
  readonly pixel: Point;
}

export const MARK_RADIUS = 9;
const OUTSIDE = 11;
const OFF_CORNER = 14;
const APART = 2 * MARK_RADIUS + 3;
/** On a small plan with many snags the least serious go without a mark; the ledger has them all. */
const MOST_MARKS = 120;
const MOST_PLACES = 48;

let last: {
  readonly garden: Garden;
  readonly snags: readonly Snag[];
  readonly view: View;
  /** Of the lettering: marks stand clear of words, whose widths come with it. */
  readonly age: number;
  readonly marks: readonly SnagMark[];
} | null = null;

/**
 * Gives each snag a place for its mark: near a corner of what it is about, or beside the gap it is about; clear of the
 * labels and of one another. The most serious choose first.
 * @param snags most serious first
 * @returns in the order given, without those that have no place left near what they are about; the last answer is
 *   remembered, for the plan is drawn again for much that moves no mark
 */
export function snagMarkPlaces(garden: Garden, snags: readonly Snag[], view: View): readonly SnagMark[] {
  if (snags.length === 0) return [];
  const age = letteringAge();
  if (last?.garden !== garden || last.snags !== snags || last.view !== view || last.age !== age) {
    last = { garden, snags, view, age, marks: placesOf(garden, snags, view) };
  }
  return last.marks;
}

function placesOf(garden: Garden, snags: readonly Snag[], view: View): readonly SnagMark[] {
  const byId = new Map(garden.items.map((item) => [item.id, item]));
  const labels = labelBoxes(garden, view);
  const marks: SnagMark[] = [];
  for (const snag of snags.slice(0, MOST_MARKS)) {
    const about = snag.itemIds.flatMap((id) => byId.get(id) ?? []);
    const pixel = firstFree(candidates(snag, about, garden, view), labels, marks);
    if (pixel) marks.push({ key: snag.key, snag, at: toPlan(view, pixel), pixel });
  }
  return marks;
}

/** Looked through in order, for the first of dozens of places is mostly free. */
function firstFree(
  places: readonly Point[],
  labels: readonly Box[],
  marks: readonly SnagMark[],
): Point | null {
  let overWords: Point | null = null;
  for (const place of places) {
    if (marks.some(({ pixel }) => isBeside(pixel, place))) continue;
    if (!labels.some((box) => touches(box, place))) return place;
    // A mark over words is better than none; two marks on one another are not.
    overWords ??= place;
  }
  return overWords;
}

const isBeside = ([ax, ay]: Point, [bx, by]: Point): boolean => (ax - bx) ** 2 + (ay - by) ** 2 < APART ** 2;

const touches = ({ minX, minY, maxX, maxY }: Box, [x, y]: Point): boolean =>
  x + MARK_RADIUS > minX && x - MARK_RADIUS < maxX && y + MARK_RADIUS > minY && y - MARK_RADIUS < maxY;

/** Places for a mark, the best first. */
function candidates(snag: Snag, about: readonly Item[], garden: Garden, view: View): readonly Point[] {
  const at = snag.at.map((point) => toScreen(view, point));
  const [from, to] = at;
  if (from && to && at.length === 2 && about.length !== 1) return besideGap(from, to);
  const first = about[0];
  if (first && "shape" in first)
    return roundOutline(outlineOf(first).map((corner) => toScreen(view, corner)));
  if (first) return round(toScreen(view, first.at));
  if (from) return round(from);
  return roundOutline(garden.yard.map((corner) => toScreen(view, corner)));
}

/** On the gap, then along it either way, where its width is not written. */
function besideGap([ax, ay]: Point, [bx, by]: Point): Point[] {
  const middle: Point = [(ax + bx) / 2, (ay + by) / 2];
  const length = Math.hypot(bx - ax, by - ay);
  const [ux, uy]: Point = length > 0 ? [-(by - ay) / length, (bx - ax) / length] : [0, -1];
  // Upwards and to the left first: what follows a gap is mostly read below it.
  const sign = uy > 0 || (uy === 0 && ux > 0) ? -1 : 1;
  return [
    middle,
    ...steps().map((k): Point => [middle[0] + sign * ux * k * APART, middle[1] + sign * uy * k * APART]),
  ];
}

/** 1, -1, 2, -2, ... */
const steps = (): number[] =>
  Array.from({ length: MOST_PLACES / 2 }, (_, i) => (i % 2 === 0 ? 1 : -1) * (Math.floor(i / 2) + 1));

function round([x, y]: Point): Point[] {
  return Array.from({ length: MOST_PLACES / 2 }, (_, i): Point => {
    const angle = -Math.PI / 4 - (i % 8) * (Math.PI / 4);
    const away = MARK_RADIUS + 14 + Math.floor(i / 8) * APART;
    return [x + away * Math.cos(angle), y + away * Math.sin(angle)];
  });
}

/** Near the corners of an outline, upper right first, then along its upper edge and down its sides. */
function roundOutline(ring: readonly Point[]): Point[] {
  const xs = ring.map(([x]) => x);
  const ys = ring.map(([, y]) => y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const box: readonly Point[] = [
    [right, top],
    [left, top],
    [right, bottom],
    [left, bottom],
  ];
  // Outside the edge, for words in a narrow thing reach nearly to it; and off the corner, where its handle would be.
  const corners = box.map((corner, i) => {
    const [x, y] = nearestOf(ring, corner);
    return [x + (i % 2 === 0 ? -OFF_CORNER : OFF_CORNER), y + (i < 2 ? -OUTSIDE : OUTSIDE)] as const;
  });
  const [upperRight, upperLeft, lowerRight, lowerLeft] = corners as [Point, Point, Point, Point];
  return [
    ...corners,
    ...between(upperRight, upperLeft),
    ...between(upperRight, lowerRight),
    ...between(upperLeft, lowerLeft),
    ...corners.map(([x, y], i): Point => [x, y + (i < 2 ? -APART : APART)]),
    ...round(upperRight),
  ];
}

/** Places in a row from one point to another, neither included. */
function between(from: Point, to: Point): Point[] {
  const run = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return Array.from({ length: Math.min(MOST_PLACES, Math.floor(run / APART)) }, (_, i): Point => {
    const t = ((i + 1) * APART) / run;
    return [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
  });
}

function nearestOf(ring: readonly Point[], [cx, cy]: Point): Point {
  let best = ring[0]!;
  let off = Infinity;
  for (const point of ring) {
    const away = Math.hypot(point[0] - cx, point[1] - cy);
    if (away < off) [best, off] = [point, away];
  }
  return best;
}
