import type { ItemId } from "../../garden/fields.ts";
import { nameOf } from "../../garden/name-of.ts";
import type { Grade, Snag } from "../../rules/rule.ts";
import { say, sayCount, word } from "../../words/say.ts";
import { type Block, paragraph, type Row } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

const MARK_SIZE = 2.7;
const HANG = 4.2;
const CAP_MIDDLE = 1.55;

/**
 * Snags that are not cleared: never hidden. Many of one rule share a row that names all they are about; only those
 * worth knowing may be counted instead of listed.
 */
export function stillOpenBlock({ snags, allBeds, garden }: SheetFacts, width: number): Block {
  if (snags.length === 0) {
    return { heading: say`Still open`, rows: [paragraph(say`Nothing: every rule holds.`, width)] };
  }
  const marks = new Map(allBeds.map(({ bed, mark }) => [bed.id, mark]));
  const nameIn = (id: ItemId) => {
    const item = garden.items.find((one) => one.id === id);
    return marks.get(id) ?? (item ? nameOf(item) : "");
  };
  const groups = alike(snags);
  return {
    heading: say`Still open`,
    rows: groups.map((group) => snagRow(group, nameIn, width)),
    spare: {
      from: groups.filter(({ grade }) => grade !== "note").length,
      more: (left) =>
        sayCount(left, {
          one: "{{count}} more worth knowing stands in the ledger.",
          other: "{{count}} more worth knowing stand in the ledger.",
        }),
    },
  };
}

/** From so many of one rule and grade on, they share a row. */
const MANY = 3;

interface Group {
  readonly grade: Grade;
  readonly first: Snag;
  readonly others: readonly Snag[];
}

function alike(snags: readonly Snag[]): Group[] {
  const byRule = new Map<string, Snag[]>();
  for (const snag of snags) {
    const key = `${snag.grade} ${snag.rule}`;
    byRule.set(key, [...(byRule.get(key) ?? []), snag]);
  }
  return [...byRule.values()].flatMap((group): Group[] => {
    const [first, ...others] = group;
    if (!first) return [];
    if (group.length < MANY) return group.map((snag) => ({ grade: snag.grade, first: snag, others: [] }));
    return [{ grade: first.grade, first, others }];
  });
}

const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  must: word("must fix"),
  should: word("should fix"),
  note: word("worth knowing"),
};

function snagRow({ grade, first, others }: Group, nameIn: (id: ItemId) => string, width: number): Row {
  // What all of them are about is said by the first one's title.
  const shared = new Set(first.itemIds.filter((id) => others.every(({ itemIds }) => itemIds.includes(id))));
  const alsoAbout = others.map(({ itemIds }) =>
    itemIds
      .filter((id) => !shared.has(id))
      .map(nameIn)
      .join(" and "),
  );
  const also = alsoAbout.filter(Boolean);
  const title = also.length > 0 ? say`${first.title}; the same at ${also.join(", ")}` : first.title;
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
