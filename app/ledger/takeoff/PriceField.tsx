import { formatMoney, say } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { readNumber } from "../fields/read-number.ts";
import { TypedField } from "../fields/TypedField.tsx";

interface Props {
  /** Key of the price table. */
  readonly priceKey: string;
  readonly what: string;
  readonly price: number;
  /** The gardener's own, not the shipped example. */
  readonly own: boolean;
  readonly currency: string;
}

/** @throws RangeError with one sentence that says what was wrong */
export function readPrice(text: string): number {
  // The currency's sign or letters may stand before or after; they change nothing.
  const price = readNumber(text.replace(/^[^\d.,\-\u2212]+|[^\d]+$/g, ""));
  if (price < 0) throw new RangeError(say`A price cannot be below 0.`);
  return Math.round(price * 100) / 100;
}

/** A price of the list: the gardener's own where given, else the shipped example and marked so. */
export function PriceField({ priceKey, what, price, own, currency }: Props) {
  const set = (value: number | null) =>
    useEditor.getState().commit(say`Set the price of ${what}`, [{ op: "set-price", key: priceKey, value }]);
  return (
    <span className="price">
      <TypedField
        label={say`Price of ${what}`}
        bare
        inputMode="decimal"
        value={price}
        write={(value) => formatMoney(value, currency)}
        read={readPrice}
        onCommit={set}
      />
      {own ? (
        <button
          type="button"
          className="link"
          aria-label={say`Put the example price of ${what} back`}
          onClick={() => set(null)}
        >{say`own, undo`}</button>
      ) : (
        <span className="example">{say`example`}</span>
      )}
    </span>
  );
}
