import { type CSSProperties, useEffect, useMemo, useRef, useState } from "react";
import { buildSheet, type Garden, PAPERS, type PaperId, say, stagesOf, takeoff } from "../../src/index.ts";
import { StageRow } from "../ledger/takeoff/StageRow.tsx";
import { useProvenTakeoff } from "../live/cut-proof.ts";
import { useFindings } from "../live/findings.ts";
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

/** The build sheet as it will be printed, with what one does with it above. */
export function SheetDesk({ onClose }: Props) {
  const garden = useEditor((state) => state.garden);
  const stages = useMemo(() => stagesOf(garden), [garden]);
  const closeButton = useRef<HTMLButtonElement>(null);
  const [date] = useState(today);
  const [paper, setPaper] = usePaper();
  const [wanted, setStage] = useState<number | "all">("all");
  const stage = wanted !== "all" && stages.includes(wanted) ? wanted : "all";
  const sheet = useSheet(garden, paper, stage, date);

  useEffect(() => closeButton.current?.focus(), []);

  const { height } = PAPERS[paper];
  return (
    <section
      className="sheet-dialog"
      role="dialog"
      aria-modal="true"
      aria-labelledby="sheet-title"
      onKeyDown={(event) => event.key === "Escape" && onClose()}
    >
      <PageSize paper={paper} />
      <header className="sheet-bar">
        <h1 id="sheet-title">{say`Build sheet`}</h1>
        <PaperRow paper={paper} onChoose={setPaper} />
        {stages.length > 1 ? <StageRow stages={stages} stage={stage} onChoose={setStage} /> : null}
        <p className="sheet-scale">
          {say`Drawn at ${sheet.scaleText}. In the print dialog keep the scale at 100 %; to keep it as a file, print to PDF.`}
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
        <SheetPage
          sheet={sheet}
          label={say`Build sheet of ${garden.name}, drawn at ${sheet.scaleText}; its words follow.`}
        />
        <SheetOutline sheet={sheet} />
      </div>
    </section>
  );
}

/** The sheet of a stage with the figures that the ledger shows: its proven cut plans, its snags. */
function useSheet(garden: Garden, paper: PaperId, stage: number | "all", date: string) {
  const { of, snags, takeoff: live, access } = useFindings();
  const current = of === garden;
  const quick = useMemo(
    () => (stage === "all" && current && live ? live : takeoff(garden, { stage })),
    [garden, stage, current, live],
  );
  const { takeoff: proven } = useProvenTakeoff(garden, quick, true);
  return useMemo(() => {
    const known = current && access ? { known: { access, takeoff: proven, snags } } : {};
    return buildSheet(garden, paper, { date, stage, ...known });
  }, [garden, paper, stage, date, current, access, proven, snags]);
}
