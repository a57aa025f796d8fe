import { memo } from "react";
import {
  type BoardPlan,
  type CutBoard,
  formatLength,
  formatMoney,
  formatShare,
  formatShort,
  type Piece,
  sawAngleWords,
  say,
  sayCount,
  timberById,
  type Units,
} from "../../../src/index.ts";
import type { ProofState } from "../../live/cut-proof.ts";
import { boardName } from "../card/bed/board-choices.ts";
import { BoardBar } from "./BoardBar.tsx";

interface Props {
  readonly boardPlan: BoardPlan;
  readonly proof: ProofState;
  readonly units: Units;
  readonly currency: string;
}

/** Which pieces are sawn from which board, drawn to one scale; equal boards once, with their number. */
export const CutPlanFigure = memo(
  CutPlanInner,
  // The engine plans anew only when the pieces change; what is around the plan is made each time.
  (before, now) =>
    before.boardPlan.plan === now.boardPlan.plan &&
    before.boardPlan.aim === now.boardPlan.aim &&
    proofWords(before.proof, before.boardPlan) === proofWords(now.proof, now.boardPlan) &&
    before.units === now.units &&
    before.currency === now.currency,
);

function CutPlanInner({ boardPlan, proof, units, currency }: Props) {
  const { plan, board, timber, pieces, tooLong, spliced, offcuts, wasteShare } = boardPlan;
  const longest = Math.max(...plan.boards.map(({ stock }) => stock.length), 1);
  const angles = sawAngleWords(pieces, units);
  return (
    <figure className="cut-plan">
      <figcaption>
        <strong>
          {boardName(board, units)} {timberById(timber)?.label ?? timber}
        </strong>
        <span>
          {sayCount(
            plan.boards.length,
            { one: "{{count}} board, {{waste}} waste", other: "{{count}} boards, {{waste}} waste" },
            { waste: formatShare(wasteShare) },
          )}
        </span>
        <span className="bound" data-proof={proof.state}>
          {formatMoney(plan.cost, currency)}, {proofWords(proof, boardPlan)}
        </span>
      </figcaption>
      <ol>
        {grouped(plan.boards).map(({ board: cut, count }) => (
          <li key={boardKey(cut)}>
            <span className="cut-stock">
              {count} × {formatShort(cut.stock.length, units)}
              {cut.stock.onHand ? <small>{say`at home`}</small> : null}
            </span>
            <BoardBar cut={cut} longest={longest} units={units} />
          </li>
        ))}
      </ol>
      {angles.map((words) => (
        <p className="line-how" key={words}>
          {words}
        </p>
      ))}
      {offcuts.length > 0 ? (
        <p className="line-how">{say`Worth keeping: ${offcuts.map(({ length, count }) => `${count} × ${formatShort(length, units)}`).join(", ")}.`}</p>
      ) : null}
      {spliced.map((piece) => (
        <p
          className="field-note"
          key={pieceKey(piece)}
        >{say`${piece.count} × ${formatLength(piece.length, units)} is longer than any board: in equal parts, joined on a post.`}</p>
      ))}
      {[...tooLong, ...plan.uncut.filter((piece) => !tooLong.includes(piece))].map((piece) => (
        <p
          className="field-problem"
          key={pieceKey(piece)}
        >{say`${piece.count} × ${formatLength(piece.length, units)} cannot be cut from the boards there are: see Site for their lengths.`}</p>
      ))}
    </figure>
  );
}

/** How near the least this plan is known to be. */
export function proofWords(proof: ProofState, { aim, excess }: Pick<BoardPlan, "aim" | "excess">): string {
  const least = aim === "least-cost" ? "cost" : "waste";
  switch (proof.state) {
    case "proven":
      return aim === "least-cost" ? say`proven cheapest` : say`proven least waste`;
    case "proving":
      return say`at most ${percent(excess)} above the least ${least}, proving…`;
    case "bounded":
      return say`at most ${percent(proof.excess)} above the least ${least}`;
  }
}

const percent = (share: number): string => `${Math.max(0.1, share * 100).toFixed(1)} %`;

const pieceKey = ({ length, label }: Piece): string => `${label ?? ""} ${length}`;

const boardKey = ({ stock, pieces }: CutBoard): string =>
  `${stock.length}${stock.onHand ? say` at home` : ""}: ${pieces.map(({ length }) => length).join(" ")}`;

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
