import { type Garden, say, type WayOut } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { useLedger } from "../ledger-state.ts";

/** What a draft was before a way out was tried, so that only its own draft is dropped again. */
let tried: Garden | null = null;

/** Shows a way out on the plan, unless a gesture is showing something already. */
export function tryOut({ label, ops }: WayOut): void {
  const { draft, preview } = useEditor.getState();
  if (draft && draft !== tried) return;
  preview(ops);
  tried = useEditor.getState().draft;
  useLedger.setState({ trying: label });
}

/** Takes the try back. A gesture that has begun since keeps its draft. */
export function leaveOff(): void {
  const { draft, dropPreview } = useEditor.getState();
  if (tried && draft === tried) dropPreview();
  forget();
}

function forget(): void {
  tried = null;
  useLedger.setState({ trying: null });
}

/**
 * Takes a way out as one step of history.
 * @returns null, or one sentence on why it is no longer possible
 */
export function takeWayOut({ label, ops }: WayOut): string | null {
  forget();
  try {
    useEditor.getState().commit(label, ops);
    useEditor.getState().say(say`Done: ${label}.`);
    return null;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return say`“${label}” is no longer possible: ${error.message}.`;
  }
}
