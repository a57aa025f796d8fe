import type { Line } from "../../takeoff/types.ts";
import { formatMoney, formatShare } from "../../units/format-figure.ts";
import { say } from "../../words/say.ts";
import { type Block, paragraph, tableRow } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** The shopping list with its total. */
export function toBuyBlock({ takeoff, garden }: SheetFacts, width: number): Block {
  if (takeoff.lines.length === 0)
    return { heading: say`To buy`, rows: [paragraph(say`Nothing yet.`, width)] };
  const money = (amount: number) => formatMoney(amount, takeoff.currency);
  const examples = takeoff.lines.some(({ ownPrice }) => !ownPrice);
  const { supplier, asOf } = garden.prices;
  const yours = yoursWords(supplier, asOf);
  const note = examples ? say`Prices not yet yours are examples: ask your own yards before you buy.` : yours;
  return {
    heading: say`To buy`,
    rows: [
      ...takeoff.lines.map((line) =>
        tableRow(
          [
            { words: bought(line), x: 0, width: width - COST_ROOM },
            { words: money(line.cost), x: width, anchor: "end" },
          ],
          width,
        ),
      ),
      tableRow(
        [
          { words: say`Total`, x: 0, weight: "bold" },
          { words: money(takeoff.total), x: width, anchor: "end", weight: "bold" },
        ],
        width,
      ),
      paragraph(say`What fills the beds is ${formatShare(takeoff.fillShare)} of it. ${note}`, width),
    ],
  };
}

const COST_ROOM = 15;

/** "44 × 2x6 Douglas-fir, 8 ft", or by measure "2.5 yd³ Compost". */
function bought({ quantity, unit, what }: Line): string {
  const amount = String(Math.round(quantity * 100) / 100);
  return MEASURES.has(unit) ? `${amount} ${unit} ${what}` : `${amount} × ${what}`;
}

/** Units that are part of an amount; all others (board, bag, box) are what the thing itself already says. */
const MEASURES: ReadonlySet<string> = new Set(["yd³", "m³", "ft³", "L"]);

function yoursWords(supplier: string, asOf: string | null): string {
  if (supplier && asOf) return say`Prices are yours, from ${supplier}, of ${asOf}.`;
  if (supplier) return say`Prices are yours, from ${supplier}.`;
  return asOf ? say`Prices are yours, of ${asOf}.` : say`Prices are yours.`;
}
