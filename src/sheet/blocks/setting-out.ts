import { formatLength } from "../../units/format-length.ts";
import type { Block, Row } from "../flow.ts";
import { paragraph, tableRow } from "../flow.ts";
import { tapedPoints } from "../setting-out.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** Where each bed stands, by tape from two pegs. */
export function settingOutBlock({ beds, pegs, units }: SheetFacts, width: number): Block {
  const p2 = width;
  const p1 = width * 0.66;
  const rows: Row[] = beds.flatMap(({ bed, mark }) =>
    tapedPoints(bed, pegs).map(({ what, fromP1, fromP2 }) =>
      tableRow(
        [
          { words: `${mark} ${what}`, x: 0 },
          { words: formatLength(fromP1, units), x: p1, anchor: "end" },
          { words: formatLength(fromP2, units), x: p2, anchor: "end" },
        ],
        width,
      ),
    ),
  );
  if (rows.length === 0) return { heading: "Setting out", rows: [] };
  return {
    heading: "Setting out",
    rows: [
      paragraph("Tape from both pegs; a is the corner nearest P1, b its neighbour nearest P2.", width),
      tableRow(
        [
          { words: "corner", x: 0, weight: "bold" },
          { words: "from P1", x: p1, anchor: "end", weight: "bold" },
          { words: "from P2", x: p2, anchor: "end", weight: "bold" },
        ],
        width,
      ),
      ...rows,
    ],
  };
}
