import type { House, Shed } from "../garden/kinds/building.ts";
import { convexPieces, halves } from "../geometry/convex-pieces.ts";
import { boundsOf, clockwise } from "../geometry/ring.ts";
import { shapeRing } from "../geometry/shape.ts";
import type { Ring } from "../geometry/types.ts";
import { placed, turned } from "../geometry/vector.ts";
import { block, type Prism } from "./solid.ts";

type Building = House | Shed;

/**
 * A building as bodies that throw shadows.
 *
 * Flat: up to the eaves. Gabled: a ridge through the middle of the box round the shape, the roof falling from it to the
 * eaves on the side it is said to fall towards and on the one across, and ending in gables. Single-pitch: from the eaves on
 * the side it falls towards up to the far side of that box. An L or U has the one roof, cut to its outline.
 */
export function buildingSolids(building: Building): readonly Prism[] {
  const { height, roof, roofRise } = building;
  const pieces = convexPieces([clockwise(shapeRing(building.shape))]);
  if (roof === "flat" || roofRise === 0) {
    return pieces.map((ring) =>
      block(
        ring.map((corner) => placed(corner, building.at, building.turn)),
        0,
        height,
      ),
    );
  }
  return pieces.flatMap((ring) =>
    roof === "gabled" ? gabled(building, ring) : [under(building, ring, pitchOf(building))],
  );
}

/** A sloping plane in a building's own frame: how high it is over one line, and how it rises along one axis. */
interface Pitch {
  readonly axis: 0 | 1;
  readonly from: number;
  readonly height: number;
  readonly rise: number;
}

/** The axis a roof falls along, and the building's ends on it. */
function fallOf({ shape, roofFalls }: Building): {
  readonly axis: 0 | 1;
  readonly least: number;
  readonly most: number;
} {
  const { minX, minY, maxX, maxY } = boundsOf(shapeRing(shape));
  return roofFalls === "up" || roofFalls === "down"
    ? { axis: 1, least: minY, most: maxY }
    : { axis: 0, least: minX, most: maxX };
}

function pitchOf(building: Building): Pitch {
  const { axis, least, most } = fallOf(building);
  const steepness = building.roofRise / (most - least);
  const fallsForward = building.roofFalls === "down" || building.roofFalls === "right";
  return fallsForward
    ? { axis, from: most, height: building.height, rise: -steepness }
    : { axis, from: least, height: building.height, rise: steepness };
}

function gabled(building: Building, ring: Ring): Prism[] {
  const { axis, least, most } = fallOf(building);
  const ridge = (least + most) / 2;
  const height = building.height + building.roofRise;
  const steepness = building.roofRise / ((most - least) / 2);
  return halves(ring, axis, ridge).flatMap((half, side) =>
    half.length < 3 || isFlat(half, axis)
      ? []
      : under(building, half, { axis, from: ridge, height, rise: side === 0 ? steepness : -steepness }),
  );
}

/** What stands on a piece of a building's ground, in its own frame, under a sloping plane. */
function under({ at, turn }: Building, ring: Ring, { axis, from, height, rise }: Pitch): Prism {
  return {
    body: "prism",
    ring: ring.map((corner) => placed(corner, at, turn)),
    bottom: 0,
    tops: ring.map((corner) => height + rise * (corner[axis] - from)),
    slope: turned(axis === 1 ? [0, rise] : [rise, 0], turn),
  };
}

/** A piece that only touches the ridge has a half without ground. */
function isFlat(half: Ring, across: 0 | 1): boolean {
  const along = half.map((corner) => corner[across]);
  return Math.max(...along) - Math.min(...along) < 1e-6;
}
