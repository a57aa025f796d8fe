import { formatDistance } from "../../units/format-length.ts";
import { type Block, type Cell, tableRow } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

const BEDS_A_ROW = 2;
const BETWEEN = 4;

/** How far each bed is from the kitchen and from the tap, along the ground. */
export function waysBlock({ beds, access, units }: SheetFacts, width: number): Block {
  const words = (route: { readonly length: number } | null) =>
    route ? formatDistance(route.length, units) : "–";
  const entries = beds.flatMap(({ bed, mark }) => {
    const way = access.beds.find(({ id }) => id === bed.id);
    return way && (way.kitchen || way.hose) ? [[mark, words(way.kitchen), words(way.hose)] as const] : [];
  });
  if (entries.length === 0) return { heading: "Walk and hose", rows: [] };
  const half = (width - BETWEEN) / BEDS_A_ROW;
  const cells = (
    entry: readonly [string, string, string],
    i: number,
    weight: Cell["weight"] = "normal",
  ): Cell[] => {
    const left = i * (half + BETWEEN);
    return [
      { words: entry[0], x: left, weight },
      { words: entry[1], x: left + half * 0.64, anchor: "end", weight },
      { words: entry[2], x: left + half, anchor: "end", weight },
    ];
  };
  const head = ["", "kitchen", "hose"] as const;
  const rows = Array.from({ length: Math.ceil(entries.length / BEDS_A_ROW) }, (_, row) =>
    tableRow(
      entries.slice(row * BEDS_A_ROW, (row + 1) * BEDS_A_ROW).flatMap((entry, i) => cells(entry, i)),
      width,
    ),
  );
  return {
    heading: "Walk and hose",
    rows: [tableRow([...cells(head, 0, "bold"), ...cells(head, 1, "bold")], width), ...rows],
    spare: { from: 1, more: () => "Walks and hoses of further beds stand in the ledger." },
  };
}
