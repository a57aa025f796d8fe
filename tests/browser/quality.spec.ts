import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { EXAMPLES, INCH, type Item, nameOf, type Point } from "../../src/index.ts";
import { fullGarden } from "../helpers/full-garden.ts";
import { expect, test } from "./fixtures.ts";
import type { Planner } from "./planner.ts";
import { printedPages } from "./printed-page.ts";
import { expectTrueToScale } from "./true-to-scale.ts";

/** WCAG 2.2 A and AA and axe's own good practice, over the whole page or a part of it. */
async function expectNoViolation(page: Page, part?: string): Promise<void> {
  // Without frames there is nothing to gather in a page of its own.
  const builder = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ["violations"] });
  const { violations, passes } = await (part ? builder.include(part) : builder).analyze();
  expect(
    violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`),
    "axe finds nothing",
  ).toEqual([]);
  expect(passes.length, "axe looked at something").toBeGreaterThan(5);
}

const LEAVES = ["Snags", "Takeoff", "Sun", "Year round", "Site"] as const;

/** Unfolds what is folded, so that nothing is passed over. */
const unfold = (page: Page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });

test("axe finds nothing on any leaf of the ledger", async ({ planner, page }) => {
  for (const leaf of LEAVES) {
    await test.step(leaf, async () => {
      await planner.turnTo(leaf);
      await unfold(page);
      await expectNoViolation(page);
    });
  }
});

test("axe finds nothing on the card of any kind of thing", async ({ planner, page }) => {
  test.slow();
  const garden = fullGarden("us");
  await planner.openGarden(garden);
  // Each kind of thing, and each way a bed can be walled: their cards have fields of their own.
  const cards = new Map(garden.items.map((item) => [cardOf(item), item]));
  expect(cards.size).toBeGreaterThanOrEqual(16);
  for (const [card, item] of cards) {
    await test.step(card, async () => {
      await page.locator(`[data-item="${item.id}"]`).focus();
      await page.keyboard.press("Enter");
      await expect(planner.card.getByLabel("Name", { exact: true })).toHaveValue(nameOf(item));
      await unfold(page);
      await expectNoViolation(page, "#card");
    });
  }
  await test.step("the yard", async () => {
    await page.locator('[data-item="yard"]').focus();
    await page.keyboard.press("Enter");
    await expect(planner.card.getByLabel("Side 1", { exact: true })).toBeVisible();
    await expectNoViolation(page, "#card");
  });
  await test.step("many things", async () => {
    await page.locator(`[data-item="${garden.items[0]?.id}"]`).focus();
    await page.keyboard.press("Control+a");
    await expect(planner.card).toContainText(`${garden.items.length} things`);
    await expectNoViolation(page, "#card");
    await expectNoViolation(page, ".plan-list");
  });
});

const cardOf = (item: Item): string => (item.kind === "bed" ? `bed of ${item.wall.made}` : item.kind);

test("axe finds nothing in the dialogs, nor on the sheet", async ({ planner, page }) => {
  await planner.drag("Squash", [6 * INCH, 0]);
  await planner.kept();
  const gardens = await planner.openGardens();
  await planner.chooseFile("bad.json", "no garden");
  await expect(gardens.getByRole("alert")).toBeVisible();
  await expectNoViolation(page);
  await page.keyboard.press("Escape");

  await page.keyboard.press("?");
  await expect(page.getByRole("dialog", { name: "How it works" })).toBeVisible();
  await expectNoViolation(page);
  await page.keyboard.press("Escape");

  await page.getByRole("toolbar", { name: "Barrow" }).getByRole("button", { name: "Path" }).click();
  await expect(page.getByText("tap the plan where it begins")).toBeVisible();
  await expectNoViolation(page, ".barrow-area");
  await page.keyboard.press("Escape");

  await planner.openSheet();
  await expectNoViolation(page);
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test("the ledger opens as a sheet, a snag selects its bed, and the build sheet opens", async ({
    planner,
    page,
  }) => {
    await expect(planner.summary).toContainText("3 to fix");
    await expectNoViolation(page);

    await drawLedgerUp(page);
    const peppers = planner.snags.getByRole("button", { name: /Peppers/ });
    await peppers.tap();
    await expect(planner.thing("Peppers")).toHaveAttribute("aria-pressed", "true");
    await expect(planner.card).toContainText("Peppers");
    await expectNoViolation(page);

    await planner.card.getByRole("button", { name: "Open card" }).tap();
    await expect(planner.card.getByLabel("Width")).toHaveValue("4′ 0″");
    await expectNoViolation(page);

    const sheet = await planner.openSheet();
    await expectNoViolation(page);
    // Drawn small to be seen whole; printed at its own size all the same.
    const printed = await printedPages(await planner.print());
    expect(printed).toHaveLength(1);
    for (const only of printed) expectTrueToScale(only, EXAMPLES[0].garden);
    await sheet.getByRole("button", { name: "Back to the plan" }).tap();
    await expect(sheet).toHaveCount(0);
  });

  test("a finger carries a bed clear", async ({ planner, page }) => {
    const from = await planner.placeOf("Squash");
    const pixelOf = await planner.lay();
    await touchDrag(page, pixelOf(from), pixelOf([from[0] + 7 * INCH, from[1]]));
    await expect(planner.summary).toContainText("2 to fix");
    const [x, y] = await planner.placeOf("Squash");
    expect(x - from[0]).toBeGreaterThanOrEqual(4 * INCH - 0.5);
    expect(Math.abs(y - from[1])).toBeLessThan(3 * INCH);
  });

  test("nothing reaches over the edge at 320 px", async ({ planner, page }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await expectWithin(page, "the page");
    await drawLedgerUp(page);
    for (const leaf of LEAVES) {
      await planner.turnTo(leaf);
      await unfold(page);
      await expectWithin(page, leaf);
    }
    await planner.openGardens();
    await expectWithin(page, "gardens");
    await page.keyboard.press("Escape");
    await openCard(planner);
    await expectWithin(page, "card");
    await planner.openSheet();
    await expectWithin(page, "sheet");
  });
});

/**
 * Nothing lies over the edge of the window, where it could not be got at, and nothing scrolls sideways but the strips
 * that are made to (WCAG 2.2, 1.4.10 Reflow, at 320 CSS pixels).
 */
async function expectWithin(page: Page, what: string): Promise<void> {
  const over = () =>
    page.evaluate((strips) => {
      const isWorked = (element: Element) => element.closest(".unseen, .plan-list") === null;
      return [...document.querySelectorAll("body *")]
        .filter((element) => element instanceof HTMLElement && isWorked(element) && !element.closest(strips))
        .filter((element) => {
          const { left, right, width } = element.getBoundingClientRect();
          return width > 0 && (left < -1 || right > document.documentElement.clientWidth + 1);
        })
        .map(({ nodeName, className }) => `${nodeName}.${className}`);
    }, STRIPS);
  // A canvas is resized in the frame after its window.
  await expect.poll(over, { message: what }).toEqual([]);
}

/** The barrow, and the table the sheet lies on: both as wide as what lies there. */
const STRIPS = ".barrow-strip > *, .sheet-table > *";

async function drawLedgerUp(page: Page): Promise<void> {
  await page.getByRole("button", { name: /^Ledger: only the figures/ }).tap();
  await expect(page.getByRole("tab", { name: "Snags" })).toBeVisible();
}

async function openCard(planner: Planner): Promise<void> {
  await planner.turnTo("Snags");
  await planner.snags.getByRole("button", { name: /Peppers/ }).tap();
  await planner.card.getByRole("button", { name: "Open card" }).tap();
  await expect(planner.card.getByLabel("Width")).toBeVisible();
}

/** A finger put down, drawn across the screen and lifted: Playwright itself only taps. */
async function touchDrag(page: Page, from: Point, to: Point): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const along = (k: number) => ({ x: from[0] + (to[0] - from[0]) * k, y: from[1] + (to[1] - from[1]) * k });
  const touch = (type: "touchStart" | "touchMove", k: number) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: [along(k)] });
  await touch("touchStart", 0);
  // Past the way a finger may shake, and back to where it is to come to rest.
  for (const k of [0.5, 1, 2, 3, 2, 1.5, 1.2, 1]) await touch("touchMove", k);
  await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  await session.detach();
}
