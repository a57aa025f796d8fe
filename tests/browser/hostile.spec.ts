import { checkGarden, plainText } from "../../src/index.ts";
import { HOSTILE_NAMES, hostileGarden } from "../helpers/hostile-names.ts";
import { expect, test } from "./fixtures.ts";

/*
 * The fixtures already fail on anything in the console, a breach of the content policy among it, and on any request to
 * another origin.
 */
const LEAVES = ["Snags", "Takeoff", "Sun", "Year round", "Site"] as const;

for (const shift of [0, 11]) {
  test(`a garden full of names that would do harm is shown as it is, and does nothing (${shift})`, async ({
    planner,
    page,
    complaints,
  }) => {
    test.slow();
    const asked: string[] = [];
    page.on("dialog", (dialog) => {
      complaints.push(`a dialog: ${dialog.message()}`);
      void dialog.dismiss();
    });
    page.on("popup", () => complaints.push("a window was opened"));
    const garden = hostileGarden("us", shift);
    await planner.openGarden(garden);
    page.on("request", (request) => {
      if (/(^|\/)x$|alert|calc/.test(new URL(request.url()).pathname)) asked.push(request.url());
    });
    const elements = () => page.locator("img, iframe, object, embed, script:not([src])").count();
    const before = await elements();

    for (const leaf of LEAVES) {
      await planner.turnTo(leaf);
      await page.evaluate(() => {
        for (const details of document.querySelectorAll("details")) details.open = true;
      });
    }
    await planner.turnTo("Snags");
    expect(checkGarden(garden).length).toBeGreaterThan(5);
    await planner.snags.first().click();

    // Each name stands in the plan's list as it reads, tags and all.
    const listed = (await planner.things.allTextContents()).join("\n");
    for (const { name } of garden.items) expect(listed).toContain(plainText(name).trim());

    const desk = await planner.openSheet();
    const words = await desk.getByRole("img", { name: /^Build sheet of/ }).textContent();
    const readable = HOSTILE_NAMES.filter((name) => /^[<"'@+=-]/.test(name) && name.length < 40);
    expect(readable.some((name) => words?.includes(name.slice(0, 12)))).toBe(true);
    expect((await planner.print()).byteLength).toBeGreaterThan(1000);
    await desk.getByRole("button", { name: "Back to the plan" }).click();

    expect(await elements()).toBe(before);
    expect(asked).toEqual([]);
    await expect(page).toHaveTitle(/Bedwright$/);
  });
}
