import { useFindings } from "../../live/findings.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { carriedLines } from "../drip/carried-lines.ts";
import { isDripShown } from "../drip/drip-shown.ts";
import type { Pen } from "../pen.ts";
import { paintDrip } from "./drip.ts";

/** The pipes of the last plan, while they are asked for; lines of a bed under the hand go with it. */
export function paintDripScene(pen: Pen): void {
  const { drip, dripOf } = useFindings.getState();
  const state = useEditor.getState();
  if (!drip || drip.beds.length === 0 || !isDripShown(state)) return;
  paintDrip(pen, { main: drip.main, beds: carriedLines(drip.beds, dripOf, shownGarden(state)) });
}
