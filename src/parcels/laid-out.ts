import { FARTHEST } from "../garden/fields.ts";
import { boundsOf, clockwise } from "../geometry/ring.ts";
import { isSimple } from "../geometry/simple.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { cross, distance, subtract } from "../geometry/vector.ts";
import type { Parcel } from "./read-parcels.ts";
import { type LonLat, tangentPlane } from "./tangent-plane.ts";

/** An outline of a file as it lies on the plan. */
export interface LaidOut {
  /** Clockwise, mm, in the plan of the yard; north is up. */
  readonly ring: Ring;
  /** Corners left out because they stood on the straight line of their neighbours, or twice on one spot. */
  readonly dropped: number;
}

/** Corners nearer to the line of their neighbours than this change nothing anybody could measure, mm. */
const ON_LINE = 2;
const MOST_CORNERS = 400;

/** The middle of an outline's box: what the plan is laid out about. An outline across the 180th meridian is taken whole. */
export function centreOf({ outline }: Parcel): LonLat {
  const first = outline[0]!;
  const lons = outline.map(([lon]) => near(lon, first[0]));
  const lats = outline.map(([, lat]) => lat);
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  return [near(middle(lons), 0), middle(lats)];
}

/** The same longitude, within half a turn of another. */
const near = (lon: number, of: number): number => lon - 360 * Math.round((lon - of) / 360);

/**
 * Lays an outline on the plan of a yard.
 * @param centre of the plan: `centreOf` the parcel that is the yard, for buildings too
 * @throws RangeError saying why it cannot stand in a garden: farther than 1 km away, crossing itself, without area, with
 *   more corners than a garden holds
 */
export function laidOut({ outline }: Parcel, centre: LonLat): LaidOut {
  const points = outline.map(tangentPlane(centre));
  const { minX, minY, maxX, maxY } = boundsOf(points);
  if (Math.max(-minX, -minY, maxX, maxY) > FARTHEST) {
    throw new RangeError("it reaches more than 1 km from the middle of the yard");
  }
  const ring = straightened(points);
  if (ring.length > MOST_CORNERS) throw new RangeError(`it has more than ${MOST_CORNERS} corners`);
  if (!isSimple(ring)) throw new RangeError("it crosses itself, or has no area");
  return { ring: clockwise(ring), dropped: points.length - ring.length };
}

function straightened(points: readonly Point[]): Point[] {
  const apart = points.filter((point, i) => distance(point, points.at(i - 1)!) > ON_LINE);
  const kept: Point[] = [];
  for (const [i, point] of apart.entries()) {
    // Held against the last corner that was kept, so that a gentle curve is not worn away point by point.
    const before = kept[kept.length - 1] ?? apart.at(-1)!;
    const after = apart[(i + 1) % apart.length]!;
    const along = subtract(after, before);
    const aside = Math.abs(cross(along, subtract(point, before))) / Math.hypot(...along);
    if (!(aside <= ON_LINE)) kept.push(point);
  }
  return kept;
}
