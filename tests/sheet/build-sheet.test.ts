import { describe, expect, it } from "vitest";
import {
  applyOps,
  buildSheet,
  EXAMPLES,
  formatMoney,
  freshId,
  type Garden,
  type Mark,
  newItem,
  type PaperId,
  survey,
} from "../../src/index.ts";
import { POINT, textWidth } from "../../src/sheet/lettering.ts";
import { PAPERS } from "../../src/sheet/papers.ts";
import { scalesFor } from "../../src/sheet/scales.ts";

const PAPER_IDS: readonly PaperId[] = ["letter", "a4"];
const cases = EXAMPLES.flatMap(({ id, garden }) => PAPER_IDS.map((paper) => [id, paper, garden] as const));

const wordsOf = (marks: readonly Mark[]) =>
  marks.flatMap((mark) => (mark.draw === "text" ? [mark.text] : []));

/** Rows of beds of so many different builds, a garden grown far beyond the examples. */
function manyBeds(count: number, kinds: number): Garden {
  const start = EXAMPLES[0].garden;
  const beds = start.items.filter(({ kind }) => kind === "bed");
  let garden = applyOps(
    {
      ...start,
      yard: [
        [0, 0],
        [30_000, 0],
        [30_000, 24_000],
        [0, 24_000],
      ],
    },
    beds.map(({ id }) => ({ op: "remove" as const, id })),
  );
  for (let i = 0; i < count; i++) {
    const id = freshId(garden, "bed");
    const at = [3000 + 3600 * (i % 8), 9000 + 2400 * Math.floor(i / 8)] as const;
    const made = newItem("bed", { id, at, units: "us" });
    garden = applyOps(garden, [
      { op: "add", item: made },
      {
        op: "set",
        id,
        changes: { shape: { type: "rectangle", width: 2438.4 - 76.2 * (i % kinds), length: 1219.2 } },
      },
    ]);
  }
  return garden;
}

describe.each(cases)("the build sheet of %s on %s", (_id, paper, garden) => {
  const sheet = buildSheet(garden, paper, { date: "26 April 2027" });
  const words = wordsOf(sheet.marks);

  it("leaves nothing out", () => {
    expect(sheet.leftOut).toEqual([]);
  });

  it("keeps every word on the paper, in type of at least 8 pt", () => {
    const { width, height } = PAPERS[paper];
    for (const mark of sheet.marks) {
      if (mark.draw !== "text") continue;
      expect(mark.pt).toBeGreaterThanOrEqual(8);
      if (mark.turn) continue;
      const long = textWidth(mark.text, mark.pt, mark.weight);
      const left = mark.at[0] - { start: 0, middle: long / 2, end: long }[mark.anchor];
      expect(left, mark.text).toBeGreaterThanOrEqual(0);
      expect(left + long, mark.text).toBeLessThanOrEqual(width);
      expect(mark.at[1] - mark.pt * POINT, mark.text).toBeGreaterThanOrEqual(0);
      expect(mark.at[1], mark.text).toBeLessThanOrEqual(height);
    }
  });

  it("sets no words of its lists over one another, and draws nothing outside the margins", () => {
    const boxes = sheet.marks.flatMap((mark) => {
      if (mark.draw !== "text" || mark.halo || mark.turn) return [];
      const long = textWidth(mark.text, mark.pt, mark.weight);
      const left = mark.at[0] - { start: 0, middle: long / 2, end: long }[mark.anchor];
      const tall = mark.pt * POINT * 0.7;
      return [{ words: mark.text, left, right: left + long, top: mark.at[1] - tall, bottom: mark.at[1] }];
    });
    for (const [i, one] of boxes.entries()) {
      for (const other of boxes.slice(i + 1)) {
        const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
        const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
        expect(Math.min(across, down), `"${one.words}" on "${other.words}"`).toBeLessThan(0.3);
      }
    }
    const { width, height } = PAPERS[paper];
    for (const mark of sheet.marks) {
      if (mark.draw !== "line") continue;
      for (const [x, y] of mark.points) {
        expect(Math.min(x, width - x, y, height - y)).toBeGreaterThan(5);
      }
    }
  });

  it("draws the yard true to the scale it states, and that is a standard one", () => {
    const standard = scalesFor(garden.units).find(({ text }) => text === sheet.scaleText);
    expect(1 / sheet.scale).toBe(standard?.ratio);
    const wide = (points: readonly (readonly [number, number])[]) => {
      const xs = points.map(([x]) => x);
      return Math.max(...xs) - Math.min(...xs);
    };
    const outline = sheet.marks.find(
      (mark) =>
        mark.draw === "line" &&
        mark.closed &&
        mark.points.length === garden.yard.length &&
        mark.pen === 0.5 &&
        !mark.fill,
    );
    if (outline?.draw !== "line") throw new Error("the sheet has no yard");
    expect(wide(outline.points) / sheet.scale).toBeCloseTo(wide(garden.yard), 6);
  });

  it("says the total, the day, and every snag that must or should be fixed", () => {
    const { takeoff, snags } = survey(garden);
    const all = words.join(" ");
    expect(words).toContain(formatMoney(takeoff.total, takeoff.currency));
    expect(all).toContain("26 April 2027");
    for (const { title, grade } of snags) {
      if (grade !== "note") expect(all, title).toContain(title.split(" ").slice(0, 3).join(" "));
    }
    for (const heading of ["Setting out", "Order of work", "Take care", "To buy"])
      expect(all).toContain(heading);
  });

  it("marks every bed once on the plan", () => {
    const beds = garden.items.filter(({ kind }) => kind === "bed").length;
    const marks = words.filter((word) => /^[A-HJ-NP-Z]\d*$/.test(word) && word !== "N");
    expect(new Set(marks).size).toBeGreaterThanOrEqual(beds);
  });
});

