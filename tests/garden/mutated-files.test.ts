import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { emptyGarden, type Garden, GardenFileError, readGardenText, writeGarden } from "../../src/index.ts";

import { fullGarden } from "../helpers/full-garden.ts";
import { mutated } from "../helpers/mutations.ts";
import { seeded } from "../helpers/scenes.ts";
import { deepFrozen } from "../helpers/test-op.ts";

const FILES = 8000;
/** What is called a hang, ms. */
const HANG = 1000;

/** Small gardens that have, between them, one of everything: a file of two things is broken as well as one of fifty. */
function smallGardens(): readonly Garden[] {
  return (["us", "metric"] as const).flatMap((units) => {
    const full = fullGarden(units);
    const bare = { ...full, items: [] };
    return [
      bare,
      emptyGarden(units),
      ...full.items.map(
        (item, i): Garden => ({ ...(i % 4 === 0 ? bare : emptyGarden(units)), items: [item] }),
      ),
    ];
  });
}

/** Files of earlier versions, a thing or two in each. */
const oldFiles = (): readonly string[] =>
  ["v1-one-of-everything-us", "v2-one-of-everything-metric"].flatMap((name) => {
    const text = readFileSync(new URL(`../fixtures/${name}.json`, import.meta.url), "utf8");
    const { items, ...rest }: { items: unknown[] } = JSON.parse(text);
    return items.map((_item, i) => JSON.stringify({ ...rest, items: items.slice(i, i + 2) }));
  });

describe(`${FILES} garden files with something wrong`, () => {
  const gardens = smallGardens().map(deepFrozen);
  const texts = [...gardens.map(writeGarden), ...oldFiles()];
  const outcomes = { read: 0, refused: 0, slowest: 0 };
  const unsaid: string[] = [];
  const lost: string[] = [];
  const before = JSON.stringify(gardens);

  for (let n = 0; n < FILES; n++) {
    const text = mutated(texts[n % texts.length]!, seeded(n + 1));
    const start = performance.now();
    try {
      const garden = readGardenText(text);
      outcomes.read++;
      const given: { version: number } = JSON.parse(text.replace(/^\uFEFF/, ""));
      // What an earlier version said is told otherwise now; what is read has to come back all the same.
      const told = given.version === garden.version ? given : readGardenText(writeGarden(garden));
      if (sorted(told) !== sorted(garden)) lost.push(`${n}: ${text.slice(0, 200)}`);
    } catch (error) {
      // Anything but the reader's own error fails the whole file of tests, with its number.
      if (!(error instanceof GardenFileError)) throw new Error(`file ${n}`, { cause: error });
      outcomes.refused++;
      // A trouble with the whole file has no path, and then begins with "it".
      if (error.reason.length < 5 || (error.path === "" && !error.reason.startsWith("it ")))
        unsaid.push(`${n}: ${error.message}`);
    }
    outcomes.slowest = Math.max(outcomes.slowest, performance.now() - start);
  }

  it("are each read or refused by the reader's own error", () => {
    expect(outcomes.read + outcomes.refused).toBe(FILES);
    // Both happen, else the breaking is too gentle or too rough to show anything.
    expect(outcomes.read).toBeGreaterThan(FILES / 100);
    expect(outcomes.refused).toBeGreaterThan(FILES / 2);
  });

  it("are read whole where they are read: nothing that the file says is dropped or changed", () => {
    expect(lost).toEqual([]);
  });

  it("are refused with the place and the reason", () => {
    expect(unsaid).toEqual([]);
  });

  it("hang nobody up", () => {
    expect(outcomes.slowest).toBeLessThan(HANG);
  });

  it("change no garden that is there, nor what objects are", () => {
    expect(JSON.stringify(gardens)).toBe(before);
    expect(Reflect.get({}, "x")).toBeUndefined();
  });
});

/** As text, with the fields in one order, for a file may have them in any, and with one zero, for JSON knows two. */
const sorted = (json: unknown): string =>
  JSON.stringify(json, (_key, value: unknown) => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
    return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
