import { CROPS, type Crop, type CropId } from "../../src/index.ts";
import { cropTitle } from "./crop-words.ts";

const titled = (crops: readonly Crop[]) =>
  crops.map(({ id }) => ({ id, title: cropTitle(id) })).toSorted((a, b) => a.title.localeCompare(b.title));

const GROUPS = [
  { label: "Cool season", crops: titled(CROPS.filter(({ season }) => season === "cool")) },
  { label: "Warm season", crops: titled(CROPS.filter(({ season }) => season === "warm")) },
];

/** The crops of the table as options of a list, by season; without those left out. */
export const CropOptions = ({ without = [] }: { readonly without?: readonly CropId[] }) =>
  GROUPS.map(({ label, crops }) => (
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
