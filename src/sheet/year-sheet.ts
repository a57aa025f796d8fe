import { once } from "../access/once.ts";
import type { Garden, Site } from "../garden/garden.ts";
import { plainText } from "../garden/plain-text.ts";
import { frostsOf } from "../planting/frosts.ts";
import type { Takeoff } from "../takeoff/types.ts";
import { type Lane, lanesOf } from "../upkeep/lanes.ts";
import { dayWords } from "../upkeep/words.ts";
import { yearRound } from "../upkeep/year-round.ts";
import { yearsAhead } from "../upkeep/years-ahead.ts";
import { say } from "../words/say.ts";
import { type Block, type Column, flowed, paragraph, text } from "./flow.ts";
import { LEAST_PT, lineHeight, shortened, wrapped } from "./lettering.ts";
import { LARGER, PAPERS, type Paper, type PaperId } from "./papers.ts";
import type { Mark, Sheet } from "./types.ts";
import { type YearDetail, type YearFacts, yearBlocks } from "./year-lists.ts";
import { stripHeight, stripMarks } from "./year-strip.ts";

/** The year's page: a page of its own beside the build sheet, with nothing drawn to scale on it. */
export type YearSheet = Omit<Sheet, "scale" | "scaleText">;

export interface YearSheetOptions {
  /** The day it is printed, as it should read; left out where it is not given. */
  readonly date?: string;
  /** The garden's takeoff where it is known, perhaps with proven cut plans: the same first cost is then told. */
  readonly whole?: Pick<Takeoff, "total">;
}

/**
 * Everything the year's page prints, as drawing commands for one page: the year as a strip, the tasks of each month with
 * their quantities, what to take care of, and what the years ahead cost.
 *
 * It tells as much of each task as fits in type of 8 pt: all of it, then its first quantity, then its title alone. Where not
 * even the titles fit, rows are left out, and the page says how many and whether larger paper holds them.
 */
export function yearSheet(garden: Garden, paper: PaperId, options: YearSheetOptions = {}): YearSheet {
  const { date = null, whole } = options;
  const tasks = yearRound(garden);
  const ahead = yearsAhead(garden, garden.prices.horizon, whole);
  const page = new YearPage({ garden, tasks, ahead }, paper, date);
  return page.whole() ?? page.shortened();
}

const TITLE_PT = 18;
const HEADER = 11;
const FOOTER_GAP = 2.4;
const GUTTER = 4.5;
const UNDER_STRIP = 3.5;
/** Columns are about as wide as a hand, mm. */
const COLUMN = { least: 44, most: 95 } as const;
const MOST_ROWS = 40;
/** The last blocks of the page are no tasks: cautions and sums. */
const BESIDE_TASKS = 2;

class YearPage {
  private readonly paper: Paper;
  private readonly lanes: readonly Lane[];

  constructor(
    private readonly facts: YearFacts,
    private readonly paperId: PaperId,
    private readonly date: string | null,
  ) {
    this.paper = PAPERS[paperId];
    this.lanes = lanesOf(facts.tasks);
  }

  /** With every task on it, told as fully as fits; null if not even their titles do. */
  whole(): YearSheet | null {
    return (
      this.told("whole", 0) ??
      this.told("short", 0) ??
      this.told("short", 1) ??
      this.told("short", BESIDE_TASKS) ??
      this.told("titles", BESIDE_TASKS)
    );
  }

  /** Cautions, then sums, stand in the ledger as well: where the page is full, so many of the last blocks make room. */
  private told(detail: YearDetail, without: number): YearSheet | null {
    for (const columns of this.columnCounts()) {
      const blocks = this.blocksFor(detail, columns);
      const shown = blocks.slice(0, blocks.length - without);
      const marks = this.tried(shown, columns);
      if (marks) return this.sheet(marks, shown, moved(blocks.slice(shown.length)));
    }
    return null;
  }

  /** As many rows of each month as fit. */
  shortened(): YearSheet {
    const columns = this.columnCounts().at(-1)!;
    const width = this.columnWidth(columns);
    const blocks = this.blocksFor("titles", columns);
    for (let most = MOST_ROWS; most >= 0; most--) {
      const kept = blocks
        .slice(0, -BESIDE_TASKS)
        .map((block) => ({ ...block, rows: block.rows.slice(0, most) }));
      const gone = blocks.slice(0, -BESIDE_TASKS).flatMap((block, i) => {
        const left = block.rows.length - kept[i]!.rows.length;
        return left > 0 ? [block.spare?.more(left) ?? ""] : [];
      });
      const notice = [...gone, this.largerWords()];
      const said: Block = {
        heading: say`Not on this page`,
        rows: notice.map((words) => paragraph(words, width)),
      };
      const marks = this.tried([said, ...kept], columns);
      if (marks) return this.sheet(marks, blocks, notice);
    }
    return this.sheet([], blocks, [this.largerWords()]);
  }

