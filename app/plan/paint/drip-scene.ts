import type { Garden, ItemId } from "../../../src/index.ts";
import { useFindings } from "../../live/findings.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { carriedLines } from "../drip/carried-lines.ts";
import { isDripShown } from "../drip/drip-shown.ts";
import { labelOf } from "../label.ts";
import type { Pen } from "../pen.ts";
import { captionLabels } from "./crop-captions.ts";
import { paintDrip } from "./drip.ts";

/** The pipes of the last plan, while they are asked for; lines of a bed under the hand go with it. */
export function paintDripScene(pen: Pen): void {
  const { drip, dripOf } = useFindings.getState();
  const state = useEditor.getState();
  if (!drip || drip.beds.length === 0 || !isDripShown(state)) return;
  const garden = shownGarden(state);
  paintDrip(
    pen,
    { main: drip.main, beds: carriedLines(drip.beds, dripOf, garden) },
    letteringOn(pen, garden),
  );
}

/** A bed's name and the captions of its crops. */
function letteringOn(pen: Pen, { items }: Garden) {
  const beds = new Map(items.filter((item) => item.kind === "bed").map((bed) => [bed.id, bed]));
  return (id: ItemId) => {
    const bed = beds.get(id);
    if (!bed) return [];
    const name = labelOf(bed, pen.view, pen.units);
    return name ? [name, ...captionLabels(pen, bed)] : captionLabels(pen, bed);
  };
}
