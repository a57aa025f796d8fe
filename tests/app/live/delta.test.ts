import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deltaOf, withDelta } from "../../../app/live/delta.ts";
import { applyOps, emptyGarden, freshId, type Garden, newItem, type Op } from "../../../src/index.ts";

function gardenOfBeds(count: number): Garden {
  let garden = emptyGarden("us");
  for (let i = 0; i < count; i++) {
    const id = freshId(garden, "bed");
    const item = newItem("bed", { id, at: [1500 + 700 * i, 2200 + 300 * i], units: "us" });
    garden = applyOps(garden, [{ op: "add", item }]);
  }
  return garden;
}

const five = gardenOfBeds(5);
const ids = five.items.map(({ id }) => id);

describe("what the worker is told", () => {
  it("is one thing where one thing moved", () => {
    const after = applyOps(five, [{ op: "move", id: ids[2]!, by: [120, -45] }]);
    const delta = deltaOf(five, after);
    expect(delta.changed).toEqual([after.items[2]]);
    expect(delta.order).toBeNull();
    expect(delta.rest).toBeNull();
  });

  it("is everything at first", () => {
    expect(withDelta(null, deltaOf(null, five))).toEqual(five);
  });

  it("leads to the garden after, whatever was done, and shares what stayed", () => {
    const anyOp: fc.Arbitrary<Op> = fc.oneof(
      fc.record({
        op: fc.constant("move" as const),
        id: fc.constantFrom(...ids),
        by: fc.tuple(fc.integer({ min: -900, max: 900 }), fc.integer({ min: -900, max: 900 })),
      }),
      fc.record({ op: fc.constant("reorder" as const), id: fc.constantFrom(...ids), index: fc.nat(4) }),
      fc.record({
        op: fc.constant("set-garden" as const),
        changes: fc.record({ name: fc.constantFrom("North plot", "South plot") }),
      }),
    );
    fc.assert(
      fc.property(fc.array(anyOp, { maxLength: 6 }), (ops) => {
        const after = applyOps(five, ops);
        const got = withDelta(five, deltaOf(five, after));
        expect(got).toEqual(after);
        const kept = five.items.filter((item) => after.items.includes(item));
        for (const item of kept) expect(got.items).toContain(item);
      }),
    );
  });

  it("leads to the garden after a removal and an addition", () => {
    const item = newItem("shed", { id: freshId(five, "shed"), at: [4000, 5100], units: "us" });
    const after = applyOps(five, [
      { op: "remove", id: ids[1]! },
      { op: "add", item, index: 0 },
    ]);
    expect(withDelta(five, deltaOf(five, after))).toEqual(after);
  });

  it("is refused where it starts from another garden", () => {
    const other = gardenOfBeds(1);
    const after = applyOps(five, [{ op: "reorder", id: ids[0]!, index: 3 }]);
    expect(() => withDelta(other, deltaOf(five, after))).toThrow(RangeError);
    expect(() => withDelta(null, deltaOf(five, five))).toThrow(RangeError);
  });
});
