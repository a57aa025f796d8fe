import { say, told, type Units, word } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";

const CHOICES: readonly { readonly units: Units; readonly label: string }[] = [
  { units: "us", label: word("ft-in") },
  { units: "metric", label: word("metric") },
];

/** The units lengths are shown in, and read in where none is typed. */
export function UnitsToggle() {
  const shown = useEditor((s) => s.garden.units);
  const commit = useEditor((s) => s.commit);
  return (
    <fieldset className="button-row units">
      <legend className="unseen">{say`Units`}</legend>
      {CHOICES.map(({ units, label }) => (
        <button
          key={units}
          type="button"
          className="button"
          aria-pressed={units === shown}
          onClick={() =>
            units !== shown && commit(say`Show ${told(label)}`, [{ op: "set-garden", changes: { units } }])
          }
        >
          {told(label)}
        </button>
      ))}
    </fieldset>
  );
}
