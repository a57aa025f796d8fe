import { useId, useState } from "react";
import {
  CROPS,
  type Crop,
  cropById,
  cropIdsOf,
  formatShort,
  type ItemOf,
  newPlanting,
  type Planting,
  rootRun,
  type Units,
  withoutCrops,
} from "../../../../src/index.ts";
import { setItem } from "../set-item.ts";

interface Props {
  readonly bed: ItemOf<"bed">;
  readonly units: Units;
}

const MOST_SHOWN = 8;

/** What grows in a bed: the crops it has, each with the soil it asks for, and a search for more. */
export function CropsField({ bed, units }: Props) {
  const id = useId();
  const [sought, setSought] = useState("");
  const inBed = cropIdsOf(bed);
  const found = search(sought).filter((crop) => !inBed.includes(crop.id));

  const setPlantings = (plantings: readonly Planting[]) => setItem(bed, "plantings", { plantings });
  const addCrop = (crop: Crop) => {
    setPlantings([...bed.plantings, newPlanting(crop.id)]);
    setSought("");
    document.getElementById(id)?.focus();
  };

  return (
    <div className="crops wide">
      <ul className="crop-list" aria-label="Crops in this bed">
        {inBed.map((cropId) => {
          const crop = cropById(cropId);
          return (
            <li key={cropId}>
              <span>
                {crop?.name ?? cropId}
                {crop ? <small>{needs(crop, units)}</small> : null}
              </span>
              <button
                type="button"
                className="button small"
                aria-label={`Take out ${crop?.name ?? cropId}`}
                onClick={() => setPlantings(withoutCrops(bed, [cropId]))}
              >
                ×
              </button>
            </li>
          );
        })}
      </ul>
      <div className="field">
        <label htmlFor={id}>Add a crop</label>
        <span className="field-box">
          <input
            id={id}
            type="search"
            autoComplete="off"
            placeholder="Type a name, such as beans"
            value={sought}
            aria-describedby={`${id}-found`}
            onChange={(event) => setSought(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === "Enter" && found[0]) addCrop(found[0]);
              if (event.key === "Escape" && sought) {
                event.stopPropagation();
                setSought("");
              }
            }}
          />
        </span>
      </div>
      <p className="unseen" id={`${id}-found`} role="status">
        {sought ? `${found.length} found; Enter adds the first.` : ""}
      </p>
      {sought ? (
        <ul className="crop-found" aria-label="Crops found">
          {found.slice(0, MOST_SHOWN).map((crop) => (
            <li key={crop.id}>
              <button type="button" className="button" onClick={() => addCrop(crop)}>
                {crop.name} <small>{needs(crop, units)}</small>
              </button>
            </li>
          ))}
          {found.length === 0 ? <li className="quiet">Not in the crop table.</li> : null}
        </ul>
      ) : null}
    </div>
  );
}

const needs = (crop: Crop, units: Units): string =>
  `${formatShort(rootRun(crop, "soil"), units)} of soil, ${formatShort(rootRun(crop, "hard"), units)} over paving`;

/** By any word's beginning, in the name or the botanical name or the family. */
function search(text: string): readonly Crop[] {
  const wanted = text.trim().toLowerCase();
  if (wanted === "") return [];
  const begins = (words: string) =>
    words
      .toLowerCase()
      .split(/[^\p{L}]+/u)
      .some((word) => word.startsWith(wanted)) || words.toLowerCase().startsWith(wanted);
  return CROPS.filter(({ name, botanical, family }) => begins(name) || begins(botanical) || begins(family));
}