  private blocksFor(detail: YearDetail, columns: number): Block[] {
    return yearBlocks(this.facts, detail, this.columnWidth(columns));
  }

  private largerWords(): string {
    const larger = this.larger();
    return larger
      ? say`${PAPERS[larger].name} paper holds all of it.`
      : say`No single page holds all of it: the rest stands in the ledger, under Year round.`;
  }

  /** The next larger paper, if that holds every task. */
  private readonly larger = once((): PaperId | null => {
    const larger = LARGER[this.paperId];
    return larger && new YearPage(this.facts, larger, this.date).whole() ? larger : null;
  });

  private columnCounts(): number[] {
    return [2, 3, 4, 5].filter((columns) => {
      const width = this.columnWidth(columns);
      return width >= COLUMN.least && width <= COLUMN.most;
    });
  }

  private columnWidth(columns: number): number {
    return (this.paper.width - 2 * this.paper.margin - (columns - 1) * GUTTER) / columns;
  }

  private tried(blocks: readonly Block[], count: number): Mark[] | null {
    const { margin } = this.paper;
    const width = this.columnWidth(count);
    const top = margin + HEADER + stripHeight(this.lanes) + UNDER_STRIP;
    const bottom = this.paper.height - margin - this.footHeight();
    const columns = Array.from(
      { length: count },
      (_, i): Column => ({
        x: margin + i * (width + GUTTER),
        top,
        bottom,
      }),
    );
    return flowed(blocks, columns, width);
  }

  private sheet(lists: readonly Mark[], blocks: readonly Block[], leftOut: readonly string[]): YearSheet {
    const { width, height, margin } = this.paper;
    const { lanes } = this;
    return {
      paper: this.paperId,
      widthMm: width,
      heightMm: height,
      marks: [
        ...this.headMarks(),
        ...(lanes.length > 0 ? stripMarks(lanes, margin, margin + HEADER, width - 2 * margin) : []),
        ...lists,
        ...this.footMarks(),
      ],
      leftOut,
      larger: leftOut.length > 0 ? this.larger() : null,
      outline: blocks.map(({ heading, rows }) => ({ heading, lines: rows.map(({ words }) => words) })),
    };
  }

  private headMarks(): Mark[] {
    const { margin, width } = this.paper;
    const right = width - margin;
    const name = plainText(this.facts.garden.name);
    const title = name === "" ? say`Year round` : say`${name}: year round`;
    const said = [...(this.date ? [this.date] : []), say`sheet 1 of 1`].join(" · ");
    return [
      text(shortened(title, (right - margin) * 0.7, TITLE_PT, "bold"), margin, margin + 6, {
        pt: TITLE_PT,
        weight: "bold",
      }),
      text(said, right, margin + 6, { pt: 9, anchor: "end" }),
      rule(margin, right, margin + 8.4),
    ];
  }

  private footLines(): string[] {
    const { site } = this.facts.garden;
    const { last, first, by } = frostsOf(site);
    const days =
      by === "frosts"
        ? say`Days by a last frost of ${dayWords(last)} and a first of ${dayWords(first)}.`
        : usualFrosts(site.winter, dayWords(last), dayWords(first));
    return wrapped(
      say`${days} Why, and where each figure comes from, stands in the ledger, under Year round. Guidance for planning: weather decides.`,
      this.paper.width - 2 * this.paper.margin,
      LEAST_PT,
    );
  }

  private footHeight(): number {
    return this.footLines().length * lineHeight(LEAST_PT) + FOOTER_GAP;
  }

  private footMarks(): Mark[] {
    const { margin, width, height } = this.paper;
    const lines = this.footLines();
    const top = height - margin - lines.length * lineHeight(LEAST_PT);
    return [
      rule(margin, width - margin, top - FOOTER_GAP + 1.4),
      ...lines.map((line, i) => text(line, margin, top + (i + 0.85) * lineHeight(LEAST_PT))),
    ];
  }
}

const usualFrosts = (winter: Site["winter"], last: string, first: string): string =>
  winter === "freezing"
    ? say`Days by frosts usual for a freezing winter, ${last} and ${first}: type your own under Site.`
    : say`Days by frosts usual for a mild winter, ${last} and ${first}: type your own under Site.`;

/** Where the blocks that made room are to be found. */
const moved = (blocks: readonly Block[]): string[] =>
  blocks.flatMap(({ rows, spare }) => (rows.length > 0 && spare ? [spare.more(rows.length)] : []));

const rule = (left: number, right: number, y: number): Mark => ({
  draw: "line",
  points: [
    [left, y],
    [right, y],
  ],
  closed: false,
  pen: 0.4,
});
