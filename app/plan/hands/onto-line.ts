import {
  add,
  centroid,
  cross,
  distance,
  dot,
  type Garden,
  type Item,
  type ItemOf,
  type Op,
  outlineOf,
  type Point,
  type Ring,
  scale,
  subtract,
} from "../../../src/index.ts";
import { toStep } from "./grid.ts";
import { planPoints } from "./plan-points.ts";

/** What is set into, or on, something else: an opening, or a tap on a wall. */
export type SetIn = ItemOf<"gate" | "door" | "tap">;
export const isSetIn = (item: Item): item is SetIn =>
  item.kind === "gate" || item.kind === "door" || item.kind === "tap";

/** A straight stretch an opening can be set into; its left side as seen, going from `from` to `to`, is outside. */
interface Stretch {
  readonly from: Point;
  readonly to: Point;
}

export interface SetPlace {
  readonly at: Point;
  readonly turn: number;
  /** The stretch it sits on. */
  readonly on: Stretch;
}

/**
 * Where an opening or a tap comes to sit when it is held near a line it belongs on: gates in the yard's edge,
 * fences and walls; doors in houses and sheds; taps on any of them. Its +y side then looks outwards.
 *
 * @param near how far it may jump, mm
 * @param step its near end is measured along the stretch in such steps, mm; null to leave it where it falls
 * @returns null with no such line near
 */
export const placeOnLine = (garden: Garden, item: SetIn, at: Point, near: number, step: number | null) =>
  placeOn(stretchesFor(garden, item), item, at, near, step);

function placeOn(
  stretches: readonly Stretch[],
  item: SetIn,
  at: Point,
  near: number,
  step: number | null,
): SetPlace | null {
  let best: { readonly off: number; readonly place: SetPlace } | null = null;
  const half = item.kind === "tap" ? 0 : item.width / 2;
  for (const stretch of stretches) {
    const length = distance(stretch.from, stretch.to);
    if (length === 0 || length < 2 * half) continue;
    const along = scale(subtract(stretch.to, stretch.from), 1 / length);
    const fallen = dot(subtract(at, stretch.from), along);
    const stepped = step ? toStep(fallen - half, step) + half : fallen;
    const foot = add(stretch.from, scale(along, Math.min(length - half, Math.max(half, stepped))));
    const beyond = Math.max(0, -fallen, fallen - length);
    const off = Math.hypot(cross(along, subtract(at, stretch.from)), beyond);
    if (off > near || (best && best.off <= off)) continue;
    // Its own x runs against the stretch, so that +y points to the outside.
    const turn = (Math.atan2(-along[1], -along[0]) * 180) / Math.PI;
    best = { off, place: { at: foot, turn: tidy(turn), on: stretch } };
  }
  return best?.place ?? null;
}

/**
 * Openings and taps of a house, a fence, a wall or the yard whose outline is drawn anew: back onto it, where it now
 * is nearest to them.
 */
export function resettled(garden: Garden, before: Item | Ring, after: Item | Ring): Op[] {
  const middle = centroid(garden.yard);
  const isLineOf = "kind" in after && (after.kind === "fence" || after.kind === "wall");
  const old = stretchesOf(before);
  // A gate in a fence along the yard's edge is the fence's.
  const fences = garden.items.flatMap(ownStretches);
  const now = isLineOf ? stretchesOf(after).map((stretch) => awayFrom(stretch, middle)) : stretchesOf(after);
  return garden.items.flatMap((item): Op[] => {
    if (!isSetIn(item) || !old.some((stretch) => sitsOn(item.at, stretch))) return [];
    if (now.some((stretch) => sitsOn(item.at, stretch, STILL))) return [];
    if (!("kind" in before) && fences.some((stretch) => sitsOn(item.at, stretch))) return [];
    const place = placeOn(now, item, item.at, Number.POSITIVE_INFINITY, null);
    return place ? [{ op: "set", id: item.id, changes: { at: place.at, turn: place.turn } }] : [];
  });
}

const stretchesOf = (holder: Item | Ring): readonly Stretch[] =>
  "kind" in holder ? ownStretches(holder) : ringStretches(holder);

/** Openings and taps that sit on the outline or the line of one of these things: they go where it goes. */
export function carriedBy(garden: Garden, holders: ReadonlySet<Item>): readonly Item[] {
  const stretches = [...holders].flatMap(ownStretches);
  if (stretches.length === 0) return [];
  return garden.items.filter(
    (item) => isSetIn(item) && !holders.has(item) && stretches.some((stretch) => sitsOn(item.at, stretch)),
  );
}

/** Nearer than this an opening sits on a line, mm: half the thickness of a stout garden wall and a little. */
const SITS_WITHIN = 150;

/** What still lies this near its line has not been moved off it, mm. */
const STILL = 0.5;

function sitsOn(at: Point, { from, to }: Stretch, within = SITS_WITHIN): boolean {
  const length = distance(from, to);
  if (length === 0) return false;
  const along = scale(subtract(to, from), 1 / length);
  const fallen = dot(subtract(at, from), along);
  return Math.abs(cross(along, subtract(at, from))) <= within && fallen >= 0 && fallen <= length;
}

function stretchesFor(garden: Garden, item: SetIn): readonly Stretch[] {
  const yard = ringStretches(garden.yard);
  const middle = centroid(garden.yard);
  const lines = garden.items
    .filter(({ kind }) => kind === "fence" || kind === "wall")
    .flatMap(ownStretches)
    .map((stretch) => awayFrom(stretch, middle));
  if (item.kind === "gate") return [...lines, ...yard];
  const buildings = garden.items
    .filter(({ kind }) => kind === "house" || kind === "shed")
    .flatMap(ownStretches);
  return item.kind === "door" ? buildings : [...buildings, ...lines, ...yard];
}

/** A fence may have been drawn either way round: its outside is where the middle of the yard is not. */
const awayFrom = ({ from, to }: Stretch, inside: Point): Stretch =>
  cross(subtract(to, from), subtract(inside, from)) < 0 ? { from: to, to: from } : { from, to };

function ownStretches(item: Item): readonly Stretch[] {
  switch (item.kind) {
    case "house":
    case "shed":
      return ringStretches(outlineOf(item));
    case "fence":
    case "wall": {
      const points = planPoints(item);
      return points.slice(1).map((to, i) => ({ from: points[i]!, to }));
    }
    default:
      return [];
  }
}

const ringStretches = (ring: Ring): readonly Stretch[] =>
  ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length]! }));

/** Whole degrees where the arithmetic has only just missed them, so that quarter turns stay exact. */
function tidy(degrees: number): number {
  const whole = Math.round(degrees);
  const kept = Math.abs(degrees - whole) < 1e-9 ? whole : degrees;
  return ((kept % 360) + 360) % 360;
}
