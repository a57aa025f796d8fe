import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { emptyGarden, readGardenText } from "../../src/index.ts";
import { expectAxeClean } from "./axe-clean.ts";
import { expect, test } from "./fixtures.ts";
import type { Planner } from "./planner.ts";

/** A survey as a file: a black square of so many pixels on white, with nothing else on it. */
async function survey(page: Page, type: string, [width, height]: readonly [number, number]): Promise<Buffer> {
  const code = await page.evaluate(
    async ([kind, across, down]) => {
      const canvas = document.createElement("canvas");
      [canvas.width, canvas.height] = [across, down];
      const context = canvas.getContext("2d");
      if (!context) throw new Error("no canvas");
      context.fillStyle = "#fff";
      context.fillRect(0, 0, across, down);
      context.fillStyle = "#000";
      context.fillRect(across / 4, down / 4, across / 2, down / 2);
      return canvas.toDataURL(kind).split(",")[1] ?? "";
    },
    [type, width, height] as const,
  );
  return Buffer.from(code, "base64");
}

async function openSection(planner: Planner, page: Page) {
  await planner.turnTo("Site");
  const section = page.locator("details", { hasText: "Picture beneath the plan" });
  if (!(await section.evaluate((details: HTMLDetailsElement) => details.open)))
    await section.locator("summary").click();
  return section;
}

async function choose(page: Page, name: string, mimeType: string, buffer: Buffer): Promise<void> {
  await page
    .getByLabel(/Choose a picture|Exchange it|Choose it again/)
    .setInputFiles({ name, mimeType, buffer });
}

/** How dark the plan is at its middle, 0 for black; the picture's square lies there. */
const darkAtMiddle = (page: Page): Promise<number> =>
  page
    .locator(".plan-board canvas")
    .first()
    .evaluate((canvas: HTMLCanvasElement) => {
      const [x, y] = [Math.round(canvas.width / 2) + 7, Math.round(canvas.height / 2) + 7];
      return canvas.getContext("2d")?.getImageData(x, y, 1, 1).data[0] ?? 255;
    });

const SIZES = [1200, 800] as const;

test("a survey is laid beneath the plan, scaled by two points, moved, faded, locked, and each step undone", async ({
  planner,
  page,
}) => {
  await planner.startNew("metric");
  const section = await openSection(planner, page);
  const light = await darkAtMiddle(page);
  await choose(page, "survey.png", "image/png", await survey(page, "image/png", SIZES));
  await expect(page.getByRole("button", { name: "Lock the picture beneath the plan" })).toBeVisible();
  await expect.poll(() => darkAtMiddle(page)).toBeLessThan(light - 80);
  await expectAxeClean(page);

  await section.getByRole("button", { name: "Set the scale by two points" }).click();
  const dialog = page.getByRole("dialog", { name: "Scale of the picture" });
  // A and B on the upper corners of the square, 600 px apart: told by hand first, then by numbers exactly.
  const taps = dialog.locator(".underlay-taps");
  const box = await taps.boundingBox();
  if (!box) throw new Error("the picture is not there to be tapped");
  await page.mouse.click(box.x + box.width / 4, box.y + box.height / 4);
  await page.mouse.click(box.x + (3 * box.width) / 4, box.y + box.height / 4);
  const across = async (letter: string) =>
    Number(await dialog.getByLabel(`${letter} from the left`).inputValue());
  expect(Math.abs((await across("A")) - 300)).toBeLessThan(4);
  expect(Math.abs((await across("B")) - 900)).toBeLessThan(4);
  for (const [label, value] of [
    ["A from the left", "300"],
    ["A from the top", "200"],
    ["B from the left", "900"],
    ["B from the top", "200"],
    ["A to B measures", "5 m"],
  ] as const) {
    await dialog.getByLabel(label).fill(value);
    await page.keyboard.press("Enter");
  }
  await expect(dialog).toContainText("The whole picture is then 10.00 m wide.");
  await dialog.getByRole("button", { name: /^Point B/ }).focus();
  await page.keyboard.press("Shift+ArrowRight");
  await expect(dialog.getByLabel("B from the left")).toHaveValue("910");
  await page.keyboard.press("Shift+ArrowLeft");
  await expectAxeClean(page);
  await dialog.getByRole("button", { name: "Set the scale" }).click();
  await expect(dialog).toBeHidden();
  await planner.kept();
  const scaled = (await planner.garden()).underlay;
  expect(scaled?.mmPerPixel).toBeCloseTo(5000 / 600, 9);

  // Dragged where nothing stands; the plan's own things are not moved by it.
  const pixelOf = await planner.lay();
  const [x, y] = scaled?.at ?? [0, 0];
  await page.mouse.move(...pixelOf([x, y]));
  await page.mouse.down();
  await page.mouse.move(...pixelOf([x + 1000, y + 500]), { steps: 6 });
  await page.mouse.up();
  await planner.kept();
  const moved = (await planner.garden()).underlay?.at ?? [0, 0];
  expect(Math.hypot(moved[0] - x - 1000, moved[1] - y - 500)).toBeLessThan(60);

  await section.getByLabel("Turn").fill("90");
  await page.keyboard.press("Enter");
  await section.getByLabel("Strength").fill("100");
  await section.getByLabel("Strength").blur();
  await section.getByLabel("Locked").check();
  await planner.kept();
  expect((await planner.garden()).underlay).toMatchObject({ turn: 90, opacity: 1, locked: true });
  await expect(page.getByRole("button", { name: "Lock the picture beneath the plan" })).toBeHidden();

  // Locked, a drag over it draws a box and leaves it where it is.
  await page.mouse.move(...pixelOf(moved));
  await page.mouse.down();
  await page.mouse.move(...pixelOf([moved[0] + 900, moved[1] + 900]), { steps: 4 });
  await page.mouse.up();
  expect((await planner.garden()).underlay?.at).toEqual(moved);

  await section.getByRole("button", { name: "Remove it" }).click();
  await planner.kept();
  expect((await planner.garden()).underlay).toBeNull();
  // Remove, lock, fade, turn, move, scale, lay: seven steps back.
  for (let i = 0; i < 6; i++) await planner.undo();
  await planner.kept();
  const first = (await planner.garden()).underlay;
  expect(first).toMatchObject({ turn: 0, locked: false, picture: scaled?.picture });
  expect(first?.mmPerPixel).not.toBeCloseTo(5000 / 600, 3);
  await expect.poll(() => darkAtMiddle(page)).toBeLessThan(light - 80);
  await planner.undo();
  await planner.kept();
  expect((await planner.garden()).underlay).toBeNull();
});

