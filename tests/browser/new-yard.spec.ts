import type { Page } from "@playwright/test";
import { FOOT, type Garden, type Kind, type Point, type Units } from "../../src/index.ts";
import { expect, test } from "./fixtures.ts";
import { Planner } from "./planner.ts";

interface Yard {
  readonly units: Units;
  readonly button: "feet and inches" | "metric";
  /** One step of a round grid that the places below are given in, mm. */
  readonly step: number;
  /** What is typed for the first two sides, how it reads then, and what that is in mm. */
  readonly sides: readonly [typed: string, shown: string, mm: number][];
  readonly bed: string;
}

const YARDS: readonly Yard[] = [
  {
    units: "us",
    button: "feet and inches",
    step: FOOT,
    sides: [
      ["46ft 6in", "46′ 6″", 46.5 * FOOT],
      ["34' 3 1/2\"", "34′ 3½″", (34 + 3.5 / 12) * FOOT],
    ],
    bed: "4 ft by 8 ft",
  },
  {
    units: "metric",
    button: "metric",
    step: 300,
    sides: [
      ["13,5 m", "13.50 m", 13_500],
      ["1040 cm", "10.40 m", 10_400],
    ],
    bed: "1.20 m by 2.40 m",
  },
];

for (const { units, button, step, sides, bed } of YARDS) {
  test(`a yard of one's own in ${button}: outline, house, ground and beds, kept after the tab is closed`, async ({
    planner,
    page,
    context,
  }) => {
    test.slow();
    await planner.startNew(button);
    await page.getByRole("button", { name: "the yard itself" }).click();
    for (const [i, [typed, shown]] of sides.entries()) {
      const side = planner.card.getByLabel(`Side ${i + 1}`, { exact: true });
      await side.fill(typed);
      await side.press("Enter");
      await expect(side).toHaveValue(shown);
    }

    const pixelOf = await planner.lay();
    const at = (x: number, y: number): Point => pixelOf([x * step, y * step]);

    // Dragged out.
    await dragOut(planner, "House", at(16, 6));
    await dragOut(planner, "Ground", at(37, 6));
    await dragOut(planner, "Tree", at(40, 27));
    await dragOut(planner, "Bed", at(10, 20));
    await dragOut(planner, "Path", at(22, 15));

    // Picked, then put down by a tap on the plan.
    await tapTap(planner, "Door", at(12, 11));
    await tapTap(planner, "Tap", at(24, 11));
    await tapTap(planner, "Gate", at(0, 17));
    await tapTap(planner, "Bed", at(20, 22));
    await tapTap(planner, "Fence", at(6, 30), at(30, 30), at(30, 30));
    await tapTap(planner, "Path", at(33, 18), at(33, 24), at(33, 24));

    // Put where there is room, by Enter.
    for (const name of ["Bed", "Path"]) await good(page, name).press("Enter");

    await planner.kept();
    const garden = await planner.garden();
    expect(garden.units).toBe(units);
    expect(counts(garden)).toEqual({
      house: 1,
      ground: 1,
      tree: 1,
      door: 1,
      tap: 1,
      gate: 1,
      fence: 1,
      bed: 3,
      path: 3,
    });
    const [a, b, c] = garden.yard;
    expect(Math.hypot(b![0] - a![0], b![1] - a![1])).toBeCloseTo(sides[0]![2], 6);
    expect(Math.hypot(c![0] - b![0], c![1] - b![1])).toBeCloseTo(sides[1]![2], 6);
    await expect(planner.thing(new RegExp(`^Bed.*${bed}`))).toHaveCount(3);
    const things = await planner.things.allTextContents();

    await page.close();
    const again = new Planner(await context.newPage());
    await again.open();
    await expect(again.things).toHaveText(things);
    expect(await again.garden()).toEqual(garden);
  });
}

test("a change is kept even when the tab is closed at once", async ({ planner, page, context }) => {
  const [x, y] = await planner.placeOf("Salads");
  await planner.thing("Salads").focus();
  await page.keyboard.press("Shift+ArrowRight");
  await page.close({ runBeforeUnload: true });

  const again = new Planner(await context.newPage());
  await again.open();
  expect(await again.placeOf("Salads")).toEqual([x + FOOT, y]);
});

test("a typed length that cannot be read is refused where it was typed, and the yard stays", async ({
  planner,
  page,
}) => {
  await planner.startNew("metric");
  await page.getByRole("button", { name: "the yard itself" }).click();
  const side = planner.card.getByLabel("Side 1", { exact: true });
  await side.fill("twelve");
  await side.press("Enter");
  await expect(planner.card.getByRole("alert")).toBeVisible();
  await expect(side).toHaveAttribute("aria-invalid", "true");
  expect((await planner.garden()).yard[1]).toEqual([12_000, 0]);
  await side.press("Escape");
  await expect(side).toHaveValue("12.00 m");
});

const good = (page: Page, name: string) =>
  page.getByRole("toolbar", { name: "Barrow" }).getByRole("button", { name, exact: true });

/** Carries a thing from the barrow to a pixel of the plan with the mouse. */
async function dragOut(planner: Planner, name: string, [x, y]: Point): Promise<void> {
  const { mouse } = planner.page;
  const box = await good(planner.page, name).boundingBox();
  if (!box) throw new Error(`the barrow has no ${name} on the screen`);
  const before = await planner.things.count();
  await mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await mouse.down();
  await mouse.move(x, y, { steps: 6 });
  await mouse.up();
  await expect(planner.things).toHaveCount(before + 1);
}

/** Picks a thing from the barrow and taps the plan; what is drawn by its points takes a tap for each. */
async function tapTap(planner: Planner, name: string, ...pixels: readonly Point[]): Promise<void> {
  const before = await planner.things.count();
  await good(planner.page, name).click();
  await expect(good(planner.page, name)).toHaveAttribute("aria-pressed", "true");
  for (const pixel of pixels) await planner.page.mouse.click(...pixel);
  await expect(planner.things).toHaveCount(before + 1);
}

function counts({ items }: Garden): Partial<Record<Kind, number>> {
  const found: Partial<Record<Kind, number>> = {};
  for (const { kind } of items) found[kind] = (found[kind] ?? 0) + 1;
  return found;
}
