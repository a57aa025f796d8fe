import { BOARD_SIZES, formatShort, type ItemOf, TIMBERS, type Units } from "../../../../src/index.ts";
import { type Choice, ChoiceField } from "../../fields/ChoiceField.tsx";
import { LengthField } from "../../fields/LengthField.tsx";
import { NumberField } from "../../fields/NumberField.tsx";
import { setItem } from "../set-item.ts";
import { type BedWall, usualWall } from "./usual-walls.ts";

const MADE: readonly Choice<BedWall["made"]>[] = [
  { value: "boards", label: "Boards" },
  { value: "metal", label: "Metal" },
  { value: "fabric", label: "Fabric" },
  { value: "masonry", label: "Masonry" },
  { value: "mound", label: "None: a mound" },
];

const MOST_COURSES = 12;

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
      {wall.made === "boards" ? <BoardFields wall={wall} units={units} set={set} /> : null}
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

type Made<K extends BedWall["made"]> = Extract<BedWall, { made: K }>;
type SetWall = (what: string, next: BedWall) => void;

interface BoardProps {
  readonly wall: Made<"boards">;
  readonly units: Units;
  readonly set: SetWall;
}

const TIMBER_CHOICES: readonly Choice<string>[] = TIMBERS.map(({ id, label, besideFood }) => ({
  value: id,
  label:
    besideFood === "fit" ? label : `${label} (${besideFood === "unfit" ? "not beside food" : "with care"})`,
}));

function BoardFields({ wall, units, set }: BoardProps) {
  const timber = TIMBERS.find(({ id }) => id === wall.timber);
  return (
    <>
      <ChoiceField
        label="Board"
        value={wall.board}
        choices={boardChoices(units, wall.board)}
        onCommit={(board) => set("board", { ...wall, board })}
      />
      <ChoiceField
        label="Timber"
        value={wall.timber}
        choices={TIMBER_CHOICES}
        {...(timber ? { note: `${timber.life.join(" to ")} years in the soil. ${timber.note}` } : {})}
        onCommit={(id) => set("timber", { ...wall, timber: id })}
      />
      <NumberField
        label="Courses"
        whole
        least={1}
        most={MOST_COURSES}
        value={wall.courses}
        onCommit={(courses) => set("courses", { ...wall, courses })}
      />
      <ChoiceField
        label="Corners"
        value={wall.corner}
        choices={[
          { value: "ends-between-sides", label: "Ends between the sides" },
          { value: "ends-over-sides", label: "Ends over the sides" },
        ]}
        onCommit={(corner) => set("corners", { ...wall, corner })}
      />
      <ChoiceField
        label="Kept from bowing by"
        value={wall.bracing}
        choices={[
          { value: "none", label: "Nothing" },
          { value: "stakes", label: "Stakes" },
          { value: "stakes-and-ties", label: "Stakes and ties across" },
        ]}
        onCommit={(bracing) => set("bracing", { ...wall, bracing })}
      />
    </>
  );
}

/** Boards of the garden's own system, with what they really measure; the one in use in any case. */
function boardChoices(units: Units, inUse: string): readonly Choice<string>[] {
  return BOARD_SIZES.filter(({ system, name }) => system === units || name === inUse).map((size) => ({
    value: size.name,
    label: `${size.name.replace("x", "×")} (${formatShort(size.thickness, units)} × ${formatShort(size.height, units)})`,
  }));
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
