import { type Op, say, type Underlay } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";

export const underlayOps = (underlay: Underlay | null): readonly Op[] => [
  { op: "set-garden", changes: { underlay } },
];

/**
 * Changes the picture beneath the plan, as one step that can be undone.
 * @returns why it could not be: a garden holds no picture more than 1 km away, or of such a size; null where it could
 */
export function setUnderlay(label: string, underlay: Underlay | null): string | null {
  try {
    useEditor.getState().commit(label, underlayOps(underlay));
    return null;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return say`The picture would lie too far off, or be too large or too small for a plan.`;
  }
}
