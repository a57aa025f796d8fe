import { describe, expect, it } from "vitest";
import {
  applyOps,
  buildSheet,
  EXAMPLES,
  formatMoney,
  type Garden,
  type ItemOf,
  type Mark,
  takeoff,
} from "../../src/index.ts";

const start = EXAMPLES[0].garden;
const named = (name: string): ItemOf<"bed"> => {
  const bed = start.items.find((item): item is ItemOf<"bed"> => item.kind === "bed" && item.name === name);
  if (!bed) throw new Error(`the example has no bed called ${name}`);
  return bed;
};
const [salads, roots, beans, squash] = ["Salads", "Roots", "Beans", "Squash"].map(named) as [
  ItemOf<"bed">,
  ItemOf<"bed">,
  ItemOf<"bed">,
  ItemOf<"bed">,
];

/** Salads stand whole, one course of Roots does; Beans and Squash come in a second stage. */
const garden: Garden = applyOps(start, [
  { op: "set", id: salads.id, changes: { already: { courses: 2, soilDepth: 254 } } },
  { op: "set", id: roots.id, changes: { already: { courses: 1, soilDepth: 120 } } },
  { op: "set", id: beans.id, changes: { stage: 2 } },
  { op: "set", id: squash.id, changes: { stage: 2 } },
]);

const linesOf = (sheet: ReturnType<typeof buildSheet>, heading: string): readonly string[] =>
  sheet.outline.find((block) => block.heading === heading)?.lines ?? [];
const wordsOf = (marks: readonly Mark[]) =>
  marks.flatMap((mark) => (mark.draw === "text" ? [mark.text] : []));

describe("a garden of which something stands already", () => {
  const sheet = buildSheet(garden, "letter");
  const beds = linesOf(sheet, "Beds, and fill to order");

  it("says of each bed what stands, and sets out only what is still to be built", () => {
    expect(beds.find((line) => line.includes("Salads"))).toContain("stands");
    expect(beds.find((line) => line.includes("Roots"))).toContain("1 course stands, 2 to add");
    const [, mark = ""] = /^(\w+) Salads/.exec(beds.find((line) => line.includes("Salads")) ?? "") ?? [];
    expect(mark).not.toBe("");
    expect(linesOf(sheet, "Setting out").some((line) => line.startsWith(`${mark},`))).toBe(false);
    expect(wordsOf(sheet.marks)).toContain("stands");
  });

  it("draws it lighter than what is built", () => {
    // A rectangle's outside and inside are the last two rings of four corners before the word or mark that stands in it.
    const heaviestBefore = (words: string) => {
      const at = sheet.marks.findIndex((mark) => mark.draw === "text" && mark.text === words);
      const rings = sheet.marks
        .slice(0, at)
        .flatMap((mark) =>
          mark.draw === "line" && mark.closed && mark.points.length === 4 ? [mark.pen] : [],
        );
      return Math.max(...rings.slice(-2));
    };
    const [, built = ""] = /^(\w+) Squash/.exec(beds.find((line) => line.includes("Squash")) ?? "") ?? [];
    expect(heaviestBefore("stands")).toBe(0.1);
    expect(heaviestBefore(built)).toBe(0.35);
  });

  it("tells the stages in the order of work, and how a bed is raised", () => {
    const order = linesOf(sheet, "Order of work").join(" ");
    expect(order).toMatch(/Stage 1: .*; stage 2: /);
    expect(order).toMatch(/Raise \w+: new posts in the corners/);
  });
});

describe("the sheet of one stage", () => {
  const second = buildSheet(garden, "a4", { stage: 2 });

  it("is about that stage's beds alone, with its own total", () => {
    const beds = linesOf(second, "Beds, and fill to order").join(" ");
    expect(beds).toContain("Beans");
    expect(beds).toContain("Squash");
    expect(beds).not.toContain("Roots");
    const { total, currency } = takeoff(garden, { stage: 2 });
    expect(total).toBeGreaterThan(0);
    expect(total).toBeLessThan(takeoff(garden).total);
    expect(wordsOf(second.marks)).toContain(formatMoney(total, currency));
    expect(wordsOf(second.marks).some((words) => words.startsWith("stage 2 of 2"))).toBe(true);
  });

  it("draws earlier beds as standing, later ones dashed, and says what stands", () => {
    expect(linesOf(second, "Order of work")[0]).toMatch(/stand from earlier stages/);
    const first = buildSheet(garden, "a4", { stage: 1 });
    expect(wordsOf(first.marks)).toContain("later");
    expect(
      first.marks.some((mark) => mark.draw === "line" && mark.closed && mark.pen === 0.1 && mark.dash),
    ).toBe(true);
  });

  it("draws a path of a later stage dashed and without its surface", () => {
    const path = start.items.find(({ kind }) => kind === "path");
    if (!path) throw new Error("the example has no path");
    const later = applyOps(garden, [{ op: "set", id: path.id, changes: { stage: 2 } }]);
    const barkOn = (stage: number) =>
      buildSheet(later, "a4", { stage }).marks.filter((mark) => mark.draw === "line" && mark.fill === "bark");
    expect(barkOn(1)).toEqual([]);
    expect(barkOn(2).length).toBeGreaterThan(0);
  });

  it("keeps each bed's mark from sheet to sheet", () => {
    const marksOf = (stage: number | "all") =>
      linesOf(buildSheet(garden, "a4", { stage }), "Beds, and fill to order").flatMap((line) => {
        const [, mark, name] = /^(\w+) (Beans|Squash)/.exec(line) ?? [];
        return mark && name ? [`${mark} ${name}`] : [];
      });
    expect(marksOf(2)).toHaveLength(2);
    expect(marksOf("all")).toEqual(marksOf(2));
  });
});
