import { useState } from "react";
import { PAPERS, type PaperId, say } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";

/** The paper a page is laid out for. Papers larger than a household's are for this one print, not for the garden to keep. */
export function usePaper(): readonly [PaperId, (paper: PaperId) => void] {
  const own = useEditor((state) => state.garden.paper);
  const [larger, setLarger] = useState<PaperId | null>(null);
  const setPaper = (to: PaperId) => {
    const kept = to === "letter" || to === "a4" ? to : null;
    setLarger(kept ? null : to);
    if (kept && kept !== own) {
      useEditor
        .getState()
        .commit(say`Paper ${PAPERS[kept].name}`, [{ op: "set-garden", changes: { paper: kept } }]);
    }
  };
  return [larger ?? own, setPaper];
}
