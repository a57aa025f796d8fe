import { parseLength, say, told, type Units } from "../../../src/index.ts";
import { readNumber, writeNumber } from "../fields/read-number.ts";

/** The points of the compass, a sixteenth of a turn apart. */
const POINTS = [
  "N",
  "NNE",
  "NE",
  "ENE",
  "E",
  "ESE",
  "SE",
  "SSE",
  "S",
  "SSW",
  "SW",
  "WSW",
  "W",
  "WNW",
  "NW",
  "NNW",
] as const;
const SIXTEENTH = 360 / POINTS.length;
const RAD = Math.PI / 180;

/**
 * Reads a direction: "SE", "south-east", "135", "135°".
 * @returns degrees clockwise from true north, 0 up to 360
 * @throws RangeError with one sentence that says what was wrong
 */
export function readDirection(text: string): number {
  const letters = text
    .toLowerCase()
    .replace(/north/g, "n")
    .replace(/east/g, "e")
    .replace(/south/g, "s")
    .replace(/west/g, "w")
    .replace(/nord/g, "n")
    .replace(/süd/g, "s")
    .replace(/ost|o/g, "e")
    .replace(/[\s-]/g, "");
  const point = POINTS.findIndex((name) => name.toLowerCase() === letters);
  if (point >= 0) return point * SIXTEENTH;
  if (!/^\d/.test(text.trim())) throw new RangeError(say`Type a direction such as SE, south-west or 215.`);
  const degrees = readNumber(text, "°");
  if (degrees > 360) throw new RangeError(say`A direction goes from 0 to 360°.`);
  return degrees % 360;
}

/** A point of the compass by the letters of the language spoken. */
const pointWords = (point: string): string =>
  point
    .replaceAll("N", told("N"))
    .replaceAll("E", told("E"))
    .replaceAll("S", told("S"))
    .replaceAll("W", told("W"));

/** "SE" where it is a point of the compass, "137°" elsewhere. */
export function writeDirection(azimuth: number): string {
  const point = azimuth / SIXTEENTH;
  return Number.isInteger(point) ? pointWords(POINTS[point % POINTS.length]!) : `${writeNumber(azimuth, 1)}°`;
}

/**
 * Reads how high the horizon stands: "12", "12°", or how tall a thing is over how far away it is, "20 ft over 40 ft".
 * @returns degrees above level
 * @throws RangeError with one sentence that says what was wrong
 */
export function readHeight(text: string, units: Units): number {
  const parts = splitHeight(text);
  if (!parts) {
    const degrees = readNumber(text, "°");
    if (degrees < 0 || degrees > 90) throw new RangeError(say`A height goes from 0 to 90°.`);
    return degrees;
  }
  const [tall, far] = parts.map((part) => parseLength(part, units)) as [number, number];
  if (far === 0) throw new RangeError(say`The distance must be above 0.`);
  return Math.atan2(tall, far) / RAD;
}

/** "20 ft over 40 ft", "20 ft / 40 ft", "6 m at 12 m", "20/40": what stands before and after; null where it is one figure. */
function splitHeight(text: string): readonly [string, string] | null {
  const [, tall, far] =
    /^(.+?)\s+(?:over|at|by|auf|bei|\/)\s+(.+)$/i.exec(text) ??
    /^(.*[a-z'"′″])\s*\/\s*(.+)$/i.exec(text) ??
    /^([\d.,]+)\/([\d.,]+)$/.exec(text) ??
    [];
  return tall !== undefined && far !== undefined ? [tall, far] : null;
}

export const writeHeight = (altitude: number): string => `${writeNumber(altitude, 1)}°`;
