import { FOOT } from "../units/length.ts";

/**
 * Board feet of one board by its trade name: nominal thickness in inches x nominal width in inches x length in feet
 * / 12.
 * @param name such as "2x6" or "5/4x6"
 * @param length mm
 * @throws RangeError for a name that is not nominal inches by nominal inches
 * @source NIST Voluntary Product Standard PS 20-25, section 2.2
 */
export function boardFeet(name: string, length: number): number {
  const [thickness, width, ...rest] = name.split("x").map(nominal);
  if (rest.length > 0 || !(thickness && width)) throw new RangeError(`no nominal size: "${name}"`);
  return (thickness * width * (length / FOOT)) / 12;
}

function nominal(text: string): number {
  const [whole, part = "1"] = text.split("/");
  return Number(whole) / Number(part);
}

/** Cubic metres of a board by its real section. All in mm. */
export const boardVolume = (thickness: number, height: number, length: number): number =>
  (thickness * height * length) / 1e9;
