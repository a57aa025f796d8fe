import type { Page } from "@playwright/test";
import { EXAMPLES, writeGarden } from "../../src/index.ts";
import { expectAxeClean } from "./axe-clean.ts";
import { expect, test } from "./fixtures.ts";
import { Planner } from "./planner.ts";

const undoButton = (page: Page) => page.getByRole("button", { name: "Undo" });
const redoButton = (page: Page) => page.getByRole("button", { name: "Redo" });

/** Moves a thing an inch to the right, as one step of its own. */
async function nudge(planner: Planner, name: string): Promise<void> {
  await planner.thing(name).focus();
  await planner.page.keyboard.press("ArrowRight");
}

test("what was done and undone is there after a reload, step by step", async ({ planner, page }) => {
  const places: unknown[] = [await planner.placeOf("Squash")];
  for (const name of ["Squash", "Beans", "Squash"]) {
    await nudge(planner, name);
    places.push([await planner.placeOf("Squash"), await planner.placeOf("Beans")]);
  }
  await planner.undo();
  await planner.kept();
  const garden = await planner.garden();

  await page.reload();
  await planner.ready();
  expect(await planner.garden()).toEqual(garden);
  await expect(undoButton(page)).toHaveAttribute("title", /^Undo: Move Beans/);
  await redoButton(page).click();
  expect([await planner.placeOf("Squash"), await planner.placeOf("Beans")]).toEqual(places[3]);
  for (let i = 0; i < 3; i++) await planner.undo();
  expect(await planner.placeOf("Squash")).toEqual(places[0]);
  await expect(undoButton(page)).toHaveAttribute("aria-disabled", "true");

  // The place in the history is kept as well, though nothing of the steps was written anew.
  await planner.kept();
  await page.reload();
  await planner.ready();
  await expect(undoButton(page)).toHaveAttribute("aria-disabled", "true");
  for (let i = 0; i < 3; i++) await redoButton(page).click();
  expect([await planner.placeOf("Squash"), await planner.placeOf("Beans")]).toEqual(places[3]);
});

test("each earlier state can be gone back to, and going back can be undone", async ({ planner, page }) => {
  const first = await planner.placeOf("Squash");
  await nudge(planner, "Squash");
  await planner.kept();
  await nudge(planner, "Beans");
  await planner.kept();
  const last = await planner.garden();

  const dialog = await planner.openGardens();
  await dialog.getByRole("button", { name: /^Earlier states of/ }).click();
  const states = dialog.getByRole("region", { name: /^Earlier states of/ }).getByRole("listitem");
  await expect(states).toHaveCount(3);
  await expect(states.first()).toContainText(/Move Beans/);
  await expect(states.last()).toContainText("As it was opened");
  await expectAxeClean(page);
  await states.last().getByRole("button").click();
  await expect(dialog).toBeHidden();
  expect(await planner.placeOf("Squash")).toEqual(first);
  await expect(undoButton(page)).toHaveAttribute("title", /^Undo: Go back to/);
  await planner.kept();
  await planner.undo();
  await planner.kept();
  expect(await planner.garden()).toEqual(last);
});

test("a garden is changed in one tab at a time; the other shows what is done and may take over", async ({
  planner,
  page,
  context,
}) => {
  await nudge(planner, "Squash");
  await planner.kept();
  const pixelOf = await planner.lay();
  const second = new Planner(await context.newPage());
  await second.open();
  const takeOver = (at: Page) => at.getByRole("button", { name: "Change it here" });
  await expect(takeOver(second.page)).toBeVisible();
  await expect(second.page.getByText("being changed in another tab")).toBeVisible();

  await expectAxeClean(second.page);

  // Nothing is changed here, whichever way it is tried.
  const before = await second.placeOf("Squash");
  await nudge(second, "Squash");
  const [x, y] = pixelOf(await planner.placeOf("Beans"));
  await second.page.mouse.move(x, y);
  await second.page.mouse.down();
  await second.page.mouse.move(x + 60, y, { steps: 5 });
  await second.page.mouse.up();
  await second.page.keyboard.press("Control+z");
  await second.thing("Tomatoes").focus();
  await second.page.keyboard.press("Delete");
  await expect(second.thing("Tomatoes")).toHaveCount(1);
  expect(await second.placeOf("Beans")).toEqual(await planner.placeOf("Beans"));
  expect(await second.placeOf("Squash")).toEqual(before);

  // What is done in the first shows in the second.
  await page.bringToFront();
  await nudge(planner, "Beans");
  const beans = await planner.placeOf("Beans");
  await expect.poll(() => second.placeOf("Beans")).toEqual(beans);

  // What the first had not kept yet is kept before it lets go.
  await nudge(planner, "Tomatoes");
  const tomatoes = await planner.placeOf("Tomatoes");
  await takeOver(second.page).click();
  await expect(takeOver(second.page)).toBeHidden();
  expect(await second.placeOf("Tomatoes")).toEqual(tomatoes);
  await expect(takeOver(page)).toBeVisible();

  await nudge(second, "Peppers");
  const peppers = await second.placeOf("Peppers");
  await second.kept();
  await expect.poll(() => planner.placeOf("Peppers")).toEqual(peppers);
  await expect(undoButton(second.page)).toHaveAttribute("title", /Peppers/);

  // Once the second is closed, the first goes on by itself, with all that was done.
  await second.page.close();
  await expect(takeOver(page)).toBeHidden();
  await planner.undo();
  expect(await planner.placeOf("Peppers")).not.toEqual(peppers);
  await planner.undo();
  expect(await planner.placeOf("Tomatoes")).not.toEqual(tomatoes);
});

