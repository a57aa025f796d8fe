import type { Point } from "../geometry/types.ts";

/** Longitude and latitude, degrees, as RFC 7946 writes them: in this order. */
export type LonLat = readonly [longitude: number, latitude: number];

/** Half-axis, metres, and flattening of WGS 84. Source: NGA.STND.0036, 2014, table 3.1. */
const EQUATOR = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const ECCENTRICITY_2 = FLATTENING * (2 - FLATTENING);

/**
 * A chart that lays places of the earth on the plan: the plane that touches the ellipsoid at `centre`, which comes to lie
 * on [0, 0]; north up, mm. Lengths on it are true within 1 mm in 1 km of the centre, far within any survey.
 *
 * @returns gives for a place its point of the plan: x to the east, y to the south
 * @source east and north of a place as seen from another, by way of earth-centred coordinates: B. Hofmann-Wellenhof et
 *   al., GNSS, 2008, section 8.2
 */
export function tangentPlane(centre: LonLat): (place: LonLat) => Point {
  const [lon, lat] = radians(centre);
  const [sinLon, cosLon, sinLat, cosLat] = [Math.sin(lon), Math.cos(lon), Math.sin(lat), Math.cos(lat)];
  const origin = earthCentred(centre);
  return (place) => {
    const [dx, dy, dz] = earthCentred(place).map((value, i) => value - origin[i]!) as [
      number,
      number,
      number,
    ];
    const east = -sinLon * dx + cosLon * dy;
    const north = -sinLat * (cosLon * dx + sinLon * dy) + cosLat * dz;
    return [east * 1000, -north * 1000];
  };
}

function earthCentred(place: LonLat): readonly [number, number, number] {
  const [lon, lat] = radians(place);
  const across = EQUATOR / Math.sqrt(1 - ECCENTRICITY_2 * Math.sin(lat) ** 2);
  const out = across * Math.cos(lat);
  return [out * Math.cos(lon), out * Math.sin(lon), across * (1 - ECCENTRICITY_2) * Math.sin(lat)];
}

const radians = ([lon, lat]: LonLat): readonly [number, number] => [
  (lon * Math.PI) / 180,
  (lat * Math.PI) / 180,
];
