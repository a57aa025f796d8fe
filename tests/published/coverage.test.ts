import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { FACTS } from "./cases.ts";
import { CLAIMS, LEFT_OUT, WATER_CLAIMS, WATER_LEFT_OUT } from "./claims.ts";
import { WATER_IDS } from "./water-cases.ts";

const ids = [...FACTS.cases, ...FACTS.cutting_stock].map(({ id }) => id);
const claimed = new Set(Object.values(CLAIMS).flat());

describe("the published cases", () => {
  it.each(ids)("%s is checked by a test or left out with a reason", (id) => {
    const reason = LEFT_OUT[id];
    expect(claimed.has(id) || (reason !== undefined && reason.length > 20)).toBe(true);
    expect(claimed.has(id) && reason !== undefined, "both checked and left out").toBe(false);
  });

  it.each(Object.entries(CLAIMS))("%s mentions every case it claims", (name, own) => {
    const file = new URL(`./${name}`, import.meta.url);
    expect(existsSync(file), `${name} exists`).toBe(true);
    const text = readFileSync(file, "utf8");
    const missing = own.filter((id) => !new RegExp(`\\b${id}\\b(?!-?\\d)`).test(text));
    expect(missing).toEqual([]);
  });

  it("claims and leaves out only cases that exist", () => {
    const known = new Set(ids);
    expect([...claimed, ...Object.keys(LEFT_OUT)].filter((id) => !known.has(id))).toEqual([]);
  });
});

describe("the published cases of water", () => {
  const sections = WATER_IDS.map(([name, ids]) => ({ name, ids }));
  const fileOf = (section: string) =>
    Object.entries(WATER_CLAIMS).flatMap(([name, own]) => (own.includes(section) ? [name] : []));
  const textOf = (name: string) => readFileSync(new URL(`./${name}`, import.meta.url), "utf8");

  it("are each run by one file", () => {
    expect(sections.filter(({ name }) => fileOf(name).length !== 1)).toEqual([]);
    expect(
      Object.values(WATER_CLAIMS)
        .flat()
        .filter((name) => !sections.some((section) => section.name === name)),
    ).toEqual([]);
  });

  // A section is run case by case from the file, or each of its cases is named in the test.
  it.each(sections)("$name has no case that is neither run nor left out with a reason", ({ name, ids }) => {
    const text = textOf(fileOf(name)[0] ?? "");
    const whole = new RegExp(`it\\.each\\(WATER\\.${name}\\.cases\\)`).test(text);
    const run = (id: string) => whole || new RegExp(`\\b${id}\\b`).test(text);
    const leftOut = (id: string) => (WATER_LEFT_OUT[id]?.length ?? 0) > 20;
    expect(ids.filter((id) => run(id) === leftOut(id))).toEqual([]);
  });

  it("leaves out only cases that exist", () => {
    const known = new Set(sections.flatMap(({ ids }) => ids));
    expect(Object.keys(WATER_LEFT_OUT).filter((id) => !known.has(id))).toEqual([]);
  });
});
