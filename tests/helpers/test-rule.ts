import { describe, expect, it } from "vitest";
import { applyOps, type Garden } from "../../src/index.ts";
import { computeFacts } from "../../src/rules/compute-facts.ts";
import type { Facts } from "../../src/rules/facts.ts";
import type { Finding, Grade, Rule } from "../../src/rules/rule.ts";

export interface Flagged {
  readonly garden: Garden;
  /** What each snag measured, in the rule's own order. */
  readonly measured: readonly number[];
  /** How far off that may be, for figures that a source has rounded; a thousandth of the unit if not given. */
  readonly within?: number;
  /** How many ways out each snag offers, or their labels; one if not given. */
  readonly waysOut?: number | readonly string[];
  /** Grade of each snag where it is not the rule's own. */
  readonly grade?: Grade;
  /** The first snag's headline. */
  readonly title?: string;
}

export interface Cases {
  readonly passes: Readonly<Record<string, Garden>>;
  readonly flags: Readonly<Record<string, Flagged>>;
}

/**
 * Runs a rule over both tables. Every way out must clear its snag and make no other that must be fixed by the same
 * rule; every snag must be fit to show; the garden given stays untouched.
 */
export function testRule<K extends keyof Facts>(rule: Rule<K>, { passes, flags }: Cases): void {
  const snagsIn = (garden: Garden) => rule.check(computeFacts(garden, rule.needs));
  const gradeOf = (finding: Finding) => finding.grade ?? rule.grade;
  const aboutWhat = ({ itemIds }: Finding) => itemIds.join();

  describe(rule.id, () => {
    it.each(Object.entries(passes))("passes %s", (_name, garden) => {
      expect(snagsIn(frozen(garden))).toEqual([]);
    });

    it.each(Object.entries(flags))("flags %s", (_name, flagged) => {
      const { garden, measured, within = 0.001, waysOut = 1, grade, title } = flagged;
      // A frozen garden throws on any attempt to change it.
      const snags = snagsIn(frozen(garden));
      expect(snags.map((snag) => snag.measured)).toEqual(measured.map((value) => near(value, within)));
      expect(snags.map(gradeOf)).toEqual(measured.map(() => grade ?? rule.grade));
      if (title !== undefined) expect(snags[0]?.title).toBe(title);

      const mustsBefore = new Set(snags.filter((snag) => gradeOf(snag) === "must").map(aboutWhat));
      for (const snag of snags) {
        expectFitToShow(snag, garden);
        if (typeof waysOut === "number") expect(snag.waysOut.map(({ label }) => label)).toHaveLength(waysOut);
        else expect(snag.waysOut.map(({ label }) => label)).toEqual(waysOut);

        for (const { label, ops } of snag.waysOut) {
          const left = snagsIn(applyOps(garden, ops));
          expect(left.map(aboutWhat), `"${label}" clears it`).not.toContain(aboutWhat(snag));
          const musts = left.filter((other) => gradeOf(other) === "must").map(aboutWhat);
          expect(
            musts.filter((must) => !mustsBefore.has(must)),
            `"${label}" makes no other`,
          ).toEqual([]);
        }
      }
    });
  });
}

/** Shown as the value itself where a test fails. */
const near = (value: number, within: number) => ({
  asymmetricMatch: (other: unknown) => typeof other === "number" && Math.abs(other - value) <= within,
  toString: () => `${value} ± ${within}`,
  toAsymmetricMatcher: () => `${value} ± ${within}`,
});

function expectFitToShow(snag: Finding, { items }: Garden) {
  const ids = new Set(items.map(({ id }) => id));
  expect(
    snag.itemIds.filter((id) => !ids.has(id)),
    "things that are there",
  ).toEqual([]);
  expect(snag.at.length, "a place to look at").toBeGreaterThan(0);
  expect(snag.at.flat().every(Number.isFinite), "places on the plan").toBe(true);
  expect(Number.isFinite(snag.measured) && Number.isFinite(snag.limit), "figures").toBe(true);
  expect(snag.title, "a headline").toMatch(/\S.*[^.]$/);
  expect(snag.title.length, "a headline that fits").toBeLessThanOrEqual(90);
  expect(snag.detail, "a sentence").toMatch(/\S\.$/);
  for (const { label } of snag.waysOut) expect(label, "a way out's label").toMatch(/^[A-Z].*[^.]$/);
}

function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
