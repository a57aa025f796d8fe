import { say } from "../words/say.ts";
import { LengthError } from "./length-error.ts";

/**
 * Reads a slope: `1:20`, `1 in 20`, `5 %`, `0.05`, `level`.
 * @returns rise over run, 0 to 1
 * @throws LengthError with a sentence that says what was wrong
 */
export function parseRatio(text: string): number {
  const typed = text.trim().toLowerCase().replace(",", ".");
  if (typed === "level" || typed === "flat" || typed === say`level`) return 0;
  const ratio = /^(\d+(?:\.\d+)?)\s*(?::|in|\/)\s*(\d+(?:\.\d+)?)$/.exec(typed);
  const percent = /^(\d+(?:\.\d+)?)\s*%$/.exec(typed);
  const plain = /^(?:\d+(?:\.\d+)?|\.\d+)$/.exec(typed);
  const slope = ratio
    ? Number(ratio[1]) / Number(ratio[2])
    : percent
      ? Number(percent[1]) / 100
      : plain
        ? Number(typed)
        : Number.NaN;
  if (Number.isNaN(slope)) throw new LengthError(text, say`Type a slope, such as 1:20, 5 % or level.`);
  if (slope > 1) throw new LengthError(text, say`A slope cannot be steeper than 1:1 here.`);
  return slope;
}
