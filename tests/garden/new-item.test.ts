import { describe, expect, it } from "vitest";
import {
  applyOps,
  BARROW,
  boundsOfItem,
  emptyGarden,
  formatShort,
  freshId,
  isPreset,
  itemId,
  type Kind,
  newItem,
  type Units,
} from "../../src/index.ts";

const UNITS: readonly Units[] = ["us", "metric"];

describe("the barrow", () => {
  it("offers every kind of thing there is", () => {
    const kinds: Record<Kind, true> = {
      bed: true,
      path: true,
      ground: true,
      house: true,
      shed: true,
      wall: true,
      fence: true,
      tree: true,
      gate: true,
      door: true,
      tap: true,
      "keep-clear": true,
    };
    expect(new Set(BARROW.map(({ kind }) => kind))).toEqual(new Set(Object.keys(kinds)));
    expect(new Set(BARROW.map(({ preset }) => preset)).size).toBe(BARROW.length);
    expect(isPreset("bed-l")).toBe(true);
    expect(isPreset("pond")).toBe(false);
  });

  it.each(UNITS.flatMap((units) => BARROW.map(({ preset, kind }) => ({ preset, kind, units }))))(
    "gives a $preset that any garden takes, where it is asked for, in $units sizes",
    ({ preset, kind, units }) => {
      const garden = emptyGarden(units);
      const item = newItem(preset, { id: freshId(garden, preset), at: [1234, 5678], units });
      expect(item).toMatchObject({ kind, at: [1234, 5678], turn: 0 });
      expect(applyOps(garden, [{ op: "add", item }]).items).toEqual([item]);
      const box = boundsOfItem(item);
      expect(box.minX).toBeLessThanOrEqual(1234);
      expect(box.maxX).toBeGreaterThanOrEqual(1234);
    },
  );

  it("gives a bed that is 4 by 8 ft, or 1.2 by 2.4 m", () => {
    const size = (units: Units) => {
      const item = newItem("bed", { id: itemId("bed-1"), at: [0, 0], units });
      return item.kind === "bed" && item.shape.type === "rectangle"
        ? [formatShort(item.shape.width, units), formatShort(item.shape.length, units)]
        : [];
    };
    expect(size("us")).toEqual(["48 in", "96 in"]);
    expect(size("metric")).toEqual(["120 cm", "240 cm"]);
  });
});
