import { useMemo } from "react";
import { compareWalls, formatMoney, type Garden, type WallChoice } from "../../../src/index.ts";
import { sourceText } from "../snags/SourceLine.tsx";
import { yearsWords } from "./life-words.ts";

const BESIDE_FOOD: Readonly<Record<WallChoice["besideFood"], string>> = {
  fit: "",
  "with-care": "with care beside food",
  unfit: "not beside food",
};

/** This garden's walls as if all were of one make: what that costs at first, how long it lasts, what it is a year. */
export function WallsCompared({ garden }: { readonly garden: Garden }) {
  const choices = useMemo(() => unfitLast(compareWalls(garden)), [garden]);
  const money = (amount: number) => formatMoney(amount, garden.prices.currency, false);
  if (choices.length === 0) return <p className="wide quiet">No bed of this garden has a wall.</p>;
  return (
    <div className="wide">
      <p className="field-note">
        Walls, posts and fixings of all beds, over {garden.prices.horizon} years. Cheapest a year first, what
        is unfit beside food last.
      </p>
      <table className="by-bed walls">
        <thead>
          <tr>
            <th scope="col">All beds of</th>
            <th scope="col">At first</th>
            <th scope="col">Lasts</th>
            <th scope="col">A year</th>
          </tr>
        </thead>
        <tbody>
          {choices.map((choice) => (
            <tr key={choice.id} data-now={choice.now}>
              <th scope="row">
                <details>
                  <summary>
                    {choice.label}
                    {choice.now ? <small> as drawn</small> : null}
                    {choice.besideFood === "fit" ? null : <small> {BESIDE_FOOD[choice.besideFood]}</small>}
                  </summary>
                  <p className="line-how">{choice.note}</p>
                  <p className="field-note">Life: {sourceText(choice.source)}</p>
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
