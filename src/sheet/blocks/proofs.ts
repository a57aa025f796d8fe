import { formatLength } from "../../units/format-length.ts";
import type { Block, Row } from "../flow.ts";
import { tableRow } from "../flow.ts";
import { proofOf } from "../setting-out.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** What to measure to know that a frame is true. */
export function proofsBlock({ kinds, units }: SheetFacts, width: number): Block {
  const rows = kinds.flatMap(({ letter, beds }): Row[] => {
    const proof = beds[0] ? proofOf(beds[0].bed) : null;
    if (!proof) return [];
    const [words, length] =
      "diagonal" in proof
        ? (["both diagonals", proof.diagonal] as const)
        : (["radius", proof.radius] as const);
    return [
      tableRow(
        [
          { words: letter, x: 0 },
          { words, x: width * 0.14 },
          { words: formatLength(length, units), x: width, anchor: "end" },
        ],
        width,
      ),
    ];
  });
  return { heading: "Square and true when", rows };
}
