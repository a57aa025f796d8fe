import { describe, expect, it } from "vitest";
import { duplicateOps, freshId, type Garden, itemId, orderOps, removeOps } from "../../src/index.ts";
import { bed, gardenOf, shed } from "../helpers/garden-of.ts";
import { testOps } from "../helpers/test-op.ts";

const salads = bed("bed-1", { x: 300, name: "Salads" });
const hut = shed("shed-1", { x: 5000 });
const roots = bed("bed-3", { x: 2300, name: "Roots 2" });
const plain = bed("bed-4", { x: 8000 });
const garden = gardenOf(salads, hut, roots, plain);
const ids = (of: Garden) => of.items.map(({ id }) => id);

describe("duplicateOps", () => {
  it("copies in front, with free ids and numbered names, moved by what is asked", () => {
    const ops = duplicateOps(garden, [roots.id, salads.id, plain.id], [120, -70]);
    const after = testOps(garden, ops);
    expect(after.items.slice(4).map(({ id, name, at }) => ({ id, name, at }))).toEqual([
      { id: "bed-2", name: "Salads 2", at: [salads.at[0] + 120, salads.at[1] - 70] },
      { id: "bed-5", name: "Roots 3", at: [roots.at[0] + 120, roots.at[1] - 70] },
      { id: "bed-6", name: "", at: [plain.at[0] + 120, plain.at[1] - 70] },
    ]);
    expect(after.items.slice(0, 4)).toEqual(garden.items);
  });

  it("keeps names within what a garden may hold", () => {
    const long = gardenOf(bed("bed-1", { name: "x".repeat(80) }));
    const after = testOps(long, duplicateOps(long, [itemId("bed-1")], [5, 6]));
    expect(after.items[1]?.name).toBe(`${"x".repeat(74)} 2`);
  });

  it("refuses what is not there", () => {
    expect(() => duplicateOps(garden, [itemId("nobody")], [1, 2])).toThrow(RangeError);
  });
});

describe("removeOps", () => {
  it("takes all of them out", () => {
    expect(ids(testOps(garden, removeOps([salads.id, plain.id])))).toEqual(["shed-1", "bed-3"]);
  });
});

describe("orderOps", () => {
  it.each([
    ["front", ["bed-1", "bed-3"], ["shed-1", "bed-4", "bed-1", "bed-3"]],
    ["back", ["bed-4", "bed-3"], ["bed-3", "bed-4", "bed-1", "shed-1"]],
    ["forward", ["bed-1"], ["shed-1", "bed-1", "bed-3", "bed-4"]],
    ["forward", ["bed-1", "shed-1"], ["bed-3", "bed-1", "shed-1", "bed-4"]],
    ["forward", ["bed-4", "bed-3"], ["bed-1", "shed-1", "bed-3", "bed-4"]],
    ["backward", ["bed-3", "bed-1"], ["bed-1", "bed-3", "shed-1", "bed-4"]],
    ["backward", ["bed-4"], ["bed-1", "shed-1", "bed-4", "bed-3"]],
  ] as const)("%s of %j gives %j", (to, chosen, order) => {
    expect(ids(testOps(garden, orderOps(garden, chosen.map(itemId), to)))).toEqual(order);
  });

  it("asks for nothing where nothing changes", () => {
    expect(orderOps(garden, [plain.id], "front")).toEqual([]);
  });
});

describe("freshId", () => {
  it("gives the first free number of a kind", () => {
    expect(freshId(garden, "bed-l")).toBe("bed-2");
    expect(freshId(garden, "keep-clear")).toBe("keep-clear-1");
  });
});
