import { useState } from "react";
import { say } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";

/** The way to the printed page. What draws it is loaded when it is first asked for. */
export function SheetButton() {
  const [opening, setOpening] = useState(false);

  const open = async () => {
    setOpening(true);
    try {
      const { openSheet } = await import("../sheet/open-sheet.tsx");
      openSheet();
    } catch {
      useEditor.getState().say(say`The build sheet could not be loaded: check the connection and try again.`);
    } finally {
      setOpening(false);
    }
  };

  return (
    <button
      type="button"
      className="button main"
      aria-busy={opening}
      onClick={() => void open()}
    >{say`Build sheet`}</button>
  );
}
