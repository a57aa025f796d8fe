import { readFileSync } from "node:fs";
import { Ajv } from "ajv";
import { describe, expect, it } from "vitest";
import { gardenJsonSchema, gardenSchemaText } from "../../scripts/garden-schema.ts";
import { EXAMPLES, emptyGarden, type Garden } from "../../src/index.ts";
import { fullGarden } from "../helpers/full-garden.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";

const file = new URL("../../public/garden.schema.json", import.meta.url);
const validate = new Ajv({
  strict: true,
  strictTypes: false,
  strictTuples: false,
  formats: { date: /^\d{4}-\d\d-\d\d$/ },
}).compile(gardenJsonSchema());

const plain = (garden: Garden) => JSON.parse(JSON.stringify(garden));

describe("the JSON Schema", () => {
  it("in public/ is up to date (npm run schema writes it)", () => {
    expect(readFileSync(file, "utf8")).toBe(gardenSchemaText());
  });

  it.each([
    ...EXAMPLES.map((example) => [example.id, example.garden] as const),
    ["an empty garden", emptyGarden("us")] as const,
    ["one of everything", fullGarden("us")] as const,
    ["one of everything, metric", fullGarden("metric")] as const,
  ])("takes %s", (_name, garden) => {
    expect(validate(plain(garden)), JSON.stringify(validate.errors)).toBe(true);
  });

  const good = plain(gardenOf(bed("salads")));
  const withBed = (changes: object) => ({ ...good, items: [{ ...good.items[0], ...changes }] });

  it.each<[string, unknown]>([
    ["another format", { ...good, format: "drawing" }],
    ["a later version", { ...good, version: good.version + 1 }],
    ["a field missing", { ...good, yard: undefined }],
    ["a field nobody knows", { ...good, colour: "red" }],
    [
      "a yard of two corners",
      {
        ...good,
        yard: [
          [0, 0],
          [1, 2],
        ],
      },
    ],
    ["a place with three numbers", withBed({ at: [1, 2, 3] })],
    ["a place out of sight", withBed({ at: [0, 2e6] })],
    ["an unknown kind", withBed({ kind: "pond" })],
    ["an id in capitals", withBed({ id: "Salads" })],
    ["a width of nothing", withBed({ shape: { type: "rectangle", width: 0, length: 900 } })],
    ["an unknown crop", withBed({ lastYear: ["mandrake"] })],
    ["an unknown board", withBed({ wall: { ...good.items[0].wall, board: "9x9" } })],
    ["half a course", withBed({ wall: { ...good.items[0].wall, courses: 1.5 } })],
    ["a latitude past the pole", { ...good, site: { ...good.site, latitude: 91 } }],
    [
      "5,000 things",
      { ...good, items: Array.from({ length: 5000 }, (_, i) => ({ ...good.items[0], id: `bed-${i}` })) },
    ],
  ])("refuses %s", (_name, json) => {
    expect(validate(JSON.parse(JSON.stringify(json)))).toBe(false);
  });
});
