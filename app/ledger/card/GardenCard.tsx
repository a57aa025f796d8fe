import { formatArea, formatVolume, say, signedArea } from "../../../src/index.ts";
import { openDialog } from "../../dialogs/open-dialog.ts";
import { Filled, slot } from "../../language/Filled.tsx";
import { useFindings } from "../../live/findings.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";

/** With nothing selected: the garden in four figures, and how to get on. */
export function GardenCard() {
  const garden = useEditor(shownGarden);
  const takeoff = useFindings((s) => s.takeoff);
  const selectYard = useEditor((s) => s.selectYard);
  const { units } = garden;
  const soil = takeoff?.beds.reduce((sum, bed) => sum + bed.soilVolumeL, 0);
  const grown = takeoff?.beds.reduce((sum, bed) => sum + bed.soilAreaMm2, 0);

  return (
    <>
      <dl className="facts">
        <div>
          <dt>{say`Yard`}</dt>
          <dd>{formatArea(Math.abs(signedArea(garden.yard)), units)}</dd>
        </div>
        <div>
          <dt>{say`Beds`}</dt>
          <dd>{garden.items.filter(({ kind }) => kind === "bed").length}</dd>
        </div>
        <div>
          <dt>{say`Soil to plant`}</dt>
          <dd>{grown === undefined ? "…" : formatArea(grown, units)}</dd>
        </div>
        <div>
          <dt>{say`Soil in the beds`}</dt>
          <dd>{soil === undefined ? "…" : formatVolume(soil, units)}</dd>
        </div>
      </dl>
      <p className="card-hint">
        <Filled
          text={say`Select a thing on the plan to see and set its sizes here, or ${slot(0)}.`}
          put={[
            <button key="yard" type="button" className="link" onClick={selectYard}>
              {say`the yard itself`}
            </button>,
          ]}
        />{" "}
        <button type="button" className="link" onClick={() => openDialog("help")}>
          {say`How it works`}
        </button>
      </p>
    </>
  );
}
