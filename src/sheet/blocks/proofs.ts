import { formatLength } from "../../units/format-length.ts";
import type { Units } from "../../units/length.ts";
import { say } from "../../words/say.ts";
import type { BedKind } from "../bed-kinds.ts";
import { type Block, paragraph, tableRow } from "../flow.ts";
import { LEAST_PT, textWidth } from "../lettering.ts";
import { proofOf } from "../setting-out.ts";
import type { SheetFacts } from "../sheet-facts.ts";

const BETWEEN = 4;

/** What to measure to know that a frame is true; kinds proved alike share a place, and two places a row where they fit. */
export function proofsBlock({ kinds, units, toBuild }: SheetFacts, width: number): Block {
  const built = new Set(toBuild.map(({ bed }) => bed.id));
  const alike = new Map<string, string[]>();
  for (const kind of kinds) {
    if (!kind.beds.some(({ bed }) => built.has(bed.id))) continue;
    const proof = proofWords(kind, units);
    if (proof) alike.set(proof, [...(alike.get(proof) ?? []), kind.letter]);
  }
  const entries = Array.from(alike, ([proof, letters]) => [letters.join(", "), proof] as const);
  const half = (width - BETWEEN) / 2;
  const narrow = entries.every(([letters, proof]) => textWidth(`${letters}  ${proof}`, LEAST_PT) <= half);
  const perRow = narrow ? 2 : 1;
  const room = perRow === 2 ? half : width;
  const rows = Array.from({ length: Math.ceil(entries.length / perRow) }, (_, row) =>
    tableRow(
      entries.slice(row * perRow, (row + 1) * perRow).flatMap(([letters, proof], i) => [
        { words: letters, x: i * (half + BETWEEN), width: room * 0.6 },
        { words: proof, x: i * (half + BETWEEN) + room, anchor: "end" as const },
      ]),
      width,
    ),
  );
  return {
    heading: say`Square and true when`,
    rows:
      rows.length === 0
        ? []
        : [
            paragraph(say`Outer diagonals of each frame, both alike; r is the radius of a round one.`, width),
            ...rows,
          ],
  };
}

function proofWords({ beds }: BedKind, units: Units): string | null {
  const proof = beds[0] ? proofOf(beds[0].bed) : null;
  if (!proof) return null;
  return "diagonal" in proof ? formatLength(proof.diagonal, units) : `r ${formatLength(proof.radius, units)}`;
}
