import type { Garden } from "../garden/garden.ts";
import { monthName } from "../sun/day.ts";
import { formatMoney } from "../units/format-figure.ts";
import type { Task } from "../upkeep/types.ts";
import { bedsWords, dayWords } from "../upkeep/words.ts";
import type { YearsAhead } from "../upkeep/years-ahead.ts";
import { MONTHS, monthOfDay } from "../water/calendar.ts";
import { say, sayCount } from "../words/say.ts";
import { language } from "../words/speaker.ts";
import { type Block, paragraph, type Row, tableRow } from "./flow.ts";
import { LEAST_PT, textWidth } from "./lettering.ts";

/** What the page is made from. */
export interface YearFacts {
  readonly garden: Garden;
  readonly tasks: readonly Task[];
  readonly ahead: YearsAhead;
}

/** How much the year's page tells of each task; less where it would not fit. */
export type YearDetail = "whole" | "short" | "titles";

/** The tasks of each month in which any begins, and what the years ahead cost. */
export function yearBlocks({ garden, tasks, ahead }: YearFacts, detail: YearDetail, width: number): Block[] {
  const months = MONTHS.map((month): Block => {
    const own = tasks.filter(({ from }) => monthOfDay(from) === month);
    return {
      heading: monthName(month + 1),
      rows: own.map((task) => taskRow(task, garden, detail, width)),
      spare: {
        from: 0,
        more: (left) =>
          sayCount(
            left,
            {
              one: "{{count}} of the tasks of {{month}} is not on this page.",
              other: "{{count}} of the tasks of {{month}} are not on this page.",
            },
            { month: monthName(month + 1) },
          ),
      },
    };
  });
  return [...months, moneyBlock(garden, ahead, width), careBlock(tasks, width)];
}

/** Room for the widest of "28 Mar–28 Nov", mm. */
const daysRoom = (): number => textWidth(`${dayWords(87)}–${dayWords(332)}`, LEAST_PT) + 1.6;

function taskRow(task: Task, garden: Garden, detail: YearDetail, width: number): Row {
  const beds = garden.items.filter((item) => item.kind === "bed");
  const own = beds.filter(({ id }) => task.bedIds.includes(id));
  const quantities =
    detail === "whole" ? task.quantities : detail === "short" ? task.quantities.slice(0, 1) : [];
  const where = detail === "titles" ? "" : bedsWords(own, beds.length);
  const words = [titleWords(task, garden), ...(where === "" ? [] : [where]), ...quantities].join("; ");
  const room = daysRoom();
  return tableRow(
    [
      { words: task.dayBy === "months" ? say`all month` : spanWords(task), x: 0 },
      { words, x: room, width: width - room },
    ],
    width,
  );
}

/** "12–25 Mar", or "12 Mar–4 Apr". */
function spanWords({ from, days }: Task): string {
  const [first, last] = [dayWords(from), dayWords(from + days - 1)];
  if (days === 1) return first;
  const [date = "", month] = first.split(" ");
  return last.endsWith(` ${month}`) && days < 32 ? `${date}–${last}` : `${first}–${last}`;
}

/** A task's title, and in which years it comes where it is not all of them. */
function titleWords({ title, since, years }: Task, { upkeep }: Garden): string {
  const named = (after: number) =>
    upkeep.firstYear === null ? say`year ${after + 1}` : `${upkeep.firstYear + after}`;
  if (years !== null) return `${title} (${years.map(named).join(", ")})`;
  return since > 1 ? say`${title} (from ${named(since)})` : title;
}

function careBlock(tasks: readonly Task[], width: number): Block {
  const cautions = [
    ...new Set(tasks.filter(({ kind }) => CAREFUL.includes(kind)).flatMap((task) => task.cautions)),
  ];
  return {
    heading: say`Take care`,
    rows: cautions.map((caution) => paragraph(caution, width, { indent: 2 })),
    spare: { from: 0, more: () => say`The cautions stand in the ledger, under Year round.` },
  };
}

const CAREFUL: readonly Task["kind"][] = ["top-up", "mulch", "cover-crop", "bioassay", "renewal"];

/** What each year costs at today's prices. */
function moneyBlock(garden: Garden, { years, sums, horizon }: YearsAhead, width: number): Block {
  const { currency } = garden.prices;
  const money = (amount: number) => formatMoney(amount, currency, false);
  const first = garden.upkeep.firstYear;
  const row = (words: string, amount: number, weight: "normal" | "bold" = "normal") =>
    tableRow(
      [
        { words, x: 0, width: width - MONEY_ROOM, weight },
        { words: money(amount), x: width, anchor: "end", weight },
      ],
      width,
    );
  return {
    heading: sayCount(horizon, { one: "What the year cost", other: "What {{count}} years cost" }),
    rows: [
      ...years.map(({ year, total, renewed }) =>
        row(
          [
            first === null ? say`Year ${year + 1}` : `${first + year}`,
            ...(renewed.length > 0 ? [[...new Set(renewed)].map(midSentence).join(", ")] : []),
          ].join(": "),
          total,
        ),
      ),
      row(say`All years, at today’s prices`, sums.total, "bold"),
    ],
    spare: { from: 0, more: () => say`What the years cost stands in the ledger, under Year round.` },
  };
}

const MONEY_ROOM = 16;

/** English makes the first letter small; German leaves its nouns alone. */
const midSentence = (words: string): string =>
  language() === "de" ? words : words.charAt(0).toLowerCase() + words.slice(1);
