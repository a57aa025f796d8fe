import type { Locator, Page } from "@playwright/test";
import {
  applyOps,
  EXAMPLES,
  frameOf,
  type Garden,
  type ItemOf,
  itemId,
  newPlanting,
  type Planting,
  type Point,
  placed,
  plantsOf,
} from "../../src/index.ts";
import { expectAxeClean } from "./axe-clean.ts";
import { expect, test } from "./fixtures.ts";
import type { Planner } from "./planner.ts";

const TOMATOES = itemId("tomatoes");

const planted = (garden: Garden, plantings: readonly Planting[]): Garden =>
  applyOps(garden, [{ op: "set", id: TOMATOES, changes: { plantings } }]);
const bare = planted(EXAMPLES[0].garden, []);

function bedOf(garden: Garden): ItemOf<"bed"> {
  const bed = garden.items.find(({ id }) => id === TOMATOES);
  if (bed?.kind !== "bed") throw new Error("the example has no bed of tomatoes");
  return bed;
}

const entries = (page: Page): Locator =>
  page.getByRole("list", { name: "Crops in this bed" }).locator("> li");
const counted = async (planner: Planner, index = 0): Promise<number> => {
  const garden = await planner.garden();
  return plantsOf(bedOf(garden), garden.site)[index]?.count ?? 0;
};

/** A point of a bed's own frame, as parts of its half width and half length. */
const within = (bed: ItemOf<"bed">, [x, y]: Point): Point => {
  if (bed.shape.type !== "rectangle") throw new Error("the bed is no rectangle");
  return placed([(x * bed.shape.width) / 2, (y * bed.shape.length) / 2], bed.at, bed.turn);
};

test("a crop's place is drawn in its bed: counted while it grows, one step, told in the card, pulled by its handles", async ({
  planner,
  page,
}) => {
  await planner.openGarden(bare);
  const bed = bedOf(bare);
  await page.getByRole("button", { name: "Crops in a bed" }).click();
  await page.getByLabel("Crop", { exact: true }).selectOption("Carrot");
  const pixelOf = await planner.lay();
  await page.mouse.move(...pixelOf(within(bed, [-0.8, -0.8])));
  await page.mouse.down();
  await page.mouse.move(...pixelOf(within(bed, [0.4, 0.8])), { steps: 10 });
  await page.mouse.up();

  await expect(planner.thing("Tomatoes")).toHaveAttribute("aria-pressed", "true");
  await expect(entries(page)).toHaveCount(1);
  const plants = await counted(planner);
  expect(plants).toBeGreaterThan(50);
  await expect(entries(page).first()).toContainText(`Carrot${plants} plants in`);
  await expect(planner.thing("Tomatoes")).toContainText("carrot");
  await expectAxeClean(page);

  // Its right lower corner is pulled to the left: fewer plants, the left side where it was.
  const { patch } = bedOf(await planner.garden()).plantings[0]!;
  const corner = placed(
    [patch!.at[0] + patch!.width / 2, patch!.at[1] + patch!.length / 2],
    bed.at,
    bed.turn,
  );
  const half = placed([patch!.at[0], patch!.at[1] + patch!.length / 2], bed.at, bed.turn);
  await page.mouse.move(...pixelOf(corner));
  await page.mouse.down();
  await page.mouse.move(...pixelOf(half), { steps: 8 });
  await page.mouse.up();
  await expect.poll(() => counted(planner)).toBeLessThan(plants);
  const pulled = bedOf(await planner.garden()).plantings[0]!.patch!;
  expect(pulled.at[0] - pulled.width / 2).toBeCloseTo(patch!.at[0] - patch!.width / 2, 1);
  await expect(entries(page).first()).toContainText(`Carrot${await counted(planner)} plants`);

  await planner.undo();
  await expect.poll(() => counted(planner)).toBe(plants);
  await planner.undo();
  await expect(entries(page)).toHaveCount(0);
});

test("two taps do what a drag does, on a phone too, and an even share needs neither", async ({
  planner,
  page,
}) => {
  await planner.openGarden(bare);
  await page.setViewportSize({ width: 390, height: 844 });
  const bed = bedOf(bare);
  await page.getByRole("button", { name: "Crops in a bed" }).click();
  await page.getByLabel("Crop", { exact: true }).selectOption("Leek");
  const pixelOf = await planner.lay();
  await page.mouse.click(...pixelOf(within(bed, [-0.4, -0.4])));
  await page.mouse.click(...pixelOf(within(bed, [0.4, 0.4])));
  await expect
    .poll(async () => bedOf(await planner.garden()).plantings.map(({ crop }) => crop))
    .toEqual(["leek"]);
  const { patch } = bedOf(await planner.garden()).plantings[0]!;
  const { width } = bed.shape as { width: number };
  // A pixel of the phone is some 40 mm of the yard.
  expect(patch!.width).toBeGreaterThan(0.3 * width);
  expect(patch!.width).toBeLessThan(0.5 * width);

  await page.getByRole("button", { name: "Crops in a bed" }).click();
  await page.getByRole("button", { name: "Even share of the bed chosen" }).click();
  await expect
    .poll(async () => bedOf(await planner.garden()).plantings.map((one) => one.patch === null))
    .toEqual([false, true]);
});

