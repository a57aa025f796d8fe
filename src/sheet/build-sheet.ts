import { access } from "../access/access.ts";
import type { Access } from "../access/types.ts";
import type { Garden } from "../garden/garden.ts";
import { checkGarden } from "../rules/check-garden.ts";
import type { Snag } from "../rules/rule.ts";
import { takeoff } from "../takeoff/takeoff.ts";
import type { Takeoff } from "../takeoff/types.ts";
import { bedKindsOf } from "./bed-kinds.ts";
import { bedsBlock, waysBlock } from "./blocks/beds.ts";
import { cutPlanBlocks } from "./blocks/cut-plan.ts";
import { orderOfWorkBlock } from "./blocks/order-of-work.ts";
import { proofsBlock } from "./blocks/proofs.ts";
import { settingOutBlock } from "./blocks/setting-out.ts";
import { stillOpenBlock } from "./blocks/still-open.ts";
import { takeCareBlock } from "./blocks/take-care.ts";
import { toBuyBlock } from "./blocks/to-buy.ts";
import { type Block, type Column, flowed, paragraph } from "./flow.ts";
import { frameMarks, frameSize } from "./page-frame.ts";
import { PAPERS, type PaperId } from "./papers.ts";
import { PLAN_MARGIN, planMarks, planSize } from "./plan-drawing.ts";
import { type Scale, scalesFor } from "./scales.ts";
import { pegsOf } from "./setting-out.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import type { Mark, Sheet } from "./types.ts";

const COLUMNS = 3;
const GUTTER = 5;
const UNDER_PLAN = 3;

export interface SheetOptions {
  /** The day it is printed, as it should read; left out where it is not given, for the engine knows no clock. */
  readonly date?: string;
  /** What is already worked out about this very garden. */
  readonly known?: { readonly access: Access; readonly takeoff: Takeoff; readonly snags: readonly Snag[] };
}

/**
 * Everything the build sheet prints, as drawing commands for one page.
 *
 * The plan is drawn at the largest standard scale at which it and every list fit the page in type of 8 pt. Where no
 * scale does, lists that may be shortened are, and the sheet says what it left out and whether larger paper holds it.
 *
 * @param paper Letter or A4, upright
 */
export function buildSheet(garden: Garden, paper: PaperId, options: SheetOptions = {}): Sheet {
  const facts = factsOf(garden, options);
  const layout = new Layout(facts, paper, options.date ?? null);
  return layout.whole() ?? layout.shortened();
}

function factsOf(garden: Garden, { known }: SheetOptions): SheetFacts {
  const kinds = bedKindsOf(garden);
  const quantities = known?.takeoff ?? takeoff(garden);
  const ways = known?.access ?? access(garden);
  return {
    garden,
    units: garden.units,
    kinds,
    beds: kinds.flatMap(({ beds }) => beds),
    pegs: pegsOf(garden),
    takeoff: quantities,
    access: ways,
    snags: known?.snags ?? checkGarden(garden, { access: ways, takeoff: quantities }),
  };
}

/** How many columns the plan takes: three lie under it, or one stands beside it. */
type Span = 2 | 3;

class Layout {
  private readonly left: number;
  private readonly width: number;
  private readonly columnWidth: number;
  private readonly top: number;
  private readonly bottom: number;
  private readonly blocks: readonly Block[];

  constructor(
    private readonly facts: SheetFacts,
    private readonly paper: PaperId,
    private readonly date: string | null,
  ) {
    const page = PAPERS[paper];
    this.left = page.margin;
    this.width = page.width - 2 * page.margin;
    this.columnWidth = (this.width - (COLUMNS - 1) * GUTTER) / COLUMNS;
    const frame = frameSize(facts, this.width);
    this.top = page.margin + frame.header;
    this.bottom = page.height - page.margin - frame.footer;
    this.blocks = this.allBlocks();
  }

  private allBlocks(): Block[] {
    const { facts, columnWidth: width } = this;
    return [
      settingOutBlock(facts, width),
      proofsBlock(facts, width),
      stillOpenBlock(facts, width),
      bedsBlock(facts, width),
      ...cutPlanBlocks(facts, width),
      toBuyBlock(facts, width),
      orderOfWorkBlock(facts, width),
      waysBlock(facts, width),
      takeCareBlock(facts, width),
    ];
  }

