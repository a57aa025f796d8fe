import { PAPER_IDS, PAPERS, type PaperId, say } from "../../src/index.ts";

interface Props {
  readonly paper: PaperId;
  readonly onChoose: (paper: PaperId) => void;
}

/** Which paper the sheet is laid out for. */
export const PaperRow = ({ paper, onChoose }: Props) => (
  <fieldset className="button-row" aria-label={say`Paper`}>
    {PAPER_IDS.map((id) => (
      <button
        key={id}
        type="button"
        className="button"
        aria-pressed={paper === id}
        onClick={() => onChoose(id)}
      >
        {PAPERS[id].name}
      </button>
    ))}
  </fieldset>
);
