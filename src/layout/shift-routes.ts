import type { Access, Route } from "../access/types.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { limitsOf } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { gapBetween } from "../geometry/gap.ts";
import { ROUND_CHORDS } from "../geometry/shape.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance, subtract } from "../geometry/vector.ts";

/** So much of the allowed length is left unused, mm: the curve stands for a route that may bend a little as it goes. */
const TO_SPARE = 1;
/** Nearer than this to a bed a route is at the bed, mm. */
const AT_BED = 400;

/**
 * Shifts at which the routes to some beds are just short enough: about the last place at which a route turns on its way
 * to the bed, as far as what it takes up to there and along the bed leaves of what is allowed.
 *
 * @param access ways after the beds have been shifted
 * @param by that shift
 * @returns convex rings in the plane of shifts; good for shifts after which the routes take the same turns
 */
export function routeCurves(garden: Garden, access: Access, ids: ReadonlySet<ItemId>, by: Point): Ring[] {
  const { kitchenWalk, hose: longest } = limitsOf(garden);
  return access.beds.flatMap(({ id, kitchen, hose }) => {
    const bed = garden.items.find((item) => item.id === id);
    if (!ids.has(id) || bed?.kind !== "bed") return [];
    const outline = outlineOf(bed).map(([x, y]): Point => [x + by[0], y + by[1]]);
    return [
      ...(kitchen ? curveOf(kitchen, outline, kitchenWalk, by) : []),
      ...(hose ? curveOf(hose, outline, longest, by) : []),
    ];
  });
}

function curveOf({ points, length }: Route, outline: Ring, limit: number, by: Point): Ring[] {
  if (length <= limit / 2) return [];
  const last = points.findLastIndex((point) => gapBetween([point], outline).width > AT_BED);
  const [turn, next] = [points[last], points[last + 1]];
  if (!turn || !next) return [];
  const radius = distance(turn, next) - (length - limit) - TO_SPARE;
  return radius > 0 ? [round(subtract(subtract(turn, next), [-by[0], -by[1]]), radius)] : [];
}

/** Drawn with chords inside of the true round, so that a shift on it is short enough. */
const round = ([x, y]: Point, radius: number): Ring =>
  Array.from({ length: CHORDS }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / CHORDS;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

/** Routes are long, and their rounds large: 1 mm inside at 13 m. */
const CHORDS = 4 * ROUND_CHORDS;
