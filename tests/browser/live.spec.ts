import type { Page } from "@playwright/test";
import {
  applyOps,
  EXAMPLES,
  FOOT,
  type Garden,
  type ItemId,
  itemId,
  newItem,
  type Point,
  survey,
} from "../../src/index.ts";
import { expect, test } from "./fixtures.ts";

const BEDS = 40;
const MOVES = 60;
/** Work for one move longer than this, and a hand feels the plan stand still; ms. */
const STANDSTILL = 200;

test(`the ledger follows one of ${BEDS} beds while it is dragged, before it is let go`, async ({
  planner,
  page,
}, info) => {
  const garden = fortyBeds();
  await planner.openGarden(garden);
  const moved = itemId("bed-12");
  const [start, there] = [toFix(garden), toFix(withMoved(garden, moved, WAY))];
  expect(there, "where it is dragged to, more is wrong").toBeGreaterThan(start);
  await expect.poll(() => planner.left()).toBe(start);

  const from = await planner.placeOf("Number 12,");
  const pixelOf = await planner.lay();
  // Without snapping, so that the hand alone says where the bed is.
  await page.keyboard.down("Alt");
  await page.mouse.move(...pixelOf(from));
  await page.mouse.down();
  const work = await watchWork(page);
  await watchFrames(page);
  for (let i = 1; i <= MOVES; i++) {
    await page.mouse.move(...pixelOf([from[0] + (WAY[0] * i) / MOVES, from[1] + (WAY[1] * i) / MOVES]));
    await work.note();
  }
  const frames = await framesWatched(page);
  await expect(planner.summary).toContainText(`${there} to fix`);
  expect(await planner.placeOf("Number 12,"), "it is still in the hand").toEqual(from);

  await page.mouse.up();
  await page.keyboard.up("Alt");
  await expect.poll(async () => (await planner.placeOf("Number 12,"))[0]).toBeCloseTo(from[0] + WAY[0], 3);
  await expect(planner.summary).toContainText(`${there} to fix`);

  const said = `${frames.length} frames of ${MOVES} moves: median ${share(frames, 0.5)} ms, 95th percentile ${share(frames, 0.95)} ms; work for a move: median ${share(work.noted, 0.5)} ms, 95th percentile ${share(work.noted, 0.95)} ms, most ${share(work.noted, 1)} ms`;
  info.annotations.push({ type: "frames", description: said });
  console.log(said);
  expect(frames.length).toBeGreaterThan(10);
  expect(work.noted).toHaveLength(MOVES);
  expect(Math.max(...work.noted)).toBeGreaterThan(0);
  expect(Math.max(...work.noted)).toBeLessThanOrEqual(STANDSTILL);
});

/** Nearer to the bed on its right than one can kneel between, and a little down. */
const WAY: Point = [3 * FOOT, 0.5 * FOOT];

const toFix = (garden: Garden) => survey(garden, "look").snags.filter(({ grade }) => grade === "must").length;

const withMoved = (garden: Garden, id: ItemId, by: Point) => applyOps(garden, [{ op: "move", id, by }]);

/** Beds of 8 by 4 ft in eight columns, in the yard of the worked example drawn larger. */
function fortyBeds(): Garden {
  const { garden } = EXAMPLES[0];
  const around = garden.items.filter(({ kind }) => kind === "house" || kind === "door" || kind === "tap");
  const beds = Array.from({ length: BEDS }, (_, i) => ({
    ...newItem("bed", {
      id: itemId(`bed-${i + 1}`),
      at: [(8 + 12 * (i % 8)) * FOOT, (22 + 8 * Math.floor(i / 8)) * FOOT],
      units: "us",
    }),
    name: `Number ${i + 1}`,
    turn: 90,
  }));
  const [width, length] = [100 * FOOT, 62 * FOOT];
  return {
    ...garden,
    name: "Forty beds",
    yard: [
      [0, 0],
      [width, 0],
      [width, length],
      [0, length],
    ],
    items: [...around, ...beds],
  };
}

/**
 * Notes how long the page's own thread worked since it was last asked, in ms of its own time: a machine that is busy
 * with something else makes moves late, but no longer.
 */
async function watchWork(page: Page) {
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  const spent = async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN);
  };
  const noted: number[] = [];
  let before = await spent();
  const note = async () => {
    const now = await spent();
    noted.push(now - before);
    before = now;
  };
  return { noted, note };
}

/** Begins to note the time between frames. */
const watchFrames = (page: Page) =>
  page.evaluate(() => {
    const frames: number[] = [];
    let before = performance.now();
    const tick = (now: number) => {
      frames.push(now - before);
      before = now;
      requestAnimationFrame(tick);
    };
    Object.assign(window, { frames });
    requestAnimationFrame(tick);
  });

const framesWatched = (page: Page): Promise<number[]> =>
  page.evaluate(() => ("frames" in window && Array.isArray(window.frames) ? window.frames : []));

function share(values: readonly number[], part: number): string {
  const sorted = [...values].sort((a, b) => a - b);
  return (sorted[Math.floor((sorted.length - 1) * part)] ?? Number.NaN).toFixed(1);
}
