// npm test: installs what is missing, then every check there is, and closes with one true line.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { root, setUp } from "./setup.mjs";

setUp({ browser: true });

const bin = (path) => join("node_modules", ...path.split("/"));
const total = { passed: 0, failed: 0 };

/** A check that is either fine or not counts as one. */
function check(what, script, ...args) {
  console.log(`\n== ${what}`);
  const { status } = spawnSync(process.execPath, [script, ...args], { cwd: root, stdio: "inherit" });
  total[status === 0 ? "passed" : "failed"] += 1;
  return status === 0;
}

/** A runner whose tests count one by one: it leaves its tally in a file. */
function suite(what, tally, script, ...args) {
  console.log(`\n== ${what}`);
  const file = join(root, "test-results", tally);
  rmSync(file, { force: true });
  const { status } = spawnSync(process.execPath, [script, ...args], {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, TALLY_FILE: file },
  });
  const { passed, failed } = existsSync(file)
    ? JSON.parse(readFileSync(file, "utf8"))
    : { passed: 0, failed: 0 };
  total.passed += passed;
  // A runner that stopped without failing a test (a crash, nothing found) still failed.
  total.failed += status === 0 || failed > 0 ? failed : 1;
}

check(
  "Types of the engine, compiled without the browser",
  bin("typescript/bin/tsc"),
  "-p",
  "tsconfig.engine.json",
);
check("Types of the page and the tests", bin("typescript/bin/tsc"), "-p", "tsconfig.json");
check("Format and lint", bin("@biomejs/biome/bin/biome"), "check", "--error-on-warnings", ".");
check("Lock file, licence notices and file names", "scripts/check-repository.mjs");
suite("Engine and components", "unit.json", bin("vitest/vitest.mjs"), "run");
if (check("Build, without a warning", "scripts/check-build.mjs")) {
  check("Size of the first load", "scripts/check-size.mjs");
  suite("Whole job in a real browser", "browser.json", bin("@playwright/test/cli.js"), "test");
} else {
  total.failed += 1;
  console.log("The browser tests need a build: not run.");
}

console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exit(total.failed === 0 ? 0 : 1);
