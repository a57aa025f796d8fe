import { defineConfig } from "@playwright/test";
import { findChromium } from "./scripts/setup.mjs";

const system = findChromium();
const PORT = 4179;

export default defineConfig({
  testDir: "tests/browser",
  fullyParallel: true,
  workers: 2,
  retries: 0,
  timeout: 60_000,
  forbidOnly: process.env.CI === "true",
  reporter: [["list"], ["./tests/browser/plain-reporter.ts"]],
  use: {
    baseURL: `http://127.0.0.1:${PORT}/`,
    viewport: { width: 1440, height: 900 },
    launchOptions: {
      ...(system ? { executablePath: system } : {}),
      args: [
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
      ],
    },
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --port ${PORT} --strictPort --host 127.0.0.1`,
    url: `http://127.0.0.1:${PORT}/`,
    reuseExistingServer: false,
  },
});
