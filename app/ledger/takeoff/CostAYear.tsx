import { useMemo } from "react";
import { costAYear, formatMoney, type Garden, say, takeoff } from "../../../src/index.ts";
import { useProvenTakeoff } from "../../live/cut-proof.ts";
import { sourceText } from "../snags/SourceLine.tsx";
import { lifeWords } from "./life-words.ts";

/** The first cost and all that is bought again over the years that the garden is reckoned over. */
export function CostAYear({ garden }: { readonly garden: Garden }) {
  const made = useMemo(() => takeoff(garden), [garden]);
  // What is paid now is the same sum as at the head of the leaf.
  const { takeoff: whole } = useProvenTakeoff(garden, made, true);
  const { horizon, first, renewals, perYear, rows } = useMemo(
    () => costAYear(garden, whole),
    [garden, whole],
  );
  const money = (amount: number) => formatMoney(amount, garden.prices.currency, false);
  return (
    <div className="wide">
      <p className="year-cost">
        <strong>{say`${money(perYear)} a year`}</strong>
        <small>{say`${money(first)} now and ${money(renewals)} bought again, over ${horizon} years`}</small>
      </p>
      <ul>
        {rows.map((row) => (
          <li className="reckoned" key={row.what}>
            <details>
              <summary>
                <span className="line-what">{row.what}</span>
                <span className="line-quantity">
                  {money(row.cost)} {lifeWords(row.life)}
                  {row.times > 0 ? `, ${row.times} × again` : ""}
                </span>
                <span className="line-cost">{say`${money(row.perYear)} a year`}</span>
              </summary>
              <p className="line-how">{row.how}</p>
              <p className="field-note">{sourceText(row.source)}</p>
            </details>
          </li>
        ))}
      </ul>
      <p className="field-note">{say`Change the years under Site, Units, paper and prices.`}</p>
    </div>
  );
}
