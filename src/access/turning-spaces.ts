import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Limits } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { INCH, SAME_LENGTH } from "../units/length.ts";
import { isFree, keptOff } from "./kept-off.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { TurningSpace } from "./types.ts";
import type { Ways } from "./ways.ts";
import { exactDisc } from "./ways-disc.ts";
import { tSpaceOf } from "./wheelchair-standards.ts";
import { crossings, teeAt } from "./wheelchair-tee.ts";

/** A turning space belongs to a bed if its middle lies within this of the bed's edge, mm: a turn or two of the wheels. */
export const TURNING_NEAR = 60 * INCH;
/** Places along a bed's edge at which a circle beside it is tried, mm apart. */
const STEP = 6 * INCH;

/** Looks for room to turn. */
export interface TurningSpaces {
  /** The nearest to a bed, within `TURNING_NEAR` of its edge; null where none fits that a wheelchair can get to. */
  readonly at: (bed: Bed) => TurningSpace | null;
  /** The nearest to a point. */
  readonly near: (point: Point) => TurningSpace | null;
}

export function turningSpaces(garden: Garden, ways: Ways, limits: Limits): TurningSpaces {
  const rings = surroundingsOf(garden).obstacles.map(({ ring }) => ring);
  const canGetTo = ways.reachableAt(limits.wheelchairPinch);
  const off = keptOff(garden.yard, rings, (limits.turningCircle - SAME_LENGTH) / 2);
  const roomy = roomyMiddles(ways, limits);
  const tee = tSpaceOf(garden.gardener.edition);
  const tNear = (away: (point: Point) => number): TurningSpace | null => {
    if (!tee) return null;
    const near = crossings(ways, limits, tee, limits.turningCircle + tee.arm)
      .map((crossing) => ({ crossing, far: away(crossing.at) }))
      .filter(({ far }) => far <= TURNING_NEAR)
      .sort((a, b) => a.far - b.far);
    for (const { crossing } of near) {
      const found = teeAt({ yard: garden.yard, off, rings }, crossing, tee);
      if (found) return found;
    }
    return null;
  };

  const nearestOf = (middles: readonly Point[], away: (point: Point) => number): TurningSpace | null => {
    const sorted = middles
      .map((at) => ({ at, far: away(at) }))
      .filter(({ far }) => far <= TURNING_NEAR)
      .sort((a, b) => a.far - b.far);
    const found = sorted.find(({ at }) => isFree(off, at) && canGetTo(at));
    return found ? { kind: "circle", at: found.at, diameter: limits.turningCircle } : null;
  };

  return {
    at: (bed) => {
      const outline = outlineOf(bed);
      const away = (point: Point) => distanceTo(outline, point);
      const circle = nearestOf(
        [...besides(outline, limits.turningCircle / 2), ...roomy.map(({ at }) => at)],
        away,
      );
      return circle ?? tNear(away);
    },
    near: (point) => {
      const away = (other: Point) => distance(point, other);
      return (
        nearestOf(
          roomy.map(({ at }) => at),
          away,
        ) ?? tNear(away)
      );
    },
  };
}

/** Middles of the discs that are at least a turning circle wide, where a wheelchair gets to. */
function roomyMiddles({ mesh, widest }: Ways, limits: Limits): { at: Point }[] {
  const found: { at: Point }[] = [];
  mesh.radii.forEach((radius, t) => {
    if (2 * radius < limits.turningCircle - SAME_LENGTH) return;
    if (widest && widest[t]! < limits.wheelchairPinch - SAME_LENGTH) return;
    found.push({ at: exactDisc(mesh, t).at });
  });
  return found;
}

/** Middles of circles that touch a bed from outside, all along its edge. */
function besides(outline: Ring, radius: number): Point[] {
  return outline.flatMap(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    const length = Math.hypot(bx - ax, by - ay);
    const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
    const parts = Math.max(1, Math.ceil(length / STEP));
    return Array.from({ length: parts + 1 }, (_, k): Point => {
      const along = (length * k) / parts;
      return [ax + along * ux + radius * uy, ay + along * uy - radius * ux];
    });
  });
}

function distanceTo(ring: Ring, [x, y]: Point): number {
  let least = Infinity;
  let [px, py] = ring.at(-1)!;
  for (const [qx, qy] of ring) {
    const [ux, uy] = [qx - px, qy - py];
    const t = Math.max(0, Math.min(1, ((x - px) * ux + (y - py) * uy) / (ux * ux + uy * uy || 1)));
    least = Math.min(least, Math.hypot(px + t * ux - x, py + t * uy - y));
    [px, py] = [qx, qy];
  }
  return least;
}
