import { shiftIntoPlace } from "../access/shift-into-place.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { limitsOf } from "../garden/limits.ts";
import type { Op } from "../garden/op.ts";
import { applyOps } from "../garden/operations.ts";
import { boundsOf, contains } from "../geometry/ring.ts";
import type { Point } from "../geometry/types.ts";
import { subtract } from "../geometry/vector.ts";
import { bedPlane, hoursOn } from "../sun/bed-plane.ts";
import { bedSoil } from "../sun/bed-soil.ts";
import { cellMiddle, isSet } from "../sun/cells.ts";
import type { SunGrid } from "../sun/sun-map.ts";
import { FOOT, SAME_LENGTH } from "../units/length.ts";
import { soundlyChanged, wishesOf } from "./sound-change.ts";

/** Where a bed might stand, and the sun it would get there. */
export interface SunnyPlace {
  readonly at: Point;
  /** As the bed's own `turn`, degrees. */
  readonly turn: number;
  readonly hours: number;
}

/** Cells of 6 in, wider in a yard of which there would be more than so many of them: half a tennis court. */
const CELL = FOOT / 2;
const MOST_CELLS = 12_000;

/**
 * What a bed would get all over the yard, closely enough to search by; what is found is looked at anew.
 * @returns null for a bed without area
 */
export function searchPlane(garden: Garden, bed: Bed): SunGrid | null {
  const { minX, minY, maxX, maxY } = boundsOf(garden.yard);
  const cell = Math.max(CELL, Math.sqrt(((maxX - minX) * (maxY - minY)) / MOST_CELLS));
  return bedPlane(garden, bed.id, { cell });
}

/** How far apart places are looked at, mm. */
const STEP = FOOT;
/** So many spots of a bed's soil stand for all of it. */
const SPOTS = 60;

/**
 * Places all over the yard for a bed, a foot apart, each with the sun it would get there: first seen without asking what
 * stands in the way.
 * @param plane hours at the height of its soil, without it
 * @param turns ways it may lie, degrees
 */
export function placesInSun(
  bed: Bed,
  { yard }: Pick<Garden, "yard">,
  plane: SunGrid,
  turns: readonly number[],
): SunnyPlace[] {
  const across = Math.ceil((plane.columns * plane.cell) / STEP);
  const down = Math.ceil((plane.rows * plane.cell) / STEP);
  return turns.flatMap((turn) => {
    const spots = spotsOf({ ...bed, turn }, plane.cell);
    return Array.from(
      { length: across * down },
      (_, i): Point => [
        plane.origin[0] + ((i % across) + 0.5) * STEP,
        plane.origin[1] + (Math.floor(i / across) + 0.5) * STEP,
      ],
    ).flatMap((middle) => {
      if (!contains(yard, middle)) return [];
      const at = subtract(middle, spots.middle);
      const hours = meanOver(plane, at, spots.off);
      return hours === null ? [] : { at, turn, hours };
    });
  });
}

interface Spots {
  /** From the bed's own place to the middle of its soil. */
  readonly middle: Point;
  /** From the bed's own place to each spot. */
  readonly off: readonly Point[];
}

function spotsOf(bed: Bed, cell: number): Spots {
  const place = bedSoil(bed, cell);
  if (!place) return { middle: [0, 0], off: [] };
  const { cells, soil } = place;
  const all = Array.from({ length: cells.columns * cells.rows }, (_, i) => i)
    .filter((i) => isSet(soil, cells, i % cells.columns, Math.floor(i / cells.columns)))
    .map((i) => subtract(cellMiddle(cells, i % cells.columns, Math.floor(i / cells.columns)), bed.at));
  const every = Math.max(1, Math.floor(all.length / SPOTS));
  return { middle: meanOf(all), off: all.filter((_, i) => i % every === 0) };
}

function meanOf(points: readonly Point[]): Point {
  let [x, y] = [0, 0];
  for (const [px, py] of points) [x, y] = [x + px / points.length, y + py / points.length];
  return [x, y];
}

/** Null where some of it lies off the plane. */
function meanOver({ origin, cell, columns, rows, hours }: SunGrid, at: Point, off: readonly Point[]) {
  let sum = 0;
  for (const [x, y] of off) {
    const column = Math.floor((at[0] + x - origin[0]) / cell);
    const row = Math.floor((at[1] + y - origin[1]) / cell);
    if (column < 0 || row < 0 || column >= columns || row >= rows) return null;
    sum += hours[row * columns + column]!;
  }
  return off.length > 0 ? sum / off.length : null;
}

/** A place where a bed stands in order, with what it takes to put it there. */
export interface SoundPlace extends SunnyPlace {
  readonly ops: readonly Op[];
  readonly after: Garden;
}

/** How far about a place free ground is looked for, mm. */
const ROUND_ABOUT = 3 * FOOT;

/**
 * The free ground nearest to a place, with room to be beside the bed, if the bed stands in order there.
 * @returns null where there is none about, or something is wrong with it
 */
export function soundPlaceNear(
  garden: Garden,
  bed: Bed,
  plane: SunGrid,
  place: SunnyPlace,
): SoundPlace | null {
  const put = opsTo(bed, place);
  const there = applyOps(garden, put);
  const room = Math.max(wishesOf(garden).room, limitsOf(garden).standingRoom);
  const by = shiftIntoPlace(there, bed.id, { most: ROUND_ABOUT, room });
  if (!by) return null;
  const at: Point = [place.at[0] + by[0], place.at[1] + by[1]];
  const ops = opsTo(bed, { ...place, at });
  const after = ops.length > 0 ? soundlyChanged({ garden }, ops, [bed.id]) : null;
  const moved = after?.items.find(({ id }) => id === bed.id);
  const hours = moved?.kind === "bed" ? hoursOn(plane, moved) : null;
  return after && hours !== null ? { at, turn: place.turn, hours, ops, after } : null;
}

function opsTo({ id, at, turn }: Bed, to: Pick<SunnyPlace, "at" | "turn">): Op[] {
  const by = subtract(to.at, at);
  return [
    ...(to.turn === turn ? [] : [{ op: "turn" as const, id, by: to.turn - turn }]),
    ...(Math.hypot(...by) < SAME_LENGTH ? [] : [{ op: "move" as const, id, by }]),
  ];
}

/** Nearer to each other than this, two places come to the same free ground. */
const SAME_PLACE = 2 * FOOT;

/** One place, the first of the list, for every two feet of the yard and each way a bed may lie. */
export function apart(places: readonly SunnyPlace[]): SunnyPlace[] {
  const taken = new Set<string>();
  return places.filter(({ at: [x, y], turn }) => {
    const key = `${turn} ${Math.floor(x / SAME_PLACE)} ${Math.floor(y / SAME_PLACE)}`;
    if (taken.has(key)) return false;
    taken.add(key);
    return true;
  });
}
