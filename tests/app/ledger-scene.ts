import { useLedger } from "../../app/ledger/ledger-state.ts";
import { type Findings, useFindings } from "../../app/live/findings.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import type { Garden, Item, ItemId, Snag, WayOut } from "../../src/index.ts";

/** Puts a garden on the page's board, with what has been found about it, and everything else as a fresh page has it. */
export function onTheBoard(garden: Garden, findings: Partial<Omit<Findings, "of">> = {}): void {
  useEditor.getState().open(garden);
  useEditor.setState({ leaf: "snags", message: { text: "", count: 0 } });
  useLedger.setState({ stop: "low", cardOpen: false, cardFolded: false, wantedLimit: null });
  useFindings.setState({ of: garden, snags: [], takeoff: null, access: null, ...findings });
}

/** What the page's analysis does after each change: these findings are about the garden as it now stands. */
export function foundNow(findings: Partial<Omit<Findings, "of">>): void {
  const { garden, draft } = useEditor.getState();
  useFindings.setState({ of: draft ?? garden, ...findings });
}

export const itemNow = (id: ItemId): Item => {
  const item = useEditor.getState().garden.items.find((one) => one.id === id);
  if (!item) throw new RangeError(`nothing called ${id} on the board`);
  return item;
};

export function snagOf(item: Item, changes: Partial<Snag> = {}): Snag {
  return {
    key: `too-wide ${item.id}`,
    rule: "too-wide",
    grade: "must",
    itemIds: [item.id],
    at: [item.at],
    measured: 1500,
    limit: 1219.2,
    unit: "mm",
    title: "Roots: 11 in cannot be reached",
    detail: "59 in across, and 24 in is the reach from each side.",
    why: "Soil that is stepped on sets hard.",
    source: { how: "practice", text: "told by a test" },
    waysOut: [],
    waysOutKnown: true,
    ...changes,
  };
}

export const moveWay = (item: Item, label: string, by: readonly [number, number]): WayOut => ({
  label,
  ops: [{ op: "move", id: item.id, by }],
});
