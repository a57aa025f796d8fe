import { type Garden, priceKeysOf, say } from "../../../src/index.ts";
import { PriceField } from "./PriceField.tsx";

/** Every price this garden can be bought at, whether it is bought now or not: what is dearer here is not everywhere. */
export const PriceList = ({ garden }: { readonly garden: Garden }) => (
  <ul className="price-list wide">
    {priceKeysOf(garden).map(({ key, label, unit, price, own }) => (
      <li className="line" key={key}>
        <span>
          {label} <small>a {unit}</small>
        </span>
        <PriceField
          priceKey={key}
          what={say`${label}, each ${unit}`}
          price={price}
          own={own}
          currency={garden.prices.currency}
        />
      </li>
    ))}
  </ul>
);
