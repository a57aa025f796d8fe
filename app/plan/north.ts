import { language, type Point, say } from "../../src/index.ts";

/** North is caught at these turns, within so many degrees. */
const EIGHTH = 45;
const CATCH = 4;

/** Degrees as the garden keeps them: from 0 up to but not 360. */
export const wholeTurn = (degrees: number): number => ((degrees % 360) + 360) % 360;

/**
 * Where north points when the arrow's tip is pulled to a place seen from its middle, px; in whole degrees.
 * @param caught whether the eighths of a turn hold it when it comes near them
 */
export function northAt([x, y]: Point, caught: boolean): number {
  const degrees = wholeTurn((Math.atan2(x, -y) * 180) / Math.PI);
  const eighth = Math.round(degrees / EIGHTH) * EIGHTH;
  return wholeTurn(caught && Math.abs(degrees - eighth) <= CATCH ? eighth : Math.round(degrees));
}

/** To one decimal, with the decimal mark of the language spoken; `readDegrees` reads it back. */
export const degreesText = (degrees: number): string =>
  new Intl.NumberFormat(language(), { maximumFractionDigits: 1 }).format(degrees);

/** "straight up", "30° right of up". */
export function northWords(north: number): string {
  const turn = wholeTurn(north);
  const round = degreesText(turn);
  if (round === "0" || round === "360") return say`straight up`;
  if (round === "180") return say`straight down`;
  return turn < 180 ? say`${round}° right of up` : say`${degreesText(360 - turn)}° left of up`;
}

/** Degrees as typed, with a sign, a comma for the point and the degree sign allowed; null for anything else. */
export function readDegrees(text: string): number | null {
  const figure = text.trim().replace(/[°]$/, "").replace("−", "-").replace(",", ".").trim();
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(figure)) return null;
  const degrees = Number(figure);
  return Math.abs(degrees) <= 360 ? wholeTurn(degrees) : null;
}

/**
 * Where true north lies on the plan, degrees clockwise from up, by a compass.
 * @param reading what it reads looking up the plan, degrees clockwise from magnetic north
 * @param declination magnetic north from true north, degrees, east positive: a true bearing is the reading and this
 */
export const northByCompass = (reading: number, declination: number): number =>
  wholeTurn(-(reading + declination));
