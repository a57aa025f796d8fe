import type { Locator, Page } from "@playwright/test";
import { FOOT, INCH } from "../../src/index.ts";
import { expect, test } from "./fixtures.ts";
import { printedPages } from "./printed-page.ts";

test("beds are moved by keys alone until nothing is left to fix, and the sheet opens and prints", async ({
  planner,
  page,
}) => {
  const { keyboard } = page;
  const told = page.getByRole("complementary", { name: "Ledger" }).getByRole("status");
  const squash = await planner.placeOf("Squash");

  await tabTo(page, planner.thing("Squash"));
  await press(page, "ArrowRight", 4);
  await expect(planner.summary).toContainText("2 to fix");
  expect((await planner.placeOf("Squash"))[0]).toBeCloseTo(squash[0] + 4 * INCH, 6);
  await expect(told).toHaveText("Squash moved 4 in right; 2 to fix");

  await tabTo(page, planner.thing("Beans"), "Shift+Tab");
  await press(page, "Shift+ArrowRight", 2);
  await expect(planner.summary).toContainText("1 to fix");

  await tabTo(page, planner.thing("Peppers"), "Shift+Tab");
  const peppers = await planner.placeOf("Peppers");
  await press(page, "Shift+ArrowDown", 15);
  await press(page, "Shift+ArrowRight", 2);
  await expect(planner.summary).toContainText("Nothing to fix");
  const moved = await planner.placeOf("Peppers");
  expect(moved[0]).toBeCloseTo(peppers[0] + 2 * FOOT, 6);
  expect(moved[1]).toBeCloseTo(peppers[1] + 15 * FOOT, 6);

  const build = page.getByRole("button", { name: "Build sheet" });
  await tabTo(page, build, "Shift+Tab");
  await keyboard.press("Enter");
  const back = page.getByRole("button", { name: "Back to the plan" });
  await expect(back).toBeFocused();
  const printed = await printedPages(await planner.print());
  expect(printed).toHaveLength(1);
  expect(printed[0]?.text).not.toMatch(/still to fix/);
  await keyboard.press("Escape");
  await expect(back).toHaveCount(0);
  await expect(build).toBeFocused();
});

test("a run of key presses is one step, undone and done again by keys", async ({ planner, page }) => {
  const { keyboard } = page;
  const before = await planner.placeOf("Squash");
  await tabTo(page, planner.thing("Squash"));
  await press(page, "ArrowRight", 4);
  await expect(planner.summary).toContainText("2 to fix");

  await keyboard.press("Control+z");
  await expect(planner.summary).toContainText("3 to fix");
  expect(await planner.placeOf("Squash")).toEqual(before);
  await expect(page.getByRole("button", { name: "Undo" })).toHaveAttribute("aria-disabled", "true");

  await keyboard.press("Control+Shift+z");
  await expect(planner.summary).toContainText("2 to fix");
  await keyboard.press("Control+z");
  await expect(planner.summary).toContainText("3 to fix");
  await keyboard.press("Control+y");
  await expect(planner.summary).toContainText("2 to fix");
});

test("the ways out are tried on focus, taken by Enter, and undone one by one", async ({ planner, page }) => {
  const { keyboard } = page;
  const wayOut = (name: string) => planner.snags.getByRole("button", { name, exact: true });

  await tabTo(page, wayOut("Shift 24 in east"));
  // The figures show what it would do before it is taken; the plan as committed stays.
  await expect(planner.summary).toContainText("2 to fix");
  await expect(planner.summary).toContainText("with “Shift 24 in east”");
  await keyboard.press("Tab");
  await expect(planner.summary).toContainText("with “Narrow to 24 in”");
  await keyboard.press("Tab");
  await expect(planner.summary).toContainText("3 to fix");

  await tabTo(page, wayOut("Shift 24 in east"), "Shift+Tab");
  await keyboard.press("Enter");
  await expect(planner.summary).toContainText("2 to fix");
  await tabTo(page, wayOut("Shift Squash 4 in east"));
  await keyboard.press("Enter");
  await expect(planner.summary).toContainText("1 to fix");
  const cheaper = await planner.total();
  await tabTo(page, wayOut("Two courses higher"));
  await keyboard.press("Enter");
  await expect(planner.summary).toContainText("Nothing to fix");
  expect(await planner.total(), "two courses more are more boards and more soil").not.toBe(cheaper);

  for (const left of ["1 to fix", "2 to fix", "3 to fix"]) {
    await keyboard.press("Control+z");
    await expect(planner.summary).toContainText(left);
  }
});

test("a thing is turned, copied, given its exact place on its card and taken away by keys", async ({
  planner,
  page,
}) => {
  const { keyboard } = page;
  await tabTo(page, planner.thing("Salads"));
  await press(page, "]", 6);
  await keyboard.press("Enter");
  await expect(planner.card.locator(":focus").or(page.locator("#card:focus"))).toHaveCount(1);
  await expect(planner.card.getByLabel("Turned")).toHaveValue("90");

  await tabTo(page, planner.card.getByLabel("From the left"));
  await keyboard.press("Control+a");
  await keyboard.type("2' 6\"");
  await keyboard.press("Enter");
  await expect(planner.card.getByLabel("From the left")).toHaveValue("2′ 6″");
  // Turned a quarter, the bed of 8 by 4 ft is 4 ft across.
  expect((await planner.placeOf("Salads"))[0]).toBeCloseTo(4.5 * FOOT, 3);

  const beds = planner.thing(/\bbed\b/i);
  await expect(beds).toHaveCount(8);
  await tabTo(page, planner.thing("Salads"), "Shift+Tab");
  await keyboard.press("Control+d");
  await expect(beds).toHaveCount(9);
  await keyboard.press("Delete");
  await expect(beds).toHaveCount(8);
});

test("Enter goes to the card of the thing in focus, whichever card was open before", async ({
  planner,
  page,
}) => {
  await planner.press("Salads");
  await expect(planner.card.getByLabel("Name")).toHaveValue("Salads");
  await planner.thing("Tomatoes").focus();
  await page.keyboard.press("Enter");
  await expect(planner.card.getByLabel("Name")).toHaveValue("Tomatoes");
  await expect(planner.card.getByLabel("Name")).toBeFocused();
});

const FARTHEST = 150;

/** Goes along the page by the Tab key until the keyboard is there. */
async function tabTo(page: Page, to: Locator, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  for (let i = 0; i < FARTHEST; i++) {
    if (await to.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${FARTHEST} presses of ${key} do not lead there`);
}

async function press(page: Page, key: string, times: number): Promise<void> {
  for (let i = 0; i < times; i++) await page.keyboard.press(key);
}