test("a tab that cannot keep its changes does not let go of them", async ({ planner, page, context }) => {
  await nudge(planner, "Squash");
  await planner.kept();
  const second = new Planner(await context.newPage());
  await second.open();
  await page.bringToFront();
  // As a full disk does. (The browser's own quota is met in the next test; it takes its time.)
  await page.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("no room", "QuotaExceededError");
    };
    addEventListener("room", () => {
      IDBObjectStore.prototype.put = put;
    });
  });
  await nudge(planner, "Beans");
  await expect(page.getByRole("alert")).toContainText("Not saved.");
  const beans = await planner.placeOf("Beans");
  await second.page.getByRole("button", { name: "Change it here" }).click();
  await expect(second.page.getByRole("alert")).toContainText("changes that it cannot save");
  expect(await planner.placeOf("Beans")).toEqual(beans);
  await page.evaluate(() => dispatchEvent(new Event("room")));
  await expect(page.locator(".kept-line")).toHaveText("Saved", { timeout: 15_000 });
  await second.page.getByRole("button", { name: "Try again" }).click();
  await expect(second.page.getByRole("alert")).toBeHidden();
  expect(await second.placeOf("Beans")).toEqual(beans);
});

test("a full disk is said at once, stays said, and the garden can be saved to a file from there", async ({
  planner,
  page,
  context,
  baseURL,
}) => {
  const devtools = await context.newCDPSession(page);
  const { origin } = new URL(baseURL ?? "");
  await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
  await nudge(planner, "Squash");
  const notice = page.getByRole("alert");
  await expect(notice).toContainText("Not saved. This device’s storage is full.");
  await expect(page.locator(".kept-line")).toHaveText("Not saved");
  await expectAxeClean(page);
  const downloading = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save to a file" }).click();
  expect((await downloading).suggestedFilename()).toMatch(/\.bedwright\.json$/);
  await expect(notice, "it is not saved on this device yet").toBeVisible();

  await devtools.send("Storage.overrideQuotaForOrigin", { origin });
  await expect(page.locator(".kept-line")).toHaveText("Saved", { timeout: 15_000 });
  await expect(notice).toBeHidden();
});

const DENIALS: Readonly<Record<string, () => void>> = {
  "has no storage": () => {
    Object.defineProperty(window, "indexedDB", { value: undefined });
    Object.defineProperty(window, "localStorage", {
      get() {
        throw new DOMException("denied", "SecurityError");
      },
    });
  },
  "denies its storage": () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("denied", "SecurityError");
    };
  },
};
for (const [what, deny] of Object.entries(DENIALS)) {
  test(`a browser that ${what} is told of before anything is done, and the planner works on`, async ({
    page,
  }) => {
    await page.addInitScript(deny);
    const planner = new Planner(page);
    await planner.open();
    await expect(page.getByRole("alert")).toContainText("This browser keeps nothing here");
    const squash = await planner.placeOf("Squash");
    await nudge(planner, "Squash");
    expect((await planner.placeOf("Squash"))[0]).toBeGreaterThan(squash[0]);
    await planner.undo();
    expect(await planner.placeOf("Squash")).toEqual(squash);
    await expect(page.getByRole("alert")).toBeVisible();

    // Nothing leaves the board before it is safe.
    await nudge(planner, "Squash");
    const dialog = await planner.openGardens();
    await dialog.getByRole("button", { name: "New yard, metric" }).click();
    await expect(dialog.getByRole("alert")).toContainText("is not saved. Save it to a file first");
    const downloading = page.waitForEvent("download");
    await dialog.getByRole("button", { name: "Save to a file" }).click();
    await downloading;
    await dialog.getByRole("button", { name: "New yard, metric" }).click();
    await expect(dialog).toBeHidden();
    await expect(page.getByRole("textbox", { name: "Name of the garden" })).toHaveValue("New yard");
    await expect(page.getByRole("alert")).toContainText("Not saved.");
  });
}

