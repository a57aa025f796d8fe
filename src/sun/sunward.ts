import type { Point } from "../geometry/types.ts";
import type { SunPosition } from "./sun-position.ts";

const RAD = Math.PI / 180;

/**
 * How far the shadow of a point lies from under it for each mm of its height, on the plan: where true north comes in, and
 * the one place where it does.
 *
 * @param sun above the horizon
 * @param north true north, degrees clockwise from up the plan
 */
export function shadowPerHeight({ altitude, azimuth }: SunPosition, north: number): Point {
  const length = 1 / Math.tan(altitude * RAD);
  // A bearing turns clockwise from up the plan, which is towards smaller y; the shadow points away from the sun.
  const bearing = (azimuth + north) * RAD;
  return [-length * Math.sin(bearing), length * Math.cos(bearing)];
}
