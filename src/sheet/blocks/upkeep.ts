import { costAYear } from "../../takeoff/year-cost.ts";
import { formatMoney } from "../../units/format-figure.ts";
import { say } from "../../words/say.ts";
import { type Block, paragraph, tableRow } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

const COST_ROOM = 15;

/** What each year then asks, and what is renewed when: what it is, after how many years, what it costs each time. */
export function upkeepBlock({ garden, allBeds, takeoff }: SheetFacts, width: number): Block {
  if (allBeds.length === 0) return { heading: say`Each year`, rows: [] };
  const { rows, perYear, horizon } = costAYear(garden);
  const money = (amount: number) => formatMoney(amount, takeoff.currency, false);
  return {
    heading: say`Each year, and renewals`,
    rows: [
      ...rows.map(({ what, life, cost }) =>
        tableRow(
          [
            { words: `${what}, ${lifeWords(life)}`, x: 0, width: width - COST_ROOM },
            { words: money(cost), x: width, anchor: "end" },
          ],
          width,
        ),
      ),
      paragraph(say`${money(perYear)} a year over ${horizon} years, the whole garden reckoned in.`, width),
    ],
    spare: { from: 0, more: () => say`Upkeep and renewals stand in the ledger, under Takeoff.` },
  };
}

function lifeWords([shortest, longest]: readonly [number, number]): string {
  if (longest <= 1) return say`each year`;
  return shortest === longest ? say`every ${longest} years` : say`every ${shortest}–${longest} years`;
}
