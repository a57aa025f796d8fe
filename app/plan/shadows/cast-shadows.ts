import { type Garden, outlineOf, type Ring, shadowsAt } from "../../../src/index.ts";

/** A shadow as it is drawn: rings that are filled as one. */
export interface CastShadow {
  /** Share of the light it takes, above 0 up to 1. */
  readonly takes: number;
  readonly rings: readonly Ring[];
  /** Where it is not drawn: a bed lies in the sun on its own ground. */
  readonly without: Ring | null;
}

type Standing = Pick<Garden, "items" | "site">;

let last: { readonly of: Standing; readonly ms: number; readonly shadows: readonly CastShadow[] } | null =
  null;

/**
 * The shadows to draw at an instant. The last answer is kept: the plan is drawn again for much that moves no shadow.
 */
export function castShadows({ items, site }: Standing, at: Date): readonly CastShadow[] {
  const ms = at.getTime();
  if (last && last.of.items === items && last.of.site === site && last.ms === ms) return last.shadows;
  const beds = new Map(items.flatMap((item) => (item.kind === "bed" ? [[item.id, item] as const] : [])));
  const shadows = shadowsAt({ items, site }, at).flatMap(({ id, light, rings }): CastShadow[] => {
    if (light >= 1 || rings.length === 0) return [];
    const bed = light === 0 ? beds.get(id) : undefined;
    return [{ takes: 1 - light, rings, without: bed ? outlineOf(bed) : null }];
  });
  last = { of: { items, site }, ms, shadows };
  return shadows;
}
