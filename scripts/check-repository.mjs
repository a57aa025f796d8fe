// What no compiler sees: the lock file names no registry, text carries no machine's paths, the top level stays as the guide says.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./setup.mjs";

const TOP_LEVEL = new Set([
  ".ci",
  ".gitignore",
  ".npmrc",
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "app",
  "biome.json",
  "index.html",
  "package-lock.json",
  "package.json",
  "playwright.config.ts",
  "public",
  "scripts",
  "src",
  "tests",
  "tsconfig.base.json",
  "tsconfig.engine.json",
  "tsconfig.json",
  "vite.config.ts",
  "vitest.config.ts",
]);
const TEXT = /\.(ts|tsx|mjs|json|css|html|md|svg)$/;
const MACHINE_PATH = /(^|[\s"'`(=])\/(work|root|home|Users)\//;

const problems = [];
const files = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], {
  cwd: root,
  encoding: "utf8",
})
  .split("\n")
  .filter(Boolean);

for (const top of new Set(files.map((file) => file.split("/")[0]))) {
  if (!TOP_LEVEL.has(top)) problems.push(`${top}: not meant to stand at the top level`);
}
if (/"resolved"\s*:/.test(readFileSync(join(root, "package-lock.json"), "utf8"))) {
  problems.push("package-lock.json: names registry addresses; install with the project's .npmrc");
}
for (const file of files.filter((name) => TEXT.test(name) && name !== "package-lock.json")) {
  const lines = readFileSync(join(root, file), "utf8").split("\n");
  lines.forEach((line, i) => {
    if (MACHINE_PATH.test(line)) problems.push(`${file}:${i + 1}: a path of one machine`);
  });
}

for (const problem of problems) console.error(problem);
console.log(problems.length === 0 ? `${files.length} files, nothing amiss` : `${problems.length} problems`);
process.exit(problems.length === 0 ? 0 : 1);
