import { readFile } from "node:fs/promises";
import AxeBuilder from "@axe-core/playwright";
import ICAL from "ical.js";
import { applyOps, EXAMPLES } from "../../src/index.ts";
import { expect, test } from "./fixtures.ts";
import { printedPages } from "./printed-page.ts";

const start = EXAMPLES[0].garden;
/** Nobody has typed a frost yet. */
const garden = applyOps(start, [
  { op: "set-site", changes: { lastFrost: null, firstFrost: null } },
  { op: "set-garden", changes: { upkeep: { ...start.upkeep, firstYear: 2027 } } },
]);

test("frosts typed under Site set the days of the year, and the calendar goes into another program", async ({
  planner,
  page,
}) => {
  await planner.openGarden(garden);
  await planner.turnTo("Year round");
  await expect(page.locator(".year-note")).toContainText("usual for a freezing winter");

  await planner.turnTo("Site");
  const leaf = page.getByRole("tabpanel");
  const last = leaf.getByLabel("Mean last frost of spring");
  if (!(await last.isVisible())) await leaf.locator("summary").filter({ hasText: "Place" }).first().click();
  await last.fill("12 May");
  await page.keyboard.press("Enter");
  await leaf.getByLabel("Mean first frost of autumn").fill("1 Oct");
  await page.keyboard.press("Enter");

  await planner.turnTo("Year round");
  await expect(page.locator(".year-note")).toContainText("last frost on 12 May and a first on 1 Oct");
  await page.getByRole("button", { name: "May", exact: true }).click();
  const may = page.getByRole("region", { name: "Tasks of May" });
  // Very tender crops are set two weeks after the last frost.
  const tomato = may.locator("li").filter({ hasText: "Tomato: set out" });
  await expect(tomato).toContainText("26 May to");
  await tomato.locator("summary").click();
  await expect(tomato).toContainText("Colorado State University Extension");

  await page.getByRole("textbox", { name: "Year", exact: true }).fill("2028");
  await page.keyboard.press("Enter");
  const downloading = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save calendar file" }).click();
  const download = await downloading;
  expect(download.suggestedFilename()).toMatch(/2028\.ics$/);
  const calendar = new ICAL.Component(ICAL.parse(await readFile(await download.path(), "utf8")));
  const events = calendar.getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));
  expect(events.length).toBeGreaterThan(40);
  const set = events.find(({ summary }) => summary === "Tomato: set out");
  expect(set?.startDate.toString()).toBe("2028-05-26");
  expect(set?.description).toContain("Colorado State University Extension");
  // Boards of Douglas-fir built in 2027 are renewed in 2033, not in 2028.
  expect(events.some(({ summary }) => summary.startsWith("Renew boards"))).toBe(false);
});

for (const paper of ["Letter", "A4"] as const) {
  test(`the year's page prints whole on one page: ${paper}`, async ({ planner, page }) => {
    await planner.openGarden(start);
    await planner.turnTo("Year round");
    await page.getByRole("button", { name: "Print the year’s page" }).click();
    const desk = page.getByRole("dialog", { name: "The year’s page" });
    await desk.getByRole("button", { name: paper, exact: true }).click();
    await expect(desk.locator("svg")).toHaveAttribute("data-paper", paper.toLowerCase());
    const printed = await printedPages(await planner.print());
    expect(printed).toHaveLength(1);
    expect(printed[0]!.smallestTypePt).toBeGreaterThanOrEqual(7.99);
    expect(printed[0]!.text).toContain("year round");
    expect(printed[0]!.text).toContain("Top up the beds");
    expect(printed[0]!.text).not.toContain("Not on this page");
    await page.keyboard.press("Escape");
    await expect(desk).toBeHidden();
  });
}

test("every part of the leaf opens, axe finds nothing in it, and nothing is wider than a phone", async ({
  planner,
  page,
}) => {
  await planner.openGarden(garden);
  await planner.turnTo("Year round");
  const leaf = page.getByRole("tabpanel");
  await leaf.locator(".task summary").first().click();
  for (const title of ["Choices", "The years ahead"]) {
    await leaf.locator("summary").filter({ hasText: title }).first().click();
  }
  await expect(leaf.getByRole("img", { name: /^Cost of each year/ })).toBeVisible();
  await leaf.getByText("Year by year").click();
  for (const viewport of [
    { width: 1440, height: 900 },
    { width: 390, height: 844 },
  ]) {
    await page.setViewportSize(viewport);
    const { violations } = await new AxeBuilder({ page }).include(".ledger").analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    const [scrolled, shown] = await leaf.evaluate((one) => [one.scrollWidth, one.clientWidth] as const);
    expect(scrolled).toBeLessThanOrEqual(shown);
  }
});
