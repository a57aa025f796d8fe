import { type KeyboardEvent, useState } from "react";
import { say } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";

const LONGEST = 80;

/** The garden's name, edited where it stands: Enter or leaving keeps it, Escape puts it back. */
export function GardenName() {
  const name = useEditor((s) => s.garden.name);
  const commit = useEditor((s) => s.commit);
  const [typed, setTyped] = useState<string | null>(null);

  const keep = () => {
    const next = typed?.trim();
    setTyped(null);
    // A garden without a name could not be told from the others in the list.
    if (next && next !== name)
      commit(say`Rename the garden`, [{ op: "set-garden", changes: { name: next } }]);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === "Enter") event.currentTarget.blur();
    if (event.key === "Escape" && typed !== null) {
      event.stopPropagation();
      setTyped(null);
    }
  };

  const shown = typed ?? name;
  return (
    <span className="garden-name" data-text={shown}>
      <input
        type="text"
        aria-label={say`Name of the garden`}
        maxLength={LONGEST}
        size={1}
        spellCheck={false}
        autoComplete="off"
        value={shown}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={keep}
        onKeyDown={onKeyDown}
      />
    </span>
  );
}
