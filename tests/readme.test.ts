import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { rulesMarkdown } from "../src/rules/rules-table.ts";

const root = new URL("../", import.meta.url);
const readme = readFileSync(new URL("README.md", root), "utf8");

describe("the README", () => {
  it("has every rule as it is (npm run readme writes them)", () => {
    const [, table] = /<!-- rules[^>]*-->\n([\s\S]*?)<!-- \/rules -->/.exec(readme) ?? [];
    expect(table?.trim()).toBe(rulesMarkdown().trim());
  });

  it("names only files that are there", () => {
    const named = [...readme.matchAll(/\]\(([^)#]+)\)/g)].map(([, path]) => path ?? "");
    expect(named.length).toBeGreaterThan(3);
    expect(named.filter((path) => !existsSync(new URL(path, root)))).toEqual([]);
  });

  it("names only commands that package.json has", () => {
    const { scripts } = JSON.parse(readFileSync(new URL("package.json", root), "utf8")) as {
      scripts: Record<string, string>;
    };
    const both = readme + readFileSync(new URL("DEVELOPERS.md", root), "utf8");
    const named = [...both.matchAll(/`npm (?:run )?([a-z]+)/g)].map(([, name]) => name ?? "");
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});
