import { test as base, type ConsoleMessage, expect, type Request } from "@playwright/test";
import { Planner } from "./planner.ts";

interface Fixtures {
  readonly planner: Planner;
  /** What the pages of this test complained of, and what they asked of other origins. Checked when the test is over. */
  readonly complaints: string[];
}

/**
 * The planner in a browser that has never seen it. Every test fails that leaves an error or a warning in the console,
 * or asks anything of another origin.
 */
export const test = base.extend<Fixtures>({
  complaints: [
    async ({ context, baseURL }, use) => {
      const complaints: string[] = [];
      const home = new URL(baseURL ?? "").origin;
      context.on("console", (message) => {
        if (isComplaint(message)) complaints.push(`${message.type()}: ${message.text()}`);
      });
      context.on("weberror", (error) => complaints.push(`uncaught: ${error.error().message}`));
      context.on("request", (request) => {
        if (isForeign(request, home)) complaints.push(`asked of another origin: ${request.url()}`);
      });
      await use(complaints);
      expect(complaints, "the console stays empty and no other origin is asked").toEqual([]);
    },
    { auto: true },
  ],
  planner: async ({ page }, use) => {
    const planner = new Planner(page);
    await planner.open();
    await use(planner);
  },
});

export { expect };

const isComplaint = (message: ConsoleMessage): boolean =>
  ["error", "warning", "assert"].includes(message.type());

/** Files made in the page itself (`blob:`, `data:`) never leave it. */
function isForeign(request: Request, home: string): boolean {
  const { protocol, origin } = new URL(request.url());
  return protocol !== "blob:" && protocol !== "data:" && origin !== home;
}
