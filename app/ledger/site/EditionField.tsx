import { capital, EDITIONS, editionIds, type Gardener, say } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";

/** Whose figures the wheelchair rules are held to. None of them binds a private yard. */
export function EditionField({ edition }: { readonly edition: Gardener["edition"] }) {
  const commit = useEditor((s) => s.commit);
  const { note } = EDITIONS[edition];
  return (
    <ChoiceField
      label={say`Wheelchair figures from`}
      value={edition}
      choices={editionIds.map((value) => ({ value, label: EDITIONS[value].label }))}
      note={say`${capital(note)}. Guidance: no standard binds a private yard.`}
      onCommit={(chosen) =>
        commit(say`Set whose wheelchair figures are used: ${EDITIONS[chosen].label}`, [
          { op: "set-gardener", changes: { edition: chosen } },
        ])
      }
    />
  );
}
