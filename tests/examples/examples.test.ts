import { describe, expect, it } from "vitest";
import { EXAMPLES, readGarden, writeGarden } from "../../src/index.ts";

describe.each(EXAMPLES.map((example) => [example.id, example.garden] as const))(
  "the example %s",
  (_id, garden) => {
    it("is a garden the door lets in, and keeps whole", () => {
      expect(readGarden(JSON.parse(writeGarden(garden)))).toEqual(garden);
    });

    it("has beds, a kitchen door, a gate and a tap", () => {
      const kinds = garden.items.map(({ kind }) => kind);
      expect(kinds.filter((kind) => kind === "bed").length).toBeGreaterThanOrEqual(4);
      expect(kinds).toEqual(
        expect.arrayContaining(["house", "door", "gate", "tap", "fence", "tree", "path"]),
      );
      expect(garden.items.some((item) => item.kind === "door" && item.kitchen)).toBe(true);
    });
  },
);

it("one example is in feet and inches north of the equator, the other metric and south of it", () => {
  const [northern, southern] = EXAMPLES.map(({ garden }) => garden);
  expect(northern).toMatchObject({ units: "us", paper: "letter" });
  expect(northern?.site.latitude).toBeGreaterThan(0);
  expect(southern).toMatchObject({ units: "metric", paper: "a4", gardener: { wheelchair: true } });
  expect(southern?.site.latitude).toBeLessThan(0);
});
