import AxeBuilder from "@axe-core/playwright";
import type { Locator, Page } from "@playwright/test";
import { EXAMPLES, FOOT, outlineOf, type Point } from "../../src/index.ts";
import { expect, test } from "./fixtures.ts";
import type { Planner } from "./planner.ts";

const hour = (page: Page) => page.getByRole("slider", { name: "Hour", exact: true });
const day = (page: Page) => page.getByRole("slider", { name: "Day", exact: true });
const leafOf = (page: Page) => page.getByRole("tabpanel", { name: "Sun" });
const entry = (page: Page, name: string): Locator =>
  page.locator(".bed-sun").filter({ has: page.getByRole("button", { name, exact: true }) });
const hoursOf = (page: Page, name: string) => entry(page, name).locator(".bed-hours");

/** Opens the Sun leaf and waits until the map is there. */
async function openSun(planner: Planner): Promise<void> {
  await planner.turnTo("Sun");
  await expect(leafOf(planner.page)).toContainText("enough sun");
}

/** How dense the drawing that follows the hand is at a pixel of the page, 0 to 255: the shadows are drawn there. */
const inkAt = (page: Page, [x, y]: Point): Promise<number> =>
  page.evaluate(
    ([px, py]) => {
      const canvas = document.querySelectorAll<HTMLCanvasElement>(".plan-stage canvas")[1];
      const context = canvas?.getContext("2d");
      if (!canvas || !context) throw new Error("the plan has no live layer");
      const box = canvas.getBoundingClientRect();
      const fine = canvas.width / box.width;
      return context.getImageData((px - box.left) * fine, (py - box.top) * fine, 1, 1).data[3] ?? 0;
    },
    [x, y] as const,
  );

test("in the southern hemisphere the shadows of noon fall south, in words and as they are drawn", async ({
  planner,
  page,
}) => {
  const southern = EXAMPLES.find(({ id }) => id === "southern-yard");
  if (!southern) throw new Error("there is no southern example");
  await planner.openGarden(southern.garden);
  await openSun(planner);
  await page.getByLabel("Hours on the plan").selectOption("Nothing");
  for (const turn of ["March equinox", "June solstice", "December solstice"]) {
    await page.getByRole("button", { name: turn }).click();
    await page.getByRole("button", { name: /^Noon, .* by the sun$/ }).click();
    await expect(leafOf(page)).toContainText(/Noon, \d+ \w+: shadows fall south/);
  }

  await page.getByRole("button", { name: "March equinox" }).click();
  const beans = southern.garden.items.find(({ name }) => name === "Beans");
  if (beans?.kind !== "bed") throw new Error("the example has no Beans");
  const ys = outlineOf(beans).map(([, y]) => y);
  const pixelOf = await planner.lay();
  // North is up: the bed is 60 cm tall, and the noon sun of the equinox stands at 55°.
  const southOf = pixelOf([beans.at[0], Math.max(...ys) + 200]);
  const northOf = pixelOf([beans.at[0], Math.min(...ys) - 200]);
  const sunny = await inkAt(page, northOf);
  await expect.poll(() => inkAt(page, southOf)).toBeGreaterThan(sunny + 30);
  await page.getByLabel("Shadows on the plan").uncheck();
  await expect.poll(() => inkAt(page, southOf)).toBe(sunny);
});

test("the day and the hour go by keys, and a day plays, pauses and stops with the leaf", async ({
  planner,
  page,
}) => {
  await openSun(planner);
  await day(page).focus();
  await page.keyboard.press("ArrowRight");
  await expect(day(page)).toHaveAttribute("aria-valuetext", "21 March");
  await hour(page).focus();
  await page.keyboard.press("ArrowRight");
  await expect(hour(page)).toHaveAttribute(
    "aria-valuetext",
    /^10:05, 21 March: shadows fall west, 2.2 times as long/,
  );

  await leafOf(page).getByRole("button", { name: "Play the day" }).click();
  const onPlan = page.getByRole("slider", { name: "Hour of the shadows" });
  await expect.poll(async () => Number(await onPlan.inputValue())).toBeGreaterThan(11 * 60);
  await page
    .getByRole("group", { name: "Shadows on the plan" })
    .getByRole("button", { name: "Pause" })
    .click();
  const paused = await onPlan.inputValue();
  await expect(leafOf(page).getByRole("button", { name: "Play the day" })).toBeVisible();
  await onPlan.focus();
  await page.keyboard.press("ArrowLeft");
  await expect(hour(page)).toHaveValue(String(Number(paused) - 5));

  await planner.turnTo("Snags");
  await expect(page.getByRole("group", { name: "Shadows on the plan" })).toHaveCount(0);
  await openSun(planner);
  await expect(hour(page), "it is as it was left").toHaveValue(String(Number(paused) - 5));
});

