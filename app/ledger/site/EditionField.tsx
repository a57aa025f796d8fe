import { EDITIONS, editionIds, type Gardener } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";

const CHOICES = editionIds.map((value) => ({ value, label: EDITIONS[value].label }));

/** Whose figures the wheelchair rules are held to. None of them binds a private yard. */
export function EditionField({ edition }: { readonly edition: Gardener["edition"] }) {
  const commit = useEditor((s) => s.commit);
  const { note } = EDITIONS[edition];
  return (
    <ChoiceField
      label="Wheelchair figures from"
      value={edition}
      choices={CHOICES}
      note={`${sentence(note)}. Guidance: no standard binds a private yard.`}
      onCommit={(chosen) =>
        commit(`Set whose wheelchair figures are used: ${EDITIONS[chosen].label}`, [
          { op: "set-gardener", changes: { edition: chosen } },
        ])
      }
    />
  );
}

const sentence = (note: string): string => note.charAt(0).toUpperCase() + note.slice(1);
