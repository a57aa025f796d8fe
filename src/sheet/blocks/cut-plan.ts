import type { BoardPlan, CutBoard } from "../../takeoff/types.ts";
import { fixed } from "../../units/decimals.ts";
import { formatLength, formatShort } from "../../units/format-length.ts";
import type { Units } from "../../units/length.ts";
import { say, sayCount } from "../../words/say.ts";
import { boardWords, timberWords } from "../bed-words.ts";
import { formatStock } from "../figures.ts";
import { type Block, paragraph, type Row, text } from "../flow.ts";
import { LEAST_PT, lineHeight, textWidth } from "../lettering.ts";
import { sawAngleWords } from "../saw-angles.ts";
import type { SheetFacts } from "../sheet-facts.ts";
import type { Mark } from "../types.ts";

const BAR_HEIGHT = 3.3;
const ROW_HEIGHT = BAR_HEIGHT + 1.1;
const COUNT_ROOM = 15;
const LETTER_ROOM = 0.7;

/** Which pieces are sawn from which board: boards sawn alike are drawn once, with how many there are. */
export function cutPlanBlocks({ takeoff, units, garden }: SheetFacts, width: number): Block[] {
  const kerf = formatShort(garden.cutting.kerf, units);
  const kerfNote =
    units === "us"
      ? say`Lengths in inches; the saw takes ${kerf}.`
      : say`Lengths in cm; the saw takes ${kerf}.`;
  return takeoff.boardPlans.map((boardPlan, i) => {
    const longest = Math.max(1, ...boardPlan.plan.boards.map(({ stock }) => stock.length));
    const uncut = [...boardPlan.tooLong, ...boardPlan.plan.uncut];
    return {
      heading: say`Cut plan: ${boardWords(boardPlan.board, units)} ${timberWords(boardPlan.timber)}`,
      rows: [
        ...alike(boardPlan.plan.boards).map((group) => boardRow(group, longest, width, units)),
        ...sawAngleWords(boardPlan.pieces, units).map((words) => paragraph(words, width)),
        ...uncut.map((piece) =>
          paragraph(
            say`${piece.count} × ${formatLength(piece.length, units)} is not cut: no board on sale holds it.`,
            width,
          ),
        ),
        paragraph(`${summary(boardPlan, units)}${i === 0 ? ` ${kerfNote}` : ""}`, width),
      ],
    };
  });
}

function summary(boardPlan: BoardPlan, units: Units): string {
  const { plan, wasteShare, offcuts } = boardPlan;
  const boards = sayCount(plan.boards.length, { one: "{{count}} board", other: "{{count}} boards" });
  const kept =
    offcuts.length > 0
      ? say` Keep ${offcuts.map(({ length, count }) => `${count} × ${formatShort(length, units)}`).join(", ")}.`
      : "";
  return say`${boards}, ${fixed(wasteShare * 100, 1)} % waste, ${boundWords(boardPlan)}.${kept}`;
}

function boundWords({ plan, aim, excess }: BoardPlan): string {
  const ofCost = aim === "least-cost";
  if (plan.proven) return ofCost ? say`least cost possible` : say`least waste possible`;
  const above = fixed(Math.max(0.1, excess * 100), 1);
  return ofCost
    ? say`at most ${above} % above the least cost`
    : say`at most ${above} % above the least waste`;
}

interface Alike {
  readonly board: CutBoard;
  readonly count: number;
}

function alike(boards: readonly CutBoard[]): Alike[] {
  const groups = new Map<string, Alike>();
  for (const board of boards) {
    const lengths = board.pieces.map(({ length }) => length).toSorted((a, b) => b - a);
    const key = JSON.stringify([board.stock.length, board.stock.onHand ?? false, lengths]);
    const known = groups.get(key);
    groups.set(key, { board: known?.board ?? board, count: (known?.count ?? 0) + 1 });
  }
  return [...groups.values()];
}

/** A figure without its unit, as it stands inside a piece. */
const bare = (mm: number, units: Units): string => formatShort(mm, units).replace(/ \S+$/, "");

/** "45 + 10 × 11": pieces in words, those alike that follow one another counted. */
function inWords(labels: readonly string[]): string {
  const runs: { label: string; count: number }[] = [];
  for (const label of labels) {
    const last = runs.at(-1);
    if (last?.label === label) last.count += 1;
    else runs.push({ label, count: 1 });
  }
  return runs.map(({ label, count }) => (count === 1 ? label : `${count} × ${label}`)).join(" + ");
}

/** "44 × 8 ft" and the board to scale, its pieces lettered; their lengths in words under it where a piece is too short. */
function boardRow({ board, count }: Alike, longest: number, width: number, units: Units): Row {
  const perMm = (width - COUNT_ROOM) / longest;
  const labels = board.pieces.map(({ length }) => bare(length, units));
  const lettered = board.pieces.every(
    ({ length }, i) => textWidth(labels[i]!, LEAST_PT) + LETTER_ROOM <= length * perMm,
  );
  const stock = `${count} × ${formatStock(board.stock.length, units)}`;
  const told = [board.stock.onHand ? say`at home` : "", lettered ? "" : inWords(labels)].filter(Boolean);
  const below = told.length > 0 ? paragraph(told.join(": "), width - COUNT_ROOM) : null;
  return {
    height: ROW_HEIGHT + (below?.height ?? 0),
    words: `${stock}${board.stock.onHand ? say` at home` : ""}: ${inWords(labels)}`,
    draw: (x, y) => [
      text(stock, x, y + lineHeight(LEAST_PT) * 0.78),
      ...bar(board, x + COUNT_ROOM, y, perMm, lettered ? labels : []),
      ...(below ? below.draw(x + COUNT_ROOM, y + BAR_HEIGHT + 0.4) : []),
    ],
  };
}

/** The board to scale: pieces white, the offcut dark. */
function bar(
  { stock, pieces, offcut }: CutBoard,
  x: number,
  y: number,
  perMm: number,
  labels: readonly string[],
): Mark[] {
  const box = (from: number, to: number, fill: "ink" | "paper"): Mark => ({
    draw: "line",
    points: [
      [x + from * perMm, y],
      [x + to * perMm, y],
      [x + to * perMm, y + BAR_HEIGHT],
      [x + from * perMm, y + BAR_HEIGHT],
    ],
    closed: true,
    pen: 0.2,
    fill,
  });
  let from = 0;
  const marks: Mark[] = [];
  pieces.forEach(({ length }, i) => {
    marks.push(box(from, Math.min(stock.length, from + length), "paper"));
    const label = labels[i];
    if (label) {
      marks.push(
        text(label, x + (from + length / 2) * perMm, y + lineHeight(LEAST_PT) * 0.76, { anchor: "middle" }),
      );
    }
    from += length;
  });
  if (offcut > 0) marks.push(box(stock.length - offcut, stock.length, "ink"));
  return marks;
}
