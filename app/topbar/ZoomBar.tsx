import { say } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";
import { reductionOf, writeRatio, writeScale } from "./drawing-scale.ts";
import { keyNames } from "./shortcuts.ts";
import { fitPlan, zoomStep } from "./zoom.ts";

/** How large the plan is drawn, and the steps of the scale rule either way. */
export function ZoomBar() {
  const units = useEditor((s) => s.garden.units);
  const scaleText = useEditor((s) => writeScale(reductionOf(s.view.scale), units));
  const ratio = useEditor((s) => writeRatio(reductionOf(s.view.scale)));
  const { zoomIn, zoomOut, fit } = keyNames();
  return (
    <fieldset className="button-row zoom">
      <legend className="unseen">{say`Scale of the plan`}</legend>
      <button
        type="button"
        className="button"
        title={say`Smaller (${zoomOut})`}
        aria-label={say`Draw smaller`}
        onClick={() => zoomStep(false)}
      >
        −
      </button>
      <output
        aria-live="off"
        className="zoom-scale"
        title={say`Drawn ${ratio} on a screen of 96 pixels to the inch`}
      >
        {scaleText}
      </output>
      <button
        type="button"
        className="button"
        title={say`Larger (${zoomIn})`}
        aria-label={say`Draw larger`}
        onClick={() => zoomStep(true)}
      >
        +
      </button>
      <button
        type="button"
        className="button"
        title={say`The whole yard (${fit})`}
        aria-label={say`Fit the whole yard`}
        onClick={fitPlan}
      >{say`Fit`}</button>
    </fieldset>
  );
}
