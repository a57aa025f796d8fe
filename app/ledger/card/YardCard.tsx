import { say } from "../../../src/index.ts";
import { openDialog } from "../../dialogs/open-dialog.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { PolygonSides } from "./PolygonSides.tsx";

/** The yard's own outline, by its sides. */
export function YardCard() {
  const yard = useEditor((s) => shownGarden(s).yard);
  const commit = useEditor((s) => s.commit);
  return (
    <div className="fields">
      <PolygonSides
        points={yard}
        onCommit={(points) => commit(say`Set the yard’s outline`, [{ op: "set-yard", yard: points }])}
      />
      <p className="wide">
        <button
          type="button"
          className="link"
          onClick={() => openDialog("outline")}
        >{say`Type sides and turns as measured`}</button>
        <br />
        <button
          type="button"
          className="link"
          onClick={() => openDialog("parcels")}
        >{say`Take it from a parcel file`}</button>
      </p>
    </div>
  );
}
