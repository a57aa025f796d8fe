import { formatMoney, type Line } from "../../../src/index.ts";
import { sourceText } from "../snags/SourceLine.tsx";
import { PriceField } from "./PriceField.tsx";

interface Props {
  readonly line: Line;
  readonly currency: string;
}

/** One line of the list: opens to how the quantity came about. */
export const LineRow = ({ line, currency }: Props) => (
  <li className="line">
    <details>
      <summary>
        <span className="line-what">{line.what}</span>
        <span className="line-quantity">
          {line.quantity.toLocaleString("en", { maximumFractionDigits: 2 })} {line.unit}
        </span>
        <span className="line-cost">{formatMoney(line.cost, currency)}</span>
      </summary>
      <p className="line-how">{line.how}</p>
      {line.source ? <p className="field-note">{sourceText(line.source)}</p> : null}
    </details>
    <PriceField
      priceKey={line.key}
      what={line.what}
      price={line.price}
      own={line.ownPrice}
      currency={currency}
    />
  </li>
);
