import { describe, expect, it } from "vitest";
import { EXAMPLES, emptyGarden, PAPERS, yearRound, yearSheet } from "../../src/index.ts";
import { LEAST_PT, textWidth } from "../../src/sheet/lettering.ts";
import { HOSTILE_NAMES, hostileGarden } from "../helpers/hostile-names.ts";
import { mixedGarden, RIVERSIDE } from "../upkeep/tasks.ts";
import { crowded } from "./year-sheet-scenes.ts";

const texts = ({ marks }: ReturnType<typeof yearSheet>) => marks.filter((mark) => mark.draw === "text");

/** Every mark within the margins of the page, no type below 8 pt. */
function expectOnPage(sheet: ReturnType<typeof yearSheet>): void {
  const { margin } = PAPERS[sheet.paper];
  const boxes = sheet.marks.flatMap((mark): [number, number, number, number][] => {
    if (mark.draw === "grade") return [];
    if (mark.draw === "line") {
      const [xs, ys] = [mark.points.map(([x]) => x), mark.points.map(([, y]) => y)];
      return [[Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]];
    }
    const width = textWidth(mark.text, mark.pt, mark.weight);
    const [x, y] = mark.at;
    const left = mark.anchor === "start" ? x : mark.anchor === "end" ? x - width : x - width / 2;
    return [[left, y - 1, left + width, y]];
  });
  const outside = boxes.filter(
    ([left, top, right, bottom]) =>
      left < margin - 0.1 ||
      top < margin - 0.1 ||
      right > sheet.widthMm - margin + 0.1 ||
      bottom > sheet.heightMm - margin + 0.1,
  );
  expect(outside).toEqual([]);
  expect(Math.min(...texts(sheet).map(({ pt }) => pt))).toBeGreaterThanOrEqual(LEAST_PT);
}

const CROWDED = crowded(1);

describe("the year's page", () => {
  it.each(
    EXAMPLES.flatMap(({ garden }) =>
      (["letter", "a4"] as const).map((paper) => ({ garden, paper, name: garden.name })),
    ),
  )("of $name on $paper tells every task, within its margins", ({ garden, paper }) => {
    const sheet = yearSheet(garden, paper, { date: "25 November 2026" });
    expectOnPage(sheet);
    const lines = sheet.outline.flatMap((block) => block.lines);
    for (const { title } of yearRound(garden)) {
      expect(lines.filter((line) => line.includes(title)).length, title).toBeGreaterThan(0);
    }
    expect(texts(sheet).some(({ text }) => text.startsWith("25 November 2026"))).toBe(true);
  });

  it("tells quantities, days, and in which years", () => {
    const lines = yearSheet(mixedGarden(RIVERSIDE), "a3").outline.flatMap((block) => block.lines);
    const line = (start: RegExp) => lines.find((one) => start.test(one)) ?? "";
    expect(line(/Top up the beds/)).toMatch(/^24 Mar–13 Apr, .*all 4 beds; .* of compost: 2½ in on/);
    expect(line(/Try the new fill/)).toContain("(year 1)");
    expect(line(/Renew boards of Douglas-fir/)).toContain("(year 7)");
    expect(line(/Asparagus: pick/)).toContain("(from year 3)");
  });

  it("names the years of the calendar once the first is known", () => {
    const garden = mixedGarden(RIVERSIDE);
    const dated = { ...garden, upkeep: { ...garden.upkeep, firstYear: 2027 } };
    const lines = yearSheet(dated, "a3").outline.flatMap((block) => block.lines);
    expect(lines.find((one) => one.includes("Renew boards of Douglas-fir"))).toContain("(2033)");
  });

  it("sums up the years as the ledger does", () => {
    const sheet = yearSheet(mixedGarden(RIVERSIDE), "a3", { whole: { total: 1000 } });
    const money = sheet.outline.find(({ heading }) => heading === "What 10 years cost");
    expect(money?.lines).toHaveLength(11);
    expect(money?.lines[0]).toMatch(/^Year 1, \$1,0\d\d$/);
  });

  it("of far too much says what it leaves out, never in smaller type", () => {
    const sheet = yearSheet(crowded(6), "letter");
    expectOnPage(sheet);
    expect(sheet.leftOut.length).toBeGreaterThan(0);
    const said = texts(sheet).map(({ text }) => text);
    expect(said).toContain("Not on this page");
  });

  it.each([
    ["letter", "tabloid"],
    ["a4", "a3"],
  ] as const)("of a garden too full for %s names %s, on which every task has its place", (paper, larger) => {
    const sheet = yearSheet(CROWDED, paper);
    expectOnPage(sheet);
    expect(sheet.leftOut.join(" ")).toContain("Year round");
    expect(sheet.larger).toBe(larger);
    const lines = yearSheet(CROWDED, larger).outline.flatMap((block) => block.lines);
    for (const { title } of yearRound(CROWDED))
      expect(
        lines.some((line) => line.includes(title)),
        title,
      ).toBe(true);
  });

  it("of a garden without beds is an empty page with its name", () => {
    const sheet = yearSheet({ ...emptyGarden("metric"), name: "Bare" }, "a4");
    expectOnPage(sheet);
    expect(texts(sheet)[0]?.text).toBe("Bare: year round");
  });

  it.each(HOSTILE_NAMES.map((_, shift) => shift).filter((shift) => shift % 4 === 0))(
    "stays on its page whatever things are called: %s",
    (shift) => {
      expectOnPage(yearSheet(hostileGarden("us", shift), "letter"));
    },
  );
});
