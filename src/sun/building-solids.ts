import type { House, Shed } from "../garden/kinds/building.ts";
import { convexPieces, halves } from "../geometry/convex-pieces.ts";
import { boundsOf, clockwise } from "../geometry/ring.ts";
import { shapeRing } from "../geometry/shape.ts";
import type { Ring } from "../geometry/types.ts";
import { placed, turned } from "../geometry/vector.ts";
import { block, type Prism } from "./solid.ts";

/**
 * A building as bodies that throw shadows.
 *
 * Flat: up to the eaves. Gabled: a ridge along the middle of the longer side of the box round the shape, the roof falling to
 * the eaves on both sides and ending in gables; an L or U has the one roof, cut to its outline. Single-pitch: the plan does
 * not say which side is the high one, so the whole is taken up to the high side, and never shades less than the real one.
 */
export function buildingSolids(building: House | Shed): readonly Prism[] {
  const pieces = convexPieces([clockwise(shapeRing(building.shape))]);
  const { height, roof, roofRise } = building;
  const whole = (ring: Ring) => ring.map((corner) => placed(corner, building.at, building.turn));
  if (roof !== "gabled" || roofRise === 0) {
    const top = roof === "single-pitch" ? height + roofRise : height;
    return pieces.map((ring) => block(whole(ring), 0, top));
  }
  return pieces.flatMap((ring) => gabled(building, ring, whole));
}

function gabled(building: House | Shed, ring: Ring, whole: (ring: Ring) => Ring): Prism[] {
  const box = boundsOf(shapeRing(building.shape));
  const [width, length] = [box.maxX - box.minX, box.maxY - box.minY];
  // The axis across the ridge: a ridge along x is crossed going along y.
  const across = width >= length ? 1 : 0;
  const ridge = across === 1 ? (box.minY + box.maxY) / 2 : (box.minX + box.maxX) / 2;
  const steepness = building.roofRise / (Math.min(width, length) / 2);
  return halves(ring, across, ridge).flatMap((half, side) => {
    if (half.length < 3 || isFlat(half, across)) return [];
    const fall = side === 0 ? steepness : -steepness;
    const top = building.height + building.roofRise;
    return {
      body: "prism",
      ring: whole(half),
      bottom: 0,
      tops: half.map((corner) => top + fall * (corner[across] - ridge)),
      slope: turned(across === 1 ? [0, fall] : [fall, 0], building.turn),
    };
  });
}

/** A piece that only touches the ridge has a half without ground. */
function isFlat(half: Ring, across: 0 | 1): boolean {
  const along = half.map((corner) => corner[across]);
  return Math.max(...along) - Math.min(...along) < 1e-6;
}
