import { useEditor } from "../store/use-editor.ts";
import { KEY_NAMES } from "./shortcuts.ts";

/** One step back and forth; the title says which. */
export function UndoRedo() {
  const last = useEditor((s) => s.past.at(-1)?.label);
  const next = useEditor((s) => s.future[0]?.label);
  const undo = useEditor((s) => s.undo);
  const redo = useEditor((s) => s.redo);
  // Not `disabled`: that would throw the keyboard out of the bar with the last step.
  return (
    <div className="button-row">
      <button
        type="button"
        className="button"
        aria-disabled={!last}
        title={last ? `Undo: ${last} (${KEY_NAMES.undo})` : "Nothing to undo"}
        onClick={undo}
      >
        Undo
      </button>
      <button
        type="button"
        className="button"
        aria-disabled={!next}
        title={next ? `Redo: ${next} (${KEY_NAMES.redo})` : "Nothing to redo"}
        onClick={redo}
      >
        Redo
      </button>
    </div>
  );
}
