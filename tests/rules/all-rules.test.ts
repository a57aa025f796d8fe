import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { isLimitId } from "../../src/garden/limits.ts";
import { RULES } from "../../src/rules/index.ts";
import { rulesMarkdown, rulesTable } from "../../src/rules/rules-table.ts";

const HERE = new URL("../../src/rules/", import.meta.url);
const isRule = (file: string) => readFileSync(new URL(file, HERE), "utf8").includes("= defineRule({");
const ruleFiles = readdirSync(HERE)
  .filter((file) => file.endsWith(".ts") && isRule(file))
  .map((file) => file.replace(/\.ts$/, ""));

describe("the rules", () => {
  it("are all registered, once, each under its file's name", () => {
    expect(RULES.map(({ id }) => id).toSorted()).toEqual(ruleFiles.toSorted());
  });

  it("are told in the order must fix, should fix, worth knowing", () => {
    const weight = { must: 0, should: 1, note: 2 };
    const grades = RULES.map(({ grade }) => weight[grade]);
    expect(grades).toEqual(grades.toSorted());
  });

  it.each(RULES.map((rule) => [rule.id, rule] as const))(
    "%s says what it promises, why, and from where",
    (id, rule) => {
      expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(rule.promise).toMatch(/^[A-Z].{10,}\.$/);
      expect(rule.why).toMatch(/^[A-Z].{10,}\.$/);
      expect(rule.source.text.length).toBeGreaterThan(5);
      expect(rule.needs.length).toBeGreaterThan(0);
      expect((rule.limits ?? []).filter((limit) => !isLimitId(limit))).toEqual([]);
      expect(existsSync(new URL(`./${id}.test.ts`, import.meta.url)), "has its own test").toBe(true);
    },
  );

  it("stand in the table once each", () => {
    expect(rulesTable().map(({ id }) => id)).toEqual(RULES.map(({ id }) => id));
    const lines = rulesMarkdown().split("\n");
    expect(lines).toHaveLength(RULES.length + 2);
    // Four columns in every line: a bar inside a text would break the table.
    for (const line of lines) expect(line.replaceAll("\\|", "").match(/\|/g)).toHaveLength(5);
  });
});
