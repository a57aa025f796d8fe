import {
  type Access,
  type Depth,
  type Garden,
  type Grade,
  isLeftOut,
  type Snag,
  type Survey,
} from "../../src/index.ts";

const SERIOUSNESS: Readonly<Record<Grade, number>> = { must: 0, should: 1, note: 2 };

/**
 * Fills in what a glance or a look leaves out with what is known from a moment ago: routes, what slow rules and those
 * about the sun say, and ways out of snags that stand as they stood. Nothing blinks out and in again while a bed is dragged.
 *
 * @param last the survey before, which may be of another version of the garden; null if there is none
 * @param depth how closely this survey looked
 */
export function carriedOver(
  survey: Survey,
  last: Survey | null,
  { items }: Pick<Garden, "items">,
  depth: Depth,
): Survey {
  if (!last) return survey;
  const there = new Set(items.map(({ id }) => id));
  const before = new Map(last.snags.map((snag) => [snag.key, snag]));
  const slow = last.snags.filter(
    ({ rule, itemIds }) => isLeftOut(rule, depth) && itemIds.every((id) => there.has(id)),
  );
  const snags = [...survey.snags, ...slow].map((snag) => withWaysOut(snag, before.get(snag.key)));
  return {
    takeoff: survey.takeoff,
    drip: survey.drip ?? last.drip,
    access: depth === "glance" ? withRoutes(survey.access, last.access) : survey.access,
    // Sorting is stable: within a grade the rules keep their order.
    snags: snags.toSorted((a, b) => SERIOUSNESS[a.grade] - SERIOUSNESS[b.grade]),
  };
}

/** A way out is an exact remedy: it holds only while the snag measures what it measured. */
function withWaysOut(snag: Snag, before: Snag | undefined): Snag {
  if (snag.waysOutKnown || !before?.waysOutKnown || before.measured !== snag.measured) return snag;
  return { ...snag, waysOut: before.waysOut, waysOutKnown: true };
}

function withRoutes(now: Access, before: Access): Access {
  const known = new Map(before.beds.map((bed) => [bed.id, bed]));
  return {
    ...now,
    freeGround: before.freeGround,
    beds: now.beds.map((bed) => {
      const last = known.get(bed.id);
      return last ? { ...bed, kitchen: last.kitchen, hose: last.hose } : bed;
    }),
  };
}
