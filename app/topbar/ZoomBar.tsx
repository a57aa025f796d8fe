import { useEditor } from "../store/use-editor.ts";
import { reductionOf, writeRatio, writeScale } from "./drawing-scale.ts";
import { KEY_NAMES } from "./shortcuts.ts";
import { fitPlan, zoomStep } from "./zoom.ts";

/** How large the plan is drawn, and the steps of the scale rule either way. */
export function ZoomBar() {
  const units = useEditor((s) => s.garden.units);
  const scaleText = useEditor((s) => writeScale(reductionOf(s.view.scale), units));
  const ratio = useEditor((s) => writeRatio(reductionOf(s.view.scale)));
  return (
    <fieldset className="button-row zoom">
      <legend className="unseen">Scale of the plan</legend>
      <button
        type="button"
        className="button"
        title={`Smaller (${KEY_NAMES.zoomOut})`}
        aria-label="Draw smaller"
        onClick={() => zoomStep(false)}
      >
        −
      </button>
      <output
        aria-live="off"
        className="zoom-scale"
        title={`Drawn ${ratio} on a screen of 96 pixels to the inch`}
      >
        {scaleText}
      </output>
      <button
        type="button"
        className="button"
        title={`Larger (${KEY_NAMES.zoomIn})`}
        aria-label="Draw larger"
        onClick={() => zoomStep(true)}
      >
        +
      </button>
      <button
        type="button"
        className="button"
        title={`The whole yard (${KEY_NAMES.fit})`}
        aria-label="Fit the whole yard"
        onClick={fitPlan}
      >
        Fit
      </button>
    </fieldset>
  );
}
