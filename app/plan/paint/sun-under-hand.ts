import { boundsOfItem, formatHours, type Garden, type ItemId, say } from "../../../src/index.ts";
import { LETTERS, type Letters, letter } from "../lettering.ts";
import type { Pen } from "../pen.ts";
import { toScreen } from "../viewport.ts";

const HOURS: Letters = { ...LETTERS.name, colour: "sun" };
/** Room between the bed's edge and the middle of the words, px. */
const ABOVE = 14;

/** The sun of a bed under the hand, over the bed: it changes with every move. */
export function paintSunUnderHand(
  pen: Pen,
  garden: Garden,
  { id, hours }: { readonly id: ItemId; readonly hours: number },
): void {
  const bed = garden.items.find((item) => item.id === id);
  if (!bed) return;
  const { minX, maxX, minY } = boundsOfItem(bed);
  const [x, y] = toScreen(pen.view, [(minX + maxX) / 2, minY]);
  letter(pen, say`${formatHours(hours)} of sun`, [x, y - ABOVE], HOURS);
}
