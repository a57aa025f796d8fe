import { say, told, word } from "../../../src/index.ts";
import { writeNumber } from "../fields/read-number.ts";

/** Angles as people write them on maps and compasses. Degrees; north and east are positive. */

const SIGNS: Readonly<Record<string, 1 | -1>> = {
  n: 1,
  north: 1,
  e: 1,
  east: 1,
  s: -1,
  south: -1,
  w: -1,
  west: -1,
  nord: 1,
  o: 1,
  ost: 1,
  süd: -1,
};

interface Axis {
  readonly name: string;
  readonly most: number;
  /** The letters for positive and negative. */
  readonly letters: readonly [string, string];
  readonly example: string;
}

export const LATITUDE: Axis = {
  name: word("Latitude"),
  most: 90,
  letters: [word("N"), word("S")],
  example: word("43.6 N"),
};
export const LONGITUDE: Axis = {
  name: word("Longitude"),
  most: 180,
  letters: [word("E"), word("W")],
  example: word("116.2 W"),
};
/** Between true and magnetic north; nowhere that people garden is it more. */
export const DECLINATION: Axis = {
  name: word("Declination"),
  most: 90,
  letters: [word("E"), word("W")],
  example: word("12.5 E"),
};

const plain = (text: string): string =>
  text
    .trim()
    .replace(/[\u2212\u2013]/g, "-")
    .replace(/[′’]/g, "'")
    .replace(/[″”]/g, '"')
    .replace(/(\d),(\d)/g, "$1.$2");

/**
 * Reads an angle to one side or the other: "43.6 N", "43° 36' N", "S 33 52 10", "-43.6".
 * @returns degrees
 * @throws RangeError with one sentence that says what was wrong
 */
export function readAngle(text: string, axis: Axis): number {
  const notOne = () =>
    new RangeError(
      say`Type degrees such as ${told(axis.example)}, or with minutes: 43° 36′ ${told(axis.letters[0])}.`,
    );
  const [, before = "", middle = "", after = ""] =
    /^([a-zü]*)\s*([-+]?[^a-zü]*?)\s*([a-zü]*)$/i.exec(plain(text)) ?? [];
  const side = (before || after).toLowerCase();
  const figures =
    /^([-+]?)(\d+(?:\.\d*)?)\s*°?\s*(?:(\d+(?:\.\d*)?)\s*'?\s*)?(?:(\d+(?:\.\d*)?)\s*"?)?$/.exec(middle);
  if (!figures || (before && after)) throw notOne();
  const sign = side === "" ? 1 : SIGNS[side];
  if (sign === undefined || (side !== "" && !isOf(axis, side))) throw notOne();
  const [, minus, degrees, minutes = "0", seconds = "0"] = figures;
  if (minus === "-" && side !== "") throw new RangeError(say`Give a minus or a letter, not both.`);
  if (Number(minutes) >= 60 || Number(seconds) >= 60)
    throw new RangeError(say`There are 60 minutes in a degree, and 60 seconds in a minute.`);
  const size = Number(degrees) + Number(minutes) / 60 + Number(seconds) / 3600;
  if (size > axis.most) throw new RangeError(say`${told(axis.name)} must be within ${axis.most}°.`);
  const angle = size * (minus === "-" ? -1 : sign);
  return angle === 0 ? 0 : angle;
}

const isOf = ({ letters }: Axis, name: string): boolean =>
  letters.some((letter) => [letter, told(letter)].some((one) => one.toLowerCase() === name.charAt(0)));

/** "43.6° N", to the ten-thousandth of a degree, some 11 m: nearer matters to nothing here. */
export function writeAngle(degrees: number, { letters }: Axis): string {
  const size = Number(Math.abs(degrees).toFixed(4));
  return size === 0 ? "0°" : `${writeNumber(size, 4)}° ${told(letters[degrees < 0 ? 1 : 0])}`;
}

export interface LatLong {
  readonly latitude: number;
  readonly longitude: number;
}

/** A latitude and a longitude in one, as maps hand them out: "43.6 N, 116.2 W", "43.615, -116.202"; null for anything else. */
export function splitPair(text: string): readonly [string, string] | null {
  const lettered = /^(.*?\d.*?[ns])[\s,;]+(.*[ewo])$/i.exec(text.trim());
  const signed = /^([-+−–]?\d+\.\d+)\s*[,;]\s*([-+−–]?\d+\.\d+)$/.exec(text.trim());
  const [, latitude, longitude] = lettered ?? signed ?? [];
  return latitude !== undefined && longitude !== undefined ? [latitude, longitude] : null;
}

/**
 * Reads a latitude, or a latitude and a longitude at once.
 * @param longitude what stands where only a latitude is typed
 * @throws RangeError with one sentence that says what was wrong
 */
export function readPlace(text: string, longitude: number): LatLong {
  const pair = splitPair(text);
  return pair
    ? { latitude: readAngle(pair[0], LATITUDE), longitude: readAngle(pair[1], LONGITUDE) }
    : { latitude: readAngle(text, LATITUDE), longitude };
}
