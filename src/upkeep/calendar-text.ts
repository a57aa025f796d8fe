import { monthDayOf } from "../planting/year-day.ts";
import { say, told, word } from "../words/say.ts";
import { folded, textValue } from "./calendar-lines.ts";
import { TASK_KIND_LABELS } from "./kind-labels.ts";
import { comesUpIn, type Task } from "./types.ts";

export interface CalendarOptions {
  /** The year whose days are given, or with `repeat` the first. */
  readonly year: number;
  /** The year in which the beds are built; null where it is open: then `year` is taken for it. */
  readonly firstYear: number | null;
  /** What comes up every year goes on for ever; what comes up in some years is given in each from `year` on. */
  readonly repeat: boolean;
  /** What the calendar is called. */
  readonly name: string;
  /** Tells this garden's events from those of another in the same calendar. */
  readonly key: string;
  /** When the file is made. */
  readonly stamp: Date;
}

const PRODUCT = "-//Bedwright//Year-round 1//EN";
const DAY_MS = 86_400_000;

/**
 * The tasks as a calendar file: one all-day event each, the day after the last as its end.
 *
 * A window over the end of February is as many days long in leap years, so it then ends a day earlier; none begins on the
 * 29th.
 *
 * @throws RangeError for a year outside 1583 to 9990 (before it the calendar was another), a broken stamp, or where nothing
 *   comes up: a calendar file must hold something
 * @source RFC 5545
 */
export function calendarText(tasks: readonly Task[], options: CalendarOptions): string {
  const { year, name, stamp } = options;
  if (!Number.isInteger(year) || year < 1583 || year > 9990) throw new RangeError(`no year: ${year}`);
  if (Number.isNaN(stamp.getTime())) throw new RangeError("no stamp");
  const events = tasks.flatMap((task) => datedEvents(task, options));
  if (events.length === 0) throw new RangeError(`nothing comes up in ${year}`);
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    `PRODID:${PRODUCT}`,
    "CALSCALE:GREGORIAN",
    `X-WR-CALNAME:${textValue(name)}`,
    ...events.flatMap((event) => eventLines(event, options)),
    "END:VCALENDAR",
  ];
  return `${lines.map(folded).join("\r\n")}\r\n`;
}

interface DatedEvent {
  readonly task: Task;
  readonly year: number;
  readonly yearly: boolean;
}

function datedEvents(task: Task, { year, firstYear, repeat }: CalendarOptions): DatedEvent[] {
  const first = firstYear ?? year;
  if (!repeat) return comesUpIn(task, year - first) ? [{ task, year, yearly: false }] : [];
  if (task.years === null) return [{ task, year: Math.max(year, first + task.since), yearly: true }];
  return task.years
    .map((after) => first + after)
    .filter((one) => one >= year)
    .map((one) => ({ task, year: one, yearly: false }));
}

function eventLines({ task, year, yearly }: DatedEvent, { key, stamp }: CalendarOptions): string[] {
  const { id, kind, title, from, days } = task;
  const start = dayOf(year, from);
  return [
    "BEGIN:VEVENT",
    `UID:${idText(yearly ? id : `${id}-${year}`)}.${idText(key)}@bedwright`,
    `DTSTAMP:${utc(stamp)}`,
    `DTSTART;VALUE=DATE:${dateText(start)}`,
    `DTEND;VALUE=DATE:${dateText(new Date(start.getTime() + days * DAY_MS))}`,
    ...(yearly ? ["RRULE:FREQ=YEARLY"] : []),
    `SUMMARY:${textValue(title)}`,
    `DESCRIPTION:${textValue(describing(task))}`,
    `CATEGORIES:${textValue(TASK_KIND_LABELS[kind])}`,
    "TRANSP:TRANSPARENT",
    "END:VEVENT",
  ];
}

/** Midnight of a day of a year of 365 in a year of the calendar. */
function dayOf(year: number, day: number): Date {
  const [month = 1, date = 1] = monthDayOf(day).split("-").map(Number);
  return new Date(Date.UTC(year, month - 1, date));
}

const compact = (date: Date): string => date.toISOString().replace(/[-:]|\.\d+/g, "");
const dateText = (date: Date): string => compact(date).slice(0, 8);
const utc = (stamp: Date): string => compact(stamp);

const idText = (text: string): string => text.replace(/[^A-Za-z0-9-]+/g, "-");

function describing({ detail, quantities, tools, why, cautions, source }: Task): string {
  return [
    detail,
    quantities.length > 0 ? say`Takes: ${quantities.join("; ")}.` : "",
    tools.length > 0 ? say`Tools: ${tools.join(", ")}.` : "",
    say`Why: ${why}`,
    cautions.length > 0 ? say`Take care: ${cautions.join(" ")}` : "",
    source.how === "published"
      ? say`Source: ${source.text}.`
      : say`Source: ${told(HOW[source.how])}, ${source.text}.`,
  ]
    .filter((line) => line !== "")
    .join("\n");
}

const HOW = {
  memory: word("from memory"),
  practice: word("common practice"),
  computed: word("reckoned"),
} as const;
