import { type Item, nameOf } from "../../../src/index.ts";

/** With several things selected: which. What can be done with them stands above. */
export const ManyCard = ({ items }: { readonly items: readonly Item[] }) => (
  <ul className="card-names">
    {items.map((item) => (
      <li key={item.id}>{nameOf(item)}</li>
    ))}
  </ul>
);
