// Writes the README's table of rules from the rules themselves.
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const readme = new URL("../README.md", import.meta.url);
const { module } = await runnerImport(fileURLToPath(new URL("../src/rules/rules-table.ts", import.meta.url)));
const text = readFileSync(readme, "utf8");
const written = text.replace(
  /(<!-- rules[^>]*-->\n)[\s\S]*?(<!-- \/rules -->)/,
  `$1\n${module.rulesMarkdown().trim()}\n\n$2`,
);
writeFileSync(readme, written);
console.log("README.md has the rules as they are");
