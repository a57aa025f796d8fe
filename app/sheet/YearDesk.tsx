import { useMemo, useState } from "react";
import { say, takeoff, yearSheet } from "../../src/index.ts";
import { useProvenTakeoff } from "../live/cut-proof.ts";
import { useEditor } from "../store/use-editor.ts";
import { PrintDesk } from "./PrintDesk.tsx";
import { today } from "./today.ts";
import { usePaper } from "./use-paper.ts";

interface Props {
  readonly onClose: () => void;
}

/** The year's page as it will be printed. */
export function YearDesk({ onClose }: Props) {
  const garden = useEditor((state) => state.garden);
  const [date] = useState(today);
  const [paper, setPaper] = usePaper();
  const made = useMemo(() => takeoff(garden), [garden]);
  // The same sums as in the ledger, whose cut plans are proven.
  const { takeoff: whole } = useProvenTakeoff(garden, made, true);
  const sheet = useMemo(() => yearSheet(garden, paper, { date, whole }), [garden, paper, date, whole]);

  return (
    <PrintDesk
      title={say`The year’s page`}
      sheet={sheet}
      label={say`The year round of ${garden.name}; its words follow.`}
      hint={say`In the print dialog keep the scale at 100 %; to keep it as a file, print to PDF.`}
      paper={paper}
      onPaper={setPaper}
      onClose={onClose}
    />
  );
}
