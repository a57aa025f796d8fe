import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./fixtures.ts";

const LEAVES = ["Snags", "Takeoff", "Sun", "Year round", "Site"] as const;
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;

const unfold = (page: Page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });

/** Opens what there is to open on the page, one thing after the other, for `look` to look at each. */
async function everywhere(page: Page, turnTo: (leaf: (typeof LEAVES)[number]) => Promise<void>, look: Look) {
  for (const leaf of LEAVES) {
    await turnTo(leaf);
    await unfold(page);
    await look(leaf);
  }
}
type Look = (what: string) => Promise<void>;

/**
 * Controls smaller than 24 by 24 px whose circle of 24 px reaches into another control or its circle: WCAG 2.2,
 * 2.5.8 Target Size (Minimum), with its exceptions of spacing, of links in a sentence, and of what another control does
 * as well: the letters of the months lie to the scale of the year under them, and two arrows go from month to month. A
 * box to tick is as large as its label, which ticks it too.
 */
const smallTargets = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const LEAST = 24;
    const isSeen = (element: Element) =>
      element.checkVisibility({ visibilityProperty: true }) &&
      element.closest(".unseen, [inert], .plan-list:not(:focus-within)") === null;
    const targets = [
      ...document.querySelectorAll<HTMLElement>("button, a[href], input, select, textarea, summary"),
    ]
      .filter((element) => isSeen(element))
      .map((element) => {
        const boxes = [element, ...((element as HTMLInputElement).labels ?? [])].map((one) =>
          one.getBoundingClientRect(),
        );
        const box = element.matches("[type=checkbox], [type=radio]") ? boxes : boxes.slice(0, 1);
        const left = Math.min(...box.map((one) => one.left));
        const top = Math.min(...box.map((one) => one.top));
        const right = Math.max(...box.map((one) => one.right));
        const bottom = Math.max(...box.map((one) => one.bottom));
        return { element, left, top, width: right - left, height: bottom - top };
      })
      .filter(({ width, height }) => width > 2 && height > 2);
    const inSentence = (element: Element) =>
      element.matches(".link") &&
      /\S/.test(
        [...(element.parentElement?.childNodes ?? [])]
          .filter((one) => one !== element)
          .map((one) => one.textContent)
          .join(""),
      );
    const isSmall = (one: (typeof targets)[number]) => one.width < LEAST - 0.5 || one.height < LEAST - 0.5;
    const middle = (one: (typeof targets)[number]) =>
      [one.left + one.width / 2, one.top + one.height / 2] as const;
    return targets
      .filter(
        (one) => isSmall(one) && !inSentence(one.element) && !one.element.matches(".strip-months button"),
      )
      .filter((one) => {
        const [x, y] = middle(one);
        return targets.some((other) => {
          if (other === one || other.element.contains(one.element) || one.element.contains(other.element))
            return false;
          const [ox, oy] = middle(other);
          const dx = Math.max(other.left - x, 0, x - other.left - other.width);
          const dy = Math.max(other.top - y, 0, y - other.top - other.height);
          const away = isSmall(other) ? Math.hypot(ox - x, oy - y) - LEAST / 2 : Math.hypot(dx, dy);
          return away < LEAST / 2 - 0.5;
        });
      })
      .map(
        ({ element, width, height }) =>
          `${Math.round(width)}x${Math.round(height)} ${element.outerHTML.slice(0, 140)}`,
      );
  });

/** Controls whose name leaves out what is written on them: WCAG 2.2, 2.5.3 Label in Name. A word may be cut short on them. */
const misnamed = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const plain = (text: string) =>
      text
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, " ")
        .trim();
    /** What can be read on it; a drawing is not read. */
    const written = (element: Element): string =>
      [...element.childNodes]
        .map((child) =>
          child instanceof Element
            ? child.matches(".unseen, svg")
              ? ""
              : written(child)
            : child.textContent,
        )
        .join(" ");
    return [
      ...document.querySelectorAll<HTMLElement>("button[aria-label], a[aria-label], summary[aria-label]"),
    ]
      .filter((element) => element.checkVisibility())
      .map((element) => ({ name: plain(element.ariaLabel ?? ""), seen: plain(written(element)) }))
      .filter(({ name, seen }) => seen !== "" && !` ${name}`.includes(` ${seen}`))
      .map(({ name, seen }) => `“${seen}” is called “${name}”`);
  });

