import { formatMoney, formatShare } from "../../units/format-figure.ts";
import { type Block, paragraph, tableRow } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** The shopping list with its total. */
export function toBuyBlock({ takeoff, garden }: SheetFacts, width: number): Block {
  if (takeoff.lines.length === 0) return { heading: "To buy", rows: [paragraph("Nothing yet.", width)] };
  const money = (amount: number) => formatMoney(amount, takeoff.currency);
  const examples = takeoff.lines.some(({ ownPrice }) => !ownPrice);
  const note = examples
    ? "Prices not yet yours are examples: ask your own yards before you buy."
    : `Prices are yours${garden.prices.asOf ? `, of ${garden.prices.asOf}` : ""}.`;
  return {
    heading: "To buy",
    rows: [
      ...takeoff.lines.map((line) =>
        tableRow(
          [
            { words: line.what, x: 0, width: width * 0.5 },
            { words: `${quantity(line.quantity)} ${line.unit}`, x: width * 0.76, anchor: "end" },
            { words: money(line.cost), x: width, anchor: "end" },
          ],
          width,
        ),
      ),
      tableRow(
        [
          { words: "Total", x: 0, weight: "bold" },
          { words: money(takeoff.total), x: width, anchor: "end", weight: "bold" },
        ],
        width,
      ),
      paragraph(`What fills the beds is ${formatShare(takeoff.fillShare)} of it. ${note}`, width),
    ],
  };
}

const quantity = (amount: number): string => String(Math.round(amount * 100) / 100);
