import { formatShare, say, told, word } from "../../../../src/index.ts";
import { ChoiceField } from "../../fields/ChoiceField.tsx";
import { NumberField } from "../../fields/NumberField.tsx";
import { sourceText } from "../../snags/SourceLine.tsx";
import { PARTS, publishedAs, RECIPES, type Recipe, shareOf } from "./recipes.ts";

const WORDS: Readonly<Record<keyof Recipe, string>> = {
  compost: word("Compost"),
  topsoil: word("Topsoil"),
  soilless: word("Soilless mix"),
};

const OWN = "own";

interface Props {
  readonly recipe: Recipe;
  readonly onCommit: (recipe: Recipe) => void;
}

/** What a mix is made of, by parts of volume: one of the published recipes, or parts of one's own. */
export function RecipeFields({ recipe, onCommit }: Props) {
  const published = publishedAs(recipe);
  const total = recipe.compost + recipe.topsoil + recipe.soilless;
  return (
    <fieldset className="recipe wide">
      <legend>{say`Mix, by parts`}</legend>
      <ChoiceField
        label={say`Recipe`}
        value={published?.id ?? OWN}
        choices={[
          ...RECIPES.map(({ id, label }) => ({ value: id, label: told(label) })),
          ...(published ? [] : [{ value: OWN, label: say`Parts of my own` }]),
        ]}
        note={
          published ? sourceText(published.source) : say`Maryland’s advice is 25 to 50 % compost by volume.`
        }
        onCommit={(id) => {
          const chosen = RECIPES.find((one) => one.id === id);
          if (chosen)
            onCommit({ compost: chosen.compost, topsoil: chosen.topsoil, soilless: chosen.soilless });
        }}
      />
      <div className="recipe-parts">
        {PARTS.map((part) => (
          <div key={part}>
            <NumberField
              label={told(WORDS[part])}
              // The last part cannot be taken away: a mix of nothing is none.
              least={total === recipe[part] ? 0.1 : 0}
              most={1000}
              value={recipe[part]}
              onCommit={(parts) => onCommit({ ...recipe, [part]: parts })}
            />
            <span className="recipe-share">
              {recipe[part] > 0 ? formatShare(shareOf(recipe, part)) : say`none`}
            </span>
          </div>
        ))}
      </div>
    </fieldset>
  );
}
