import {
  instantAt,
  type Site,
  type SkylinePoint,
  type SunPosition,
  skylineAt,
  sunPosition,
} from "../../../src/index.ts";

/** A look all the way round from the yard: degrees along, with the noon sun of most of the year in the middle. */
export interface Panorama {
  /** Azimuth at the left edge. */
  readonly start: number;
  /** Altitude at the upper edge. */
  readonly top: number;
}

const ROUND = 360;
const LOOK = 10;
/** Room over the highest, degrees. */
const SKY = 14;
const LOWEST_TOP = 40;

/** From north round to north; from south round to south where the noon sun stands in the north. */
export function panoramaOf(
  skyline: readonly SkylinePoint[],
  latitude: number,
  tracks: readonly Track[],
): Panorama {
  const highest = [...tracks.flat(), ...skyline].reduce((most, { altitude }) => Math.max(most, altitude), 0);
  return { start: latitude < 0 ? 180 : 0, top: Math.min(90, Math.max(LOWEST_TOP, highest + SKY)) };
}

/** How far from the left edge an azimuth lies, degrees. */
export const along = ({ start }: Panorama, azimuth: number): number => (azimuth - start + 2 * ROUND) % ROUND;

/** The sun's way over the level horizon on a day, in order of the day. */
export type Track = readonly SunPosition[];

export function sunTrack(site: Site, day: string): Track {
  return Array.from({ length: 1440 / LOOK + 1 }, (_, i) =>
    sunPosition(instantAt(site, day, i * LOOK), site.latitude, site.longitude),
  ).filter(({ altitude }) => altitude > 0);
}

/** A track cut where it leaves the picture at one edge and comes in at the other. */
export function pieces(view: Panorama, track: Track): Track[] {
  const cut: SunPosition[][] = [];
  let last: SunPosition | undefined;
  for (const sun of track) {
    const leaps = last && Math.abs(along(view, sun.azimuth) - along(view, last.azimuth)) > ROUND / 2;
    if (!last || leaps) cut.push([]);
    cut.at(-1)?.push(sun);
    last = sun;
  }
  return cut.filter((piece) => piece.length > 1);
}

/** Just short of a direction: the near side of a step. */
const JUST_BEFORE = 1e-6;

/** The line of the horizon from the left edge to the right: degrees along and degrees up. */
export function horizonLine(view: Panorama, skyline: readonly SkylinePoint[]): (readonly [number, number])[] {
  const at = skyline
    .flatMap(({ azimuth }) => [along(view, azimuth) - JUST_BEFORE, along(view, azimuth)])
    .filter((x) => x > 0 && x < ROUND);
  return [0, ...at, ROUND - JUST_BEFORE]
    .sort((a, b) => a - b)
    .map((x) => [x, skylineAt(skyline, (x + view.start) % ROUND)] as const);
}
