import { useEditor } from "../../store/use-editor.ts";
import { useLedger } from "../ledger-state.ts";

/** Begins to draw a main, or a line of the bed chosen, on the plan; on a narrow screen the ledger makes room for it. */
export function drawPipes(what: "main" | "drip-line"): void {
  useEditor.getState().pick(what);
  useLedger.getState().drawTo("low");
}
