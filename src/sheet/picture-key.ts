import { ownName } from "../garden/name-of.ts";
import type { Grade } from "../rules/rule.ts";
import { sayCount } from "../words/say.ts";
import { sizeWords } from "./bed-words.ts";
import { text } from "./flow.ts";
import { LEAST_PT, lineHeight, shortened, textWidth } from "./lettering.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import type { Mark } from "./types.ts";

const COLUMN = 55;
const BETWEEN = 5;
const SIGN = 2.6;

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** Which bed each mark on the plan is: its name and sizes, in as many columns as there is room for. */
export function pictureKey(
  { allBeds, units }: SheetFacts,
  { x, y, width }: Place,
): { readonly marks: Mark[]; readonly height: number } {
  if (allBeds.length === 0) return { marks: [], height: 0 };
  const columns = Math.max(1, Math.floor((width + BETWEEN) / (COLUMN + BETWEEN)));
  const each = (width + BETWEEN) / columns - BETWEEN;
  const rows = Math.ceil(allBeds.length / columns);
  const step = lineHeight(LEAST_PT) + 0.6;
  const signWidth = Math.max(...allBeds.map(({ mark }) => textWidth(mark, LEAST_PT, "bold"))) + 2;
  const marks = allBeds.flatMap(({ bed, mark }, i): Mark[] => {
    const left = x + Math.floor(i / rows) * (each + BETWEEN);
    const baseline = y + ((i % rows) + 0.85) * step;
    const words = [ownName(bed), sizeWords(bed, units)].filter((part) => part !== "").join(", ");
    return [
      text(mark, left, baseline, { weight: "bold" }),
      text(shortened(words, each - signWidth, LEAST_PT), left + signWidth, baseline),
    ];
  });
  return { marks, height: rows * step };
}

const WORDS: Readonly<Record<Exclude<Grade, "note">, (count: number) => string>> = {
  must: (count) => sayCount(count, { one: "{{count}} to fix", other: "{{count}} to fix" }),
  should: (count) =>
    sayCount(count, { one: "{{count}} should be fixed", other: "{{count}} should be fixed" }),
};

/** What the signs of snags on the plan mean, and how many there are; ends at `right`. Nothing where there are none. */
export function gradeKey({ snags }: SheetFacts, right: number, y: number): Mark[] {
  const marks: Mark[] = [];
  let end = right;
  for (const grade of ["should", "must"] as const) {
    const count = snags.filter((snag) => snag.grade === grade).length;
    if (count === 0) continue;
    const words = WORDS[grade](count);
    marks.push(text(words, end, y, { pt: 9, anchor: "end" }));
    const at = end - textWidth(words, 9) - SIGN / 2 - 1;
    marks.push({ draw: "grade", grade, at: [at, y - 1.1], size: SIGN });
    end = at - SIGN / 2 - 3.5;
  }
  return marks;
}
