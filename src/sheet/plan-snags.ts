import type { ItemId } from "../garden/fields.ts";
import { outlineOf } from "../garden/outline.ts";
import { boundsOf } from "../geometry/ring.ts";
import { midpoint } from "../geometry/vector.ts";
import type { Grade, Snag } from "../rules/rule.ts";
import { cornerOf } from "./plan-beds.ts";
import type { Pen } from "./plan-pen.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import type { Mark } from "./types.ts";

const GRADE_SIZE = 3.2;
const CLOSE_SIZE = 2.4;
/** A bed narrower than this on paper, mm, takes the smaller mark. */
const CLOSE = 9;
const ABOVE = 3.4;
const ORDER: Readonly<Record<Grade, number>> = { must: 0, should: 1, note: 2 };

/**
 * The marks of snags to be fixed, where they are: the gravest of each bed at its corner, a gap's in the gap, any other's
 * over its place.
 */
export function snagMarks({ snags, allBeds }: SheetFacts, pen: Pen): Mark[] {
  const beds = new Map(allBeds.map(({ bed }) => [bed.id, bed]));
  const atBeds = new Map<ItemId, Grade>();
  const places: Mark[] = [];
  for (const snag of snags) {
    if (snag.grade === "note") continue;
    const bedId = snag.at.length < 2 ? snag.itemIds.find((id) => beds.has(id)) : undefined;
    if (bedId === undefined) places.push(...placeMark(snag, pen));
    else if (ORDER[snag.grade] < ORDER[atBeds.get(bedId) ?? "note"]) atBeds.set(bedId, snag.grade);
  }
  return [
    ...places,
    ...[...atBeds].flatMap(([id, grade]): Mark[] => {
      const bed = beds.get(id);
      if (!bed) return [];
      const { minX, minY, maxX, maxY } = boundsOf(outlineOf(bed));
      const small = pen.size(Math.min(maxX - minX, maxY - minY)) < CLOSE;
      return [{ draw: "grade", grade, at: cornerOf(bed, pen), size: small ? CLOSE_SIZE : GRADE_SIZE }];
    }),
  ];
}

function placeMark({ grade, at }: Snag, pen: Pen): Mark[] {
  const [first] = at;
  if (!first) return [];
  const last = at.at(-1) ?? first;
  const [x, y] = pen.onPaper(midpoint(first, last));
  return [{ draw: "grade", grade, at: at.length < 2 ? [x, y - ABOVE] : [x, y], size: GRADE_SIZE }];
}
