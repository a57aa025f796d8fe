import { timberById } from "../../takeoff/timbers.ts";
import type { BoardPlan, CutBoard } from "../../takeoff/types.ts";
import { formatLength, formatShort } from "../../units/format-length.ts";
import type { Units } from "../../units/length.ts";
import { type Block, paragraph, type Row } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";
import type { Mark } from "../types.ts";

const BAR_HEIGHT = 2.1;
const BAR_GAP = 1.2;

/** Which pieces are sawn from which board: boards sawn alike are drawn once, with how many there are. */
export function cutPlanBlocks({ takeoff, units, garden }: SheetFacts, width: number): Block[] {
  return takeoff.boardPlans.map((boardPlan) => {
    const timber = timberById(boardPlan.timber)?.label ?? boardPlan.timber;
    const longest = Math.max(1, ...boardPlan.plan.boards.map(({ stock }) => stock.length));
    const kerf = formatShort(garden.cutting.kerf, units);
    return {
      heading: `Cut plan: ${boardPlan.board} ${timber}`,
      rows: [
        ...alike(boardPlan.plan.boards).map(({ board, count }) =>
          boardRow(board, count, longest, width, units),
        ),
        ...boardPlan.tooLong.map((piece) =>
          paragraph(
            `${piece.count} × ${formatLength(piece.length, units)} is longer than any board on sale: splice it over a post.`,
            width,
          ),
        ),
        paragraph(`${summary(boardPlan)} Saw ${kerf}.`, width),
      ],
    };
  });
}

function summary({ plan }: BoardPlan): string {
  const bought = plan.boards.reduce((sum, { stock }) => sum + stock.length, 0);
  const used = plan.boards.reduce(
    (sum, { pieces }) => sum + pieces.reduce((all, { length }) => all + length, 0),
    0,
  );
  const waste = bought > 0 ? ((bought - used) / bought) * 100 : 0;
  const boards = plan.boards.length === 1 ? "1 board" : `${plan.boards.length} boards`;
  const over = plan.lowerBound > 0 ? (plan.cost / plan.lowerBound - 1) * 100 : 0;
  const bound = plan.proven
    ? "least cost possible"
    : `at most ${Math.max(0.1, over).toFixed(1)} % above the least cost`;
  return `${boards}, ${waste.toFixed(1)} % waste, ${bound}.`;
}

function alike(boards: readonly CutBoard[]): { board: CutBoard; count: number }[] {
  const counts = new Map<string, { board: CutBoard; count: number }>();
  for (const board of boards) {
    const lengths = board.pieces.map(({ length }) => length).toSorted((a, b) => b - a);
    const key = JSON.stringify([board.stock.length, lengths]);
    const known = counts.get(key);
    counts.set(key, { board: known?.board ?? board, count: (known?.count ?? 0) + 1 });
  }
  return [...counts.values()];
}

function boardRow(board: CutBoard, count: number, longest: number, width: number, units: Units): Row {
  const pieces = board.pieces.map(({ length }) => formatShort(length, units));
  const words = paragraph(
    `${count} × ${formatLength(board.stock.length, units)}: ${pieces.join(" + ")}`,
    width,
    { indent: 3 },
  );
  return {
    height: words.height + BAR_HEIGHT + BAR_GAP,
    words: `${count} boards of ${formatLength(board.stock.length, units)}: ${pieces.join(" + ")}`,
    draw: (x, y) => [...words.draw(x, y), ...bar(board, x, y + words.height - 0.4, width / longest)],
  };
}

/** The board to scale: pieces white, the offcut dark. */
function bar({ stock, pieces, offcut }: CutBoard, x: number, y: number, perMm: number): Mark[] {
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
  for (const { length } of pieces) {
    marks.push(box(from, Math.min(stock.length, from + length), "paper"));
    from += length;
  }
  if (offcut > 0) marks.push(box(stock.length - offcut, stock.length, "ink"));
  return marks;
}