describe("a garden larger than the examples", () => {
  const large = manyBeds(24, 8);

  it.each(PAPER_IDS)("of 24 beds in 8 kinds fits one page whole: %s", (paper) => {
    const { leftOut, larger, marks } = buildSheet(large, paper);
    expect(leftOut).toEqual([]);
    expect(larger).toBeNull();
    // Every bed is set out: its mark stands on the plan and at the head of a row of the list.
    const marked = wordsOf(marks).filter((word) => /^[A-H]\d( [ab])?$/.test(word));
    expect(marked.length).toBeGreaterThanOrEqual(2 * 24);
    for (const mark of marks) if (mark.draw === "text") expect(mark.pt).toBeGreaterThanOrEqual(8);
  });

  it.each([
    ["letter", "tabloid", "Tabloid"],
    ["a4", "a3", "A3"],
  ] as const)(
    "of 64 beds in 31 kinds says that %s is too small, and which paper holds it",
    (paper, larger, name) => {
      const garden = manyBeds(64, 31);
      const sheet = buildSheet(garden, paper);
      expect(sheet.leftOut.length).toBeGreaterThan(1);
      expect(sheet.leftOut.at(-1)).toBe(`${name} paper holds all of it.`);
      expect(sheet.larger).toBe(larger);
      expect(wordsOf(sheet.marks).join(" ")).toContain("Not on this page");
      expect(buildSheet(garden, larger).leftOut).toEqual([]);
    },
  );

  it("far beyond any page says what it left out and never hides what must be fixed", () => {
    const garden = manyBeds(190, 31);
    const known = survey(garden);
    const sheet = buildSheet(garden, "tabloid", { known });
    expect(sheet.leftOut.at(-1)).toMatch(/No single page holds all of it/);
    expect(sheet.larger).toBeNull();
    const all = wordsOf(sheet.marks).join(" ");
    expect(all).toContain("Not on this page");
    // Snags of one rule share a row that begins with the first of them.
    const musts = known.snags.filter(({ grade }) => grade === "must");
    const firsts = new Map(musts.toReversed().map((snag) => [snag.rule, snag.title]));
    expect(firsts.size).toBeGreaterThan(2);
    for (const title of firsts.values()) expect(all).toContain(title.split(" ").slice(0, 3).join(" "));
  }, 30_000);

  it("draws its plan no larger than the next standard scale would allow", () => {
    const few = buildSheet(manyBeds(4, 1), "letter");
    const many = buildSheet(large, "letter");
    expect(few.scale).toBeGreaterThanOrEqual(many.scale);
  });
});

it("has a page for a yard with nothing in it", () => {
  const { garden } = EXAMPLES[0];
  const bare = { ...garden, items: [] };
  const sheet = buildSheet(bare, "a4");
  expect(wordsOf(sheet.marks)).toContain("P1");
  expect(sheet.leftOut).toEqual([]);
});
