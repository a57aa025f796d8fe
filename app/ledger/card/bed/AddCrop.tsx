import { useId, useState } from "react";
import {
  CROPS,
  type Crop,
  cropIdsOf,
  formatShort,
  type ItemOf,
  nameOf,
  newPlanting,
  rootRun,
  say,
  told,
  type Units,
} from "../../../../src/index.ts";
import { focusBoard } from "../../../plan/hands/board.ts";
import { placingCrop } from "../../../plan/hands/planting.ts";
import { cropTitle, plantingIn } from "../../../planting/crop-words.ts";
import { useEditor } from "../../../store/use-editor.ts";

interface Props {
  readonly bed: ItemOf<"bed">;
  readonly units: Units;
}

const MOST_SHOWN = 8;

/** A search for a crop by any of its names: added for an even share of the bed, or drawn where it is to stand. */
export function AddCrop({ bed, units }: Props) {
  const id = useId();
  const [sought, setSought] = useState("");
  const inBed = cropIdsOf(bed);
  // A second sowing of what is there is rarer than a first of something else.
  const found = search(sought).toSorted(
    (a, b) => Number(inBed.includes(a.id)) - Number(inBed.includes(b.id)),
  );

  const add = (crop: Crop) => {
    const planting = newPlanting(crop.id);
    useEditor
      .getState()
      .commit(say`Plant ${plantingIn(planting, nameOf(bed))}`, [
        { op: "set", id: bed.id, changes: { plantings: [...bed.plantings, planting] } },
      ]);
    setSought("");
    document.getElementById(id)?.focus();
  };
  const draw = (crop: Crop) => {
    useEditor.getState().pick(placingCrop(crop.id));
    setSought("");
    focusBoard();
  };

  return (
    <>
      <div className="field">
        <label htmlFor={id}>{say`Add a crop`}</label>
        <span className="field-box">
          <input
            id={id}
            type="search"
            autoComplete="off"
            placeholder={say`Type a name, such as beans`}
            value={sought}
            aria-describedby={`${id}-found`}
            onChange={(event) => setSought(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === "Enter" && found[0]) add(found[0]);
              if (event.key === "Escape" && sought) {
                event.stopPropagation();
                setSought("");
              }
            }}
          />
        </span>
      </div>
      <p className="unseen" id={`${id}-found`} role="status">
        {sought ? say`${found.length} found; Enter adds the first.` : ""}
      </p>
      {sought ? (
        <ul className="crop-found" aria-label={say`Crops found`}>
          {found.slice(0, MOST_SHOWN).map((crop) => (
            <li key={crop.id}>
              <button type="button" className="button" onClick={() => add(crop)}>
                {told(crop.name)} <small>{needs(crop, units)}</small>
              </button>
              <button
                type="button"
                className="button small"
                aria-label={say`Draw the place of ${cropTitle(crop.id)}`}
                onClick={() => draw(crop)}
              >{say`Draw it`}</button>
            </li>
          ))}
          {found.length === 0 ? <li className="quiet">{say`Not in the crop table.`}</li> : null}
        </ul>
      ) : null}
    </>
  );
}

const needs = (crop: Crop, units: Units): string =>
  say`${formatShort(rootRun(crop, "soil"), units)} of soil, ${formatShort(rootRun(crop, "hard"), units)} over paving`;

/** By any word's beginning, in the name or the botanical name or the family. */
function search(text: string): readonly Crop[] {
  const wanted = text.trim().toLowerCase();
  if (wanted === "") return [];
  const begins = (words: string) =>
    words
      .toLowerCase()
      .split(/[^\p{L}]+/u)
      .some((word) => word.startsWith(wanted)) || words.toLowerCase().startsWith(wanted);
  return CROPS.filter(({ name, botanical, family }) => [name, told(name), botanical, family].some(begins));
}
