import { useMemo } from "react";
import { formatMoney, formatVolume, type Garden, layeringSavings, nameOf, say } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";

/** What wood at the bottom of tall beds saves in mix: of those that are layered, and of those that could be. */
export function LayeringTable({ garden }: { readonly garden: Garden }) {
  const savings = useMemo(() => layeringSavings(garden), [garden]);
  const select = useEditor((s) => s.select);
  const name = (id: string) => {
    const item = garden.items.find((one) => one.id === id);
    return item ? nameOf(item) : id;
  };
  if (savings.length === 0) {
    return <p className="wide quiet">{say`No bed is deep enough: a shallow bed is all mix.`}</p>;
  }
  return (
    <table className="by-bed wide">
      <thead>
        <tr>
          <th scope="col">{say`Bed`}</th>
          <th scope="col">{say`Mix spared`}</th>
          <th scope="col">{say`Money`}</th>
        </tr>
      </thead>
      <tbody>
        {savings.map(({ bedId, mixSavedL, saved, now }) => (
          <tr key={bedId}>
            <th scope="row">
              <button type="button" className="link" onClick={() => select([bedId])}>
                {name(bedId)}
              </button>
            </th>
            <td>{formatVolume(mixSavedL, garden.units)}</td>
            <td>
              {formatMoney(saved, garden.prices.currency, false)} {now ? "saved" : say`could be`}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
