import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { citedBy } from "../garden/limits.ts";
import { boundsOf } from "../geometry/ring.ts";
import { say } from "../words/say.ts";
import { factsAbout, only } from "./compute-facts.ts";
import type { Facts } from "./facts.ts";
import { RULES } from "./index.ts";
import type { Finding, Grade, Rule, Snag } from "./rule.ts";

const SERIOUSNESS: Readonly<Record<Grade, number>> = { must: 0, should: 1, note: 2 };

/**
 * How closely to look. A glance is for every frame of a drag: it leaves out slow rules, those about the sun, and the ways
 * out. A look has the slow rules, but neither the sun nor ways out. A reading, for what is printed, has every rule and no
 * ways out.
 */
export type Depth = "glance" | "look" | "reading" | "whole";

/** Whether a rule is one that a check to some depth leaves out. */
export const leavesOut = (depth: Depth, { slow, needs }: Pick<Rule, "slow" | "needs">): boolean =>
  (depth === "glance" && slow === true) ||
  ((depth === "glance" || depth === "look") && needs.includes("sun"));

/**
 * Holds a garden to every rule.
 *
 * A rule that breaks down takes no other rule with it: what it would have said is replaced by a note that this could
 * not be checked, so that silence never passes for a clean plan.
 *
 * @param known facts that have been worked out already about this very garden (its access, its takeoff), so that they
 *   are not worked out twice
 * @param rules all of them unless told otherwise
 * @param depth the whole unless told otherwise
 * @returns most serious first, then in the order of the rules, then in the order of the things they are about
 */
export function checkGarden(
  garden: Garden,
  known: Partial<Pick<Facts, "access" | "takeoff">> = {},
  rules: readonly Rule[] = RULES,
  depth: Depth = "whole",
): Snag[] {
  const facts = factsAbout(garden, known);
  const inTime = rules.filter((rule) => !leavesOut(depth, rule));
  const snags = inTime.flatMap((rule) => snagsOf(rule, facts, depth === "whole"));
  return inOrder(snags, garden, rules);
}

function snagsOf(rule: Rule, facts: Facts, withWaysOut: boolean): Snag[] {
  try {
    return withOwnKeys(
      rule
        .check(only(facts, rule.needs))
        .map((finding) => snagFrom(rule, finding, facts.garden, withWaysOut)),
    );
  } catch (error) {
    return [snagFrom(rule, notChecked(rule, facts.garden, error), facts.garden, withWaysOut)];
  }
}

// Field by field: spreading a finding would set its search for ways out going.
const snagFrom = (rule: Rule, finding: Finding, garden: Garden, withWaysOut: boolean): Snag => ({
  key: `${rule.id}:${finding.itemIds.join("+")}`,
  rule: rule.id,
  grade: finding.grade ?? rule.grade,
  itemIds: finding.itemIds,
  at: finding.at,
  measured: finding.measured,
  limit: finding.limit,
  unit: finding.unit,
  title: finding.title,
  detail: finding.detail,
  why: rule.why,
  source: citedBy(rule.source, garden),
  waysOut: withWaysOut ? finding.waysOut : [],
  waysOutKnown: withWaysOut,
});

/** A rule may find two things wrong with the same things: the second is told apart by its number. */
function withOwnKeys(snags: readonly Snag[]): Snag[] {
  const seen = new Map<string, number>();
  return snags.map((snag) => {
    const nth = (seen.get(snag.key) ?? 0) + 1;
    seen.set(snag.key, nth);
    return nth === 1 ? snag : { ...snag, key: `${snag.key}:${nth}` };
  });
}

function notChecked(rule: Rule, { yard }: Garden, error: unknown): Finding {
  const { minX, minY, maxX, maxY } = boundsOf(yard);
  return {
    grade: "note",
    itemIds: [],
    at: [[(minX + maxX) / 2, (minY + maxY) / 2]],
    measured: 0,
    limit: 1,
    unit: "count",
    title: say`Could not be checked: ${rule.id}`,
    detail: say`Look for yourself whether this holds: ${rule.promise} (${error instanceof Error ? error.message : String(error)})`,
    waysOut: [],
  };
}

function inOrder(snags: readonly Snag[], { items }: Garden, rules: readonly Rule[]): Snag[] {
  const itemOrder = new Map<ItemId, number>(items.map(({ id }, index) => [id, index]));
  const ruleOrder = new Map(rules.map(({ id }, index) => [id, index]));
  const place = ({ itemIds: [first] }: Snag) => (first === undefined ? -1 : (itemOrder.get(first) ?? -1));
  // Sorting is stable: what a rule finds about the same thing keeps the rule's own order.
  return snags.toSorted(
    (a, b) =>
      SERIOUSNESS[a.grade] - SERIOUSNESS[b.grade] ||
      (ruleOrder.get(a.rule) ?? 0) - (ruleOrder.get(b.rule) ?? 0) ||
      place(a) - place(b),
  );
}
