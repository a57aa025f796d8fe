import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { expect, test } from "./fixtures.ts";
import type { Planner } from "./planner.ts";

async function takeAlong(planner: Planner, page: Page) {
  const dialog = await planner.openGardens();
  await dialog.getByRole("button", { name: "Link, picture, list" }).click();
  return page.getByRole("dialog", { name: /^Take/ });
}

test("the plan is saved as a picture, in SVG and in dots, true to scale", async ({ planner, page }) => {
  const dialog = await takeAlong(planner, page);
  const saved = async (label: string) => {
    const downloading = page.waitForEvent("download");
    await dialog.getByRole("button", { name: `Save as ${label}` }).click();
    const download = await downloading;
    return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
  };

  const svg = await saved("Picture (SVG)");
  expect(svg.name).toBe("heron-lane-back-yard.svg");
  const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg.bytes.toString("utf8")) ?? [];
  expect(Number(width)).toBeGreaterThan(200);

  await dialog.getByLabel("Dots to the inch").selectOption("96 dots to the inch");
  const png = await saved("Picture (PNG)");
  expect(png.name).toBe("heron-lane-back-yard.png");
  expect([png.bytes.readUInt32BE(16), png.bytes.readUInt32BE(20)]).toEqual([
    Math.round((Number(width) / 25.4) * 96),
    Math.round((Number(height) / 25.4) * 96),
  ]);
  // 96 to the inch are 3780 to the metre: the picture prints as large as it is drawn.
  const at = png.bytes.indexOf("pHYs");
  expect(png.bytes.readUInt32BE(at + 4)).toBe(3780);

  // The browser draws both alike, and there is a drawing on them: some ink, mostly paper.
  const shares = await page.evaluate(
    async ([first, second]) => {
      const inkOf = async (bytes: string, type: string) => {
        const image = new Image();
        image.src = `data:${type};base64,${bytes}`;
        await image.decode();
        const canvas = document.createElement("canvas");
        [canvas.width, canvas.height] = [600, Math.round((600 * image.naturalHeight) / image.naturalWidth)];
        const context = canvas.getContext("2d");
        if (!context) throw new Error("no canvas");
        context.fillStyle = "#fff";
        context.fillRect(0, 0, canvas.width, canvas.height);
        context.drawImage(image, 0, 0, canvas.width, canvas.height);
        const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
        let ink = 0;
        for (let i = 0; i < data.length; i += 4) ink += 255 - (data[i] ?? 255);
        return ink / (255 * (data.length / 4));
      };
      return [await inkOf(first ?? "", "image/svg+xml"), await inkOf(second ?? "", "image/png")];
    },
    [svg.bytes.toString("base64"), png.bytes.toString("base64")],
  );
  for (const share of shares) {
    expect(share).toBeGreaterThan(0.01);
    expect(share).toBeLessThan(0.2);
  }
  expect(Math.abs((shares[0] ?? 0) - (shares[1] ?? 1))).toBeLessThan(0.01);
});
