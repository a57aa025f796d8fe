import { formatLength } from "../../units/format-length.ts";
import type { Units } from "../../units/length.ts";
import type { BedKind } from "../bed-kinds.ts";
import { type Block, tableRow } from "../flow.ts";
import { proofOf } from "../setting-out.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** What to measure to know that a frame is true; kinds proved alike share a row. */
export function proofsBlock({ kinds, units }: SheetFacts, width: number): Block {
  const alike = new Map<string, string[]>();
  for (const kind of kinds) {
    const proof = proofWords(kind, units);
    if (proof) alike.set(proof, [...(alike.get(proof) ?? []), kind.letter]);
  }
  return {
    heading: "Square and true when",
    rows: Array.from(alike, ([proof, letters]) =>
      tableRow(
        [
          { words: letters.join(", "), x: 0 },
          { words: proof, x: width, anchor: "end" },
        ],
        width,
      ),
    ),
  };
}

function proofWords({ beds }: BedKind, units: Units): string | null {
  const proof = beds[0] ? proofOf(beds[0].bed) : null;
  if (!proof) return null;
  return "diagonal" in proof
    ? `both diagonals ${formatLength(proof.diagonal, units)}`
    : `radius ${formatLength(proof.radius, units)}`;
}