const NEWER = writeGarden(EXAMPLES[0].garden).replace(/"version": \d+/, '"version": 99');
const SPOILT: readonly { readonly what: string; readonly text: string; readonly problem: RegExp }[] = [
  { what: "of a newer version", text: NEWER, problem: /made by a newer Bedwright/ },
  { what: "cut short", text: NEWER.slice(0, 400), problem: /not JSON/ },
];
for (const { what, text, problem } of SPOILT) {
  test(`a kept garden ${what} is set aside whole, said, and can be rescued`, async ({ planner, page }) => {
    await nudge(planner, "Squash");
    await planner.kept();
    await page.evaluate(putText, text);
    await page.reload();
    await planner.ready();

    const notice = page.getByRole("alert");
    await expect(notice).toContainText("is set aside, whole");
    await expect(notice).toContainText(problem);
    await expectAxeClean(page);
    await nudge(planner, "Beans");
    await planner.kept();

    const dialog = await planner.openGardens();
    await expectAxeClean(page);
    const row = dialog.locator(".kept-row").filter({ hasText: "set aside" });
    await expect(row).toContainText(problem);
    const downloading = page.waitForEvent("download");
    await row.getByRole("button", { name: /^Save as file: / }).click();
    const stream = await (await downloading).createReadStream();
    const chunks: Buffer[] = [];
    for await (const chunk of stream) chunks.push(Buffer.from(chunk));
    expect(Buffer.concat(chunks).toString()).toBe(text);

    // Its earlier states are still good.
    await row.getByRole("button", { name: /^Earlier states of/ }).click();
    await row.getByRole("button", { name: /^Go back to .*Move Squash/ }).click();
    await expect(dialog).toBeHidden();
    await expect(page.getByRole("textbox", { name: "Name of the garden" })).toHaveValue(/\(rescued\)$/);
    await planner.openGardens();
    await expect(row, "what could not be read stays").toHaveCount(1);
  });
}

/** Runs in the page: puts another text in place of that of the garden last on the board. */
function putText(text: string): Promise<void> {
  const id = localStorage.getItem("bedwright-last-open") ?? "";
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open("bedwright");
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const transaction = opening.result.transaction("gardens", "readwrite");
      const store = transaction.objectStore("gardens");
      const asked = store.get(id);
      asked.onsuccess = () => store.put({ ...asked.result, text });
      transaction.oncomplete = () => {
        opening.result.close();
        resolve();
      };
      transaction.onerror = () => reject(transaction.error);
    };
  });
}

test("a garden kept by an earlier version of the storage is there, and its history begins anew", async ({
  page,
}) => {
  const text = writeGarden({ ...EXAMPLES[0].garden, name: "From before" });
  await page.route("**/before", (route) =>
    route.fulfill({ contentType: "text/html", body: '<link rel="icon" href="data:,">' }),
  );
  await page.goto("./before");
  await page.evaluate(
    (own) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("bedwright", 1);
        opening.onupgradeneeded = () =>
          opening.result.createObjectStore("gardens", { keyPath: "id" }).createIndex("changed", "changed");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const transaction = opening.result.transaction("gardens", "readwrite");
          transaction
            .objectStore("gardens")
            .put({ id: "old", name: "From before", changed: 5, beds: 8, text: own });
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    text,
  );
  const planner = new Planner(page);
  await planner.open();
  await expect(page.getByRole("textbox", { name: "Name of the garden" })).toHaveValue("From before");
  await nudge(planner, "Squash");
  await planner.kept();
  await page.reload();
  await planner.ready();
  await expect(undoButton(page)).toHaveAttribute("title", /^Undo: Move Squash/);
});
