import type { CDPSession, Page } from "@playwright/test";
import { INCH, type Point } from "../../src/index.ts";
import { expect, test } from "./fixtures.ts";
import { printedPages } from "./printed-page.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

test("the job is done with taps alone: a bed put down, sized and nudged, a snag cleared, the sheet opened", async ({
  planner,
  page,
}) => {
  const beds = planner.thing(/\bbed\b/i);
  const before = await beds.count();

  await test.step("a bed is put down by two taps", async () => {
    await page
      .getByRole("toolbar", { name: "Barrow" })
      .getByRole("button", { name: "Bed", exact: true })
      .tap();
    await expect(page.getByText("tap the plan where it is to stand")).toBeVisible();
    const pixelOf = await planner.lay();
    await page.touchscreen.tap(...pixelOf([34 * 12 * INCH, 22 * 12 * INCH]));
    await expect(beds).toHaveCount(before + 1);
  });

  const made = page.locator('[data-item][aria-pressed="true"]');
  await expect(made).toHaveCount(1);
  const place = async (): Promise<Point> => [
    Number(await made.getAttribute("data-x")),
    Number(await made.getAttribute("data-y")),
  ];

  await test.step("it is moved by the arrow pad, by the step that is chosen", async () => {
    const from = await place();
    await page.getByRole("button", { name: "Arrow pad" }).tap();
    await page.getByRole("button", { name: "Move right by 1 in" }).tap();
    await page.getByRole("button", { name: "Move right by 1 in" }).tap();
    await page.getByRole("button", { name: /^Step 1 in/ }).tap();
    await page.getByRole("button", { name: "Move up by 6 in" }).tap();
    const [x, y] = await place();
    expect(x - from[0]).toBeCloseTo(2 * INCH, 3);
    expect(y - from[1]).toBeCloseTo(-6 * INCH, 3);
  });

  await test.step("it is sized on its card", async () => {
    await planner.card.getByRole("button", { name: "Open card" }).tap();
    const length = planner.card.getByLabel("Length", { exact: true });
    await length.tap();
    await length.fill("6 ft");
    await page.getByRole("heading", { name: "Bedwright" }).tap();
    await expect(length).toHaveValue("6′ 0″");
    await planner.card.getByRole("button", { name: "Close card" }).tap();
  });

  await test.step("a snag is cleared by its way out, and taken back", async () => {
    const left = await planner.left();
    await planner.turnTo("Snags");
    await planner.snags.getByRole("button", { name: "Shift Squash 4 in east" }).tap();
    await expect.poll(() => planner.left()).toBe(left - 1);
    await page.getByRole("button", { name: "Undo" }).tap();
    await expect.poll(() => planner.left()).toBe(left);
  });

  await test.step("the sheet opens and prints on one page", async () => {
    await page.getByRole("button", { name: "Build sheet" }).tap();
    await expect(page.getByRole("button", { name: "Back to the plan" })).toBeVisible();
    expect(await printedPages(await planner.print())).toHaveLength(1);
  });
});

test("choosing a thing does not move the plan under the finger", async ({ planner, page }) => {
  const lies = await planner.board.boundingBox();
  const pixelOf = await planner.lay();
  await page.touchscreen.tap(...pixelOf(await planner.placeOf("Squash")));
  await expect(planner.thing("Squash")).toHaveAttribute("aria-pressed", "true");
  expect(await planner.board.boundingBox()).toEqual(lies);
});

test("a loupe shows what the finger covers, twice as large, until it lifts", async ({ planner, page }) => {
  const pixelOf = await planner.lay();
  const [x, y] = pixelOf(await planner.placeOf("Squash"));
  await page.touchscreen.tap(x, y);
  await expect(planner.thing("Squash")).toHaveAttribute("aria-pressed", "true");
  const loupe = page.locator(".loupe");
  await expect(loupe).toBeHidden();

  const finger = await page.context().newCDPSession(page);
  await touch(finger, "touchStart", [x, y]);
  for (let i = 1; i <= 8; i++) {
    await touch(finger, "touchMove", [x - 2 * i, y]);
    await page.waitForTimeout(30);
  }
  await expect(loupe).toBeVisible();
  const box = (await loupe.boundingBox())!;
  expect(box.y + box.height, "above the finger").toBeLessThan(y - 20);
  await expect.poll(() => colours(page)).toBeGreaterThan(20);

  // The pad would lie in its way meanwhile.
  await expect(page.locator(".nudge-pad")).toBeHidden();
  await touch(finger, "touchEnd", null);
  await expect(loupe).toBeHidden();
  await expect(page.locator(".nudge-pad")).toBeVisible();
});

const touch = (session: CDPSession, type: "touchStart" | "touchMove" | "touchEnd", at: Point | null) =>
  session.send("Input.dispatchTouchEvent", { type, touchPoints: at ? [{ x: at[0], y: at[1] }] : [] });

/** How many colours there are in the loupe: a blank one has two. */
const colours = (page: Page): Promise<number> =>
  page.locator(".loupe").evaluate((loupe: HTMLCanvasElement) => {
    const { data } = loupe.getContext("2d")!.getImageData(0, 0, loupe.width, loupe.height);
    return new Set(new Uint32Array(data.buffer)).size;
  });