for (const [device, use] of [
  ["a desktop", { viewport: { width: 1280, height: 800 } }],
  ["a phone", PHONE],
] as const) {
  test.describe(`on ${device}`, () => {
    test.use(use);

    test("every control is large enough to hit, and is called what is written on it", async ({
      planner,
      page,
    }) => {
      test.slow();
      const look: Look = async (what) => {
        expect(await smallTargets(page), `targets: ${what}`).toEqual([]);
        expect(await misnamed(page), `names: ${what}`).toEqual([]);
      };
      await look("as it opens");
      if (device === "a phone") await page.getByRole("button", { name: /^Ledger: only/ }).tap();
      await everywhere(page, (leaf) => planner.turnTo(leaf), look);
      await planner.turnTo("Snags");
      await planner.snags
        .getByRole("button", { name: /Peppers/ })
        .first()
        .click();
      await unfold(page);
      await look("a bed's card");
      for (const dialog of ["help", "rules", "gardens"] as const) {
        if (dialog === "gardens") await planner.openGardens();
        else await page.keyboard.press("?");
        if (dialog === "rules") await page.getByRole("button", { name: "The rules, and why" }).click();
        await expect(page.getByRole("dialog")).toBeVisible();
        await look(dialog);
        await page.keyboard.press("Escape");
      }
    });

    test("what has the keyboard is never hidden by bar, sheet or notice (WCAG 2.2, 2.4.11)", async ({
      planner,
      page,
    }) => {
      test.slow();
      if (device === "a phone") await page.getByRole("button", { name: /^Ledger: only/ }).tap();
      for (const leaf of ["Snags", "Site"] as const) {
        await planner.turnTo(leaf);
        await unfold(page);
        await page.locator(".topbar input").first().focus();
        const seen = new Set<string>();
        for (let i = 0; i < 60; i++) {
          await page.keyboard.press("Tab");
          const { what, hidden } = await focused(page);
          expect(hidden, `${leaf}: ${what}`).toBe(false);
          seen.add(what);
        }
        expect(seen.size, "the keyboard went through the page").toBeGreaterThan(30);
      }
    });
  });
}

/** What has the keyboard, and whether none of it can be seen. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLElement;
    const { left, top, width, height } = element.getBoundingClientRect();
    const shares = [0.1, 0.3, 0.5, 0.7, 0.9];
    const points = shares.flatMap((x) => shares.map((y) => [left + width * x, top + height * y] as const));
    const seen = points.some(([x, y]) => {
      const there = document.elementFromPoint(x, y);
      return (
        there !== null &&
        (element.contains(there) || there.contains(element) || there.closest("label")?.control === element)
      );
    });
    return {
      what: `${element.tagName} ${element.textContent?.slice(0, 40)} ${element.ariaLabel ?? element.id}`,
      hidden: !seen,
    };
  });

/** Parts of the bar that lie over one another. */
async function overlaps(parts: Locator): Promise<readonly string[]> {
  const boxes = await parts.evaluateAll((elements) =>
    elements
      .filter((element) => element.checkVisibility())
      .map((element) => ({
        what: element.textContent ?? "",
        box: element.getBoundingClientRect().toJSON() as DOMRect,
      })),
  );
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter(
        (b) =>
          a.box.left < b.box.right - 2 &&
          b.box.left < a.box.right - 2 &&
          a.box.top < b.box.bottom - 2 &&
          b.box.top < a.box.bottom - 2,
      )
      .map((b) => `“${a.what}” over “${b.what}”`),
  );
}

/** Words that are cut off, other than a garden's own name in its field. */
const cutOff = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>(".topbar *, .summary *, .tabs *, .leaf *, .card *, .dialog *")]
      .filter(
        (element) => element.checkVisibility() && element.closest(".unseen, .gist, svg, select") === null,
      )
      .filter((element) =>
        [...element.childNodes].some(
          (one) => one.nodeType === Node.TEXT_NODE && /\S/.test(one.textContent ?? ""),
        ),
      )
      .filter((element) => {
        const { overflowX, overflowY } = getComputedStyle(element);
        const hides = overflowX !== "visible" || overflowY !== "visible";
        return (
          hides &&
          (element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 2)
        );
      })
      .map((element) => `${element.className}: ${element.textContent?.slice(0, 60)}`),
  );

const SPACED =
  "*{line-height:1.5!important;letter-spacing:.12em!important;word-spacing:.16em!important}p{margin-bottom:2em!important}";

for (const [how, style] of [
  ["twice as large (WCAG 2.2, 1.4.4)", "html{font-size:200%}"],
  ["set wide (1.4.12)", SPACED],
] as const) {
  for (const [device, viewport] of [
    ["a desktop", { width: 1440, height: 900 }],
    ["a tablet", { width: 768, height: 1024 }],
    ["a phone", { width: 390, height: 844 }],
  ] as const) {
    test(`text ${how} is neither cut off nor covered on ${device}`, async ({ planner, page }) => {
      await page.setViewportSize(viewport);
      await page.addStyleTag({ content: style });
      if (device === "a phone") await page.getByRole("button", { name: /^Ledger: only/ }).click();
      for (const leaf of LEAVES) {
        await planner.turnTo(leaf);
        await unfold(page);
        expect(await cutOff(page), leaf).toEqual([]);
      }
      expect(await overlaps(page.locator(".topbar .button, .topbar input, .wordmark, .kept-line"))).toEqual(
        [],
      );
      const [wide, window] = await page.evaluate(() => {
        const { scrollWidth, clientWidth } = document.documentElement;
        return [scrollWidth, clientWidth] as const;
      });
      expect(wide, "no scrolling sideways").toBeLessThanOrEqual(window);
      const plan = await planner.board.boundingBox();
      expect(plan?.height, "the plan keeps its room").toBeGreaterThan(120);
    });
  }
}
