import { type Gardener, midSentence, say, told, word } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CheckField } from "../fields/CheckField.tsx";
import { EditionField } from "./EditionField.tsx";

type Means = Exclude<keyof Gardener, "edition">;

const WAYS: readonly { readonly key: Means; readonly label: string; readonly note: string }[] = [
  { key: "kneeling", label: word("Kneeling"), note: word("paths wide enough to kneel in") },
  { key: "barrow", label: word("With a barrow"), note: word("a main way wide enough to push one") },
  { key: "wheelchair", label: word("In a wheelchair"), note: word("ways, gates, slopes and room to turn") },
  { key: "child", label: word("A child"), note: word("beds no deeper than a child reaches") },
];

/** Who has to get about; each switches the limits on that are theirs. Somebody always stands. */
export function GardenerFields({ gardener }: { readonly gardener: Gardener }) {
  const commit = useEditor((s) => s.commit);
  return (
    <>
      <CheckField label={say`Standing`} checked disabled note={say`always`} onCommit={() => undefined} />
      {WAYS.map(({ key, label, note }) => (
        <CheckField
          key={key}
          label={told(label)}
          note={told(note)}
          checked={gardener[key]}
          onCommit={(on) =>
            commit(say`Set who gardens here: ${midSentence(told(label))}`, [
              { op: "set-gardener", changes: { [key]: on } },
            ])
          }
        />
      ))}
      {gardener.wheelchair ? <EditionField edition={gardener.edition} /> : null}
    </>
  );
}