  /** The sheet with nothing left out, at the largest scale that allows it; null if none does. */
  whole(): Sheet | null {
    for (const scale of scalesFor(this.facts.units)) {
      for (const span of [3, 2] as const) {
        const marks = this.tried(scale, span, this.blocks);
        if (marks) return this.sheet(scale, marks, []);
      }
    }
    return null;
  }

  /**
   * The sheet with as little left out as it takes: first rows that may be counted instead of listed, then, for a
   * garden far beyond one page, rows from the end of the longest lists.
   */
  shortened(): Sheet {
    const scale = this.scaleOfThirdOfPage();
    for (let most = 60; most >= 0; most--) {
      const left: string[] = [];
      const blocks = this.blocks.map((block) => capped(block, most, left));
      const notice = this.notice(left);
      const marks = this.tried(scale, 2, [noticeBlock(notice, this.columnWidth), ...blocks]);
      if (marks) return this.sheet(scale, marks, notice);
    }
    // Even headings alone do not fit: a plan and the notice still do.
    const notice = this.notice(this.blocks.map(({ heading }) => `${heading} is left out.`));
    const marks = this.tried(scale, 2, [noticeBlock(notice, this.columnWidth)]) ?? [];
    return this.sheet(scale, marks, notice);
  }

  private notice(left: readonly string[]): string[] {
    const larger =
      this.paper === "letter" && new Layout(this.facts, "a4", this.date).whole()
        ? "A4 paper holds all of it."
        : "No single page holds all of it: the rest stands in the ledger.";
    return [...left, larger];
  }

  private scaleOfThirdOfPage(): Scale {
    const most = (this.bottom - this.top) / 3;
    const wide = 2 * this.columnWidth + GUTTER;
    const scales = scalesFor(this.facts.units);
    const fits = scales.find(({ ratio }) => {
      const size = planSize(this.facts.garden.yard, ratio);
      return size.height <= most && size.width <= wide;
    });
    return fits ?? scales.at(-1)!;
  }

  private tried({ ratio }: Scale, span: Span, blocks: readonly Block[]): Mark[] | null {
    const size = planSize(this.facts.garden.yard, ratio);
    const room = span * this.columnWidth + (span - 1) * GUTTER;
    if (size.width > room || this.top + size.height > this.bottom) return null;
    const planLeft = this.left + this.width - room;
    const lists = flowed(blocks, this.columns(span, this.top + size.height + UNDER_PLAN), this.columnWidth);
    if (!lists) return null;
    const place = {
      x: planLeft + PLAN_MARGIN.left + (room - size.width) / 2,
      y: this.top + PLAN_MARGIN.top,
      ratio,
    };
    return [...planMarks(this.facts, place), ...lists];
  }

  private columns(span: Span, underPlan: number): Column[] {
    return Array.from({ length: COLUMNS }, (_, i) => ({
      x: this.left + i * (this.columnWidth + GUTTER),
      top: i < COLUMNS - span ? this.top : underPlan,
      bottom: this.bottom,
    }));
  }

  private sheet(scale: Scale, marks: readonly Mark[], leftOut: readonly string[]): Sheet {
    const { width, height } = PAPERS[this.paper];
    return {
      paper: this.paper,
      widthMm: width,
      heightMm: height,
      scale: 1 / scale.ratio,
      scaleText: scale.text,
      marks: [...frameMarks(this.facts, PAPERS[this.paper], scale.text, this.date), ...marks],
      leftOut,
      outline: this.blocks.map(({ heading, rows }) => ({ heading, lines: rows.map(({ words }) => words) })),
    };
  }
}

/** The block with at most so many of its rows; what is left out is said. */
function capped(block: Block, most: number, left: string[]): Block {
  const keep = Math.max(block.spare?.from ?? 0, most);
  if (block.rows.length <= keep) return block;
  const gone = block.rows.length - keep;
  left.push(
    block.spare?.more(gone) ??
      `${gone} more ${gone === 1 ? "line" : "lines"} of ${block.heading.toLowerCase()}.`,
  );
  return { ...block, rows: block.rows.slice(0, keep) };
}

const noticeBlock = (sentences: readonly string[], width: number): Block => ({
  heading: "Not on this page",
  rows: sentences.map((sentence) => paragraph(sentence, width)),
});
