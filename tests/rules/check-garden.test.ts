import { describe, expect, it } from "vitest";
import { itemId } from "../../src/index.ts";
import { checkGarden } from "../../src/rules/check-garden.ts";
import { computeFacts, factsAbout } from "../../src/rules/compute-facts.ts";
import { defineRule, type Finding, type Grade } from "../../src/rules/rule.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";

const garden = gardenOf(bed("first"), bed("second", { x: 3000 }), bed("third", { x: 6000 }));

const finding = (id: string, grade?: Grade): Finding => ({
  ...(grade && { grade }),
  itemIds: [itemId(id)],
  at: [[7, 9]],
  measured: 3,
  limit: 5,
  unit: "mm",
  title: `About ${id}`,
  detail: "Too little.",
  waysOut: [],
});

const ruleFinding = (id: string, grade: Grade, findings: readonly Finding[]) =>
  defineRule({
    id,
    grade,
    promise: `Nothing is wrong with ${id}.`,
    why: "It matters.",
    source: { how: "practice", text: "for this test" },
    needs: ["items"],
    check: () => [...findings],
  });

describe("checkGarden", () => {
  it("tells must before should before note, then in the order of rules, then of things", () => {
    const rules = [
      ruleFinding("late-note", "note", [finding("first")]),
      ruleFinding("late-must", "must", [finding("third"), finding("first")]),
      ruleFinding("later-must", "must", [finding("second")]),
      ruleFinding("mixed", "should", [finding("second"), finding("third", "must")]),
    ];
    expect(checkGarden(garden, {}, rules).map(({ key }) => key)).toEqual([
      "late-must:first",
      "late-must:third",
      "later-must:second",
      "mixed:third",
      "mixed:second",
      "late-note:first",
    ]);
  });

  it("gives each snag its rule's reason and source", () => {
    const [snag] = checkGarden(garden, {}, [ruleFinding("some-rule", "should", [finding("second")])]);
    expect(snag).toMatchObject({ rule: "some-rule", grade: "should", why: "It matters.", measured: 3 });
    expect(snag?.source.text).toBe("for this test");
  });

  it("says that a rule could not be checked where it breaks down, and checks the others", () => {
    const broken = defineRule({
      ...ruleFinding("broken-rule", "must", []),
      check: () => {
        throw new Error("no such board");
      },
    });
    const snags = checkGarden(garden, {}, [broken, ruleFinding("sound-rule", "must", [finding("first")])]);
    expect(snags.map(({ key, grade }) => [key, grade])).toEqual([
      ["sound-rule:first", "must"],
      ["broken-rule:", "note"],
    ]);
    expect(snags[1]?.detail).toContain("no such board");
  });

  it("tells two snags of one rule about the same thing apart", () => {
    const twice = ruleFinding("twice", "must", [finding("first"), finding("first")]);
    expect(checkGarden(garden, {}, [twice]).map(({ key }) => key)).toEqual(["twice:first", "twice:first:2"]);
  });

  it("finds the same twice", () => {
    expect(checkGarden(garden)).toEqual(checkGarden(garden));
  });
});

describe("facts", () => {
  it("hand a rule what it has declared and nothing else", () => {
    expect(Object.keys(computeFacts(garden, ["beds", "units"]))).toEqual(["beds", "units"]);
  });

  it("are worked out once", () => {
    const facts = factsAbout(garden);
    expect(facts.beds).toBe(facts.beds);
    expect(facts.beds.map(({ id }) => id)).toEqual(["first", "second", "third"]);
  });
});