test("the picture is there after a reload, goes into the garden's file, not into its link, and comes back on another device", async ({
  planner,
  page,
  browser,
  baseURL,
}) => {
  await planner.startNew("metric");
  await openSection(planner, page);
  await choose(page, "survey.jpg", "image/jpeg", await survey(page, "image/jpeg", SIZES));
  await expect(page.getByRole("button", { name: "Lock the picture beneath the plan" })).toBeVisible();
  await planner.kept();
  const garden = await planner.garden();
  await page.reload();
  await planner.ready();
  await expect.poll(() => darkAtMiddle(page)).toBeLessThan(170);

  const dialog = await planner.openGardens();
  await dialog.getByRole("button", { name: "Link, picture, list" }).click();
  const along = page.getByRole("dialog", { name: /^Take/ });
  await expect(along).toContainText("The picture beneath the plan is not in it");
  const downloading = page.waitForEvent("download");
  await along.getByRole("button", { name: "Save as Garden file" }).click();
  const text = await readFile(await (await downloading).path(), "utf8");
  expect(readGardenText(text).underlay?.data).toMatch(/^data:image\/(webp|jpeg);base64,/);

  const elsewhere = await browser.newContext({ ...(baseURL ? { baseURL } : {}) });
  try {
    const other = await elsewhere.newPage();
    await other.goto("./");
    await expect(other.locator(".plan-board canvas").first()).toBeVisible();
    await other.getByRole("button", { name: "Gardens", exact: true }).click();
    await other
      .getByLabel("Open from a file")
      .setInputFiles({ name: "garden.json", mimeType: "application/json", buffer: Buffer.from(text) });
    await expect(other.getByRole("textbox", { name: "Name of the garden" })).toHaveValue(garden.name);
    await expect.poll(() => darkAtMiddle(other)).toBeLessThan(170);
  } finally {
    await elsewhere.close();
  }
});

test("a file that is no picture, or a broken one, is refused in a sentence, and the garden stays as it is", async ({
  planner,
  page,
}) => {
  await planner.startNew("metric");
  await openSection(planner, page);
  const before = await planner.garden();
  const whole = await survey(page, "image/png", SIZES);
  const tries = [
    ["plan.pdf", "image/png", Buffer.from("%PDF-1.7 and no picture"), /not a picture that can be read here/],
    ["plan.svg", "image/png", Buffer.from("<svg xmlns='http://www.w3.org/2000/svg'/>"), /not a picture/],
    ["half.png", "image/png", Buffer.concat([whole.subarray(0, 60), Buffer.alloc(40, 7)]), /broken/],
    ["bomb.png", "image/png", enlarged(whole, 60_000), /60,000 by 60,000 pixels, more than/],
  ] as const;
  for (const [name, type, buffer, words] of tries) {
    await choose(page, name, type, buffer);
    const notice = page.getByRole("alert").filter({ hasText: words });
    await expect(notice, name).toBeVisible();
    await page.getByRole("button", { name: "Got it: dismiss the notice about the picture" }).click();
  }
  expect(await planner.garden()).toEqual(before);
});

