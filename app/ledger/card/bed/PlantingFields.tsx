import {
  bedSpacing,
  formatLength,
  formatShort,
  type ItemOf,
  nameOf,
  type PlantedPatch,
  type Planting,
  parseLength,
  type Site,
  type Standing,
  say,
  sowingWindow,
  type Units,
} from "../../../../src/index.ts";
import { plantingIn } from "../../../planting/crop-words.ts";
import { yearDayWords } from "../../../planting/day-words.ts";
import { useEditor } from "../../../store/use-editor.ts";
import { ChoiceField } from "../../fields/ChoiceField.tsx";
import { TypedField } from "../../fields/TypedField.tsx";
import { DateField } from "../../site/DateField.tsx";
import { PatchFields } from "./PatchFields.tsx";

interface Props {
  readonly bed: ItemOf<"bed">;
  readonly patch: PlantedPatch;
  readonly site: Site;
  readonly units: Units;
}

/** When, how far apart and where a planting stands; what is left empty is as usual, and what that is stands beside it. */
export function PlantingFields({ bed, patch, site, units }: Props) {
  const { index, standing } = patch;
  const { planting } = standing;
  const set = (what: string, changes: Partial<Planting>) =>
    useEditor.getState().commit(say`Set ${what} of ${plantingIn(planting, nameOf(bed))}`, [
      {
        op: "set",
        id: bed.id,
        changes: { plantings: bed.plantings.with(index, { ...planting, ...changes }) },
      },
    ]);
  return (
    <>
      <DateField
        label={say`In the bed from`}
        value={planting.from}
        note={fromNote(standing, site)}
        onCommit={(from) => set(say`the day`, { from })}
      />
      <DateField
        label={say`Last day in the bed`}
        value={planting.until}
        note={
          planting.until === null
            ? say`until ${yearDayWords(standing.from + standing.days - 1)}`
            : say`as typed`
        }
        onCommit={(until) => set(say`the last day`, { until })}
      />
      <ChoiceField
        label={say`Set`}
        value={planting.set}
        choices={[
          { value: "rows", label: say`In rows` },
          { value: "block", label: say`As a block` },
        ]}
        onCommit={(how) => set(say`how it is set`, { set: how })}
      />
      <SpacingField
        label={say`Apart`}
        value={planting.apart}
        usual={usualWords(planting, units)}
        units={units}
        onCommit={(apart) => set(say`the spacing`, { apart })}
      />
      <ChoiceField
        label={say`Rows run`}
        value={planting.run}
        choices={[
          { value: "along", label: say`Along the bed` },
          { value: "across", label: say`Across the bed` },
        ]}
        onCommit={(run) => set(say`its rows`, { run })}
      />
      {planting.set === "rows" ? (
        <SpacingField
          label={say`Rows apart`}
          value={planting.rowsApart}
          usual={usualWords(planting, units)}
          units={units}
          onCommit={(rowsApart) => set(say`the rows’ spacing`, { rowsApart })}
        />
      ) : null}
      <PatchFields bed={bed} index={index} planting={planting} site={site} onSet={set} />
    </>
  );
}

function fromNote({ from, dayBy, planting }: Standing, site: Site): string {
  if (dayBy === "typed")
    return say`as typed; usually ${yearDayWords(sowingWindow(planting.crop, site).usual)}`;
  const day = say`usually ${yearDayWords(from)}`;
  return dayBy === "frosts"
    ? say`${day}, by your frost dates`
    : say`${day}; frost dates under Site make it yours`;
}

const usualWords = ({ crop }: Planting, units: Units): string => {
  const { least, most } = bedSpacing(crop);
  const widest = formatShort(most, units);
  return least === most
    ? say`usually ${widest}`
    : say`usually ${widest}, ${formatShort(least, units)} at least`;
};

interface SpacingProps {
  readonly label: string;
  readonly value: number | null;
  readonly usual: string;
  readonly units: Units;
  readonly onCommit: (mm: number | null) => void;
}

/** A spacing in any unit; empty for the usual one. */
function SpacingField({ label, value, usual, units, onCommit }: SpacingProps) {
  const read = (text: string): number | null => {
    if (text === "") return null;
    const mm = parseLength(text, units);
    if (mm <= 0) throw new RangeError(say`${label} must be above 0, or empty for the usual.`);
    return mm;
  };
  return (
    <TypedField
      label={label}
      value={value}
      write={(mm) => (mm === null ? "" : formatLength(mm, units))}
      read={read}
      note={usual}
      onCommit={onCommit}
    />
  );
}
