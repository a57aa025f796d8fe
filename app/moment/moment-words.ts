import { fixed, formatClock, headingOf, type Point, say } from "../../src/index.ts";
import type { SunThen } from "./sun-then.ts";
import { dayWords } from "./year-days.ts";

const RAD = Math.PI / 180;
/** So near to noon by the sun it is called noon, minutes. */
const NOON = 3;
/** Lower than this a shadow is as long as the yard, and its length says nothing, degrees. */
const LOW = 3;

/** The compass point that lies at an azimuth: "south-east". */
export function compassPoint(azimuth: number): string {
  const way: Point = [Math.sin(azimuth * RAD), -Math.cos(azimuth * RAD)];
  return headingOf(way, 0);
}

/** "10:40", or "Noon" when the sun stands highest. */
export const timeWords = (minutes: number, noon: number): string =>
  Math.abs(minutes - noon) <= NOON ? say`Noon` : formatClock(minutes);

/** "Noon, 21 December: shadows fall south, 0.4 times as long as things are high." */
export function momentWords(day: string, minutes: number, noon: number, sun: SunThen): string {
  return `${timeWords(minutes, noon)}, ${dayWords(day)}: ${shadowWords(sun)}.`;
}

function shadowWords({ shines, altitude, azimuth }: SunThen): string {
  if (shines === "down") return say`the sun is down`;
  if (shines === "hidden") return say`the sun is behind the skyline in the ${compassPoint(azimuth)}`;
  const away = compassPoint((azimuth + 180) % 360);
  if (altitude < LOW) return say`shadows fall ${away}, as long as the yard`;
  return say`shadows fall ${away}, ${lengthWords(1 / Math.tan(altitude * RAD))} as things are high`;
}

const lengthWords = (times: number): string =>
  times < 0.95 || times >= 1.05 ? say`${fixed(times, 1)} times as long` : say`as long`;

/** "34° high in the south-east", or that it does not shine. */
export function sunWords({ shines, altitude, azimuth }: SunThen): string {
  if (shines === "down") return say`The sun is down`;
  const place = say`${Math.round(altitude)}° high in the ${compassPoint(azimuth)}`;
  return shines === "hidden" ? say`Behind the skyline, ${place}` : say`Sun ${place}`;
}
