import { useId } from "react";
import { type CropId, type ItemOf, isCropId, say } from "../../../../src/index.ts";
import { CropOptions } from "../../../planting/CropOptions.tsx";
import { cropTitle } from "../../../planting/crop-words.ts";
import { setItem } from "../set-item.ts";

/** What grew in a bed last year, which its rotation is judged by. */
export function LastYearField({ bed }: { readonly bed: ItemOf<"bed"> }) {
  const id = useId();
  const set = (lastYear: readonly CropId[]) => setItem(bed, say`last year’s crops`, { lastYear });
  return (
    <div className="last-year">
      <div className="field">
        <label htmlFor={id}>{say`Grew here last year`}</label>
        <span className="field-box">
          <select
            id={id}
            value=""
            onChange={({ target }) => isCropId(target.value) && set([...bed.lastYear, target.value])}
          >
            <option value="">
              {bed.lastYear.length === 0 ? say`Nothing is known; add a crop` : say`Add a crop`}
            </option>
            <CropOptions without={bed.lastYear} />
          </select>
        </span>
      </div>
      {bed.lastYear.length > 0 ? (
        <ul className="last-year-list" aria-label={say`Last year’s crops`}>
          {bed.lastYear.map((crop) => (
            <li key={crop}>
              {cropTitle(crop)}
              <button
                type="button"
                className="button small"
                aria-label={say`Take ${cropTitle(crop)} off last year’s crops`}
                onClick={() => set(bed.lastYear.filter((one) => one !== crop))}
              >
                ×
              </button>
            </li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}
