import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { limitsOf } from "../garden/limits.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { bedQuantities } from "./bed-quantities.ts";
import { costOf } from "./cost-of.ts";
import { settingsOf } from "./settings.ts";

/** What woody stuff below saves on the fill of a tall bed. */
export interface LayeringSaving {
  readonly bedId: ItemId;
  /** Mix to be ordered less, litres. */
  readonly mixSavedL: number;
  /** Money saved, or that could be saved, with all loads and bags planned anew. */
  readonly saved: number;
  /** It is layered already. */
  readonly now: boolean;
}

/**
 * For each bed that is layered, or is all mix and deep enough to be layered: what that saves, against the same bed
 * filled with mix throughout. Beds that are full already are left out.
 */
export function layeringSavings(garden: Garden): readonly LayeringSaving[] {
  const { layeredFrom, layeredMix } = limitsOf(garden);
  const settings = settingsOf(garden);
  return garden.items.flatMap((item): LayeringSaving[] => {
    if (item.kind !== "bed" || item.fill.way === "native") return [];
    const { soilDepth, fill } = bedQuantities(item, settings);
    const now = item.fill.way === "layered";
    if (!now && soilDepth < layeredFrom - SAME_LENGTH) return [];
    const other = now
      ? { ...item.fill, way: "mix" as const }
      : { ...item.fill, way: "layered" as const, mixDepth: layeredMix };
    const dearer = costOf(garden, [{ op: "set", id: item.id, changes: { fill: other } }]);
    const otherMix = bedQuantities({ ...item, fill: other }, settings).fill.mixOrder;
    const mixSavedL = now ? otherMix - fill.mixOrder : fill.mixOrder - otherMix;
    if (dearer === null || mixSavedL <= 0) return [];
    return [{ bedId: item.id, mixSavedL, saved: now ? dearer : 0 - dearer, now }];
  });
}
