import AxeBuilder from "@axe-core/playwright";
import { applyOps, EXAMPLES, freshId, type Garden, type ItemOf, newItem } from "../../src/index.ts";
import { expect, test } from "./fixtures.ts";
import { printedPages } from "./printed-page.ts";
import { expectTrueToScale } from "./true-to-scale.ts";

const start = EXAMPLES[0].garden;
const bedsOf = ({ items }: Garden) => items.filter((item): item is ItemOf<"bed"> => item.kind === "bed");

/** 24 beds of 8 kinds in a yard that is theirs alone. */
function manyBeds(): Garden {
  const bare = applyOps(
    start,
    bedsOf(start).map(({ id }) => ({ op: "remove" as const, id })),
  );
  let garden: Garden = {
    ...bare,
    name: "Four and twenty beds",
    yard: [
      [0, 0],
      [30_000, 0],
      [30_000, 24_000],
      [0, 24_000],
    ],
  };
  for (let i = 0; i < 24; i++) {
    const id = freshId(garden, "bed");
    const at = [3500 + (i % 6) * 4200, 8200 + Math.floor(i / 6) * 3600] as const;
    const shape = { type: "rectangle", width: 2438.4 - 76.2 * (i % 8), length: 1219.2 };
    garden = applyOps(garden, [
      { op: "add", item: newItem("bed", { id, at, units: "us" }) },
      { op: "set", id, changes: { shape } },
    ]);
  }
  return garden;
}

/** The worked example with a bed that stands, one that is raised, and a second stage. */
function staged(): Garden {
  const beds = bedsOf(start);
  return applyOps(start, [
    { op: "set", id: beds[3]!.id, changes: { already: { courses: 2, soilDepth: 250 } } },
    { op: "set", id: beds[4]!.id, changes: { already: { courses: 1, soilDepth: 120 } } },
    ...beds.slice(5).map(({ id }) => ({ op: "set" as const, id, changes: { stage: 2 } })),
  ]);
}

for (const paper of ["Letter", "A4"] as const) {
  test(`24 beds of 8 kinds print whole on one page, true to scale: ${paper}`, async ({ planner }) => {
    const garden = manyBeds();
    await planner.openGarden(garden);
    const desk = await planner.openSheet();
    await desk.getByRole("button", { name: paper, exact: true }).click();
    await expect(desk.locator(".sheet-left-out")).toHaveCount(0);
    const printed = await printedPages(await planner.print());
    expect(printed).toHaveLength(1);
    expectTrueToScale(printed[0]!, garden);
    expect(printed[0]!.smallestTypePt).toBeGreaterThanOrEqual(7.99);
    expect(printed[0]!.text).not.toContain("Not on this page");
  });

  test(`a garden in stages prints each stage on a page of its own: ${paper}`, async ({ planner }) => {
    const garden = staged();
    await planner.openGarden(garden);
    const desk = await planner.openSheet();
    await desk.getByRole("button", { name: paper, exact: true }).click();
    for (const number of [1, 2]) {
      const stage = `Stage ${number}`;
      await desk.getByRole("button", { name: stage, exact: true }).click();
      const printed = await printedPages(await planner.print());
      expect(printed).toHaveLength(1);
      expect(printed[0]!.text).toContain(`${stage.toLowerCase()} of 2`);
      expect(printed[0]!.text).toContain("stands");
      expect(printed[0]!.smallestTypePt).toBeGreaterThanOrEqual(7.99);
      // What comes later is dashed: the printer gets it as many short lines.
      const items = garden.items.filter((item) => !("stage" in item) || item.stage <= number);
      expectTrueToScale(printed[0]!, { ...garden, items });
    }
  });
}

test("the sheet says the very total that the ledger says, stage by stage", async ({ planner, page }) => {
  await planner.openGarden(staged());
  await planner.turnTo("Takeoff");
  const totals: string[] = [];
  for (const stage of ["All stages", "Stage 1", "Stage 2"]) {
    await page.getByRole("tabpanel").getByRole("button", { name: stage, exact: true }).click();
    await expect(page.getByText("proving…")).toHaveCount(0);
    totals.push((await page.locator(".fill-bar strong").textContent()) ?? "");
  }
  const desk = await planner.openSheet();
  for (const [i, stage] of ["All stages", "Stage 1", "Stage 2"].entries()) {
    await desk.getByRole("button", { name: stage, exact: true }).click();
    await expect(desk.locator("svg")).toContainText(totals[i]!);
  }
});

test("the desk of the sheet is worked by keyboard, on a phone too, and has nothing for axe to find", async ({
  planner,
  page,
}) => {
  await planner.openGarden(staged());
  const desk = await planner.openSheet();
  await expect(desk.getByRole("button", { name: "Back to the plan" })).toBeFocused();
  await desk.getByRole("button", { name: "Tabloid" }).focus();
  await page.keyboard.press("Enter");
  await expect(desk.locator("svg")).toHaveAttribute("data-paper", "tabloid");
  for (const viewport of [
    { width: 1440, height: 900 },
    { width: 390, height: 844 },
  ]) {
    await page.setViewportSize(viewport);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      viewport.width,
    );
  }
  await page.keyboard.press("Escape");
  await expect(desk).toBeHidden();
});
