import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { BrowserContext, Page } from "@playwright/test";
import { expectAxeClean } from "./axe-clean.ts";
import { expect, test } from "./fixtures.ts";

/** The whole page in German, and in a made-up language whose every text is half as long again. */

const SIZES = [
  { width: 1440, height: 900 },
  { width: 768, height: 1024 },
  { width: 390, height: 844 },
];

async function speakGerman(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => localStorage.setItem("bedwright-language", "de"));
}

async function openSpoken(page: Page): Promise<void> {
  await page.goto("./");
  await expect(page.locator(".summary [data-proof='settled']")).toBeVisible({ timeout: 30_000 });
  await page.evaluate(() => document.fonts.ready);
}

const turnTo = (page: Page, tab: number) => page.getByRole("tablist").getByRole("tab").nth(tab).click();

test("the planner speaks German where that was chosen, and axe finds nothing in it", async ({
  context,
  page,
}) => {
  await speakGerman(context);
  await openSpoken(page);
  await expect(page.locator("html")).toHaveAttribute("lang", "de");
  const snag = page.locator("[data-snag]").first();
  await expect(snag).toContainText(/Zoll|Fuß|zu |kein/);
  await expect(snag).not.toContainText(/\b(the|is|are|too|needed)\b/);
  await expectAxeClean(page);
  const tabs = await page.getByRole("tablist").getByRole("tab").count();
  for (let tab = 0; tab < tabs; tab++) {
    await turnTo(page, tab);
    await expectAxeClean(page);
  }
});

test("the takeoff reads in German, its money and figures too", async ({ context, page }) => {
  await speakGerman(context);
  await openSpoken(page);
  await turnTo(page, 1);
  const leaf = page.getByRole("tabpanel");
  await expect(leaf).toContainText("Zuschnittplan");
  await expect(leaf).toContainText("nachweislich am billigsten");
  await expect(leaf).toContainText(/\d\.\d{3}|\d,\d{2}\s?\$/);
});

test("a device that asks for French is met in English, and no other words are fetched", async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ locale: "fr-FR", ...(baseURL ? { baseURL } : {}) });
  const asked: string[] = [];
  context.on("request", (request) => asked.push(request.url()));
  const page = await context.newPage();
  await openSpoken(page);
  await expect(page.locator("html")).toHaveAttribute("lang", "en-US");
  expect(asked.filter((url) => /catalogue|make-speaker/.test(url))).toEqual([]);
  await context.close();
});

test("texts half as long again are cut nowhere, and nothing scrolls sideways", async ({ context, page }) => {
  await speakGerman(context);
  await context.route(/\/assets\/catalogue-de-[^/]+\.js$/, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: await grownChunk(await response.text()) });
  });
  await openSpoken(page);
  for (const size of SIZES) {
    await page.setViewportSize(size);
    const tabs = await page.getByRole("tablist").getByRole("tab").count();
    for (let tab = 0; tab < tabs; tab++) {
      await turnTo(page, tab);
      await expect(page.getByRole("tabpanel")).toBeVisible();
      expect(await page.evaluate(cutTexts), `${size.width} wide, leaf ${tab + 1}`).toEqual([]);
      const [wide, shown] = await page.evaluate(() => {
        const { scrollWidth, clientWidth } = document.documentElement;
        return [scrollWidth, clientWidth] as const;
      });
      expect(wide, `${size.width} wide, leaf ${tab + 1}`).toBeLessThanOrEqual(shown);
    }
  }
});

/** The catalogue's chunk, with each English text made half as long again in place of the German one. */
async function grownChunk(code: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "words-"));
  try {
    const file = join(folder, "catalogue.mjs");
    await writeFile(file, code);
    const { default: words } = (await import(pathToFileURL(file).href)) as {
      default: Record<string, string>;
    };
    const long = Object.keys(words).map((key) => [key, grown(key.replace(/_(one|other)$/, ""))]);
    expect(long.length).toBeGreaterThan(1000);
    return `export default ${JSON.stringify(Object.fromEntries(long))};`;
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** Half as many letters more: a word grows at its end, a sentence by more words. */
function grown(text: string): string {
  const more = Math.ceil(text.replace(/\{\{\w+\}\}/g, "").length / 2);
  const letters = "xo".repeat(more).slice(0, more);
  return /\s/.test(text.trim()) ? `${text}${letters.replace(/(.{6})/g, " $1")}` : `${text}${letters}`;
}

/** Texts in the page that are wider than what they stand in, where what they stand in cuts them off. */
function cutTexts(): string[] {
  const cut: string[] = [];
  /** It stands in a corner a dot large, for screen readers. */
  const isForTheEar = (element: Element | null): boolean =>
    element !== null && (element.getBoundingClientRect().width < 2 || isForTheEar(element.parentElement));
  // The card's heading is a name, however long: it keeps to one line by design.
  const looked =
    "button, a, label, summary, h1, h2:not(.card-head h2), h3, p, dt, dd, th, td, li, legend, [role=tab]";
  for (const element of document.querySelectorAll<HTMLElement>(looked)) {
    const { width, height } = element.getBoundingClientRect();
    if (width < 2 || height < 2 || element.closest("[hidden], [inert]") || isForTheEar(element)) continue;
    const hasText = [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim());
    if (!hasText || element.clientWidth === 0) continue;
    if (element.scrollWidth > element.clientWidth + 1)
      cut.push(`${element.tagName} ${element.className}: ${element.textContent?.slice(0, 60)}`);
  }
  return cut;
}
