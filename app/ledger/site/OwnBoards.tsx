import { useState } from "react";
import { type Garden, say, type Units } from "../../../src/index.ts";
import { boardName, withOwnBoard } from "../card/bed/board-choices.ts";
import { OwnBoardFields } from "../card/bed/OwnBoardFields.tsx";

interface Props {
  readonly cutting: Garden["cutting"];
  readonly units: Units;
  readonly onCommit: (ownBoards: Garden["cutting"]["ownBoards"]) => void;
}

const MOST = 50;

/** Sizes of board that the gardener can get beside those of the trade: each bed's card offers them. */
export function OwnBoards({ cutting, units, onCommit }: Props) {
  const [typing, setTyping] = useState(false);
  const { ownBoards } = cutting;
  return (
    <fieldset className="boards-at-home wide">
      <legend>{say`Sizes of my own`}</legend>
      <p className="field-note">{say`Offered on each bed’s card, priced by their volume until you set a price.`}</p>
      <ul>
        {ownBoards.map((board) => (
          <li key={board}>
            <span>{boardName(board, units)}</span>
            <button
              type="button"
              className="button small"
              aria-label={say`Take out ${boardName(board, units)}`}
              onClick={() => onCommit(ownBoards.filter((one) => one !== board))}
            >
              ×
            </button>
          </li>
        ))}
      </ul>
      {typing ? (
        <OwnBoardFields
          units={units}
          onAdd={(board) => {
            setTyping(false);
            onCommit(withOwnBoard(cutting, board).ownBoards);
          }}
          onLeave={() => setTyping(false)}
        />
      ) : (
        <button
          type="button"
          className="button"
          disabled={ownBoards.length >= MOST}
          onClick={() => setTyping(true)}
        >{say`Add a size`}</button>
      )}
    </fieldset>
  );
}
