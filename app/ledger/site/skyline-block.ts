import { type SkylinePoint, skylineAt } from "../../../src/index.ts";

/**
 * A skyline with a block put in front of it: between two directions it is at least so high, elsewhere as it was.
 *
 * @param from, to degrees from true north; clockwise from the one to the other, through north where `from` is the larger
 * @param height degrees above level
 * @returns points in the order of their directions
 */
export function withBlock(
  skyline: readonly SkylinePoint[],
  from: number,
  to: number,
  height: number,
): SkylinePoint[] {
  const before = skylineAt(skyline, from);
  const after = skylineAt(skyline, to);
  const between = (azimuth: number) =>
    from < to ? azimuth > from && azimuth < to : azimuth > from || azimuth < to;
  const raised = (altitude: number) => Math.max(height, altitude);
  const others = skyline
    .filter(({ azimuth }) => azimuth !== from && azimuth !== to)
    .map(({ azimuth, altitude }) => ({
      azimuth,
      altitude: between(azimuth) ? raised(altitude) : altitude,
    }));
  return [
    ...others,
    { azimuth: from, altitude: before },
    { azimuth: from, altitude: raised(before) },
    { azimuth: to, altitude: raised(after) },
    { azimuth: to, altitude: after },
  ].sort((a, b) => a.azimuth - b.azimuth);
}
