import { memo } from "react";
import {
  type BoardPlan,
  type CutBoard,
  formatLength,
  formatMoney,
  formatShort,
  type Piece,
  timberById,
  type Units,
} from "../../../src/index.ts";

interface Props {
  readonly boardPlan: BoardPlan;
  readonly units: Units;
  readonly currency: string;
}

/** Which pieces are sawn from which board, drawn to one scale; equal boards once, with their number. */
export const CutPlanFigure = memo(
  CutPlanInner,
  // The engine plans anew only when the pieces change; what is around the plan is made each time.
  (before, now) =>
    before.boardPlan.plan === now.boardPlan.plan &&
    before.units === now.units &&
    before.currency === now.currency,
);

function CutPlanInner({ boardPlan, units, currency }: Props) {
  const { plan, board, timber, tooLong, spliced } = boardPlan;
  const longest = Math.max(...plan.boards.map(({ stock }) => stock.length), 1);
  const bought = plan.boards.reduce((sum, { stock }) => sum + stock.length, 0);
  const left = plan.boards.reduce((sum, { offcut }) => sum + offcut, 0);
  return (
    <figure className="cut-plan">
      <figcaption>
        <strong>
          {board.replace("x", "×")} {timberById(timber)?.label ?? timber}
        </strong>
        <span>
          {plan.boards.length === 1 ? "1 board" : `${plan.boards.length} boards`}
          {bought > 0 ? `, ${Math.round((left / bought) * 100)} % left over` : ""}
        </span>
        <span className="bound">{boundText(boardPlan, currency)}</span>
      </figcaption>
      <ol>
        {grouped(plan.boards).map(({ board: cut, count }) => (
          <li key={boardKey(cut)}>
            <span className="cut-stock">
              {count} × {formatShort(cut.stock.length, units)}
            </span>
            <BoardBar cut={cut} longest={longest} units={units} />
          </li>
        ))}
      </ol>
      {spliced.map((piece) => (
        <p className="field-note" key={pieceKey(piece)}>
          {piece.count} × {formatLength(piece.length, units)} is longer than any board: in equal parts, joined
          on a post.
        </p>
      ))}
      {[...tooLong, ...plan.uncut.filter((piece) => !tooLong.includes(piece))].map((piece) => (
        <p className="field-problem" key={pieceKey(piece)}>
          {piece.count} × {formatLength(piece.length, units)} cannot be cut from the boards on sale: see Site
          for their lengths.
        </p>
      ))}
    </figure>
  );
}

function boundText({ plan }: BoardPlan, currency: string): string {
  if (plan.boards.length === 0) return "";
  if (plan.proven) return `${formatMoney(plan.cost, currency)}, the least possible`;
  const above = plan.lowerBound > 0 ? (plan.cost / plan.lowerBound - 1) * 100 : 0;
  return `${formatMoney(plan.cost, currency)}, at most ${above.toFixed(1)} % above the least`;
}

const pieceKey = ({ length, label }: Piece): string => `${label ?? ""} ${length}`;

const boardKey = ({ stock, pieces }: CutBoard): string =>
  `${stock.length}: ${pieces.map(({ length }) => length).join(" ")}`;

function grouped(
  boards: readonly CutBoard[],
): readonly { readonly board: CutBoard; readonly count: number }[] {
  const byKey = new Map<string, { board: CutBoard; count: number }>();
  for (const board of boards) {
    const key = boardKey(board);
    const group = byKey.get(key);
    if (group) group.count += 1;
    else byKey.set(key, { board, count: 1 });
  }
  return [...byKey.values()];
}

const BAR_HEIGHT = 18;
const BAR_WIDTH = 260;
/** Narrower than this a piece has no room for its length. */
const ROOM_FOR_LABEL = 34;

interface BarProps {
  readonly cut: CutBoard;
  readonly longest: number;
  readonly units: Units;
}

function BoardBar({ cut, longest, units }: BarProps) {
  const scale = BAR_WIDTH / longest;
  const words = `${cut.pieces.map(({ length }) => formatShort(length, units)).join(", ")}; left over ${formatShort(cut.offcut, units)}`;
  return (
    <svg
      className="board-bar"
      viewBox={`-1 -1 ${BAR_WIDTH + 2} ${BAR_HEIGHT + 2}`}
      role="img"
      aria-label={words}
    >
      <rect width={cut.stock.length * scale} height={BAR_HEIGHT} className="offcut" />
      {placed(cut).map(({ key, from, length }) => (
        <g key={key} transform={`translate(${from * scale} 0)`}>
          <rect width={length * scale} height={BAR_HEIGHT} className="piece" />
          {length * scale >= ROOM_FOR_LABEL ? (
            <text x={(length * scale) / 2} y={BAR_HEIGHT / 2 + 4}>
              {formatShort(length, units)}
            </text>
          ) : null}
        </g>
      ))}
    </svg>
  );
}

/** Pieces from the board's start on; the cuts between them are thinner than a line of the drawing. */
function placed({
  pieces,
}: CutBoard): readonly { readonly key: string; readonly from: number; readonly length: number }[] {
  let from = 0;
  return pieces.map(({ length }, index) => {
    const piece = { key: `${index}`, from, length };
    from += length;
    return piece;
  });
}
