import { bedsInSun } from "../../sun/beds-in-sun.ts";
import { formatMonthDay } from "../../sun/day.ts";
import { seasonOf } from "../../sun/season.ts";
import { formatHours } from "../../units/format-figure.ts";
import { say } from "../../words/say.ts";
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
  const season = say`${formatMonthDay(from)} to ${formatMonthDay(to)}`;
  return {
    heading,
    rows: [paragraph(say`Direct sun, mean of ${season}: ${entries.join(", ")}.`, width)],
    spare: { from: 0, more: () => say`Hours of sun stand in the ledger.` },
  };
}
