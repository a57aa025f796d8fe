const RAD = Math.PI / 180;

/** The formula is made for the sky above; below this it is let fade out, as nothing is seen there. */
const LOWEST = -1;

/**
 * Altitude as the eye sees it through plain air (1010 hPa, 10 °C), degrees, from the altitude without air.
 *
 * @source G. G. Bennett's formula turned round by Th. Saemundsson, Sky & Telescope 72, 1986, p. 70; J. Meeus, Astronomical
 *   Algorithms, 2nd ed. 1998, formula 16.4, which gives minutes of arc
 */
export function apparentAltitude(altitude: number): number {
  const held = Math.max(altitude, LOWEST);
  const lift = 1.02 / Math.tan((held + 10.3 / (held + 5.11)) * RAD) / 60;
  // Nothing at the nadir and all of it at the lowest altitude, so that altitudes keep their order.
  const faded = altitude < LOWEST ? lift * ((altitude + 90) / (LOWEST + 90)) : lift;
  return altitude + Math.max(0, faded);
}
