import { type Item, say, unreachable } from "../../../src/index.ts";
import { TextField } from "../fields/TextField.tsx";
import { BedFields } from "./bed/BedFields.tsx";
import { CardSection } from "./CardSection.tsx";
import { GroundFacts } from "./GroundFacts.tsx";
import { BarrierFields, BuildingFields, OpeningFields, PathFields, TreeFields } from "./kind-fields.tsx";
import { LineFields } from "./LineFields.tsx";
import { PlaceFields } from "./PlaceFields.tsx";
import { ShapeFields } from "./ShapeFields.tsx";
import { setItem } from "./set-item.ts";
import { TapFields } from "./TapFields.tsx";

/** The card of one thing: its name, its sizes, its place, and all else that the garden knows of it. */
export function ItemCard({ item }: { readonly item: Item }) {
  return (
    <>
      <div className="fields">
        <TextField
          label={say`Name`}
          value={item.name}
          onCommit={(name) => setItem(item, say`name`, { name })}
        />
        <SizeFields item={item} />
      </div>
      <CardSection title={say`Place`} open>
        <PlaceFields item={item} />
      </CardSection>
      <OwnFields item={item} />
    </>
  );
}

function SizeFields({ item }: { readonly item: Item }) {
  if ("shape" in item) return <ShapeFields item={item} />;
  if ("points" in item) return <LineFields item={item} />;
  return null;
}

function OwnFields({ item }: { readonly item: Item }) {
  switch (item.kind) {
    case "bed":
      return <BedFields bed={item} />;
    case "keep-clear":
      return null;
    case "ground":
      return (
        <CardSection title={say`Ground`} open>
          <GroundFacts ground={item} onSet={(what, changes) => setItem(item, what, changes)} />
        </CardSection>
      );
    case "path":
      return (
        <CardSection title={say`Path`} open>
          <PathFields item={item} />
        </CardSection>
      );
    case "house":
    case "shed":
      return (
        <CardSection title={say`Building`} open>
          <BuildingFields item={item} />
        </CardSection>
      );
    case "wall":
    case "fence":
      return (
        <CardSection title={say`Built`} open>
          <BarrierFields item={item} />
        </CardSection>
      );
    case "tree":
      return (
        <CardSection title={say`Tree`} open>
          <TreeFields item={item} />
        </CardSection>
      );
    case "gate":
    case "door":
      return (
        <CardSection title={say`Opening`} open>
          <OpeningFields item={item} />
        </CardSection>
      );
    case "tap":
      return (
        <CardSection title={say`Tap`} open>
          <TapFields item={item} />
        </CardSection>
      );
    default:
      return unreachable(item);
  }
}
