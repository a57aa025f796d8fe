import { type ItemOf, leafMonths, MONTH_NAMES, monthName, say } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { setItem } from "./set-item.ts";

const months = () => MONTH_NAMES.map((_, i) => ({ value: String(i + 1), label: monthName(i + 1) }));

/** When a tree that drops its leaves is in leaf: as is usual where the garden is, or in months of its own. */
export function LeafMonthsFields({ item }: { readonly item: ItemOf<"tree"> }) {
  const latitude = useEditor((s) => s.garden.site.latitude);
  if (item.leaf === "evergreen") return null;
  const usual = leafMonths(latitude);
  const [from = 1, to = 12] = [usual[0], usual.at(-1)];
  const set = (inLeaf: ItemOf<"tree">["inLeaf"]) => setItem(item, say`months in leaf`, { inLeaf });
  const { inLeaf } = item;
  return (
    <>
      <ChoiceField
        label={say`In leaf`}
        value={inLeaf ? "own" : "usual"}
        choices={[
          { value: "usual", label: say`As usual, ${monthName(from)} to ${monthName(to)}` },
          { value: "own", label: say`Months of its own` },
        ]}
        onCommit={(choice) => set(choice === "own" ? { from, to } : null)}
      />
      {inLeaf ? (
        <>
          <ChoiceField
            label={say`In leaf from`}
            value={String(inLeaf.from)}
            choices={months()}
            onCommit={(month) => set({ ...inLeaf, from: Number(month) })}
          />
          <ChoiceField
            label={say`to the end of`}
            value={String(inLeaf.to)}
            choices={months()}
            onCommit={(month) => set({ ...inLeaf, to: Number(month) })}
          />
        </>
      ) : null}
    </>
  );
}
