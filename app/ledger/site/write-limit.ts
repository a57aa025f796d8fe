import { formatLength, formatRatio, LIMITS, type LimitId, say, type Units } from "../../../src/index.ts";
import { writeNumber } from "../fields/read-number.ts";

/** Limits that are a multiple, not a slope. */
export const MULTIPLES: ReadonlySet<LimitId> = new Set<LimitId>(["rootZone"]);

/** A limit's value as it is read: "24 in", "1:20", "6 h", "1.5 times". */
export function writeLimit(id: LimitId, value: number, units: Units): string {
  const { unit } = LIMITS[id];
  if (MULTIPLES.has(id)) return say`${writeNumber(value)} times`;
  switch (unit) {
    case "mm":
      return formatLength(value, units);
    case "ratio":
      return formatRatio(value);
    case "h":
      return say`${writeNumber(value)} h`;
  }
}
