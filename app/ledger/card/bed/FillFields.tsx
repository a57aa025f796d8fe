import { INCH, type ItemOf } from "../../../../src/index.ts";
import { CheckField } from "../../fields/CheckField.tsx";
import { type Choice, ChoiceField } from "../../fields/ChoiceField.tsx";
import { LengthField } from "../../fields/LengthField.tsx";
import { OptionalLength } from "../../fields/OptionalLength.tsx";
import { setItem } from "../set-item.ts";
import { RecipeFields } from "./RecipeFields.tsx";

type Bed = ItemOf<"bed">;
type Mulch = NonNullable<Bed["mulch"]>["material"] | "none";

const MULCHES: readonly Choice<Mulch>[] = [
  { value: "none", label: "None" },
  { value: "straw", label: "Straw" },
  { value: "leaves", label: "Leaves" },
  { value: "wood-chips", label: "Wood chips" },
  { value: "bark", label: "Bark" },
  { value: "grass-clippings", label: "Grass clippings" },
  { value: "compost", label: "Compost" },
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
        label="Liner"
        value={bottom.liner ?? "none"}
        choices={[
          { value: "none", label: "None, open to the ground" },
          { value: "fabric", label: "Fabric, lets water through" },
          { value: "sheet", label: "Sheet, with drain gaps" },
        ]}
        onCommit={(liner) =>
          setItem(bed, "liner", { bottom: { ...bottom, liner: liner === "none" ? null : liner } })
        }
      />
      <OptionalLength
        has="Mesh against burrowing animals"
        label="Mesh opening"
        value={bottom.mesh?.opening ?? null}
        usual={USUAL_MESH}
        onCommit={(opening) =>
          setItem(bed, "mesh", { bottom: { ...bottom, mesh: opening === null ? null : { opening } } })
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
        label="Filled with"
        value={fill.way}
        choices={[
          { value: "mix", label: "Mix throughout" },
          { value: "layered", label: "Wood below, mix on top" },
          { value: "native", label: "The yard’s own soil" },
        ]}
        onCommit={(way) => set("fill", { way })}
      />
      {fill.way === "layered" ? (
        <LengthField
          label="Mix on top"
          value={fill.mixDepth}
          onCommit={(mixDepth) => set("mix on top", { mixDepth })}
        />
      ) : null}
      <LengthField
        label="Soil below the rim"
        may="zero"
        value={fill.belowRim}
        onCommit={(belowRim) => set("soil below the rim", { belowRim })}
      />
      {fill.way === "native" ? null : (
        <RecipeFields recipe={fill.recipe} onCommit={(recipe) => set("recipe", { recipe })} />
      )}
      <CheckField
        label="A pot test of the fill came out clean"
        checked={fill.tested}
        note="Straw, hay, manure and compost may carry herbicides that last for years."
        onCommit={(tested) => set("pot test", { tested })}
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
        label="Mulch"
        value={mulch?.material ?? "none"}
        choices={MULCHES}
        onCommit={(material) =>
          setItem(bed, "mulch", {
            mulch: material === "none" ? null : { material, depth: mulch?.depth ?? USUAL_MULCH },
          })
        }
      />
      {mulch ? (
        <LengthField
          label="Mulch depth"
          value={mulch.depth}
          onCommit={(depth) => setItem(bed, "mulch", { mulch: { ...mulch, depth } })}
        />
      ) : null}
    </>
  );
}
