import { readFile } from "node:fs/promises";
import {
  EXAMPLES,
  emptyGarden,
  freshId,
  type Garden,
  itemId,
  newItem,
  readGardenText,
  writeGarden,
} from "../../src/index.ts";
import { fullGarden } from "../helpers/full-garden.ts";
import { expect, test } from "./fixtures.ts";

test("a garden saved to a file and opened again is the same garden", async ({ planner, page }) => {
  await planner.drag("Tomatoes", [3000, 0]);
  await planner.kept();
  const garden = await planner.garden();
  const things = await planner.things.allTextContents();

  const dialog = await planner.openGardens();
  const downloading = page.waitForEvent("download");
  await dialog.getByRole("button", { name: "Save to a file" }).click();
  const download = await downloading;
  expect(download.suggestedFilename()).toBe("heron-lane-back-yard.bedwright.json");
  const text = await readFile(await download.path(), "utf8");
  expect(readGardenText(text)).toEqual(garden);

  await dialog.getByRole("button", { name: "New yard, metric" }).click();
  await expect(planner.things).toHaveCount(1);
  const again = await planner.openGardens();
  await planner.chooseFile(download.suggestedFilename(), text);
  await expect(again).toBeHidden();
  await expect(planner.things).toHaveText(things);
  expect(await planner.garden()).toEqual(garden);
});

for (const units of ["us", "metric"] as const) {
  test(`nothing of a garden with one of everything is lost between file, board and file (${units})`, async ({
    planner,
    page,
  }) => {
    const garden = fullGarden(units);
    await planner.openGarden(garden);
    const dialog = await planner.openGardens();
    const downloading = page.waitForEvent("download");
    await dialog.getByRole("button", { name: "Save to a file" }).click();
    const text = await readFile(await (await downloading).path(), "utf8");
    expect(readGardenText(text)).toEqual(garden);
  });
}

const example = EXAMPLES[0].garden;
const asData = (garden: Garden) => JSON.parse(writeGarden(garden)) as Record<string, unknown>;
const changed = (changes: Record<string, unknown>) => JSON.stringify({ ...asData(example), ...changes });

function manyTrees(count: number): string {
  const garden = emptyGarden("us");
  const tree = newItem("tree", { id: freshId(garden, "tree"), at: [1000, 1000], units: "us" });
  return JSON.stringify({
    ...garden,
    items: Array.from({ length: count }, (_, i) => ({ ...tree, id: itemId(`tree-${i}`) })),
  });
}

/** A yard whose second and third corner are the wrong way about. */
const CROSSED = [
  [0, 0],
  [9000, 6000],
  [9000, 0],
  [0, 6000],
];

const BAD_FILES: readonly { readonly what: string; readonly text: string; readonly reason: RegExp }[] = [
  { what: "not JSON", text: "beds: eight of them", reason: /not a garden file \(not JSON\)/ },
  { what: "an empty file", text: "", reason: /not a garden file \(not JSON\)/ },
  {
    what: "another format",
    text: JSON.stringify({ type: "FeatureCollection", features: [] }),
    reason: /not a Bedwright garden/,
  },
  { what: "a list", text: "[1, 2, 3]", reason: /not a Bedwright garden/ },
  { what: "a later version", text: changed({ version: 99 }), reason: /newer Bedwright.*version is 99/ },
  { what: "a yard that crosses itself", text: changed({ yard: CROSSED }), reason: /yard.*cross/ },
  {
    what: "NaN in its text",
    text: writeGarden(example).replace('"north": 12', '"north": NaN'),
    reason: /not a garden file \(not JSON\)/,
  },
  {
    what: "null for a number",
    text: writeGarden(example).replace('"north": 12', '"north": null'),
    reason: /site\.north/,
  },
  { what: "10 MB", text: JSON.stringify({ ...example, name: "a".repeat(10_000_000) }), reason: /too large/ },
  { what: "5,000 things", text: manyTrees(5000), reason: /more than 2000 things/ },
  {
    what: "a key that means something to JavaScript",
    text: writeGarden(example).replace('"items"', '"__proto__": { "polluted": true }, "items"'),
    reason: /__proto__ is not a field of a garden/,
  },
  {
    what: "such a key deep inside",
    text: writeGarden(example).replace('"trunk"', '"constructor": { "prototype": {} }, "trunk"'),
    reason: /constructor is not a field of a garden/,
  },
];

test("a file that is no garden is refused with one reason, and the garden on the board stays", async ({
  planner,
  page,
}) => {
  await planner.drag("Tomatoes", [3000, 0]);
  await planner.kept();
  const garden = await planner.garden();
  const things = await planner.things.allTextContents();
  const dialog = await planner.openGardens();

  for (const { what, text, reason } of BAD_FILES) {
    await test.step(what, async () => {
      const name = `${what.replaceAll(/\W+/g, "-")}.json`;
      await planner.chooseFile(name, text);
      const refusal = dialog.getByRole("alert");
      await expect(refusal).toContainText(name);
      await expect(refusal).toContainText(reason);
      await expect(refusal).toContainText("The garden on the board is as it was.");
      await expect(refusal).not.toContainText(/undefined|\[object|TypeError|Error:/);
      await expect(planner.things).toHaveText(things);
      await expect(dialog.locator(".kept-row"), "nothing is kept of it").toHaveCount(1);
    });
  }
  expect(await planner.garden()).toEqual(garden);
  expect(await page.evaluate(() => "polluted" in {})).toBe(false);

  // A good file opens from the same dialog after all that, and the reason goes.
  await planner.chooseFile("good.json", writeGarden(example));
  await expect(dialog).toBeHidden();
  await expect(planner.things).toHaveCount(example.items.length + 1);
});

test("several gardens are kept under their names, opened, duplicated and removed", async ({
  planner,
  page,
}) => {
  const name = page.getByRole("textbox", { name: "Name of the garden" });
  await planner.startNew("metric");
  await name.fill("Allotment");
  await name.press("Enter");
  await planner.kept();
  await planner.startNew("feet and inches");
  await name.fill("Front yard");
  await name.press("Enter");
  await planner.kept();

  const dialog = await planner.openGardens();
  const kept = dialog.locator(".kept-row strong");
  await expect(kept).toHaveText(["Front yard", "Allotment"]);
  await dialog.getByRole("button", { name: "Open Allotment" }).click();
  await expect(dialog).toBeHidden();
  await expect(name).toHaveValue("Allotment");
  expect((await planner.garden()).units).toBe("metric");

  await planner.openGardens();
  await dialog.getByRole("button", { name: "Duplicate it" }).click();
  await expect(name).toHaveValue("Allotment (copy)");

  await planner.openGardens();
  await dialog.getByRole("button", { name: "Remove Front yard" }).click();
  await dialog.getByRole("button", { name: "Remove for good" }).click();
  await expect(kept).toHaveText(["Allotment (copy)", "Allotment"]);
});