test("hours follow a bed and a shed while they are dragged, and undo brings them back", async ({
  planner,
  page,
}) => {
  await openSun(planner);
  const before = (await hoursOf(page, "Peppers").textContent()) ?? "";
  await planner.carry("Shed", [-3 * FOOT, 9 * FOOT]);
  await expect(hoursOf(page, "Peppers"), "while the shed is held").not.toHaveText(before);
  await page.mouse.up();
  await planner.undo();
  await expect(hoursOf(page, "Peppers")).toHaveText(before);

  // Up against the house, where its wall takes half the day.
  const salads = (await hoursOf(page, "Salads").textContent()) ?? "";
  await planner.carry("Salads", [22 * FOOT, -17 * FOOT]);
  await expect(hoursOf(page, "Salads"), "while the bed is held").not.toHaveText(salads);
  const held = Number.parseFloat((await hoursOf(page, "Salads").textContent()) ?? "");
  expect(held).toBeLessThan(Number.parseFloat(salads));
  await page.keyboard.press("Escape");
  await page.mouse.up();
});

test("a bed tells its months and moves to the best place, which is shown first and can be undone", async ({
  planner,
  page,
}) => {
  await openSun(planner);
  const peppers = entry(page, "Peppers");
  await peppers.getByRole("button", { name: "Peppers" }).click();
  await expect(peppers.locator(".month-bars li")).toHaveCount(12);
  await expect(peppers).toContainText(/House shades it (until|from)/);
  const was = await planner.placeOf("Peppers");
  const hours = Number.parseFloat((await hoursOf(page, "Peppers").textContent()) ?? "");

  await peppers.getByRole("button", { name: "Best place for it" }).click();
  await expect(peppers).toContainText(/[\d.]+ h a day there, [\d.]+ h more than here/, { timeout: 20_000 });
  const promised = Number.parseFloat((await peppers.locator(".best-place p").textContent()) ?? "");
  expect(promised).toBeGreaterThan(hours);
  expect(await planner.placeOf("Peppers"), "nothing has moved yet").toEqual(was);

  await peppers.getByRole("button", { name: "Move it there" }).click();
  expect(await planner.placeOf("Peppers")).not.toEqual(was);
  await expect
    .poll(async () => Number.parseFloat((await hoursOf(page, "Peppers").textContent()) ?? ""))
    .toBeCloseTo(promised, 0);
  await planner.undo();
  expect(await planner.placeOf("Peppers")).toEqual(was);
});

test("a skyline and a place that are typed change the hours, and the costs are told thing by thing", async ({
  planner,
  page,
}) => {
  await openSun(planner);
  const before = Number.parseFloat((await hoursOf(page, "Squash").textContent()) ?? "");
  await planner.turnTo("Site");
  await page.locator("summary").filter({ hasText: "Season and skyline" }).click();
  const type = async (label: string, text: string) => {
    await page.getByLabel(label, { exact: true }).fill(text);
    await page.keyboard.press("Enter");
  };
  await type("From", "ESE");
  await type("To", "WSW");
  await type("Height", "60 ft over 40 ft");
  await page.getByRole("button", { name: "Add a block" }).click();
  await expect(page.getByLabel("Height of point 2")).toHaveValue("56.3°");
  await page.locator("summary").filter({ hasText: "Place and winter" }).click();
  await page.getByLabel("A town nearby").selectOption({ label: "Boise, United States, 43.6° N" });
  await expect(page.getByLabel("Latitude", { exact: true })).toHaveValue("43.6° N");

  await openSun(planner);
  await expect(leafOf(page).getByRole("button", { name: "Choose a time zone" })).toHaveCount(0);
  await expect
    .poll(async () => Number.parseFloat((await hoursOf(page, "Squash").textContent()) ?? ""))
    .toBeLessThan(before - 1);
  await page.locator("summary").filter({ hasText: "What takes the sun" }).click();
  await expect(page.locator(".sun-costs")).toContainText(/House takes [\d.]+ h from Peppers/, {
    timeout: 20_000,
  });
});

async function expectNoViolation(page: Page): Promise<void> {
  const { violations, passes } = await new AxeBuilder({ page })
    .setLegacyMode()
    .options({ resultTypes: ["violations"] })
    .analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
  expect(passes.length).toBeGreaterThan(5);
}

for (const width of [1440, 390, 320]) {
  test.describe(`${width} px wide`, () => {
    test.use({ viewport: { width, height: 844 } });

    test("the Sun leaf with all it tells, and the places that are set for it, have nothing for axe to find", async ({
      planner,
      page,
    }) => {
      if (width < 760) await page.locator(".grab-bar").click();
      await openSun(planner);
      await entry(page, "Peppers").getByRole("button", { name: "Peppers" }).click();
      if (width < 760) await page.locator(".grab-bar").click();
      await page.locator("summary").filter({ hasText: "What takes the sun" }).click();
      await expect(page.locator(".sun-costs li").first()).toBeVisible({ timeout: 20_000 });
      await expectNoViolation(page);
      await planner.turnTo("Site");
      for (const title of ["North", "Place and winter", "Season and skyline"]) {
        await page.locator("summary").filter({ hasText: title }).first().click();
      }
      await page.getByRole("button", { name: "Add a block" }).click();
      await expectNoViolation(page);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    });
  });
}
