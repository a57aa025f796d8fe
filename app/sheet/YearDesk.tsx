import { type CSSProperties, useEffect, useMemo, useRef, useState } from "react";
import { PAPERS, say, takeoff, yearSheet } from "../../src/index.ts";
import { useProvenTakeoff } from "../live/cut-proof.ts";
import { useEditor } from "../store/use-editor.ts";
import { PageSize } from "./PageSize.tsx";
import { PaperRow } from "./PaperRow.tsx";
import { SheetOutline } from "./SheetOutline.tsx";
import { SheetPage } from "./SheetPage.tsx";
import { today } from "./today.ts";
import { usePaper } from "./use-paper.ts";

interface Props {
  readonly onClose: () => void;
}

/** The year's page as it will be printed, with what one does with it above. */
export function YearDesk({ onClose }: Props) {
  const garden = useEditor((state) => state.garden);
  const closeButton = useRef<HTMLButtonElement>(null);
  const [date] = useState(today);
  const [paper, setPaper] = usePaper();
  const made = useMemo(() => takeoff(garden), [garden]);
  // The same sums as in the ledger, whose cut plans are proven.
  const { takeoff: whole } = useProvenTakeoff(garden, made, true);
  const sheet = useMemo(() => yearSheet(garden, paper, { date, whole }), [garden, paper, date, whole]);

  useEffect(() => closeButton.current?.focus(), []);

  const { height } = PAPERS[paper];
  return (
    <section
      className="sheet-dialog"
      role="dialog"
      aria-modal="true"
      aria-labelledby="year-page-title"
      onKeyDown={(event) => event.key === "Escape" && onClose()}
    >
      <PageSize paper={paper} />
      <header className="sheet-bar">
        <h1 id="year-page-title">{say`The year’s page`}</h1>
        <PaperRow paper={paper} onChoose={setPaper} />
        <p className="sheet-scale">
          {say`In the print dialog keep the scale at 100 %; to keep it as a file, print to PDF.`}
        </p>
        <div className="sheet-actions">
          <button type="button" className="button main" onClick={() => window.print()}>
            {say`Print`}
          </button>
          <button type="button" className="button" ref={closeButton} onClick={onClose}>
            {say`Back to the plan`}
          </button>
        </div>
        {sheet.leftOut.length > 0 && (
          <p className="sheet-left-out" role="status">
            {sheet.leftOut.join(" ")}
          </p>
        )}
      </header>
      <div className="sheet-table" style={{ "--page-height": `${height}mm` } as CSSProperties}>
        <SheetPage sheet={sheet} label={say`The year round of ${garden.name}; its words follow.`} />
        <SheetOutline sheet={sheet} />
      </div>
    </section>
  );
}
