import { useEffect, useMemo, useRef, useState } from "react";
import { buildSheet, type PaperId } from "../../src/index.ts";
import { useFindings } from "../live/findings.ts";
import { useEditor } from "../store/use-editor.ts";
import { SheetOutline } from "./SheetOutline.tsx";
import { SheetPage } from "./SheetPage.tsx";

const PAPER_NAMES: Readonly<Record<PaperId, string>> = { letter: "Letter", a4: "A4" };
const PAPER_IDS: readonly PaperId[] = ["letter", "a4"];
/** How `@page` names the papers. */
const PAGE_SIZES: Readonly<Record<PaperId, string>> = { letter: "8.5in 11in", a4: "210mm 297mm" };

interface Props {
  readonly onClose: () => void;
}

/** The build sheet as it will be printed, with what one does with it above. */
export function SheetDesk({ onClose }: Props) {
  const garden = useEditor((state) => state.garden);
  const { of, snags, takeoff, access } = useFindings();
  const closeButton = useRef<HTMLButtonElement>(null);
  const [date] = useState(today);
  const { paper } = garden;

  const sheet = useMemo(() => {
    const known = of === garden && takeoff && access ? { known: { access, takeoff, snags } } : {};
    return buildSheet(garden, paper, { date, ...known });
  }, [garden, paper, date, of, access, takeoff, snags]);

  useEffect(() => closeButton.current?.focus(), []);

  const setPaper = (to: PaperId) =>
    useEditor.getState().commit(`Paper ${PAPER_NAMES[to]}`, [{ op: "set-garden", changes: { paper: to } }]);

  return (
    <section
      className="sheet-dialog"
      role="dialog"
      aria-modal="true"
      aria-labelledby="sheet-title"
      onKeyDown={(event) => event.key === "Escape" && onClose()}
    >
      <style>{`@page { size: ${PAGE_SIZES[paper]}; margin: 0 }`}</style>
      <header className="sheet-bar">
        <h1 id="sheet-title">Build sheet</h1>
        <fieldset className="button-row" aria-label="Paper">
          {PAPER_IDS.map((id) => (
            <button
              key={id}
              type="button"
              className="button"
              aria-pressed={paper === id}
              onClick={() => setPaper(id)}
            >
              {PAPER_NAMES[id]}
            </button>
          ))}
        </fieldset>
        <p className="sheet-scale">
          Drawn at {sheet.scaleText}. In the print dialog keep the scale at 100 %; to keep it as a file, print
          to PDF.
        </p>
        <div className="sheet-actions">
          <button type="button" className="button main" onClick={() => window.print()}>
            Print
          </button>
          <button type="button" className="button" ref={closeButton} onClick={onClose}>
            Back to the plan
          </button>
        </div>
        {sheet.leftOut.length > 0 && (
          <p className="sheet-left-out" role="status">
            {sheet.leftOut.join(" ")}
          </p>
        )}
      </header>
      <div className="sheet-table">
        <SheetPage sheet={sheet} title={garden.name} />
        <SheetOutline sheet={sheet} />
      </div>
    </section>
  );
}

function today(): string {
  return new Intl.DateTimeFormat(undefined, { dateStyle: "long" }).format(new Date());
}
