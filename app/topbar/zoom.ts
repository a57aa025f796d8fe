import { fitView, zoomBy } from "../plan/navigation.ts";
import { shownGarden } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { nextReduction, reductionOf } from "./drawing-scale.ts";

/** Past the ends of the rule a step is this much. */
const FREE_STEP = 1.5;

/** To the next scale of the rule, about the middle of the plan. */
export function zoomStep(closer: boolean): void {
  const state = useEditor.getState();
  const reduction = reductionOf(state.view.scale);
  const next = nextReduction(reduction, closer, shownGarden(state).units);
  zoomBy(useEditor, next ? reduction / next : closer ? FREE_STEP : 1 / FREE_STEP);
}

/** The whole garden on the screen. */
export const fitPlan = (): void => fitView(useEditor);
