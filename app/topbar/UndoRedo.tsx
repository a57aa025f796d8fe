import { say } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";
import { keyNames } from "./shortcuts.ts";

/** One step back and forth; the title says which. */
export function UndoRedo() {
  const last = useEditor((s) => s.past.at(-1)?.label);
  const next = useEditor((s) => s.future[0]?.label);
  const undo = useEditor((s) => s.undo);
  const redo = useEditor((s) => s.redo);
  const { undo: undoKeys, redo: redoKeys } = keyNames();
  // Not `disabled`: that would throw the keyboard out of the bar with the last step.
  return (
    <div className="button-row">
      <button
        type="button"
        className="button"
        aria-disabled={!last}
        title={last ? say`Undo: ${last} (${undoKeys})` : say`Nothing to undo`}
        onClick={undo}
      >{say`Undo`}</button>
      <button
        type="button"
        className="button"
        aria-disabled={!next}
        title={next ? say`Redo: ${next} (${redoKeys})` : say`Nothing to redo`}
        onClick={redo}
      >{say`Redo`}</button>
    </div>
  );
}
