import { useEffect, useId, useRef } from "react";
import {
  type ItemOf,
  nameOf,
  type PlantedPatch,
  type Planting,
  type Site,
  say,
  type Units,
} from "../../../../src/index.ts";
import { useMarks } from "../../../plan/hands/marks.ts";
import { countWords, cropTitle, plantingIn } from "../../../planting/crop-words.ts";
import { standingWords } from "../../../planting/day-words.ts";
import { useEditor } from "../../../store/use-editor.ts";
import { PlantingFields } from "./PlantingFields.tsx";

interface Props {
  readonly bed: ItemOf<"bed">;
  readonly patch: PlantedPatch;
  readonly site: Site;
  readonly units: Units;
}

/** One planting of a bed: what it comes to, and while it is open its fields, with handles on the plan. */
export function PlantingEntry({ bed, patch, site, units }: Props) {
  const id = useId();
  const { index, crop, standing } = patch;
  const open = useMarks(({ patch: held }) => held?.id === bed.id && held.index === index);
  const title = cropTitle(crop);
  const entry = useRef<HTMLLIElement>(null);
  // Taken hold of on the plan, it may stand out of sight in the list.
  useEffect(() => {
    if (open) entry.current?.scrollIntoView({ block: "nearest" });
  }, [open]);
  const last = bed.plantings.length - 1;
  const hold = (next: number | null) =>
    useMarks.setState({ patch: next === null ? null : { id: bed.id, index: next } });
  const commit = (label: string, plantings: readonly Planting[]) =>
    useEditor.getState().commit(label, [{ op: "set", id: bed.id, changes: { plantings } }]);
  const carryTo = (to: number) => {
    commit(
      say`Move ${plantingIn(standing.planting, nameOf(bed))} in the list`,
      bed.plantings.toSpliced(index, 1).toSpliced(to, 0, standing.planting),
    );
    if (open) hold(to);
  };
  const takeOut = () => {
    hold(null);
    commit(say`Take out ${plantingIn(standing.planting, nameOf(bed))}`, bed.plantings.toSpliced(index, 1));
  };

  return (
    <li className="planting" data-open={open} ref={entry}>
      <div className="planting-head">
        <button
          type="button"
          className="planting-name"
          aria-expanded={open}
          aria-controls={open ? id : undefined}
          onClick={() => hold(open ? null : index)}
        >
          <b>{title}</b>
          <small>{countWords(patch, units)}</small>
          <small>{standingWords(standing)}</small>
        </button>
        <span className="planting-actions">
          <button
            type="button"
            className="button small"
            aria-label={say`Move ${title} up the list`}
            disabled={index === 0}
            onClick={() => carryTo(index - 1)}
          >
            ↑
          </button>
          <button
            type="button"
            className="button small"
            aria-label={say`Move ${title} down the list`}
            disabled={index === last}
            onClick={() => carryTo(index + 1)}
          >
            ↓
          </button>
          <button
            type="button"
            className="button small"
            aria-label={say`Take out ${title}`}
            onClick={takeOut}
          >
            ×
          </button>
        </span>
      </div>
      {open ? (
        <div className="fields planting-fields" id={id}>
          <PlantingFields bed={bed} patch={patch} site={site} units={units} />
        </div>
      ) : null}
    </li>
  );
}
