import { frameOf, wallSize } from "../garden/frame.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { offset } from "../geometry/clip.ts";
import { clockwise, perimeter, ringArea, signedArea } from "../geometry/ring.ts";
import { shapeRing } from "../geometry/shape.ts";
import { type FillVolumes, fillVolumes, litresOver } from "./fill-volumes.ts";
import { extentOf, type FrameParts, frameParts } from "./frame-parts.ts";
import type { Settings } from "./settings.ts";
import { wallSides } from "./sides.ts";
import { type Standing, standingOf } from "./standing.ts";

/** Everything that is counted for one bed, before it is known what it is bought from. Lengths in mm, litres. */
export interface BedQuantities {
  readonly bed: Bed;
  readonly name: string;
  readonly soilAreaMm2: number;
  readonly soilDepth: number;
  readonly wallHeight: number;
  readonly standing: Standing;
  readonly fill: FillVolumes;
  readonly mulch: number;
  /** Null for a wall that is not of boards. */
  readonly frame: FrameParts | null;
  /** Outside of the wall, along which mesh is stapled and panels stand. */
  readonly perimeter: number;
  readonly outsideAreaMm2: number;
  /** Width and length of the outline's box: the sheet a mesh or liner is cut from. */
  readonly extent: readonly [number, number];
  readonly corners: number;
}

const kept = new WeakMap<Bed, { settings: Settings; quantities: BedQuantities }>();

/** Remembered by the bed, which never changes: while one bed is dragged all others answer from memory. */
export function bedQuantities(bed: Bed, settings: Settings): BedQuantities {
  const before = kept.get(bed);
  if (before?.settings === settings) return before.quantities;
  const quantities = counted(bed, settings);
  kept.set(bed, { settings, quantities });
  return quantities;
}

function counted(bed: Bed, settings: Settings): BedQuantities {
  const { soilDepth, wallHeight } = frameOf(bed);
  const { thickness } = wallSize(bed.wall);
  // Measured before the bed is turned and moved, so that the same bed elsewhere holds the same to the last digit.
  const ring = shapeRing(bed.shape);
  const soilAreaMm2 = insideArea(bed, thickness);
  const name = nameOf(bed);
  const standing = standingOf(bed);
  return {
    bed,
    name,
    soilAreaMm2,
    soilDepth,
    wallHeight,
    standing,
    fill: fillVolumes(bed.fill, soilAreaMm2, soilDepth, standing.soilDepth),
    mulch: bed.mulch ? litresOver(soilAreaMm2, bed.mulch.depth) : 0,
    frame: bed.wall.made === "boards" ? frameParts(bed, bed.wall, name, settings) : null,
    perimeter: perimeter(ring),
    outsideAreaMm2: ringArea(ring),
    extent: extentOf(bed.shape),
    corners: cornersOf(bed),
  };
}

function insideArea(bed: Bed, thickness: number): number {
  const { shape } = bed;
  if (shape.type === "rectangle") {
    return Math.max(0, shape.width - 2 * thickness) * Math.max(0, shape.length - 2 * thickness);
  }
  const ring = shapeRing(shape);
  if (thickness === 0) return ringArea(ring);
  return offset([clockwise(ring)], -thickness, "mitred").reduce((sum, part) => sum + signedArea(part), 0);
}

const cornersOf = ({ shape }: Bed): number => {
  const { sides, joined } = wallSides(shape, 0, "ends-between-sides");
  return joined === "bent" ? 0 : sides.length;
};
