import { type ItemOf, leafMonths, MONTH_NAMES } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { setItem } from "./set-item.ts";

const MONTHS = MONTH_NAMES.map((label, i) => ({ value: String(i + 1), label }));
const monthName = (month: number): string => MONTH_NAMES[month - 1] ?? "";

/** When a tree that drops its leaves is in leaf: as is usual where the garden is, or in months of its own. */
export function LeafMonthsFields({ item }: { readonly item: ItemOf<"tree"> }) {
  const latitude = useEditor((s) => s.garden.site.latitude);
  if (item.leaf === "evergreen") return null;
  const usual = leafMonths(latitude);
  const [from = 1, to = 12] = [usual[0], usual.at(-1)];
  const set = (inLeaf: ItemOf<"tree">["inLeaf"]) => setItem(item, "months in leaf", { inLeaf });
  const { inLeaf } = item;
  return (
    <>
      <ChoiceField
        label="In leaf"
        value={inLeaf ? "own" : "usual"}
        choices={[
          { value: "usual", label: `As usual, ${monthName(from)} to ${monthName(to)}` },
          { value: "own", label: "Months of its own" },
        ]}
        onCommit={(choice) => set(choice === "own" ? { from, to } : null)}
      />
      {inLeaf ? (
        <>
          <ChoiceField
            label="In leaf from"
            value={String(inLeaf.from)}
            choices={MONTHS}
            onCommit={(month) => set({ ...inLeaf, from: Number(month) })}
          />
          <ChoiceField
            label="to the end of"
            value={String(inLeaf.to)}
            choices={MONTHS}
            onCommit={(month) => set({ ...inLeaf, to: Number(month) })}
          />
        </>
      ) : null}
    </>
  );
}
