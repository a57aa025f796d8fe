import { type CSSProperties, type ReactNode, useEffect, useRef } from "react";
import { PAPERS, type PaperId, type Sheet, say } from "../../src/index.ts";
import { PageSize } from "./PageSize.tsx";
import { PaperRow } from "./PaperRow.tsx";
import { SheetOutline } from "./SheetOutline.tsx";
import { SheetPage } from "./SheetPage.tsx";

interface Props {
  readonly title: string;
  readonly sheet: Omit<Sheet, "scale" | "scaleText">;
  /** The page as a screen reader names it. */
  readonly label: string;
  /** What to mind in the print dialog. */
  readonly hint: string;
  readonly paper: PaperId;
  readonly onPaper: (paper: PaperId) => void;
  /** More to choose from, beside the paper. */
  readonly choices?: ReactNode;
  readonly onClose: () => void;
}

const TITLE_ID = "print-desk-title";

/** A page as it will be printed, with what one does with it above. */
export function PrintDesk({ title, sheet, label, hint, paper, onPaper, choices, onClose }: Props) {
  const closeButton = useRef<HTMLButtonElement>(null);
  useEffect(() => closeButton.current?.focus(), []);

  const { height } = PAPERS[paper];
  return (
    <section
      className="sheet-dialog"
      role="dialog"
      aria-modal="true"
      aria-labelledby={TITLE_ID}
      onKeyDown={(event) => event.key === "Escape" && onClose()}
    >
      <PageSize paper={paper} />
      <header className="sheet-bar">
        <h1 id={TITLE_ID}>{title}</h1>
        <PaperRow paper={paper} onChoose={onPaper} />
        {choices}
        <p className="sheet-scale">{hint}</p>
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
        <SheetPage sheet={sheet} label={label} />
        <SheetOutline sheet={sheet} />
      </div>
    </section>
  );
}
