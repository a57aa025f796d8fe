import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, expect, type Page, test } from "@playwright/test";
import { EXAMPLES } from "../../src/index.ts";
import { seeded } from "../helpers/scenes.ts";
import { startKillable } from "./killed.ts";
import { Planner } from "./planner.ts";

/** `KILL_MOMENTS=60 npx playwright test keeping-killed` takes the whole series. */
const MOMENTS = Number(process.env.KILL_MOMENTS ?? 4);
const SEED = 20261125;
/** No change older than this may be lost; ms. */
const A_SECOND = 1000;
const INCH = 25.4;

/** All that the scripted editing changes: the garden's name, and where each thing stands. */
interface Seen {
  readonly name: string;
  readonly places: Readonly<Record<string, readonly [number, number]>>;
}

interface Logged {
  readonly time: number;
  readonly seen: Seen;
}

const keyOf = (seen: Seen): string =>
  JSON.stringify(seen, (_, v) => (typeof v === "number" ? Math.round(v * 100) / 100 : v));

/** Runs in the page. */
function look(): Seen {
  const places: Record<string, [number, number]> = {};
  for (const item of document.querySelectorAll<HTMLElement>("[data-item]")) {
    places[item.dataset.item ?? ""] = [Number(item.dataset.x), Number(item.dataset.y)];
  }
  const name = document.querySelector<HTMLInputElement>('[aria-label="Name of the garden"]');
  return { name: name?.value ?? "", places };
}

/** One thing done to the garden, and how it looks then if that is known beforehand. */
interface Doing {
  readonly expected: Seen | null;
  run(): Promise<unknown>;
}

const BEDS = EXAMPLES[0].garden.items.filter(({ kind }) => kind === "bed").map(({ id }) => id);
const WAYS = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowDown: [0, 1], ArrowUp: [0, -1] } as const;

function nextDoing(page: Page, seen: Seen, random: () => number): Doing {
  const chance = random();
  if (chance < 0.12) return { expected: null, run: () => page.keyboard.press("Control+z") };
  if (chance < 0.2) return { expected: null, run: () => page.keyboard.press("Control+Shift+z") };
  if (chance < 0.27) {
    const name = `Garden ${Math.floor(random() * 10_000)}`;
    const field = page.getByRole("textbox", { name: "Name of the garden" });
    return {
      expected: { ...seen, name },
      run: async () => {
        await field.fill(name);
        await field.press("Enter");
      },
    };
  }
  const id = BEDS[Math.floor(random() * BEDS.length)] ?? "";
  const [x, y] = seen.places[id] ?? [0, 0];
  const ways = Object.entries(WAYS);
  const [key, [dx, dy]] = ways[Math.floor(random() * ways.length)] ?? ways[0] ?? ["", [0, 0]];
  return {
    expected: { ...seen, places: { ...seen.places, [id]: [x + dx * INCH, y + dy * INCH] } },
    run: () => page.locator(`[data-item="${id}"]`).press(key),
  };
}

test(`no change older than a second is lost, and no garden becomes unreadable, when the browser is killed at ${MOMENTS} random moments`, async ({
  baseURL,
  launchOptions,
}) => {
  test.setTimeout(60_000 + MOMENTS * 20_000);
  const random = seeded(SEED);
  const profile = mkdtempSync(join(tmpdir(), "bedwright-killed-"));
  const executable = launchOptions.executablePath ?? chromium.executablePath();
  const start = () => startKillable(executable, launchOptions.args ?? [], profile);
  const lost: number[] = [];
  let browser = await start();
  try {
    for (let moment = 1; moment <= MOMENTS; moment++) {
      const { page } = browser;
      const planner = new Planner(page);
      await page.goto(baseURL ?? "");
      await planner.ready();
      const log: Logged[] = [{ time: Date.now(), seen: await page.evaluate(look) }];
      let inHand: Doing | null = null;
      let killed = 0;
      const wait = 1200 + random() * 2500;
      const killing = new Promise<void>((done) => {
        setTimeout(() => {
          killed = Date.now();
          void browser.kill().then(done);
        }, wait);
      });
      try {
        while (killed === 0) {
          inHand = nextDoing(page, log.at(-1)?.seen ?? fail("nothing is logged"), random);
          await inHand.run();
          const seen = await page.evaluate(look);
          log.push({ time: Date.now(), seen });
          inHand = null;
          await page.waitForTimeout(random() * 120);
        }
      } catch (error) {
        if (killed === 0) throw error;
      }
      await killing;

      browser = await start();
      const again = new Planner(browser.page);
      await browser.page.goto(baseURL ?? "");
      await again.ready();
      await expect(browser.page.getByRole("alert")).toHaveCount(0);
      const found = keyOf(await browser.page.evaluate(look));
      // What was on the screen a second before, and everything after it.
      const since = log.findLastIndex(({ time }) => time <= killed - A_SECOND);
      const allowed = log.slice(Math.max(0, since)).map(({ seen }) => keyOf(seen));
      const unseen = inHand?.expected ? [keyOf(inHand.expected)] : [];
      // An undo in hand may have led to any garden of before.
      if (inHand && !inHand.expected) unseen.push(...log.map(({ seen }) => keyOf(seen)));
      expect(
        [...allowed, ...unseen],
        `moment ${moment}, ${Math.round(wait)} ms, ${log.length} changes`,
      ).toContain(found);
      const kept = log.findLast(({ seen }) => keyOf(seen) === found);
      const next = kept && log[log.indexOf(kept) + 1];
      lost.push(next ? Math.max(0, killed - next.time) : 0);
    }
    // After all of it the garden can still be read, undone and changed.
    const planner = new Planner(browser.page);
    const undo = browser.page.getByRole("button", { name: "Undo" });
    for (let i = 0; i < 5; i++) await undo.click();
    await planner.kept();
    await expect((await planner.openGardens()).getByText("set aside")).toHaveCount(0);
  } finally {
    await browser.kill().catch(() => undefined);
    rmSync(profile, { recursive: true, force: true });
  }
  const worst = Math.max(...lost);
  console.log(
    `${MOMENTS} moments: oldest change lost ${worst} ms before the end, ${lost.filter((ms) => ms === 0).length} times nothing`,
  );
  expect(worst).toBeLessThanOrEqual(A_SECOND);
});

const fail = (what: string): never => {
  throw new Error(what);
};
