import {
  COVER_CROP_IDS,
  COVER_CROPS,
  type CoverCropId,
  capital,
  coverCropAt,
  type Garden,
  say,
  type Upkeep,
} from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { TypedField } from "../fields/TypedField.tsx";

/** What the gardener chooses of the year's work. */
export function UpkeepFields({ garden: { upkeep, site } }: { readonly garden: Garden }) {
  const set = (what: string, changes: Partial<Upkeep>) =>
    useEditor
      .getState()
      .commit(say`Set ${what}`, [{ op: "set-garden", changes: { upkeep: { ...upkeep, ...changes } } }]);
  const usual = coverCropAt(null, site);
  return (
    <>
      <div className="wide">
        <ChoiceField
          label={say`Top up with compost`}
          value={upkeep.topUp}
          choices={[
            { value: "habit", label: say`By habit, 2 to 3 in each time` },
            { value: "advice", label: say`By extension advice, 1 in a year` },
          ]}
          note={say`The habit puts back height and feeds hungry crops; the advice keeps phosphorus from building up. 2 to 3 in is 5 to 8 cm.`}
          onCommit={(topUp) => set(say`the way of topping up`, { topUp })}
        />
      </div>
      <ChoiceField
        label={say`How often`}
        value={String(upkeep.topUpsAYear)}
        choices={[
          { value: "1", label: say`Once a year` },
          { value: "2", label: say`Twice a year` },
        ]}
        onCommit={(times) => set(say`the times of topping up`, { topUpsAYear: times === "2" ? 2 : 1 })}
      />
      <TypedField
        label={say`First year`}
        value={upkeep.firstYear}
        inputMode="numeric"
        write={(year) => (year === null ? "" : String(year))}
        read={readYear}
        note={say`in which beds are built`}
        onCommit={(firstYear) => set(say`the first year`, { firstYear })}
      />
      <div className="wide">
        <ChoiceField
          label={say`Cover crop in winter`}
          value={upkeep.cover ?? USUAL}
          choices={[
            { value: USUAL, label: say`As is usual here, ${usual.word}` },
            ...COVER_CROP_IDS.map((id) => ({ value: id, label: capital(COVER_CROPS[id].word) })),
          ]}
          note={say`For beds whose card says that they have one in winter.`}
          onCommit={(id) => set(say`the cover crop`, { cover: isCover(id) ? id : null })}
        />
      </div>
    </>
  );
}

const USUAL = "usual";
const isCover = (id: string): id is CoverCropId => COVER_CROP_IDS.some((known) => known === id);

/** @throws RangeError with one sentence that says what was wrong */
export function readYear(text: string): number | null {
  if (text.trim() === "") return null;
  const year = Number(text.trim());
  if (!Number.isInteger(year) || year < 1900 || year > 2200) {
    throw new RangeError(say`Type a year such as 2027, or leave it empty.`);
  }
  return year;
}
