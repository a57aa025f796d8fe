import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { VERSION } from "../../src/garden/garden.ts";
import {
  emptyGarden,
  type Garden,
  GardenFileError,
  newPlanting,
  readGarden,
  readGardenText,
  writeGarden,
} from "../../src/index.ts";
import { fullGarden } from "../helpers/full-garden.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";

type Json = { [key: string]: Json } | Json[] | string | number | boolean | null;

/** The garden as plain JSON, for breaking. */
const plain = (
  garden: Garden = fullGarden("us"),
): { [key: string]: Json } & { items: { [key: string]: Json }[] } => JSON.parse(JSON.stringify(garden));

function refusal(json: unknown): { path: string; reason: string } {
  try {
    readGarden(json);
  } catch (error) {
    if (error instanceof GardenFileError) return { path: error.path, reason: error.reason };
    throw error;
  }
  return { path: "", reason: "it was accepted" };
}

const listed = (...crops: string[]): Json =>
  crops.map((crop) => JSON.parse(JSON.stringify({ ...newPlanting("kale"), crop })));

const withItem = (changes: { [key: string]: Json }) => {
  const json = plain(gardenOf(bed("salads")));
  return { ...json, items: [{ ...json.items[0], ...changes }] };
};

describe("a garden file", () => {
  it.each(["us", "metric"] as const)("keeps everything of a garden in %s units", (units) => {
    const garden = fullGarden(units);
    expect(readGarden(JSON.parse(writeGarden(garden)))).toEqual(garden);
    expect(readGardenText(writeGarden(garden))).toEqual(garden);
    expect(readGarden(JSON.parse(writeGarden(emptyGarden(units))))).toEqual(emptyGarden(units));
  });

  it("is text a person can read, a point a line", () => {
    const text = writeGarden(gardenOf(bed("salads", { x: 300, y: 400 })));
    expect(text).toContain('      "at": [900, 1600],\n');
    expect(text.endsWith("}\n")).toBe(true);
    expect(readGardenText(`\uFEFF${text}`).items).toHaveLength(1);
  });

  it("keeps coordinates to the last bit, whatever they are", () => {
    const mm = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(mm, mm, fc.double({ min: -360, max: 360, noNaN: true }), (x, y, turn) => {
        // Minus zero is the one number JSON cannot keep; readGarden makes it zero on the way in.
        const garden = readGarden(gardenOf(bed("salads", { at: [x, y], turn })));
        expect(readGarden(JSON.parse(writeGarden(garden)))).toEqual(garden);
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  it("leaves what it reads as it is", () => {
    const json = plain();
    const before = structuredClone(json);
    readGarden(json);
    expect(json).toEqual(before);
  });
});

describe("a file that is no garden", () => {
  it.each<[string, string, RegExp]>([
    ["nothing", "", /not JSON/],
    ["prose", "Dear neighbour", /not JSON/],
    ["a picture", "\u0089PNG\r\n", /not JSON/],
    ["half a garden", writeGarden(emptyGarden("us")).slice(0, 300), /not JSON/],
    ["a list", "[1, 2]", /not a Bedwright garden/],
    ["null", "null", /not a Bedwright garden/],
    ["another program's drawing", '{"type":"drawing","items":[]}', /not a Bedwright garden/],
    ["11 MB of anything", " ".repeat(11_000_000), /over 10 MB/],
    ["100,000 brackets", "[".repeat(100_000) + "]".repeat(100_000), /nested too deeply|not JSON/],
  ])("says so of %s", (_name, text, reason) => {
    expect(() => readGardenText(text)).toThrow(GardenFileError);
    expect(() => readGardenText(text)).toThrow(reason);
  });

  it("says in one sentence what is wrong and where", () => {
    expect(() => readGarden(withItem({ turn: 400 }))).toThrow(
      "This garden cannot be opened: items[0].turn must be within ±360.",
    );
  });

  it("tells a later version from a broken one", () => {
    expect(refusal({ ...plain(), version: VERSION + 1 }).reason).toBe(
      `it was made by a newer Bedwright (its version is ${VERSION + 1}, and this one reads up to ${VERSION})`,
    );
    for (const version of [0, -1, 1.5, "1", null]) {
      expect(refusal({ ...plain(), version })).toEqual({
        path: "version",
        reason: "must be a whole number from 1",
      });
    }
  });

  const crossing: Json = [
    [0, 0],
    [900, 700],
    [900, 0],
    [0, 800],
  ];
  it.each<[string, unknown, string, string | RegExp]>([
    ["a field missing", { ...plain(), yard: undefined }, "yard", "is missing"],
    ["a field nobody knows", { ...plain(), colour: "red" }, "colour", "is not a field of a garden"],
    ["a field without a name", { ...plain(), "": 1 }, '""', "is not a field of a garden"],
    [
      "a field that turns the sentence about",
      { ...plain(), "\u202E no": 1 },
      '"· no"',
      "is not a field of a garden",
    ],
    ["a list for limits", { ...plain(), limits: [] }, "limits", "must be a group of fields"],
    [
      "a list for prices",
      { ...plain(), prices: { ...emptyGarden("us").prices, own: [0, 3] } },
      "prices.own",
      "must be a group of fields",
    ],
    ["a number that is not one", withItem({ turn: Number.NaN }), "items[0].turn", "must be a number"],
    ["a place out of sight", withItem({ at: [0, 2e6] }), "items[0].at[1]", "lies more than 1 km away"],
    ["infinity", withItem({ at: [Number.POSITIVE_INFINITY, 0] }), "items[0].at[0]", /finite|1 km/],
    ["a place with three numbers", withItem({ at: [1, 2, 3] }), "items[0].at[2]", /not a field/],
    [
      "a width of nothing",
      withItem({ shape: { type: "rectangle", width: 0, length: 9 } }),
      "items[0].shape.width",
      "must be above 0",
    ],
    ["an unknown shape", withItem({ shape: { type: "star" } }), "items[0].shape.type", /must be a rectangle/],
    ["an unknown kind", withItem({ kind: "pond" }), "items[0].kind", /is not a kind of thing/],
    ["a bed without its wall", withItem({ wall: null }), "items[0].wall", /must be boards/],
    [
      "an unknown board",
      withItem({
        wall: {
          made: "boards",
          board: "3x7",
          timber: "larch",
          courses: 1,
          corner: "ends-over-sides",
          cornerPosts: true,
          capRail: null,
          bracing: "none",
        },
      }),
      "items[0].wall.board",
      /is not a board/,
    ],
    [
      "an unknown crop",
      withItem({ plantings: listed("tomato", "mandrake") }),
      "items[0].plantings[1].crop",
      "is not a crop of the crop table",
    ],
    [
      "a bed whose outline crosses itself",
      withItem({ shape: { type: "polygon", points: crossing } }),
      "items[0].shape.points",
      /one plain outline/,
    ],
    ["a yard that crosses itself", { ...plain(), yard: crossing }, "yard", /one plain outline/],
    [
      "a yard of no ground",
      {
        ...plain(),
        yard: [
          [0, 0],
          [500, 0],
          [900, 0],
        ],
      },
      "yard",
      /one plain outline/,
    ],
    ["an id in capitals", withItem({ id: "Salads" }), "items[0].id", /small letters/],
    ["a name as long as a book", withItem({ name: "x".repeat(81) }), "items[0].name", /longer than 80/],
    [
      "a yes that is a word",
      { ...plain(), gardener: { kneeling: "yes", barrow: true, wheelchair: false, child: false } },
      "gardener.kneeling",
      "must be true or false",
    ],
    ["units nobody uses", { ...plain(), units: "cubits" }, "units", "must be us or metric"],
    ["an unknown limit", { ...plain(), limits: { stretch: 5 } }, "limits.stretch", "is not a limit"],
    [
      "a negative price",
      { ...plain(), prices: { ...emptyGarden("us").prices, own: { soil: -1 } } },
      "prices.own.soil",
      "must not be negative",
    ],
    [
      "a currency by its sign",
      { ...plain(), prices: { ...emptyGarden("us").prices, currency: "$" } },
      "prices.currency",
      /currency code/,
    ],
    ["items that are no list", { ...plain(), items: {} }, "items", "must be a list of things"],
    [
      "5,000 things",
      { ...plain(), items: Array.from({ length: 5000 }, () => null) },
      "items",
      "has more than 2000 things",
    ],
    ["a thing that is nothing", { ...plain(), items: [null] }, "items[0]", /./],
  ])("refuses %s", (_name, json, path, reason) => {
    const found = refusal(json);
    expect(found.path).toBe(path);
    expect(found.reason).toMatch(reason);
  });

  it("refuses an id used twice", () => {
    const json = plain(gardenOf(bed("salads"), bed("roots")));
    json.items[1]!.id = "salads";
    expect(refusal(json)).toEqual({ path: "items[1].id", reason: 'uses "salads" a second time' });
  });

  it.each([
    ["lastFrost", "02-29", true],
    ["lastFrost", "02-30", false],
    ["firstFrost", "04-31", false],
    ["firstFrost", "13-01", false],
    ["firstFrost", "4-26", false],
  ])("reads %s %s only where the calendar has it", (field, day, real) => {
    const json = plain();
    const found = refusal({ ...json, site: { ...Object(json.site), [field]: day } });
    expect(found.path).toBe(real ? "" : `site.${field}`);
  });

  it.each([
    ["2028-02-29", true],
    ["2027-02-29", false],
    ["2100-02-29", false],
    ["2027-06-31", false],
  ])("reads prices of %s only where that year has it", (asOf, real) => {
    const json = plain();
    expect(refusal({ ...json, prices: { ...Object(json.prices), asOf } }).path).toBe(
      real ? "" : "prices.asOf",
    );
  });

  it("refuses a path that leads nowhere", () => {
    const path = {
      kind: "path",
      id: "path-1",
      name: "",
      at: [0, 0],
      turn: 0,
      width: 900,
      use: "main",
      surface: "bark",
      depth: 0,
      edging: null,
      stage: 1,
    };
    const points = [
      [10, 20],
      [10, 20],
    ];
    expect(refusal({ ...plain(), items: [{ ...path, points }] }).path).toBe("items[0].points");
  });

  it.each(["__proto__", "constructor", "prototype"])("refuses the key %s wherever it stands", (key) => {
    const text = writeGarden(gardenOf(bed("salads")));
    const own = text.replace('"own": {', `"own": { "${key}": { "polluted": 1 }`);
    const item = text.replace('"kind": "bed"', `"kind": "bed", "${key}": {}`);
    expect(() => readGardenText(own)).toThrow(`prices.own.${key} is not a field`);
    expect(() => readGardenText(item)).toThrow(`items[0].${key} is not a field`);
    expect(Object.keys({})).toEqual([]);
    expect(Reflect.get({}, "polluted")).toBeUndefined();
  });

  it("answers any JSON at all with a GardenFileError", () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (whole, part) => {
        expect(() => readGarden(whole)).toThrow(GardenFileError);
        expect(() => readGarden({ ...plain(), items: [part] })).toThrow(GardenFileError);
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});
