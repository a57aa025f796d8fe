import type { ItemOf, Units } from "../../../../src/index.ts";
import { type Choice, ChoiceField } from "../../fields/ChoiceField.tsx";
import { LengthField } from "../../fields/LengthField.tsx";
import { NumberField } from "../../fields/NumberField.tsx";
import { setItem } from "../set-item.ts";
import { BoardFields } from "./BoardFields.tsx";
import { type BedWall, type Made, MOST_COURSES, type SetWall, usualWall } from "./usual-walls.ts";

const MADE: readonly Choice<BedWall["made"]>[] = [
  { value: "boards", label: "Boards" },
  { value: "metal", label: "Metal" },
  { value: "fabric", label: "Fabric" },
  { value: "masonry", label: "Masonry" },
  { value: "mound", label: "None: a mound" },
];

interface Props {
  readonly bed: ItemOf<"bed">;
  readonly units: Units;
}

/** What the frame of a bed is made of. */
export function WallFields({ bed, units }: Props) {
  const { wall } = bed;
  const set = (what: string, next: BedWall) => setItem(bed, what, { wall: next });
  return (
    <>
      <ChoiceField
        label="Made of"
        value={wall.made}
        choices={MADE}
        onCommit={(made) => set("wall", usualWall(made, units))}
      />
      {wall.made === "boards" ? <BoardFields bed={bed} wall={wall} units={units} set={set} /> : null}
      {wall.made === "masonry" ? <MasonryFields wall={wall} set={set} /> : null}
      {wall.made === "metal" || wall.made === "fabric" || wall.made === "mound" ? (
        <LengthField
          label="Height"
          value={wall.height}
          onCommit={(height) => set("height", { ...wall, height })}
        />
      ) : null}
      {wall.made === "metal" ? (
        <LengthField
          label="Thickness"
          value={wall.thickness}
          onCommit={(thickness) => set("thickness", { ...wall, thickness })}
        />
      ) : null}
    </>
  );
}

function MasonryFields({ wall, set }: { readonly wall: Made<"masonry">; readonly set: SetWall }) {
  return (
    <>
      <LengthField
        label="Block length"
        value={wall.unitLength}
        onCommit={(unitLength) => set("block length", { ...wall, unitLength })}
      />
      <LengthField
        label="Block height"
        value={wall.unitHeight}
        onCommit={(unitHeight) => set("block height", { ...wall, unitHeight })}
      />
      <LengthField
        label="Thickness"
        value={wall.thickness}
        onCommit={(thickness) => set("thickness", { ...wall, thickness })}
      />
      <NumberField
        label="Courses"
        whole
        least={1}
        most={MOST_COURSES}
        value={wall.courses}
        onCommit={(courses) => set("courses", { ...wall, courses })}
      />
    </>
  );
}
