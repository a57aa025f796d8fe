import type { ItemOf } from "../../../src/index.ts";
import { CheckField } from "../fields/CheckField.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { LengthField } from "../fields/LengthField.tsx";
import { NumberField } from "../fields/NumberField.tsx";
import { COVERS } from "./ground-choices.ts";
import { LeafMonthsFields } from "./LeafMonthsFields.tsx";
import { RoofFallField } from "./RoofFallField.tsx";
import { StageField } from "./StageField.tsx";
import { setItem } from "./set-item.ts";

/** The fields each kind of thing has besides its name, its place and its outline. Beds have a file of their own. */

export const PathFields = ({ item }: { readonly item: ItemOf<"path"> }) => (
  <>
    <LengthField label="Width" value={item.width} onCommit={(width) => setItem(item, "width", { width })} />
    <ChoiceField
      label="Use"
      value={item.use}
      choices={[
        { value: "main", label: "Main way, wheeled along" },
        { value: "side", label: "Side path, walked" },
      ]}
      onCommit={(use) => setItem(item, "use", { use })}
    />
    <ChoiceField
      label="Surface"
      value={item.surface}
      choices={COVERS}
      onCommit={(surface) => setItem(item, "surface", { surface })}
    />
    <LengthField
      label="Surfacing depth"
      may="zero"
      value={item.depth}
      note="0 where the ground is left as it is"
      onCommit={(depth) => setItem(item, "surfacing", { depth })}
    />
    <ChoiceField
      label="Edging"
      value={item.edging ?? "none"}
      choices={[
        { value: "none", label: "None" },
        { value: "timber", label: "Timber" },
        { value: "metal", label: "Metal" },
        { value: "brick", label: "Brick" },
      ]}
      onCommit={(edging) => setItem(item, "edging", { edging: edging === "none" ? null : edging })}
    />
    <StageField item={item} />
  </>
);

export const BuildingFields = ({ item }: { readonly item: ItemOf<"house" | "shed"> }) => (
  <>
    <LengthField
      label="Height to the eaves"
      value={item.height}
      onCommit={(height) => setItem(item, "height", { height })}
    />
    <ChoiceField
      label="Roof"
      value={item.roof}
      choices={[
        { value: "flat", label: "Flat" },
        { value: "gabled", label: "Gabled" },
        { value: "single-pitch", label: "Single pitch" },
      ]}
      onCommit={(roof) => setItem(item, "roof", { roof })}
    />
    <LengthField
      label="Eaves to ridge"
      may="zero"
      value={item.roofRise}
      onCommit={(roofRise) => setItem(item, "roof", { roofRise })}
    />
    <RoofFallField item={item} />
    <CheckField
      label="Painted before lead paint was given up"
      checked={item.oldPaint}
      onCommit={(oldPaint) => setItem(item, "old paint", { oldPaint })}
    />
  </>
);

export const BarrierFields = ({ item }: { readonly item: ItemOf<"wall" | "fence"> }) => (
  <>
    <LengthField
      label="Height"
      value={item.height}
      onCommit={(height) => setItem(item, "height", { height })}
    />
    <LengthField
      label="Thickness"
      value={item.thickness}
      onCommit={(thickness) => setItem(item, "thickness", { thickness })}
    />
    {item.kind === "fence" ? (
      <NumberField
        label="Open, share that is gaps"
        unit="%"
        least={0}
        most={100}
        value={item.open * 100}
        onCommit={(percent) => setItem(item, "gaps", { open: percent / 100 })}
      />
    ) : (
      <CheckField
        label="Painted before lead paint was given up"
        checked={item.oldPaint}
        onCommit={(oldPaint) => setItem(item, "old paint", { oldPaint })}
      />
    )}
  </>
);

export const TreeFields = ({ item }: { readonly item: ItemOf<"tree"> }) => (
  <>
    <LengthField
      label="Crown across"
      value={item.canopy}
      onCommit={(canopy) => setItem(item, "crown", { canopy })}
    />
    <LengthField
      label="Height"
      value={item.height}
      onCommit={(height) => setItem(item, "height", { height })}
    />
    <LengthField
      label="Ground to crown"
      may="zero"
      value={item.crownBase}
      onCommit={(crownBase) => setItem(item, "crown", { crownBase })}
    />
    <LengthField
      label="Trunk across"
      value={item.trunk}
      onCommit={(trunk) => setItem(item, "trunk", { trunk })}
    />
    <ChoiceField
      label="Leaf"
      value={item.leaf}
      choices={[
        { value: "leaf-dropping", label: "Drops its leaves" },
        { value: "evergreen", label: "Evergreen" },
      ]}
      onCommit={(leaf) => setItem(item, "leaf", { leaf })}
    />
    <LeafMonthsFields item={item} />
    <ChoiceField
      label="Species"
      value={item.species}
      choices={[
        { value: "other", label: "Any other" },
        { value: "black-walnut", label: "Black walnut" },
      ]}
      onCommit={(species) => setItem(item, "species", { species })}
    />
    <NumberField
      label="Light through, in leaf"
      unit="%"
      least={0}
      most={100}
      value={item.lightInLeaf * 100}
      onCommit={(percent) => setItem(item, "light", { lightInLeaf: percent / 100 })}
    />
    <NumberField
      label="Light through, bare"
      unit="%"
      least={0}
      most={100}
      value={item.lightBare * 100}
      onCommit={(percent) => setItem(item, "light", { lightBare: percent / 100 })}
    />
  </>
);

export const OpeningFields = ({ item }: { readonly item: ItemOf<"gate" | "door"> }) => (
  <>
    <LengthField
      label="Clear opening"
      value={item.width}
      onCommit={(width) => setItem(item, "opening", { width })}
    />
    <ChoiceField
      label="Hung at"
      value={item.hinge}
      choices={[
        { value: "left", label: "Left" },
        { value: "right", label: "Right" },
      ]}
      onCommit={(hinge) => setItem(item, "hinge", { hinge })}
    />
    <ChoiceField
      label="Opens"
      value={item.swing}
      choices={[
        { value: "out", label: "Outwards" },
        { value: "in", label: "Inwards" },
        { value: "sliding", label: "Sliding" },
      ]}
      onCommit={(swing) => setItem(item, "swing", { swing })}
    />
    {item.kind === "door" ? (
      <CheckField
        label="The kitchen door, lettuce goes this way"
        checked={item.kitchen}
        onCommit={(kitchen) => setItem(item, "kitchen door", { kitchen })}
      />
    ) : null}
  </>
);
