import type { Page } from "@playwright/test";
import { EXAMPLES, FOOT, INCH } from "../../src/index.ts";
import { expect, test } from "./fixtures.ts";
import { type PrintedPage, printedPages } from "./printed-page.ts";
import { expectTrueToScale } from "./true-to-scale.ts";

const POINT = INCH / 72;

test("a first visit finds three to fix in the worked example, and reads why", async ({ planner, page }) => {
  await expect(page.getByText("Drag the beds until nothing is left to fix.")).toBeVisible();
  expect(await planner.left()).toBe(3);
  const must = page.locator('[data-snag][data-grade="must"]');
  await expect(must).toHaveCount(3);
  await expect(must.getByRole("heading")).toHaveText([
    /Beans.*out of reach/,
    /Roots to Squash.*narrow/,
    /Peppers.*shallow/,
  ]);

  await must.getByRole("button", { name: /Roots to Squash/ }).click();
  await expect(planner.thing("Roots")).toHaveAttribute("aria-pressed", "true");
  await expect(planner.thing("Squash")).toHaveAttribute("aria-pressed", "true");
  await expect(must.nth(1)).toContainText("Between Roots and Squash are 20 in; 24 in are needed to kneel.");
  await expect(must.nth(1)).toContainText("UF/IFAS Extension ENH1211");
});

test("beds are dragged until nothing is left to fix, and the sheet prints on one page", async ({
  planner,
  page,
}) => {
  const started = await planner.total();

  await planner.drag("Squash", [6 * INCH, 0]);
  await expect(planner.summary).toContainText("2 to fix");
  await planner.drag("Beans", [26 * INCH, 0]);
  await expect(planner.summary).toContainText("1 to fix");
  // The plan lies still under the hand while the last snag clears.
  const before = await planner.board.boundingBox();
  await planner.drag("Peppers", [2 * FOOT, 15.5 * FOOT]);
  await expect(planner.summary).toContainText("Nothing to fix");
  await expect(page.getByText("Nothing is left to fix: press Build sheet.")).toBeVisible();
  expect(await planner.board.boundingBox()).toEqual(before);
  await expect(page.locator('[data-snag][data-grade="must"]')).toHaveCount(0);
  expect(await planner.total(), "moving beds buys nothing").toBe(started);

  await planner.turnTo("Takeoff");
  const parts = await totalOfParts(page);
  expect(parts).toBeGreaterThan(0);

  const sheet = await planner.openSheet();
  for (const { paper, widthPt, heightPt } of PAPERS) {
    await sheet.getByRole("button", { name: paper }).click();
    const printed = await printedPages(await planner.print());
    expect(printed).toHaveLength(1);
    const [only] = printed as [PrintedPage];
    expect(Math.abs(only.widthPt - widthPt)).toBeLessThan(1);
    expect(Math.abs(only.heightPt - heightPt)).toBeLessThan(1);
    expectTrueToScale(only, await planner.garden());
    expect(only.smallestTypePt).toBeGreaterThanOrEqual(7.99);
    expect(only.text).not.toMatch(/still to fix/);
    expect(printedTotal(only)).toBeCloseTo(parts, 2);
    expect(Math.round(printedTotal(only))).toBe(amount(started));
    expect(only.text).toContain("8 beds");
  }
});

test("the sheet of a plan that is not cleared says what is still to fix", async ({ planner }) => {
  await planner.openSheet();
  const [only] = await printedPages(await planner.print());
  expect(only?.text).toContain("3 still to fix");
  expect(only?.text).toMatch(/Peppers: soil 8 in too shallow/);
});

test("a garden in metres, south of the equator, prints true to a metric scale on one A4 page", async ({
  planner,
}) => {
  const southern = EXAMPLES.find(({ garden }) => garden.units === "metric");
  if (!southern) throw new Error("there is no example in metres");
  await planner.openGarden(southern.garden);
  await planner.openSheet();
  const printed = await printedPages(await planner.print());
  expect(printed).toHaveLength(1);
  const [only] = printed as [PrintedPage];
  expect(Math.abs(only.heightPt - 297 / POINT)).toBeLessThan(1);
  expectTrueToScale(only, southern.garden);
  expect(only.smallestTypePt).toBeGreaterThanOrEqual(7.99);
});

test("cost and quantities follow a change of the plan, and go back with it", async ({ planner, page }) => {
  await planner.turnTo("Takeoff");
  const started = await planner.total();
  const boards = page.getByRole("region", { name: "Boards" });
  const bought = (await boards.textContent()) ?? "";

  await planner.press("Salads");
  await planner.card.getByLabel("Width").fill("4 ft");
  await planner.card.getByLabel("Width").press("Enter");
  await expect(planner.thing("Salads")).toContainText("4 ft by 4 ft");
  await expect.poll(() => planner.total()).not.toBe(started);
  expect(amount(await planner.total())).toBeLessThan(amount(started));
  await expect(boards).not.toHaveText(bought);

  await planner.undo();
  await expect.poll(() => planner.total()).toBe(started);
  await expect(boards).toHaveText(bought);
});

const amount = (money: string): number => Number(money.replace(/[^\d.]/g, ""));

/** The papers' sizes in points: Letter is 8.5 by 11 in (ANSI/ASME Y14.1 A), A4 210 by 297 mm (ISO 216). */
const PAPERS = [
  { paper: "Letter", widthPt: 612, heightPt: 792 },
  { paper: "A4", widthPt: 210 / POINT, heightPt: 297 / POINT },
] as const;

/** The total to the cent: the Takeoff leaf's parts added up. */
async function totalOfParts(page: Page): Promise<number> {
  const parts = await page.locator(".part-head").allInnerTexts();
  return parts.reduce((sum, part) => sum + amount(/[$][\d,.]+/.exec(part)?.[0] ?? ""), 0);
}

/** "Total $1,109.95" in the shopping list. */
function printedTotal({ text }: PrintedPage): number {
  const [, total] = /\bTotal\s+(\$[\d,.]+)/.exec(text) ?? [];
  if (total === undefined) throw new Error("the shopping list has no total");
  return amount(total);
}
