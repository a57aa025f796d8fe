import Flatbush from "flatbush";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { outlineOf } from "../garden/outline.ts";
import { difference, intersection } from "../geometry/clip.ts";
import { boxOf, distanceToOutline, liesWithin } from "../geometry/gap.ts";
import { centroid, contains, ringArea } from "../geometry/ring.ts";
import { nearestShift, type Overlap, overlapOf, shiftsWithin } from "../geometry/shift.ts";
import type { Box, Point, Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { type Barrier, barriersOf, bars, type Movable } from "./barriers.ts";

/** A bed or shed that stands where it may not. */
export interface Conflict {
  readonly of: ItemId;
  readonly with: ItemId;
  readonly what: Exclude<Barrier["what"], "tap">;
  /** Length of the smallest shift that parts the two, mm. */
  readonly depth: number;
  /** The middle of the ground they share. */
  readonly at: Point;
}

/** A bed or shed that sticks out of the yard. */
export interface Outside {
  readonly id: ItemId;
  /** How far it must be shifted to be in the yard, mm; for one that fits nowhere, how far its farthest corner is out. */
  readonly beyond: number;
  readonly at: Point;
}

/** Where the beds and sheds of a garden stand in each other's or in anything else's way. */
export interface Place {
  readonly movables: readonly Movable[];
  /** In the order of the garden. */
  readonly barriers: readonly Barrier[];
  readonly conflicts: readonly Conflict[];
  readonly outside: readonly Outside[];
}

const places = new WeakMap<Garden, Place>();

/** Remembered by the garden; pairs of things that have not moved answer from memory in the next garden too. */
export function placeOf(garden: Garden): Place {
  let place = places.get(garden);
  if (!place) {
    const movables = garden.items.filter((item) => item.kind === "bed" || item.kind === "shed");
    const barriers = barriersOf(garden);
    place = {
      movables,
      barriers,
      conflicts: conflictsOf(movables, barriers, garden),
      outside: movables.flatMap((movable) => outsideOf(movable, garden.yard)),
    };
    places.set(garden, place);
  }
  return place;
}

function conflictsOf(movables: readonly Movable[], barriers: readonly Barrier[], garden: Garden): Conflict[] {
  const near = touching(barriers);
  const order = new Map(movables.map(({ id }, i) => [id, i]));
  return movables.flatMap((movable, place) => {
    const outline = outlineOf(movable);
    return near(boxOf(outline)).flatMap((barrier) => {
      // Two movables meet once: the one that comes later in the garden is told as in the way of the earlier.
      const isEarlier = (order.get(barrier.id) ?? place) < place;
      if (barrier.what === "tap" || isEarlier || !bars(barrier, movable, garden)) return [];
      const overlap = remembered(outline, barrier.ring);
      if (!overlap || overlap.depth <= SAME_LENGTH) return [];
      return [
        {
          of: movable.id,
          with: barrier.id,
          what: barrier.what,
          depth: overlap.depth,
          at: middleOf(intersection([outline], [barrier.ring]), outline),
        },
      ];
    });
  });
}

/** Finds the barriers whose bounds meet a box, in their order. */
function touching(barriers: readonly Barrier[]): (box: Box) => Barrier[] {
  if (barriers.length === 0) return () => [];
  const index = new Flatbush(barriers.length);
  for (const { ring } of barriers) {
    const { minX, minY, maxX, maxY } = boxOf(ring);
    index.add(minX, minY, maxX, maxY);
  }
  index.finish();
  return ({ minX, minY, maxX, maxY }) =>
    index
      .search(minX, minY, maxX, maxY)
      .sort((a, b) => a - b)
      .map((i) => barriers[i]!);
}

const overlapsByPair = new WeakMap<Ring, WeakMap<Ring, { readonly overlap: Overlap | null }>>();

function remembered(first: Ring, second: Ring): Overlap | null {
  let byFirst = overlapsByPair.get(first);
  if (!byFirst) {
    byFirst = new WeakMap();
    overlapsByPair.set(first, byFirst);
  }
  let known = byFirst.get(second);
  if (!known) {
    known = { overlap: overlapOf(first, second) };
    byFirst.set(second, known);
  }
  return known.overlap;
}

/** The middle of the largest piece. */
function middleOf(pieces: readonly Ring[], whole: Ring): Point {
  return centroid(pieces.toSorted((a, b) => ringArea(b) - ringArea(a))[0] ?? whole);
}

/** A bed farther out than this is told as its farthest corner: it was not drawn for this yard. */
const FARTHEST = 1_000_000;

interface Beyond {
  readonly beyond: number;
  readonly at: Point;
}
const beyondByYard = new WeakMap<Ring, WeakMap<Ring, Beyond>>();

function outsideOf(movable: Movable, yard: Ring): Outside[] {
  const { beyond, at } = rememberedBeyond(outlineOf(movable), yard);
  return beyond > SAME_LENGTH ? [{ id: movable.id, beyond, at }] : [];
}

function rememberedBeyond(outline: Ring, yard: Ring): Beyond {
  let byYard = beyondByYard.get(outline);
  if (!byYard) {
    byYard = new WeakMap();
    beyondByYard.set(outline, byYard);
  }
  let known = byYard.get(yard);
  if (!known) {
    known = liesWithin(outline, yard) ? { beyond: 0, at: outline[0]! } : beyondYard(outline, yard);
    byYard.set(yard, known);
  }
  return known;
}

function beyondYard(outline: Ring, yard: Ring): Beyond {
  const pieces = difference([outline], [yard]);
  const back = nearestShift([], shiftsWithin(outline, yard, FARTHEST));
  const beyond = back ? Math.hypot(...back) : farthestFrom(yard, pieces.flat());
  return { beyond, at: middleOf(pieces, outline) };
}

const farthestFrom = (yard: Ring, corners: Ring): number =>
  Math.max(0, ...corners.map((corner) => (contains(yard, corner) ? 0 : distanceToOutline(corner, yard))));
