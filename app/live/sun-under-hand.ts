import { type Garden, hoursOn, type ItemId, type ItemOf, type SunGrid } from "../../src/index.ts";
import type { EditorState } from "../store/editor.ts";

interface Held {
  /** The garden as it was when the hand took hold. */
  readonly garden: Garden;
  readonly id: ItemId;
}

/**
 * Hours of a bed while it is dragged, in the frame: read off a plane at the height of its soil, which is asked for once
 * when the hand takes hold.
 */
export function hoursUnderHand(
  planeOf: (garden: Garden, id: ItemId) => Promise<SunGrid | null>,
  tell: (dragged: { readonly id: ItemId; readonly hours: number } | null) => void,
): (state: Pick<EditorState, "garden" | "draft">) => void {
  let held: Held | null = null;
  let plane: SunGrid | null = null;
  let bed: ItemOf<"bed"> | null = null;

  const say = () => {
    const hours = plane && bed && hoursOn(plane, bed);
    tell(held && hours !== null ? { id: held.id, hours } : null);
  };

  const takeHold = async (next: Held) => {
    held = next;
    plane = null;
    let found: SunGrid | null = null;
    try {
      found = await planeOf(next.garden, next.id);
    } catch {
      // The map is asked for too, and says what is wrong.
    }
    if (held !== next) return;
    plane = found;
    say();
  };

  return ({ garden, draft }) => {
    bed = draft && draggedBed(garden, draft);
    if (!bed) {
      if (held) tell(null);
      held = null;
    } else if (held?.garden === garden && held.id === bed.id) say();
    else void takeHold({ garden, id: bed.id });
  };
}

/** The bed that alone has changed in a draft, at the same height; null for anything else. */
function draggedBed({ items, ...rest }: Garden, draft: Garden): ItemOf<"bed"> | null {
  if (draft.items.length !== items.length || draft.site !== rest.site || draft.yard !== rest.yard)
    return null;
  const changed = draft.items.filter((item, i) => item !== items[i]);
  const [only, another] = changed;
  return only?.kind === "bed" && !another ? only : null;
}
