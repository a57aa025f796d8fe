import { expect, type Page, test } from "@playwright/test";
import { builtSite, laterSite, type Server, serve } from "./built-site.ts";
import { Planner } from "./planner.ts";
import { printedPages } from "./printed-page.ts";

let server: Server;
test.beforeEach(async () => {
  server = await serve(builtSite());
});
test.afterEach(() => server.stop());

async function visit(page: Page): Promise<Planner> {
  const planner = new Planner(page);
  await page.goto(server.address);
  await planner.ready();
  return planner;
}

/** Until the first worker has stored everything: what a first visit does in its own time. */
const stored = (page: Page) =>
  page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    while (active?.state !== "activated") await new Promise((goOn) => setTimeout(goOn, 50));
  });

/** The extra words of the page's edition; "" for the first. */
const edition = (page: Page) =>
  page.evaluate(() => document.querySelector<HTMLMetaElement>('meta[name="edition"]')?.content ?? "");

const lookForUpdate = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update().catch(() => undefined);
  });

const press = async (page: Page, key: string, times: number) => {
  for (let i = 0; i < times; i++) await page.keyboard.press(key);
};

test("from the second visit on, the whole job is done with the network off", async ({ page, context }) => {
  const complaints: string[] = [];
  context.on("weberror", (error) => complaints.push(error.error().message));
  page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  await visit(page);
  await stored(page);
  await server.stop();

  const planner = await visit(page);
  await planner.thing("Squash").focus();
  await press(page, "ArrowRight", 4);
  await planner.thing("Beans").focus();
  await press(page, "Shift+ArrowRight", 2);
  await planner.thing("Peppers").focus();
  await press(page, "Shift+ArrowDown", 15);
  await press(page, "Shift+ArrowRight", 2);
  await expect(planner.summary).toContainText("Nothing to fix");
  // Every leaf and dialog is a chunk of its own.
  for (const leaf of ["Takeoff", "Sun", "Year round", "Site", "Snags"] as const) await planner.turnTo(leaf);
  const dialog = await planner.openGardens();
  await page.keyboard.press("Escape");
  await expect(dialog).toBeHidden();
  await planner.openSheet();
  const printed = await printedPages(await planner.print());
  expect(printed.length).toBeGreaterThan(0);
  expect(printed[0]?.text).not.toMatch(/still to fix/);
  await page.keyboard.press("Escape");
  await planner.kept();
  const garden = await planner.garden();

  await page.reload();
  await planner.ready();
  expect(await planner.garden()).toEqual(garden);
  expect(await page.evaluate(() => document.fonts.check('500 16px "Barlow Semi Condensed"'))).toBe(true);
  expect(complaints.filter((words) => !/ERR_CONNECTION_REFUSED/.test(words))).toEqual([]);
});

test("every file of the build is stored, and nothing of another origin", async ({ page, context }) => {
  await visit(page);
  await stored(page);
  const addresses = await page.evaluate(async () => {
    const names = await caches.keys();
    const kept = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return { names, addresses: kept.flat().map(({ url }) => url) };
  });
  expect(addresses.names).toHaveLength(1);
  const paths = addresses.addresses.map((address) => address.replace(server.address, "")).sort();
  const wanted = [...server.site.keys()].filter(
    (path) => !/^(sw\.js$|garden\.schema\.json$|pictures\/)/.test(path),
  );
  expect(paths).toEqual(wanted.sort());
  expect(paths.filter((path) => /\.woff2$/.test(path)).length).toBeGreaterThan(1);
  expect(paths.filter((path) => /worker.*\.js$/.test(path)).length).toBeGreaterThan(0);

  // A page that a worker stands behind asks the network for nothing.
  await page.close();
  server.asked = [];
  await visit(await context.newPage());
  expect(server.asked.filter((path) => path !== "sw.js")).toEqual([]);
});

test("a new version waits until somebody says so, and is then used in every tab, with every change kept", async ({
  page,
  context,
}) => {
  await visit(page);
  await stored(page);
  const planner = await visit(page);
  const other = await context.newPage();
  await visit(other);
  server.site = laterSite(server.site, "second edition");
  await page.bringToFront();
  await lookForUpdate(page);
  const useNow = page.getByRole("button", { name: "Use it now" });
  await expect(useNow).toBeVisible();
  await page.reload();
  await planner.ready();
  expect(await edition(page), "it is not used unasked").toBe("");

  await planner.thing("Squash").focus();
  await page.keyboard.press("ArrowRight");
  const squash = await planner.placeOf("Squash");
  const loaded = [page, other].map((each) => each.waitForEvent("load"));
  await useNow.click();
  await Promise.all(loaded);
  await planner.ready();
  expect(await edition(page)).toBe("second edition");
  expect(await edition(other)).toBe("second edition");
  expect(await planner.placeOf("Squash")).toEqual(squash);
  await expect(useNow).toBeHidden();
  expect(await page.evaluate(() => caches.keys()), "the first version is gone").toHaveLength(1);
});

test("files of two versions are never mixed: a version that is not whole is not stored", async ({ page }) => {
  await visit(page);
  await stored(page);
  const planner = await visit(page);
  const later = laterSite(server.site, "second edition");
  const page1 = server.site.get("index.html");
  if (!page1) throw new Error("the build has no page");
  // In the middle of being put up: the worker is there, its page is not.
  server.site = new Map([...later, ["index.html", page1]]);
  await lookForUpdate(page);
  await expect.poll(() => server.asked.includes("index.html")).toBe(true);
  await expect
    .poll(() =>
      page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.installing === null),
    )
    .toBe(true);
  expect(await page.evaluate(() => caches.keys())).toHaveLength(1);
  await expect(page.getByRole("button", { name: "Use it now" })).toHaveCount(0);
  await page.reload();
  await planner.ready();
  expect(await edition(page)).toBe("");

  server.site = later;
  await lookForUpdate(page);
  await expect(page.getByRole("button", { name: "Use it now" })).toBeVisible();
});

test("the page can be installed: its manifest names icons that are there, of the sizes it says", async ({
  page,
}) => {
  await visit(page);
  const link = await page.locator('link[rel="manifest"]').getAttribute("href");
  const manifest = JSON.parse((server.site.get((link ?? "").replace("./", "")) ?? "").toString());
  expect(manifest).toMatchObject({ name: "Bedwright", display: "standalone", start_url: "./" });
  const purposes = [];
  for (const { src, sizes, purpose } of manifest.icons) {
    purposes.push(purpose);
    const natural = await page.evaluate(async (address) => {
      const image = new Image();
      image.src = address;
      await image.decode();
      return `${image.naturalWidth}x${image.naturalHeight}`;
    }, src);
    if (sizes !== "any") expect(natural).toBe(sizes);
  }
  expect(purposes).toContain("maskable");
  const devtools = await page.context().newCDPSession(page);
  const { errors } = await devtools.send("Page.getAppManifest");
  expect(errors).toEqual([]);
});
