import type { Gardener } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CheckField } from "../fields/CheckField.tsx";
import { EditionField } from "./EditionField.tsx";

type Means = Exclude<keyof Gardener, "edition">;

const WAYS: readonly { readonly key: Means; readonly label: string; readonly note: string }[] = [
  { key: "kneeling", label: "Kneeling", note: "paths wide enough to kneel in" },
  { key: "barrow", label: "With a barrow", note: "a main way wide enough to push one" },
  { key: "wheelchair", label: "In a wheelchair", note: "ways, gates, slopes and room to turn" },
  { key: "child", label: "A child", note: "beds no deeper than a child reaches" },
];

/** Who has to get about; each switches the limits on that are theirs. Somebody always stands. */
export function GardenerFields({ gardener }: { readonly gardener: Gardener }) {
  const commit = useEditor((s) => s.commit);
  return (
    <>
      <CheckField label="Standing" checked disabled note="always" onCommit={() => undefined} />
      {WAYS.map(({ key, label, note }) => (
        <CheckField
          key={key}
          label={label}
          note={note}
          checked={gardener[key]}
          onCommit={(on) =>
            commit(`Set who gardens here: ${label.toLowerCase()}`, [
              { op: "set-gardener", changes: { [key]: on } },
            ])
          }
        />
      ))}
      {gardener.wheelchair ? <EditionField edition={gardener.edition} /> : null}
    </>
  );
}
