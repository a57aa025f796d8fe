import type { Garden, ItemId } from "../../../src/index.ts";
import { useFindings } from "../../live/findings.ts";
import { useEditor } from "../../store/use-editor.ts";
import { isDripShown } from "../drip/drip-shown.ts";
import type { Pen } from "../pen.ts";
import { paintDrip } from "./drip.ts";

/** The pipes of the last plan, while they are asked for. */
export function paintDripScene(pen: Pen): void {
  const { drip } = useFindings.getState();
  const state = useEditor.getState();
  if (drip && drip.beds.length > 0 && isDripShown(state)) paintDrip(pen, drip, heldIn(state));
}

/** What a gesture is changing now. */
function heldIn({ garden, draft }: { readonly garden: Garden; readonly draft: Garden | null }) {
  if (!draft) return new Set<ItemId>();
  const still = new Set(draft.items);
  return new Set(garden.items.filter((item) => !still.has(item)).map(({ id }) => id));
}
