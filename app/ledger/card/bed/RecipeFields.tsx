import type { ItemOf } from "../../../../src/index.ts";
import { NumberField } from "../../fields/NumberField.tsx";

type Recipe = ItemOf<"bed">["fill"]["recipe"];

const PARTS: readonly { readonly key: keyof Recipe; readonly label: string }[] = [
  { key: "compost", label: "Parts of compost" },
  { key: "topsoil", label: "Parts of topsoil" },
  { key: "soilless", label: "Parts of soilless mix" },
];

/** What a mix is made of, by volume. The last part cannot be taken away: a mix of nothing is none. */
export function RecipeFields(props: {
  readonly recipe: Recipe;
  readonly onCommit: (recipe: Recipe) => void;
}) {
  const { recipe, onCommit } = props;
  const total = recipe.compost + recipe.topsoil + recipe.soilless;
  return PARTS.map(({ key, label }) => (
    <NumberField
      key={key}
      label={label}
      unit=""
      least={total === recipe[key] ? 0.1 : 0}
      most={1000}
      value={recipe[key]}
      onCommit={(parts) => onCommit({ ...recipe, [key]: parts })}
    />
  ));
}
