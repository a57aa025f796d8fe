import { once } from "../access/once.ts";
import { boundsOf } from "../geometry/ring.ts";
import { midSentence } from "../words/phrases.ts";
import { say, sayCount } from "../words/say.ts";
import { blocksOf } from "./blocks/index.ts";
import { type Block, flowed, paragraph } from "./flow.ts";
import { columnsOf, columnWidth, type Grid, gridsOf, planRoom } from "./layout.ts";
import { frameMarks, frameSize } from "./page-frame.ts";
import { LARGER, PAPERS, type Paper, type PaperId } from "./papers.ts";
import { PLAN_MARGIN, planMarks, planSize } from "./plan-drawing.ts";
import { type Scale, scalesFor } from "./scales.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import type { Mark, Sheet } from "./types.ts";

/** One garden on one paper: tries scales and grids until everything has its place. */
export class PageLayout {
  private readonly paper: Paper;
  private readonly grids: readonly Grid[];
  private readonly top: number;
  private readonly bottom: number;

  constructor(
    private readonly facts: SheetFacts,
    private readonly paperId: PaperId,
    private readonly date: string | null,
  ) {
    this.paper = PAPERS[paperId];
    this.grids = gridsOf(this.paper);
    const frame = frameSize(facts, this.paper.width - 2 * this.paper.margin);
    this.top = this.paper.margin + frame.header;
    this.bottom = this.paper.height - this.paper.margin - frame.footer;
  }

  /** The sheet with nothing left out, at the largest scale that allows it; null if none does. */
  whole(): Sheet | null {
    return this.largest((blocks) => blocks, []);
  }

  /** The sheet with only those rows left out that may be counted instead of listed; null if that is not enough. */
  withoutSpareRows(): Sheet | null {
    const left: string[] = [];
    for (const block of this.blocksFor(this.grids[0]!)) if (block.spare) capped(block, 0, left);
    const notice = this.notice(left);
    return this.largest(
      (blocks, width) => [
        noticeBlock(notice, width),
        ...blocks.map((block) => (block.spare ? capped(block, 0, []) : block)),
      ],
      notice,
    );
  }

  private largest(
    change: (blocks: Block[], width: number) => Block[],
    leftOut: readonly string[],
  ): Sheet | null {
    const blocks = this.grids.map((grid) => change(this.blocksFor(grid), columnWidth(this.paper, grid)));
    for (const scale of this.scales()) {
      for (const [i, grid] of this.grids.entries()) {
        const marks = this.tried(scale, grid, blocks[i]!);
        if (marks) return this.sheet(scale, marks, leftOut);
      }
    }
    return null;
  }

  /**
   * The sheet of a garden far beyond one page: rows from the end of the longest lists are left out, as few as it takes.
   */
  shortened(): Sheet {
    const grid = this.grids.findLast(({ span }) => span === 2) ?? this.grids[0]!;
    const width = columnWidth(this.paper, grid);
    const all = this.blocksFor(grid);
    const scale = this.scaleForThird(grid);
    for (let most = MOST_ROWS; most >= 0; most--) {
      const left: string[] = [];
      const blocks = all.map((block) => capped(block, most, left));
      const notice = this.notice(left);
      const marks = this.tried(scale, grid, [noticeBlock(notice, width), ...blocks]);
      if (marks) return this.sheet(scale, marks, notice);
    }
    // Even the rows that must show do not fit: the plan and the notice still do.
    const notice = this.notice(all.map(({ heading }) => say`${heading} is left out.`));
    return this.sheet(scale, this.tried(scale, grid, [noticeBlock(notice, width)]) ?? [], notice);
  }

  private blocksFor(grid: Grid): Block[] {
    return blocksOf(this.facts, columnWidth(this.paper, grid));
  }

  /** Standard scales at which the yard is still a drawing and not a dot. */
  private scales(): readonly Scale[] {
    const { minX, minY, maxX, maxY } = boundsOf(this.facts.garden.yard);
    const longest = Math.max(maxX - minX, maxY - minY);
    return scalesFor(this.facts.units).filter(({ ratio }) => longest / ratio >= LEAST_DRAWING);
  }

  private notice(left: readonly string[]): string[] {
    const larger = this.larger();
    const where = larger
      ? say`${PAPERS[larger].name} paper holds all of it.`
      : say`No single page holds all of it: the rest stands in the ledger.`;
    return [...left, where];
  }

  /** The next larger paper, if that holds everything. */
  private readonly larger = once((): PaperId | null => {
    const larger = LARGER[this.paperId];
    return larger && new PageLayout(this.facts, larger, this.date).whole() ? larger : null;
  });

  private scaleForThird(grid: Grid): Scale {
    const most = (this.bottom - this.top) / 3;
    const scales = scalesFor(this.facts.units);
    const fits = scales.find(({ ratio }) => {
      const size = planSize(this.facts.garden.yard, ratio);
      return size.height <= most && size.width <= planRoom(this.paper, grid).width;
    });
    return fits ?? scales.at(-1)!;
  }

  private tried({ ratio }: Scale, grid: Grid, blocks: readonly Block[]): Mark[] | null {
    const size = planSize(this.facts.garden.yard, ratio);
    const room = planRoom(this.paper, grid);
    if (size.width > room.width || this.top + size.height > this.bottom) return null;
    const columns = columnsOf(this.paper, grid, this.top, this.top + size.height, this.bottom);
    const lists = flowed(blocks, columns, columnWidth(this.paper, grid));
    if (!lists) return null;
    const x = room.left + PLAN_MARGIN.left + (room.width - size.width) / 2;
    return [...planMarks(this.facts, { x, y: this.top + PLAN_MARGIN.top, ratio }), ...lists];
  }

  private sheet(scale: Scale, marks: readonly Mark[], leftOut: readonly string[]): Sheet {
    const { width, height } = this.paper;
    return {
      paper: this.paperId,
      widthMm: width,
      heightMm: height,
      scale: 1 / scale.ratio,
      scaleText: scale.text,
      marks: [...frameMarks(this.facts, this.paper, scale.text, this.date), ...marks],
      leftOut,
      larger: leftOut.length > 0 ? this.larger() : null,
      outline: this.blocksFor(this.grids[0]!).map(({ heading, rows }) => ({
        heading,
        lines: rows.map(({ words }) => words),
      })),
    };
  }
}

/** A list longer than this never stands on a page that has more than one of them. */
const MOST_ROWS = 60;
/** The least a yard may measure on paper, mm: below this nobody finds a bed on it. */
const LEAST_DRAWING = 70;

/** The block with at most so many of its rows; what is left out is said. */
function capped(block: Block, most: number, left: string[]): Block {
  const keep = Math.max(block.spare?.from ?? 0, most);
  if (block.rows.length <= keep) return block;
  const gone = block.rows.length - keep;
  left.push(
    block.spare?.more(gone) ??
      sayCount(
        gone,
        { one: "{{count}} more line of {{heading}}.", other: "{{count}} more lines of {{heading}}." },
        { heading: midSentence(block.heading) },
      ),
  );
  return { ...block, rows: block.rows.slice(0, keep) };
}

const noticeBlock = (sentences: readonly string[], width: number): Block => ({
  heading: say`Not on this page`,
  rows: sentences.map((sentence) => paragraph(sentence, width)),
});
