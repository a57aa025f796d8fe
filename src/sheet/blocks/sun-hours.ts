import { bedsInSun } from "../../sun/beds-in-sun.ts";
import { seasonOf } from "../../sun/season.ts";
import { formatHours } from "../../units/format-figure.ts";
import { type Block, type Cell, paragraph, tableRow } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

const BEDS_A_ROW = 3;
const BETWEEN = 4;

/** What the sun gives each bed, and the season that is the mean of. */
export function sunHoursBlock({ garden, beds }: SheetFacts, width: number): Block {
  const heading = "Sun a day";
  const sun = bedsInSun(garden);
  const entries = beds.flatMap(({ bed, mark }) => {
    const got = sun.get(bed.id);
    return got ? [[mark, formatHours(got.hours)] as const] : [];
  });
  if (entries.length === 0) return { heading, rows: [] };
  const room = (width - (BEDS_A_ROW - 1) * BETWEEN) / BEDS_A_ROW;
  const cells = ([mark, hours]: readonly [string, string], i: number): Cell[] => {
    const left = i * (room + BETWEEN);
    return [
      { words: mark, x: left },
      { words: hours, x: left + room, anchor: "end" },
    ];
  };
  const rows = Array.from({ length: Math.ceil(entries.length / BEDS_A_ROW) }, (_, row) =>
    tableRow(entries.slice(row * BEDS_A_ROW, (row + 1) * BEDS_A_ROW).flatMap(cells), width),
  );
  const { from, to } = seasonOf(garden.site);
  const season = `${dayWords(from)} to ${dayWords(to)}`;
  return {
    heading,
    rows: [paragraph(`Hours of direct sun on the soil, mean of ${season}.`, width), ...rows],
    spare: { from: 1, more: () => "Hours of sun of further beds stand in the ledger." },
  };
}

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** "1 April" for "04-01". */
const dayWords = (monthDay: string): string =>
  `${Number(monthDay.slice(3))} ${MONTHS[Number(monthDay.slice(0, 2)) - 1]}`;
