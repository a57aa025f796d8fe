import { formatHours, type Limits, say } from "../../../src/index.ts";

/** How a bed's hours stand to what is wanted and to the least that is needed. */
export type Standing = "enough" | "short" | "under";

type SunLimits = Pick<Limits, "sun" | "sunLeast">;

/** To a tenth of an hour, as it is shown: 5.97 h reads as 6 h, and is not called short of it. */
const shown = (hours: number): number => Math.round(hours * 10) / 10;

export function standingOf(hours: number, { sun, sunLeast }: SunLimits): Standing {
  if (shown(hours) < sunLeast) return "under";
  return shown(hours) < sun ? "short" : "enough";
}

/** "Enough sun", "Short of 6 h", "Under 4 h". */
export function standingWords(standing: Standing, { sun, sunLeast }: SunLimits): string {
  if (standing === "enough") return say`Enough sun`;
  return standing === "short" ? say`Short of ${formatHours(sun)}` : say`Under ${formatHours(sunLeast)}`;
}
