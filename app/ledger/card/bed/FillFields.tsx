import { INCH, type ItemOf, say, word } from "../../../../src/index.ts";
import { CheckField } from "../../fields/CheckField.tsx";
import { type Choice, ChoiceField } from "../../fields/ChoiceField.tsx";
import { LengthField } from "../../fields/LengthField.tsx";
import { OptionalLength } from "../../fields/OptionalLength.tsx";
import { toldChoices } from "../../fields/told-choices.ts";
import { setItem } from "../set-item.ts";
import { RecipeFields } from "./RecipeFields.tsx";

type Bed = ItemOf<"bed">;
type Mulch = NonNullable<Bed["mulch"]>["material"] | "none";

const MULCHES: readonly Choice<Mulch>[] = [
  { value: "none", label: word("None") },
  { value: "straw", label: word("Straw") },
  { value: "leaves", label: word("Leaves") },
  { value: "wood-chips", label: word("Wood chips") },
  { value: "bark", label: word("Bark") },
  { value: "grass-clippings", label: word("Grass clippings") },
  { value: "compost", label: word("Compost") },
];

/** Two inches of mulch and half-inch mesh are what is commonly used to start with. */
const USUAL_MULCH = 2 * INCH;
const USUAL_MESH = 0.5 * INCH;

/** What a bed stands on. */
export function BottomFields({ bed }: { readonly bed: Bed }) {
  const { bottom } = bed;
  return (
    <>
      <ChoiceField
        label={say`Liner`}
        value={bottom.liner ?? "none"}
        choices={[
          { value: "none", label: say`None, open to the ground` },
          { value: "fabric", label: say`Fabric, lets water through` },
          { value: "sheet", label: say`Sheet, with drain gaps` },
        ]}
        onCommit={(liner) =>
          setItem(bed, say`liner`, { bottom: { ...bottom, liner: liner === "none" ? null : liner } })
        }
      />
      <OptionalLength
        has={say`Mesh against burrowing animals`}
        label={say`Mesh opening`}
        value={bottom.mesh?.opening ?? null}
        usual={USUAL_MESH}
        onCommit={(opening) =>
          setItem(bed, say`mesh`, { bottom: { ...bottom, mesh: opening === null ? null : { opening } } })
        }
      />
    </>
  );
}

/** What a bed is filled with. */
export function FillFields({ bed }: { readonly bed: Bed }) {
  const { fill } = bed;
  const set = (what: string, changes: Partial<Bed["fill"]>) =>
    setItem(bed, what, { fill: { ...fill, ...changes } });
  return (
    <>
      <ChoiceField
        label={say`Filled with`}
        value={fill.way}
        choices={[
          { value: "mix", label: say`Mix throughout` },
          { value: "layered", label: say`Wood below, mix on top` },
          { value: "native", label: say`The yard’s own soil` },
        ]}
        onCommit={(way) => set(say`fill`, { way })}
      />
      {fill.way === "layered" ? (
        <LengthField
          label={say`Mix on top`}
          value={fill.mixDepth}
          onCommit={(mixDepth) => set(say`mix on top`, { mixDepth })}
        />
      ) : null}
      <LengthField
        label={say`Soil below the rim`}
        may="zero"
        value={fill.belowRim}
        onCommit={(belowRim) => set(say`soil below the rim`, { belowRim })}
      />
      {fill.way === "native" ? null : (
        <RecipeFields recipe={fill.recipe} onCommit={(recipe) => set(say`recipe`, { recipe })} />
      )}
      <CheckField
        label={say`A pot test of the fill came out clean`}
        checked={fill.tested}
        note={say`Straw, hay, manure and compost may carry herbicides that last for years.`}
        onCommit={(tested) => set(say`pot test`, { tested })}
      />
    </>
  );
}

/** What lies on the soil. */
export function MulchFields({ bed }: { readonly bed: Bed }) {
  const { mulch } = bed;
  return (
    <>
      <ChoiceField
        label={say`Mulch`}
        value={mulch?.material ?? "none"}
        choices={toldChoices(MULCHES)}
        onCommit={(material) =>
          setItem(bed, say`mulch`, {
            mulch: material === "none" ? null : { material, depth: mulch?.depth ?? USUAL_MULCH },
          })
        }
      />
      {mulch ? (
        <LengthField
          label={say`Mulch depth`}
          value={mulch.depth}
          onCommit={(depth) => setItem(bed, say`mulch`, { mulch: { ...mulch, depth } })}
        />
      ) : null}
    </>
  );
}
