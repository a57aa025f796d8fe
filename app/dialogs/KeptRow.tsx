import { useState } from "react";
import type { KeptGarden } from "../keeping/types.ts";

interface Props {
  readonly garden: KeptGarden;
  readonly onBoard: boolean;
  readonly onOpen: () => void;
  readonly onRemove: () => void;
  readonly onRescue: () => void;
}

/** One kept garden. Removing asks once more, in the same place: it cannot be undone. */
export function KeptRow({ garden, onBoard, onOpen, onRemove, onRescue }: Props) {
  const [asking, setAsking] = useState(false);
  const name = garden.name || "Garden without a name";

  return (
    <li className="kept-row" data-garden={garden.id}>
      <div>
        <strong>{name}</strong>
        <span className="quiet">
          {garden.broken ? "could not be read, kept as it is" : plural(garden.beds, "bed")}
          {" · "}
          {new Date(garden.changed).toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" })}
          {onBoard ? " · on the board" : ""}
        </span>
      </div>
      <div className="button-row">
        {garden.broken ? (
          <button type="button" className="button" onClick={onRescue} aria-label={`Save ${name} to a file`}>
            Save as file
          </button>
        ) : (
          <button
            type="button"
            className="button"
            aria-disabled={onBoard}
            onClick={() => !onBoard && onOpen()}
            aria-label={`Open ${name}`}
          >
            Open
          </button>
        )}
        {asking ? (
          <button type="button" className="button danger" onClick={onRemove} onBlur={() => setAsking(false)}>
            Remove for good
          </button>
        ) : (
          <button
            type="button"
            className="button"
            onClick={() => setAsking(true)}
            aria-label={`Remove ${name}`}
          >
            Remove
          </button>
        )}
      </div>
    </li>
  );
}

const plural = (count: number, word: string) => `${count} ${word}${count === 1 ? "" : "s"}`;