test("all of it goes by keyboard: added, held, moved, made larger, told and taken out", async ({
  planner,
  page,
}) => {
  await planner.openGarden(bare);
  await planner.thing("Tomatoes").focus();
  await page.keyboard.press("Space");
  await page.locator("summary", { hasText: "Crops" }).press("Enter");
  await page.getByLabel("Add a crop").fill("beet");
  await page.keyboard.press("Enter");
  await expect(entries(page)).toHaveCount(1);
  const all = await counted(planner);
  await expect(entries(page).first()).toContainText(`Beet${all} plants in`);

  await planner.thing("Tomatoes").focus();
  await page.keyboard.press("p");
  await page.keyboard.press("Control+Shift+ArrowLeft");
  await expect.poll(() => counted(planner)).toBeLessThan(all);
  const before = bedOf(await planner.garden()).plantings[0]!.patch!;
  await page.keyboard.press("Shift+ArrowRight");
  await expect
    .poll(async () => bedOf(await planner.garden()).plantings[0]!.patch!.at[0])
    .toBeCloseTo(before.at[0] + 304.8, 1);
  await page.getByLabel("Apart", { exact: true }).fill("10 cm");
  await page.keyboard.press("Enter");
  await expect.poll(async () => bedOf(await planner.garden()).plantings[0]!.apart).toBe(100);

  await planner.thing("Tomatoes").focus();
  await page.keyboard.press("Delete");
  await expect(entries(page)).toHaveCount(0);
  await expect(planner.thing("Tomatoes")).toHaveCount(1);
});

test("crops are on the plan at every zoom, and the day in the card shows what stands then", async ({
  planner,
  page,
}) => {
  const [soil] = frameOf(bedOf(bare)).inside;
  expect(soil).toBeDefined();
  const whole = { at: [0, 0] as const, width: 2300, length: 1100 };
  const pea = { ...newPlanting("pea"), from: "04-01", until: "06-15", patch: whole };
  const bean = { ...newPlanting("bean-bush"), from: "07-01", until: "09-10", patch: whole };
  await planner.openGarden(planted(bare, [pea, bean]));
  const pixelOf = await planner.lay();
  // Beside the bed's name, which stands in its middle.
  const [x, y] = pixelOf(within(bedOf(bare), [0.5, 0.6]));
  await page.mouse.move(x, y);
  for (const turn of [0, -300, -300, 900]) {
    if (turn !== 0) await page.mouse.wheel(0, turn);
    await expect.poll(() => leafInk(page, [x, y], 12)).toBeGreaterThan(0);
  }

  await planner.press("Tomatoes");
  await page.locator("summary", { hasText: "Crops" }).click();
  const day = page.getByRole("slider", { name: "On the plan" });
  await expect(day).toHaveAttribute("aria-valuetext", "1 Apr");
  const [px, py] = (await planner.lay())(within(bedOf(bare), [0.5, 0.6]));
  await expect.poll(() => leafInk(page, [px, py], 12)).toBeGreaterThan(0);
  await day.fill("10");
  await expect(day).toHaveAttribute("aria-valuetext", "10 Jan");
  await expect.poll(() => leafInk(page, [px, py], 12)).toBe(0);
  await day.fill("220");
  await expect.poll(() => leafInk(page, [px, py], 12)).toBeGreaterThan(0);
  await page.getByRole("button", { name: "When most is planted" }).click();
  await expect(day).toHaveAttribute("aria-valuetext", "1 Apr");
});

/** How many pixels within so many of one of the page are greener than soil or paper ever is. */
const leafInk = (page: Page, [x, y]: Point, about: number): Promise<number> =>
  page.evaluate(
    ([px, py, r]) => {
      const canvas = document.querySelector<HTMLCanvasElement>(".plan-stage canvas");
      const context = canvas?.getContext("2d");
      if (!canvas || !context) throw new Error("the plan has no ground layer");
      const box = canvas.getBoundingClientRect();
      const fine = canvas.width / box.width;
      const side = Math.round(2 * r * fine);
      const { data } = context.getImageData(
        (px - r - box.left) * fine,
        (py - r - box.top) * fine,
        side,
        side,
      );
      let green = 0;
      for (let i = 0; i < data.length; i += 4) {
        if (data[i + 1]! > data[i]! + 6 && data[i + 1]! > data[i + 2]! + 6) green++;
      }
      return green;
    },
    [x, y, about] as const,
  );
