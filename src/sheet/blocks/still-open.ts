import type { Grade, Snag } from "../../rules/rule.ts";
import { type Block, paragraph, type Row } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

const MARK_SIZE = 2.7;
const HANG = 4.2;
const CAP_MIDDLE = 1.55;

/** Snags that are not cleared: never hidden. Only those worth knowing may be counted instead of listed. */
export function stillOpenBlock({ snags }: SheetFacts, width: number): Block {
  if (snags.length === 0) {
    return { heading: "Still open", rows: [paragraph("Nothing: every rule holds.", width)] };
  }
  const serious = snags.filter(({ grade }) => grade !== "note").length;
  return {
    heading: "Still open",
    rows: snags.map((snag) => snagRow(snag, width)),
    spare: {
      from: serious,
      more: (left) => `${left} more worth knowing ${left === 1 ? "stands" : "stand"} in the ledger.`,
    },
  };
}

const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  must: "must fix",
  should: "should fix",
  note: "worth knowing",
};

function snagRow({ grade, title }: Snag, width: number): Row {
  const words = paragraph(title, width - HANG);
  return {
    height: words.height,
    words: `${GRADE_WORDS[grade]}: ${title}`,
    draw: (x, y) => [
      { draw: "grade", grade, at: [x + MARK_SIZE / 2, y + CAP_MIDDLE], size: MARK_SIZE },
      ...words.draw(x + HANG, y),
    ],
  };
}
