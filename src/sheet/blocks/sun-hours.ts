import { bedsInSun } from "../../sun/beds-in-sun.ts";
import { MONTH_NAMES } from "../../sun/day.ts";
import { seasonOf } from "../../sun/season.ts";
import { formatHours } from "../../units/format-figure.ts";
import { type Block, paragraph } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** What the sun gives each bed, and the season that is the mean of: in running text, for it is read and not measured off. */
export function sunHoursBlock({ garden, beds }: SheetFacts, width: number): Block {
  const heading = "Sun a day";
  const sun = bedsInSun(garden);
  const entries = beds.flatMap(({ bed, mark }) => {
    const got = sun.get(bed.id);
    return got ? `${mark} ${formatHours(got.hours)}` : [];
  });
  if (entries.length === 0) return { heading, rows: [] };
  const { from, to } = seasonOf(garden.site);
  const season = `${dayWords(from)} to ${dayWords(to)}`;
  return {
    heading,
    rows: [paragraph(`Direct sun, mean of ${season}: ${entries.join(", ")}.`, width)],
    spare: { from: 0, more: () => "Hours of sun stand in the ledger." },
  };
}

/** "1 April" for "04-01". */
const dayWords = (monthDay: string): string =>
  `${Number(monthDay.slice(3))} ${MONTH_NAMES[Number(monthDay.slice(0, 2)) - 1]}`;
