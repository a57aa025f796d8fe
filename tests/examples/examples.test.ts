import { describe, expect, it } from "vitest";
import {
  applyOps,
  checkGarden,
  EXAMPLES,
  type Garden,
  itemId,
  type Point,
  readGarden,
  type Snag,
  writeGarden,
} from "../../src/index.ts";

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

describe("the first example", () => {
  const feet = (x: number, y: number): Point => [x * 304.8, y * 304.8];
  const mustFix = (garden: Garden): readonly Snag[] =>
    checkGarden(garden).filter(({ grade }) => grade === "must");
  const shouldFix = (garden: Garden) => checkGarden(garden).filter(({ grade }) => grade === "should").length;
  const drags = [
    { id: "squash", by: feet(1, 0) },
    { id: "beans", by: feet(2.9, 0) },
    { id: "peppers", by: feet(-0.7, 14.5) },
  ];
  const start = EXAMPLES[0].garden;

  it("has three things to fix, and one bed to drag for each", () => {
    const about = mustFix(start).map(({ itemIds }) => itemIds.join());
    expect(about).toHaveLength(3);
    for (const { id } of drags) {
      expect(
        about.filter((ids) => ids.includes(id)),
        id,
      ).toHaveLength(1);
    }
  });

  it("leaves little beside them: one or two things that should be fixed", () => {
    expect(shouldFix(start)).toBeGreaterThanOrEqual(1);
    expect(shouldFix(start)).toBeLessThanOrEqual(2);
  });

  it("has one thing less to fix after each drag, and none in the end", () => {
    let garden = start;
    for (const [i, { id, by }] of drags.entries()) {
      garden = applyOps(garden, [{ op: "move", id: itemId(id), by }]);
      expect(
        mustFix(garden).map(({ title }) => title),
        `after dragging ${id}`,
      ).toHaveLength(2 - i);
    }
    expect(shouldFix(garden)).toBe(shouldFix(start));
  });
});
