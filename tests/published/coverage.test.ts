import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { FACTS } from "./cases.ts";
import { CLAIMS, LEFT_OUT } from "./claims.ts";

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
