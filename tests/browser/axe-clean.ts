import AxeBuilder from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

/** WCAG 2.2 A and AA and axe's own good practice, over the page as it is now. */
export async function expectAxeClean(page: Page): Promise<void> {
  // Legacy: without a page of its own to finish in, which a context of two pages would see.
  const found = await new AxeBuilder({ page })
    .setLegacyMode()
    .options({ resultTypes: ["violations"] })
    .analyze();
  const said = found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  expect(said, "axe finds nothing").toEqual([]);
  expect(found.passes.length, "axe looked at something").toBeGreaterThan(5);
}
