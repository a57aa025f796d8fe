import { type ItemOf, say } from "../../../src/index.ts";
import { CheckField } from "../fields/CheckField.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { LengthField } from "../fields/LengthField.tsx";
import { NumberField } from "../fields/NumberField.tsx";
import { toldChoices } from "../fields/told-choices.ts";
import { COVERS } from "./ground-choices.ts";
import { LeafMonthsFields } from "./LeafMonthsFields.tsx";
import { RoofFallField } from "./RoofFallField.tsx";
import { StageField } from "./StageField.tsx";
import { setItem } from "./set-item.ts";

/** The fields each kind of thing has besides its name, its place and its outline. Beds have a file of their own. */

export const PathFields = ({ item }: { readonly item: ItemOf<"path"> }) => (
  <>
    <LengthField
      label={say`Width`}
      value={item.width}
      onCommit={(width) => setItem(item, say`width`, { width })}
    />
    <ChoiceField
      label={say`Use`}
      value={item.use}
      choices={[
        { value: "main", label: say`Main way, wheeled along` },
        { value: "side", label: say`Side path, walked` },
      ]}
      onCommit={(use) => setItem(item, say`use`, { use })}
    />
    <ChoiceField
      label={say`Surface`}
      value={item.surface}
      choices={toldChoices(COVERS)}
      onCommit={(surface) => setItem(item, say`surface`, { surface })}
    />
    <LengthField
      label={say`Surfacing depth`}
      may="zero"
      value={item.depth}
      note={say`0 where the ground is left as it is`}
      onCommit={(depth) => setItem(item, say`surfacing`, { depth })}
    />
    <ChoiceField
      label={say`Edging`}
      value={item.edging ?? "none"}
      choices={[
        { value: "none", label: say`None` },
        { value: "timber", label: say`Timber` },
        { value: "metal", label: say`Metal` },
        { value: "brick", label: say`Brick` },
      ]}
      onCommit={(edging) => setItem(item, say`edging`, { edging: edging === "none" ? null : edging })}
    />
    <StageField item={item} />
  </>
);

export const BuildingFields = ({ item }: { readonly item: ItemOf<"house" | "shed"> }) => (
  <>
    <LengthField
      label={say`Height to the eaves`}
      value={item.height}
      onCommit={(height) => setItem(item, say`height`, { height })}
    />
    <ChoiceField
      label={say`Roof`}
      value={item.roof}
      choices={[
        { value: "flat", label: say`Flat` },
        { value: "gabled", label: say`Gabled` },
        { value: "single-pitch", label: say`Single pitch` },
      ]}
      onCommit={(roof) => setItem(item, say`roof`, { roof })}
    />
    <LengthField
      label={say`Eaves to ridge`}
      may="zero"
      value={item.roofRise}
      onCommit={(roofRise) => setItem(item, say`roof`, { roofRise })}
    />
    <RoofFallField item={item} />
    <CheckField
      label={say`Painted before lead paint was given up`}
      checked={item.oldPaint}
      onCommit={(oldPaint) => setItem(item, say`old paint`, { oldPaint })}
    />
  </>
);

export const BarrierFields = ({ item }: { readonly item: ItemOf<"wall" | "fence"> }) => (
  <>
    <LengthField
      label={say`Height`}
      value={item.height}
      onCommit={(height) => setItem(item, say`height`, { height })}
    />
    <LengthField
      label={say`Thickness`}
      value={item.thickness}
      onCommit={(thickness) => setItem(item, say`thickness`, { thickness })}
    />
    {item.kind === "fence" ? (
      <NumberField
        label={say`Open, share that is gaps`}
        unit="%"
        least={0}
        most={100}
        value={item.open * 100}
        onCommit={(percent) => setItem(item, say`gaps`, { open: percent / 100 })}
      />
    ) : (
      <CheckField
        label={say`Painted before lead paint was given up`}
        checked={item.oldPaint}
        onCommit={(oldPaint) => setItem(item, say`old paint`, { oldPaint })}
      />
    )}
  </>
);

export const TreeFields = ({ item }: { readonly item: ItemOf<"tree"> }) => (
  <>
    <LengthField
      label={say`Crown across`}
      value={item.canopy}
      onCommit={(canopy) => setItem(item, say`crown`, { canopy })}
    />
    <LengthField
      label={say`Height`}
      value={item.height}
      onCommit={(height) => setItem(item, say`height`, { height })}
    />
    <LengthField
      label={say`Ground to crown`}
      may="zero"
      value={item.crownBase}
      onCommit={(crownBase) => setItem(item, say`crown`, { crownBase })}
    />
    <LengthField
      label={say`Trunk across`}
      value={item.trunk}
      onCommit={(trunk) => setItem(item, say`trunk`, { trunk })}
    />
    <ChoiceField
      label={say`Leaf`}
      value={item.leaf}
      choices={[
        { value: "leaf-dropping", label: say`Drops its leaves` },
        { value: "evergreen", label: say`Evergreen` },
      ]}
      onCommit={(leaf) => setItem(item, say`leaf`, { leaf })}
    />
    <LeafMonthsFields item={item} />
    <ChoiceField
      label={say`Species`}
      value={item.species}
      choices={[
        { value: "other", label: say`Any other` },
        { value: "black-walnut", label: say`Black walnut` },
      ]}
      onCommit={(species) => setItem(item, say`species`, { species })}
    />
    <NumberField
      label={say`Light through, in leaf`}
      unit="%"
      least={0}
      most={100}
      value={item.lightInLeaf * 100}
      onCommit={(percent) => setItem(item, say`light`, { lightInLeaf: percent / 100 })}
    />
    <NumberField
      label={say`Light through, bare`}
      unit="%"
      least={0}
      most={100}
      value={item.lightBare * 100}
      onCommit={(percent) => setItem(item, say`light`, { lightBare: percent / 100 })}
    />
  </>
);

export const OpeningFields = ({ item }: { readonly item: ItemOf<"gate" | "door"> }) => (
  <>
    <LengthField
      label={say`Clear opening`}
      value={item.width}
      onCommit={(width) => setItem(item, say`opening`, { width })}
    />
    <ChoiceField
      label={say`Hung at`}
      value={item.hinge}
      choices={[
        { value: "left", label: say`Left` },
        { value: "right", label: say`Right` },
      ]}
      onCommit={(hinge) => setItem(item, say`hinge`, { hinge })}
    />
    <ChoiceField
      label={say`Opens`}
      value={item.swing}
      choices={[
        { value: "out", label: say`Outwards` },
        { value: "in", label: say`Inwards` },
        { value: "sliding", label: say`Sliding` },
      ]}
      onCommit={(swing) => setItem(item, say`swing`, { swing })}
    />
    {item.kind === "door" ? (
      <CheckField
        label={say`The kitchen door, lettuce goes this way`}
        checked={item.kitchen}
        onCommit={(kitchen) => setItem(item, say`kitchen door`, { kitchen })}
      />
    ) : null}
  </>
);
