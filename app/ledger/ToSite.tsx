import { say } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";

/** Leads from a leaf to where what it stands on is set. */
export const ToSite = () => (
  <button type="button" className="link" onClick={() => useEditor.getState().turnTo("site")}>
    {say`under Site`}
  </button>
);
