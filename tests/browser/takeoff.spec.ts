import AxeBuilder from "@axe-core/playwright";
import { applyOps, EXAMPLES, type ItemOf } from "../../src/index.ts";
import { expect, test } from "./fixtures.ts";

const start = EXAMPLES[0].garden;
const beds = start.items.filter((item): item is ItemOf<"bed"> => item.kind === "bed");
/** Two stages, a bed deep enough to be layered, boards at home: every part of the leaf has something to say. */
const garden = applyOps(start, [
  { op: "set", id: beds[0]!.id, changes: { stage: 2 } },
  { op: "set", id: beds[3]!.id, changes: { wall: { ...beds[3]!.wall, courses: 5 } } },
  {
    op: "set-garden",
    changes: {
      cutting: {
        ...start.cutting,
        onHand: [{ board: "2x6", timber: "douglas-fir", length: 3048, count: 2 }],
      },
    },
  },
]);

const SECTIONS = ["To carry", "Cost a year", "Walls compared", "Layered fill", "All prices"];

test("every part of the Takeoff leaf opens by keyboard, and axe finds nothing in it, on a phone too", async ({
  planner,
  page,
}) => {
  await planner.openGarden(garden);
  await planner.turnTo("Takeoff");
  const leaf = page.getByRole("tabpanel");
  for (const title of SECTIONS) {
    await leaf.locator("summary").filter({ hasText: title }).first().focus();
    await page.keyboard.press("Enter");
  }
  await leaf.locator(".line summary").first().focus();
  await page.keyboard.press("Enter");
  await expect(leaf.locator(".line-how").first()).toBeVisible();
  await expect(leaf).toContainText("at home");
  await expect(leaf).toContainText("could be");
  await expect(leaf).toContainText(/proven cheapest/);

  for (const viewport of [
    { width: 1440, height: 900 },
    { width: 390, height: 844 },
  ]) {
    await page.setViewportSize(viewport);
    const { violations } = await new AxeBuilder({ page }).include(".ledger").analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  }
  const [scrolled, shown] = await leaf.evaluate((one) => [one.scrollWidth, one.clientWidth] as const);
  expect(scrolled, "nothing runs out of the leaf at the side").toBeLessThanOrEqual(shown);
});

test("a stage is saved as a table of its own", async ({ planner, page }) => {
  await planner.openGarden(garden);
  await planner.turnTo("Takeoff");
  await page.getByRole("tabpanel").getByRole("button", { name: "Stage 2" }).click();
  const downloading = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as a table (CSV)" }).click();
  const download = await downloading;
  expect(download.suggestedFilename()).toMatch(/takeoff\.csv$/);
});

test("a way out says what it saves, and taking it saves that", async ({ planner, page }) => {
  const narrow = page.locator(".way-out").filter({ hasText: "saves $" }).first();
  await expect(narrow).toBeVisible();
  const before = money(await planner.total());
  const saved = money((await narrow.locator("small").textContent()) ?? "");
  await narrow.getByRole("button").click();
  await expect
    .poll(async () => Math.abs(before - money(await planner.total()) - saved))
    .toBeLessThanOrEqual(2);
});

const money = (words: string): number => Number(words.replace(/[^\d.]/g, ""));
