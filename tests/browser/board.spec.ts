import type { Page } from "@playwright/test";
import { DARK, LIGHT, SHARPER } from "../../app/style/ink.ts";
import { expectAxeClean } from "./axe-clean.ts";
import { expect, test } from "./fixtures.ts";
import { Planner } from "./planner.ts";
import { printedPages } from "./printed-page.ts";

/** The colour of the paper round the yard as the plan's canvas has it, and as the page's style has it. */
const papers = (page: Page) =>
  page.evaluate(() => {
    const ruler = document.querySelector<HTMLCanvasElement>(".ruler-top")!;
    // Between the last tick and the edge nothing but paper is drawn.
    const look = new OffscreenCanvas(1, 1).getContext("2d", { willReadFrequently: true })!;
    look.drawImage(ruler, ruler.width - 1, 1, 1, 1, 0, 0, 1, 1);
    const [r, g, b] = look.getImageData(0, 0, 1, 1).data;
    const hex = (...parts: number[]) => `#${parts.map((one) => one.toString(16).padStart(2, "0")).join("")}`;
    const style = getComputedStyle(document.querySelector(".topbar")!).backgroundColor;
    return { canvas: hex(r!, g!, b!), page: hex(...(style.match(/\d+/g) ?? []).slice(0, 3).map(Number)) };
  });
const both = (paper: string) => ({ canvas: paper, page: paper });

test("the board goes with the device from day to evening and back, while it is worked on", async ({
  planner,
  page,
}) => {
  expect(await papers(page)).toEqual(both(LIGHT.paper));
  await page.emulateMedia({ colorScheme: "dark" });
  await expect.poll(() => papers(page)).toEqual(both(DARK.paper));
  await expectAxeClean(page);
  for (const leaf of ["Takeoff", "Sun", "Site"] as const) {
    await planner.turnTo(leaf);
    await expectAxeClean(page);
  }
  await page.emulateMedia({ colorScheme: "light" });
  await expect.poll(() => papers(page)).toEqual(both(LIGHT.paper));
});

test("a board that was chosen stays with the device, and is there before the first paint", async ({
  planner,
  page,
}) => {
  await page.getByRole("button", { name: "To the dark board" }).click();
  await expect.poll(() => papers(page)).toEqual(both(DARK.paper));
  await expect(page.locator('meta[name="theme-color"]').first()).toHaveAttribute("content", DARK.paper);

  // The ground of the page at each paint, from the very first: a light one would be a flash in a dark room.
  await page.addInitScript(() => {
    const grounds = new Set<string>();
    Object.assign(window, { grounds });
    const look = () => {
      if (document.body) grounds.add(getComputedStyle(document.body).backgroundColor);
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await page.reload();
  await planner.ready();
  expect(await papers(page)).toEqual(both(DARK.paper));
  const grounds = await page.evaluate(() => [...(window as unknown as { grounds: Set<string> }).grounds]);
  expect(grounds.filter((ground) => ground !== "rgba(0, 0, 0, 0)")).toEqual(["rgb(31, 27, 21)"]);

  // It is no part of the garden: another browser opens the same garden on its own board.
  await planner.turnTo("Site");
  await page.getByText("This device", { exact: true }).click();
  await page.getByRole("button", { name: "As the device" }).click();
  await expect.poll(() => papers(page)).toEqual(both(LIGHT.paper));
});

test("paper is white whatever the board", async ({ planner, page }) => {
  await page.emulateMedia({ colorScheme: "dark" });
  const sheet = await planner.openSheet();
  await expectAxeClean(page);
  await expect(sheet.locator(".sheet-page")).toHaveCSS("background-color", "rgb(255, 255, 255)");
  await page.emulateMedia({ colorScheme: "dark", media: "print" });
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe("light");
  await page.emulateMedia({ colorScheme: "dark", media: null });
  expect(await printedPages(await planner.print())).toHaveLength(1);
});

test("more contrast is given where it is asked for", async ({ page }) => {
  const planner = new Planner(page);
  await page.emulateMedia({ contrast: "more" });
  await planner.open();
  const faint = () => page.locator(".snag-source").first();
  const rgb = (hex: string) =>
    `rgb(${[1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)).join(", ")})`;
  await expect(faint()).toHaveCSS("color", rgb(SHARPER.light.faint));
  await expectAxeClean(page);
  await page.emulateMedia({ contrast: "more", colorScheme: "dark" });
  await expect(faint()).toHaveCSS("color", rgb(SHARPER.dark.faint));
  await expectAxeClean(page);
});

test("with colours forced the plan is drawn in the device's own, and what is chosen is still told", async ({
  page,
}) => {
  const planner = new Planner(page);
  await page.emulateMedia({ forcedColors: "active", colorScheme: "dark" });
  await planner.open();
  const system = await page.evaluate(() => {
    const probe = document.createElement("i");
    document.body.append(probe);
    const seen = (word: string) => {
      probe.style.color = word;
      return getComputedStyle(probe).color;
    };
    const colours = { canvas: seen("Canvas"), highlight: seen("Highlight"), text: seen("CanvasText") };
    probe.remove();
    return colours;
  });
  expect(system.canvas, "the device has a ground of its own").not.toBe("rgb(31, 27, 21)");
  const { canvas } = await papers(page);
  const hex = `#${(system.canvas.match(/\d+/g) ?? []).map((one) => Number(one).toString(16).padStart(2, "0")).join("")}`;
  expect(canvas).toBe(hex);

  // One of many is told by its border in the accent of the device; the others have none.
  await planner.snags.first().getByRole("button").first().click();
  await expect(planner.snags.first()).toHaveCSS("border-left-color", system.highlight);
  await expect(planner.snags.nth(1)).toHaveCSS("border-left-color", system.canvas);
  await expect(page.getByRole("button", { name: "ft-in" })).toHaveCSS("background-color", system.highlight);
  await expect(page.locator(".grade-mark path").first()).toHaveCSS("fill", system.highlight);
});

test("nothing on the page moves by itself, and with less motion the day goes by in leaps", async ({
  planner,
  page,
}) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await planner.turnTo("Sun");
  const moving = await page.evaluate(
    () =>
      [...document.querySelectorAll("*")].filter((element) => {
        const { animationName, transitionDuration } = getComputedStyle(element);
        return animationName !== "none" || !/^(0s(, )?)+$/.test(transitionDuration);
      }).length,
  );
  expect(moving).toBe(0);

  await page.getByRole("button", { name: /Play/ }).first().click();
  const hour = page.getByRole("slider", { name: /Hour/ }).first();
  const seen = new Set<string>();
  const until = Date.now() + 3500;
  while (Date.now() < until) {
    seen.add(await hour.inputValue());
    await page.waitForTimeout(50);
  }
  // A leap a second, not sixty frames of it.
  expect(seen.size).toBeGreaterThan(1);
  expect(seen.size).toBeLessThanOrEqual(6);
});

test("a notice that comes moves nothing under the hand", async ({ planner, page }) => {
  const lies = await planner.board.boundingBox();
  const mark = await page.locator(".scale-bar").boundingBox();
  // A link that cannot be read is told of when it is opened.
  await page.goto("./#garden=nonsense");
  await page.reload();
  await planner.ready();
  await expect(page.getByRole("alert").filter({ hasText: /link/i })).toBeVisible();
  expect(await planner.board.boundingBox()).toEqual(lies);
  expect(await page.locator(".scale-bar").boundingBox()).toEqual(mark);
  await expectAxeClean(page);
});
