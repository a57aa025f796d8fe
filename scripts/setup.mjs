// Brings a bare machine to where the planner can be built and tested. Node's own modules only: nothing is
// installed yet when this runs.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = dirname(dirname(fileURLToPath(import.meta.url)));
const LEAST_NODE = [20, 19];
// npm ci empties node_modules, so a stamp inside it cannot outlive what it stands for.
const stamp = join(root, "node_modules", ".setup-stamp");

/** Runs a command with its output on ours; true if it went well. */
export function run(command, args, env = process.env) {
  const result = spawnSync(command, args, {
    cwd: root,
    stdio: "inherit",
    env,
    shell: process.platform === "win32",
  });
  return result.status === 0;
}

export function fail(message) {
  console.error(`\n${message}`);
  process.exit(1);
}

export function setUp({ browser }) {
  checkNode();
  installPackages();
  if (browser) installBrowser();
}

function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  const [needMajor, needMinor] = LEAST_NODE;
  if (major < needMajor || (major === needMajor && minor < needMinor)) {
    fail(`Bedwright needs Node ${needMajor}.${needMinor} or newer; this is ${process.versions.node}.`);
  }
}

function installPackages() {
  const lock = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lock) return;
  console.log("Installing packages (npm ci), about half a minute ...");
  if (!run("npm", ["ci", "--include=dev", "--no-audit", "--no-fund"])) fail("npm ci failed: see above.");
  writeFileSync(stamp, lock);
}

function installBrowser() {
  if (findChromium()) return;
  if (process.getuid?.() === 0 && existsSync("/etc/debian_version")) {
    console.log("Installing Chromium for the browser tests from the system's packages, about a minute ...");
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    run("apt-get", ["update", "-qq"], env);
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium", "fonts-dejavu-core"], env);
  }
  if (!findChromium()) {
    console.log("Fetching a Chromium for the browser tests ...");
    run(process.execPath, ["node_modules/playwright-core/cli.js", "install", "chromium"]);
  }
  if (!findChromium() && !downloadedChromium()) {
    fail("The browser tests need Chromium. Install Chromium or Chrome, or set CHROMIUM_PATH to one.");
  }
}

const USUAL_PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/** The system's own Chromium, or null; then the browser the test runner fetched is used. */
export function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named) return existsSync(named) ? named : fail(`CHROMIUM_PATH names ${named}, which is not there.`);
  return USUAL_PLACES.find((place) => existsSync(place)) ?? null;
}

function downloadedChromium() {
  const asked = spawnSync(
    process.execPath,
    ["-e", "process.stdout.write(require('playwright-core').chromium.executablePath())"],
    { cwd: root, encoding: "utf8" },
  );
  return asked.status === 0 && existsSync(asked.stdout);
}