test("a picture that is dropped on the plan lies beneath it", async ({ planner, page }) => {
  await planner.startNew("metric");
  const code = (await survey(page, "image/png", SIZES)).toString("base64");
  await page.locator(".plan-board").evaluate((board, base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([bytes], "survey.png", { type: "image/png" }));
    const over = new DragEvent("dragover", { dataTransfer, bubbles: true, cancelable: true });
    board.dispatchEvent(over);
    if (!over.defaultPrevented) throw new Error("the plan takes no files");
    board.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
  }, code);
  await expect(page.getByRole("button", { name: "Lock the picture beneath the plan" })).toBeVisible();
  await planner.kept();
  expect((await planner.garden()).underlay?.pixels).toEqual([...SIZES]);
});

test("a large photo is scaled down to what is kept, and says nothing of where it was taken", async ({
  planner,
  page,
}) => {
  await planner.startNew("metric");
  await openSection(planner, page);
  const photo = withCameraData(await survey(page, "image/jpeg", [4000, 3000]), "48.8584 N 2.2945 E");
  await choose(page, "photo.jpg", "image/jpeg", photo);
  await expect(page.getByRole("button", { name: "Lock the picture beneath the plan" })).toBeVisible();
  await planner.kept();
  const [width, height] = (await planner.garden()).underlay?.pixels ?? [0, 0];
  expect(width * height).toBeLessThanOrEqual(4_010_000);
  expect(width / height).toBeCloseTo(4 / 3, 2);

  const dialog = await planner.openGardens();
  const downloading = page.waitForEvent("download");
  await dialog.getByRole("button", { name: "Save to a file" }).click();
  const { underlay } = readGardenText(await readFile(await (await downloading).path(), "utf8"));
  const carried = Buffer.from(underlay?.data?.split(",")[1] ?? "", "base64");
  expect(carried.length).toBeGreaterThan(1000);
  expect(photo.includes("48.8584")).toBe(true);
  expect(carried.includes("48.8584")).toBe(false);
});

test("where storage is denied the picture lies beneath the plan all the same, and that it is not kept is said", async ({
  page,
  planner,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("denied", "SecurityError");
    };
  });
  await page.reload();
  await planner.ready();
  await openSection(planner, page);
  await choose(page, "survey.png", "image/png", await survey(page, "image/png", SIZES));
  await expect(page.getByRole("alert").filter({ hasText: "could not be kept" })).toBeVisible();
  await expect(page.getByRole("button", { name: "Lock the picture beneath the plan" })).toBeVisible();
});

test("a garden whose picture is not on this device keeps its place and asks for it", async ({
  planner,
  page,
}) => {
  const garden = {
    ...emptyGarden("metric"),
    underlay: {
      picture: "a".repeat(64),
      pixels: [600, 400] as const,
      at: [5000, 4000] as const,
      turn: 10,
      mmPerPixel: 20,
      opacity: 0.5,
      locked: true,
      data: null,
    },
  };
  await planner.openGarden(garden);
  const section = await openSection(planner, page);
  await expect(section.getByRole("alert")).toContainText("not on this device");
  await choose(page, "survey.png", "image/png", await survey(page, "image/png", SIZES));
  await expect(section.getByRole("alert")).toBeHidden();
  await planner.kept();
  // As wide as the one it takes the place of: 600 pixels of 20 mm are 1200 of 10.
  expect((await planner.garden()).underlay).toMatchObject({
    mmPerPixel: 10,
    turn: 10,
    at: [5000, 4000],
    locked: true,
  });
});

/** A PNG that says it is far larger than it is. */
function enlarged(png: Buffer, side: number): Buffer {
  const copy = Buffer.from(png);
  copy.writeUInt32BE(side, 16);
  copy.writeUInt32BE(side, 20);
  return copy;
}

/** A JPEG as a camera makes it, with what it knows in a segment of its own (Exif 2.32, section 4.5.4). */
function withCameraData(jpeg: Buffer, told: string): Buffer {
  const data = Buffer.from(`Exif\u0000\u0000${told}`);
  const marker = Buffer.from([0xff, 0xe1, 0, data.length + 2]);
  return Buffer.concat([jpeg.subarray(0, 2), marker, data, jpeg.subarray(2)]);
}
