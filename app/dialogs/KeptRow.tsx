import { useCallback, useState } from "react";
import { language, plainText, say } from "../../src/index.ts";
import type { EarlierState, KeptGarden } from "../keeping/types.ts";
import { bedCount } from "./bed-count.ts";
import { EarlierStates } from "./EarlierStates.tsx";

interface Props {
  readonly garden: KeptGarden;
  readonly onBoard: boolean;
  readonly onOpen: () => void;
  readonly onRemove: () => void;
  readonly onRescue: () => void;
  readonly earlier: (id: string) => Promise<readonly EarlierState[]>;
  readonly onGoBack: (at: number) => void;
}

/** One kept garden, with its earlier states on demand. Removing asks once more, in the same place: it cannot be undone. */
export function KeptRow({ garden, onBoard, onOpen, onRemove, onRescue, earlier, onGoBack }: Props) {
  const [asking, setAsking] = useState(false);
  const [showsEarlier, setShowsEarlier] = useState(false);
  const { id, problem } = garden;
  const name = plainText(garden.name) || say`Garden without a name`;
  const load = useCallback(() => earlier(id), [earlier, id]);

  return (
    <li className="kept-row" data-garden={id}>
      <div>
        <strong>{name}</strong>
        <span className="quiet">
          {problem ? say`set aside, whole` : bedCount(garden.beds)}
          {" · "}
          {new Date(garden.changed).toLocaleString(language(), { dateStyle: "medium", timeStyle: "short" })}
          {onBoard ? ` · ${say`on the board`}` : ""}
        </span>
        {problem ? <p className="field-problem">{say`Could not be opened: ${problem}.`}</p> : null}
      </div>
      <div className="button-row">
        {problem ? (
          <button
            type="button"
            className="button"
            onClick={onRescue}
            aria-label={say`Save as file: ${name}`}
          >{say`Save as file`}</button>
        ) : (
          <button
            type="button"
            className="button"
            aria-disabled={onBoard}
            onClick={() => !onBoard && onOpen()}
            aria-label={say`Open ${name}`}
          >{say`Open`}</button>
        )}
        <button
          type="button"
          className="button"
          aria-expanded={showsEarlier}
          onClick={() => setShowsEarlier(!showsEarlier)}
          aria-label={say`Earlier states of ${name}`}
        >{say`Earlier`}</button>
        {asking ? (
          <button
            type="button"
            className="button danger"
            onClick={onRemove}
            onBlur={() => setAsking(false)}
          >{say`Remove for good`}</button>
        ) : (
          <button
            type="button"
            className="button"
            onClick={() => setAsking(true)}
            aria-label={say`Remove ${name}`}
          >{say`Remove`}</button>
        )}
      </div>
      {showsEarlier ? (
        <EarlierStates name={name} now={onBoard ? garden.changed : null} load={load} onGoBack={onGoBack} />
      ) : null}
    </li>
  );
}
