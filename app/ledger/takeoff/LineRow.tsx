import { memo } from "react";
import { countedBy, formatMoney, type Line, say } from "../../../src/index.ts";
import { sourceText } from "../snags/SourceLine.tsx";
import { PriceField } from "./PriceField.tsx";

interface Props {
  readonly line: Line;
  readonly currency: string;
}

/** Each takeoff makes its lines anew; most of them say what they said before. */
function sameLine(before: Props, now: Props): boolean {
  const keys = Object.keys(now.line) as (keyof Line)[];
  const same = (key: keyof Line) =>
    key === "stages"
      ? before.line.stages.join() === now.line.stages.join()
      : before.line[key] === now.line[key];
  return before.currency === now.currency && keys.every(same);
}

/** One line of the list: opens to how the quantity came about. */
export const LineRow = memo(LineRowInner, sameLine);

function LineRowInner({ line, currency }: Props) {
  return (
    <li className="line">
      <details>
        <summary>
          <span className="line-what">{line.what}</span>
          <span className="line-quantity">{countedBy(line.quantity, line.unit)}</span>
          <span className="line-cost">{formatMoney(line.cost, currency)}</span>
        </summary>
        <p className="line-how">{line.how}</p>
        <p className="field-note">{sourceText(line.source)}</p>
      </details>
      {isAtHome(line) ? (
        <span className="price">{say`at home`}</span>
      ) : (
        <PriceField
          priceKey={line.key}
          what={line.what}
          price={line.price}
          own={line.ownPrice}
          currency={currency}
        />
      )}
    </li>
  );
}

/** Boards the gardener has are lines too, at no price: none can be set. */
const isAtHome = ({ key }: Line): boolean => key.startsWith("at-home:");
