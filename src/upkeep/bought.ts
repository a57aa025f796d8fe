import { planLoose } from "../takeoff/buy-loose.ts";
import { materialById } from "../takeoff/goods.ts";
import { formatBulk, formatVolume } from "../units/format-figure.ts";
import { say } from "../words/say.ts";
import type { YearContext } from "./year-context.ts";

/**
 * How an amount of one material comes cheapest, in words: "1.5 yd³ by the load", "3 × Compost, 1½ ft³ bag". Null for
 * nothing, and for what is gathered rather than bought.
 */
export function boughtWords(
  material: string,
  litres: number,
  { garden, settings, units }: Pick<YearContext, "garden" | "settings" | "units">,
): string | null {
  if (litres <= 0) return null;
  const needed = materialById(material, units);
  if (needed.packs.length === 0) return null;
  const plan = planLoose([{ material: needed, litres }], garden.prices, settings);
  const bought = plan?.bought[0];
  if (!bought) return null;
  const load = bought.bulk > 0 ? [say`${formatBulk(bought.bulk, units)} by the load`] : [];
  const packs = bought.packs.map(({ good, count }) => `${count} × ${good.label}`);
  return [...load, ...packs].reduce((sum, next) => say`${sum} and ${next}`);
}

/** "33.3 ft³, 1.23 yd³" in one word where they are the same. */
export function volumeWords(litres: number, units: YearContext["units"]): string {
  const [loose, bulk] = [formatVolume(litres, units), formatBulk(litres, units)];
  return loose === bulk || litres < LEAST_BULK ? loose : `${loose}, ${bulk}`;
}

/** Below a quarter of a cubic metre nobody reckons in loads, litres. */
const LEAST_BULK = 250;
