import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";

export default defineConfig({
  plugins: [react()],
  test: {
    // Nothing is held to a time here: a busy machine may take long over what is worked out in full.
    testTimeout: 60_000,
    // Left to itself it spares one core; on two that is half of them.
    maxWorkers: "100%",
    reporters: ["default", "./tests/plain-reporter.ts"],
    projects: [
      {
        extends: true,
        test: {
          name: "engine",
          environment: "node",
          include: ["tests/**/*.test.ts"],
        },
      },
      {
        extends: true,
        test: {
          name: "components",
          environment: "happy-dom",
          include: ["tests/**/*.test.tsx"],
          setupFiles: ["tests/helpers/fake-canvas.ts", "tests/helpers/patience.ts"],
        },
      },
    ],
  },
});
