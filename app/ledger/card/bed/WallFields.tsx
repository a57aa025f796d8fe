import { type ItemOf, say, type Units, word } from "../../../../src/index.ts";
import { type Choice, ChoiceField } from "../../fields/ChoiceField.tsx";
import { LengthField } from "../../fields/LengthField.tsx";
import { NumberField } from "../../fields/NumberField.tsx";
import { toldChoices } from "../../fields/told-choices.ts";
import { setItem } from "../set-item.ts";
import { BoardFields } from "./BoardFields.tsx";
import { type BedWall, type Made, MOST_COURSES, type SetWall, usualWall } from "./usual-walls.ts";

const MADE: readonly Choice<BedWall["made"]>[] = [
  { value: "boards", label: word("Boards") },
  { value: "metal", label: word("Metal") },
  { value: "fabric", label: word("Fabric") },
  { value: "masonry", label: word("Masonry") },
  { value: "mound", label: word("None: a mound") },
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
        label={say`Made of`}
        value={wall.made}
        choices={toldChoices(MADE)}
        onCommit={(made) => set(say`wall`, usualWall(made, units))}
      />
      {wall.made === "boards" ? <BoardFields bed={bed} wall={wall} units={units} set={set} /> : null}
      {wall.made === "masonry" ? <MasonryFields wall={wall} set={set} /> : null}
      {wall.made === "metal" || wall.made === "fabric" || wall.made === "mound" ? (
        <LengthField
          label={say`Height`}
          value={wall.height}
          onCommit={(height) => set(say`height`, { ...wall, height })}
        />
      ) : null}
      {wall.made === "metal" ? (
        <LengthField
          label={say`Thickness`}
          value={wall.thickness}
          onCommit={(thickness) => set(say`thickness`, { ...wall, thickness })}
        />
      ) : null}
    </>
  );
}

function MasonryFields({ wall, set }: { readonly wall: Made<"masonry">; readonly set: SetWall }) {
  return (
    <>
      <LengthField
        label={say`Block length`}
        value={wall.unitLength}
        onCommit={(unitLength) => set(say`block length`, { ...wall, unitLength })}
      />
      <LengthField
        label={say`Block height`}
        value={wall.unitHeight}
        onCommit={(unitHeight) => set(say`block height`, { ...wall, unitHeight })}
      />
      <LengthField
        label={say`Thickness`}
        value={wall.thickness}
        onCommit={(thickness) => set(say`thickness`, { ...wall, thickness })}
      />
      <NumberField
        label={say`Courses`}
        whole
        least={1}
        most={MOST_COURSES}
        value={wall.courses}
        onCommit={(courses) => set(say`courses`, { ...wall, courses })}
      />
    </>
  );
}
