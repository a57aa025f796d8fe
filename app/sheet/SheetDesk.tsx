import { useMemo, useState } from "react";
import { buildSheet, type Garden, type PaperId, say, stagesOf, takeoff } from "../../src/index.ts";
import { StageRow } from "../ledger/takeoff/StageRow.tsx";
import { useProvenTakeoff } from "../live/cut-proof.ts";
import { useFindings } from "../live/findings.ts";
import { useEditor } from "../store/use-editor.ts";
import { PrintDesk } from "./PrintDesk.tsx";
import { today } from "./today.ts";
import { usePaper } from "./use-paper.ts";

interface Props {
  readonly onClose: () => void;
}

/** The build sheet as it will be printed. */
export function SheetDesk({ onClose }: Props) {
  const garden = useEditor((state) => state.garden);
  const stages = useMemo(() => stagesOf(garden), [garden]);
  const [date] = useState(today);
  const [paper, setPaper] = usePaper();
  const [wanted, setStage] = useState<number | "all">("all");
  const stage = wanted !== "all" && stages.includes(wanted) ? wanted : "all";
  const sheet = useSheet(garden, paper, stage, date);

  return (
    <PrintDesk
      title={say`Build sheet`}
      sheet={sheet}
      label={say`Build sheet of ${garden.name}, drawn at ${sheet.scaleText}; its words follow.`}
      hint={say`Drawn at ${sheet.scaleText}. In the print dialog keep the scale at 100 %; to keep it as a file, print to PDF.`}
      paper={paper}
      onPaper={setPaper}
      choices={stages.length > 1 ? <StageRow stages={stages} stage={stage} onChoose={setStage} /> : null}
      onClose={onClose}
    />
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
