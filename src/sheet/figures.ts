import { formatDistance, formatLength } from "../units/format-length.ts";
import { FOOT, INCH, SAME_LENGTH, type Units } from "../units/length.ts";

/** What a tape is read to when a yard is set out, mm. */
const TAPE: Readonly<Record<Units, number>> = { us: INCH / 8, metric: 5 };

/** A distance to be taped: to the nearest 1/8 in or 5 mm, as near as a long tape is held. */
export const formatTaped = (mm: number, units: Units): string =>
  formatLength(Math.round(mm / TAPE[units]) * TAPE[units], units);

/** A length on sale: whole feet as the trade says them (`8 ft`), anything else in full. */
export function formatStock(mm: number, units: Units): string {
  const feet = Math.round(mm / FOOT);
  return units === "us" && Math.abs(mm - feet * FOOT) < SAME_LENGTH
    ? formatDistance(mm, units)
    : formatLength(mm, units);
}
