import { useMemo } from "react";
import {
  compareWalls,
  formatMoney,
  type Garden,
  say,
  told,
  type WallChoice,
  word,
} from "../../../src/index.ts";
import { sourceText } from "../snags/SourceLine.tsx";
import { yearsWords } from "./life-words.ts";

const BESIDE_FOOD: Readonly<Record<WallChoice["besideFood"], string>> = {
  fit: "",
  "with-care": word("with care beside food"),
  unfit: word("not beside food"),
};

/** This garden's walls as if all were of one make: what that costs at first, how long it lasts, what it is a year. */
export function WallsCompared({ garden }: { readonly garden: Garden }) {
  const choices = useMemo(() => unfitLast(compareWalls(garden)), [garden]);
  const money = (amount: number) => formatMoney(amount, garden.prices.currency, false);
  if (choices.length === 0) return <p className="wide quiet">{say`No bed of this garden has a wall.`}</p>;
  return (
    <div className="wide">
      <p className="field-note">{say`Walls, posts and fixings of all beds, over ${garden.prices.horizon} years. Cheapest a year first, what is unfit beside food last.`}</p>
      <table className="by-bed walls">
        <thead>
          <tr>
            <th scope="col">{say`All beds of`}</th>
            <th scope="col">{say`At first`}</th>
            <th scope="col">{say`Lasts`}</th>
            <th scope="col">{say`A year`}</th>
          </tr>
        </thead>
        <tbody>
          {choices.map((choice) => (
            <tr key={choice.id} data-now={choice.now}>
              <th scope="row">
                <details>
                  <summary>
                    {choice.label}
                    {choice.now ? <small>{say` as drawn`}</small> : null}
                    {choice.besideFood === "fit" ? null : (
                      <small> {told(BESIDE_FOOD[choice.besideFood])}</small>
                    )}
                  </summary>
                  <p className="line-how">{choice.note}</p>
                  <p className="field-note">{say`Life: ${sourceText(choice.source)}`}</p>
                </details>
              </th>
              <td>{money(choice.first)}</td>
              <td>{yearsWords(choice.life)}</td>
              <td>{money(choice.perYear)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const unfitLast = (choices: readonly WallChoice[]): readonly WallChoice[] => [
  ...choices.filter(({ besideFood }) => besideFood !== "unfit"),
  ...choices.filter(({ besideFood }) => besideFood === "unfit"),
];
