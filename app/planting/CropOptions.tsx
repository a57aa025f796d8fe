import { CROPS, type Crop, type CropId, language, say } from "../../src/index.ts";
import { cropTitle } from "./crop-words.ts";

const titled = (crops: readonly Crop[]) =>
  crops
    .map(({ id }) => ({ id, title: cropTitle(id) }))
    .toSorted((a, b) => a.title.localeCompare(b.title, language()));

const grouped = () => [
  { label: say`Cool season`, crops: titled(CROPS.filter(({ season }) => season === "cool")) },
  { label: say`Warm season`, crops: titled(CROPS.filter(({ season }) => season === "warm")) },
];

// Once, when the first list of crops is shown: their names and their order are those of the language spoken.
let known: ReturnType<typeof grouped> | null = null;
function groups() {
  known ??= grouped();
  return known;
}

/** The crops of the table as options of a list, by season; without those left out. */
export const CropOptions = ({ without = [] }: { readonly without?: readonly CropId[] }) =>
  groups().map(({ label, crops }) => (
    <optgroup key={label} label={label}>
      {crops
        .filter(({ id }) => !without.includes(id))
        .map(({ id, title }) => (
          <option key={id} value={id}>
            {title}
          </option>
        ))}
    </optgroup>
  ));
