import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CROPS, cropWord } from "../../src/index.ts";
import german from "../../src/words/catalogue-de.ts";
import british from "../../src/words/catalogue-en-gb.ts";
import { holesOf } from "../../src/words/holes.ts";
import { type FileTexts, sourceFiles, textsOf } from "./source-texts.ts";

/** Every text of the program stands in the catalogue, and nothing else does. */

/**
 * Files whose strings are for no reader: what a drawing is written in, codes, names a garden is kept under, the worker
 * that keeps the page, and the README's table.
 */
const NO_READER = [
  // Tables as they were published; the names of crops are looked for one by one.
  "src/crops/crop-rows.ts",
  "src/water/crop-water-rows.ts",
  "src/water/soil-water.ts",
  "src/access/gate-room.ts",
  "src/access/wheelchair-gates.ts",
  // Whoever opens a worked example may call its beds otherwise: they are data, as in a garden of one's own.
  "src/examples/",
  "src/garden/empty-garden.ts",
  "src/garden/migrations/",
  "src/layout/position-rules.ts",
  "src/layout/shift-to-clear.ts",
  "src/rules/rules-table.ts",
  "src/sheet/svg-document.ts",
  "src/takeoff/counted.ts",
  "src/words/",
  "app/offline/precache.ts",
  // Wishes of a device, and colours.
  "app/device/board.ts",
  "app/device/system-inks.ts",
  // Selectors, type faces and places in CSS.
  "app/plan/hands/Loupe.tsx",
  "app/plan/hands/use-hands.ts",
  "app/plan/lettering.ts",
  "app/style/",
];

const isIn = (folders: readonly string[], file: string) => folders.some((folder) => file.startsWith(folder));

const files = sourceFiles("src", "app");
const read = files.map((file) => ({ file, ...textsOf(file) }));
const hasReaders = ({ file }: { readonly file: string }) => !isIn(NO_READER, file);
const crops = CROPS.flatMap((crop) => [crop.name, cropWord(crop)]);

/** The entries that German has for what these files say, with the text of each; of a counted one for one and for more. */
const entriesOf = (texts: readonly FileTexts[]) =>
  new Map<string, string>([
    ...texts.flatMap(({ said }) => said.map(({ text }) => [text, text] as const)),
    ...texts.flatMap(({ counted }) =>
      counted.flatMap(({ text }) => [[`${text}_one`, text] as const, [`${text}_other`, text] as const]),
    ),
  ]);

const cropEntries = crops.map((text) => [text, text] as const);
const entries = new Map<string, string>([...entriesOf(read), ...cropEntries]);
const wanted = new Map<string, string>([...entriesOf(read.filter(hasReaders)), ...cropEntries]);
const isInGerman = (key: string) => Object.hasOwn(german, key);

const where = (texts: readonly { readonly file: string; readonly line: number; readonly text: string }[]) =>
  texts.map(({ file, line, text }) => `${file}:${line}: ${text}`);

describe("the sources", () => {
  it("are read whole", () => {
    expect(files.length).toBeGreaterThan(800);
    expect(wanted.size).toBeGreaterThan(1000);
  });

  it("say nothing before it is known who speaks", () => {
    expect(where(read.flatMap(({ early }) => early))).toEqual([]);
  });

  it("leave no text for people bare", () => {
    expect(where(read.filter(hasReaders).flatMap(({ bare }) => bare))).toEqual([]);
  });

  it("have no file among those without readers that is gone", () => {
    expect(NO_READER.filter((path) => !files.some((file) => file.startsWith(path)))).toEqual([]);
  });
});

describe("German", () => {
  it("has every text that is said", () => {
    expect([...wanted.keys()].filter((key) => !isInGerman(key))).toEqual([]);
  });

  it("has no text that nothing says", () => {
    expect(Object.keys(german).filter((key) => !entries.has(key))).toEqual([]);
  });

  it("has each text in one file, sorted", () => {
    const folder = new URL("../../src/words/de/", import.meta.url);
    const all: string[] = [];
    for (const name of readdirSync(folder)) {
      const keys = Object.keys(JSON.parse(readFileSync(new URL(name, folder), "utf8")) as object);
      expect(keys, name).toEqual([...keys].sort());
      all.push(...keys);
    }
    expect(all.filter((key, i) => all.indexOf(key) !== i)).toEqual([]);
  });

  it.each(Object.entries(german))("keeps the holes of %j", (key, text) => {
    const holes = holesOf(entries.get(key) ?? key);
    // One thing may be counted in a word: "ein Brett".
    const least = key.endsWith("_one") ? holes.filter((hole) => hole !== "count") : holes;
    expect([...new Set(holesOf(text))].filter((hole) => !holes.includes(hole))).toEqual([]);
    expect(least.filter((hole) => !holesOf(text).includes(hole))).toEqual([]);
  });

  it("has no English left in it", () => {
    const english = /\b(the|with|of|and|from|that|which|are|is|for|by|to|no|it|its|where)\b/i;
    const published = /ADA Standards|University of Maryland|a4|\bis\b4/g;
    const left = Object.entries(german).filter(([, text]) => english.test(text.replace(published, "")));
    expect(left).toEqual([]);
  });

  it("addresses nobody, and quotes as German does", () => {
    expect(
      Object.values(german).filter((text) =>
        /[\p{Ll},] (Sie|Ihre?[mnrs]?)\b|\b([Dd]u|[Dd]eine?)\b/u.test(text),
      ),
    ).toEqual([]);
    expect(Object.values(german).filter((text) => /"|”/.test(text))).toEqual([]);
  });
});

describe("British English", () => {
  it("differs from texts that are said, and only from those", () => {
    expect(Object.keys(british).filter((key) => !entries.has(key))).toEqual([]);
    expect(Object.entries(british).filter(([key, text]) => key === text)).toEqual([]);
  });

  it("leaves no American spelling", () => {
    const american = /\b(color|gray|meters?|mold|center|fiber|faucet|lumber|sidewalk)\b/i;
    const left = [...entries].filter(([key, text]) => american.test(text) && !Object.hasOwn(british, key));
    expect(left).toEqual([]);
  });
});
