/** A point of the horizon beyond the yard: a hill or the neighbour's block. */
export interface SkylinePoint {
  /** Clockwise from true north, degrees. */
  readonly azimuth: number;
  /** Above level, degrees. */
  readonly altitude: number;
}

export type Skyline = readonly SkylinePoint[];

/**
 * Height of the horizon beyond the yard in a direction, degrees: on straight lines from point to point all the way round,
 * through north too; a single point is a horizon as high all round. Level where no point is given.
 * @param skyline in any order; of two points in one direction, a step, the later holds from there on clockwise
 * @param azimuth degrees clockwise from true north, 0 up to 360
 */
export function skylineAt(skyline: Skyline, azimuth: number): number {
  if (skyline.length === 0) return 0;
  const points = inOrder(skyline);
  const [first, last] = [points[0]!, points.at(-1)!];
  // Before the first point and after the last one the line runs on through north.
  const from = points.findLast((point) => point.azimuth <= azimuth) ?? {
    ...last,
    azimuth: last.azimuth - 360,
  };
  const to = points.find((point) => point.azimuth > azimuth) ?? { ...first, azimuth: first.azimuth + 360 };
  const span = to.azimuth - from.azimuth;
  const share = span === 0 ? 0 : (azimuth - from.azimuth) / span;
  return from.altitude + share * (to.altitude - from.altitude);
}

const sorted = new WeakMap<Skyline, Skyline>();

/** Asked for once a look at the sun: sorted once a skyline. */
function inOrder(skyline: Skyline): Skyline {
  let points = sorted.get(skyline);
  if (!points) {
    points = skyline.toSorted((a, b) => a.azimuth - b.azimuth);
    sorted.set(skyline, points);
  }
  return points;
}
