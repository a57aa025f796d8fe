import { YEAR_DAYS } from "../planting/year-day.ts";
import { monthName } from "../sun/day.ts";
import type { Lane } from "../upkeep/lanes.ts";
import type { TaskKind } from "../upkeep/types.ts";
import { dayOfYear, daysIn, MONTHS } from "../water/calendar.ts";
import { text } from "./flow.ts";
import { LEAST_PT, lineHeight, textWidth } from "./lettering.ts";
import type { Hatch, Mark } from "./types.ts";

/** The year as a strip: a lane for each kind of task, its bars where there is something to do. */

const LABEL_ROOM = 27;
const LANE = 4.6;
const BAR = 3;
const HEAD = lineHeight(LEAST_PT) + 1.4;

/** How high the strip is, mm. */
export const stripHeight = (lanes: readonly Lane[]): number => HEAD + lanes.length * LANE + 1;

/** Bars are told apart by their lane; hatches help the eye along. */
const FILLS: Readonly<Record<TaskKind, Hatch | "ink" | "paper">> = {
  "top-up": "soil",
  mulch: "bark",
  sow: "paper",
  harvest: "ink",
  "cover-crop": "lawn",
  bioassay: "paper",
  water: "gravel",
  winter: "building",
  renewal: "deck",
  care: "paper",
};

/** The strip at a place of the page, so wide. Lengths in mm. */
export function stripMarks(lanes: readonly Lane[], x: number, y: number, width: number): Mark[] {
  const left = x + LABEL_ROOM;
  const perDay = (width - LABEL_ROOM) / YEAR_DAYS;
  const dayAt = (day: number): number => left + (day - 1) * perDay;
  const bottom = y + HEAD + lanes.length * LANE;
  const months = MONTHS.flatMap((month): Mark[] => {
    const from = dayAt(dayOfYear(month, 1));
    const room = daysIn(month) * perDay;
    const name = monthName(month + 1);
    const shown = textWidth(name, LEAST_PT) < room - 1 ? name : name.slice(0, 3);
    return [
      text(shown, from + room / 2, y + lineHeight(LEAST_PT) * 0.8, { anchor: "middle" }),
      rule(from, y + HEAD - 1, from, bottom, 0.1),
    ];
  });
  return [
    ...months,
    rule(left, y + HEAD - 1, x + width, y + HEAD - 1, 0.25),
    rule(x + width, y + HEAD - 1, x + width, bottom, 0.1),
    ...lanes.flatMap((lane, i) => laneMarks(lane, x, y + HEAD + i * LANE, dayAt)),
    rule(x, bottom, x + width, bottom, 0.25),
  ];
}

function laneMarks(
  { kind, label, stretches }: Lane,
  x: number,
  y: number,
  dayAt: (day: number) => number,
): Mark[] {
  const top = y + (LANE - BAR) / 2;
  return [
    text(label, x, y + LANE * 0.72),
    ...stretches.map(({ from, days }): Mark => {
      const [left, right] = [dayAt(from), dayAt(from + days)];
      return {
        draw: "line",
        points: [
          [left, top],
          [right, top],
          [right, top + BAR],
          [left, top + BAR],
        ],
        closed: true,
        pen: 0.25,
        fill: FILLS[kind],
      };
    }),
  ];
}

const rule = (x1: number, y1: number, x2: number, y2: number, pen: number): Mark => ({
  draw: "line",
  points: [
    [x1, y1],
    [x2, y2],
  ],
  closed: false,
  pen,
});
