import { describe, expect, it } from "vitest";
import { type Ways, waysOf, waysWhenMoved } from "../../src/access/ways.ts";
import { type Garden, type ItemId, itemId, type Point } from "../../src/index.ts";
import { denseScene, rowsScene, seeded, tangledScene, withMoved } from "../helpers/scenes.ts";

/** Ways told with the mesh of what stays are those of a garden looked at by itself. */

const afresh = (garden: Garden): Garden => ({ ...garden, yard: [...garden.yard], items: [...garden.items] });
const bedsOf = ({ items }: Garden): ItemId[] =>
  items.filter(({ kind }) => kind === "bed").map(({ id }) => id);

const widthTo = (ways: Ways, id: ItemId): number => {
  const { fromGate, fromDoor } = ways.toBed(id);
  return Math.max(fromGate?.width ?? 0, fromDoor?.width ?? 0);
};

const scenes = [
  { name: "dense", garden: denseScene(14, 3), spread: 900 },
  { name: "rows", garden: rowsScene(12, 2), spread: 1500 },
  { name: "tangled", garden: tangledScene(9, 4), spread: 2500 },
];

describe("ways when something has moved", () => {
  it.each(scenes)("are those of the garden by itself, one bed moved or two: $name", ({ garden, spread }) => {
    const random = seeded(11);
    for (const moved of [["bed-2"], ["bed-5"], ["bed-1", "bed-4"]]) {
      const after = waysWhenMoved(garden, new Set(moved.map(itemId)));
      for (let place = 0; place < 8; place++) {
        const by: Point = [(random() - 0.5) * spread, (random() - 0.5) * spread];
        const now = moved.reduce((then, id) => withMoved(then, id, by), garden);
        const [ways, alone] = [after(now), waysOf(afresh(now))];
        for (const id of bedsOf(garden))
          expect(widthTo(ways, id), `${id} after ${moved} by ${by}`).toBeCloseTo(widthTo(alone, id), 3);
      }
    }
  });

  it.each(scenes)("are remembered for the garden they are of: $name", ({ garden }) => {
    const now = withMoved(garden, "bed-3", [10, 20]);
    const ways = waysWhenMoved(garden, new Set([itemId("bed-3")]))(now);
    expect(waysOf(now)).toBe(ways);
  });

  it.each(scenes)("are open as far as the widest of them is wide: $name", ({ garden }) => {
    const measured = waysOf(garden);
    for (const id of bedsOf(garden)) {
      const width = widthTo(measured, id);
      // Asked of ways of which nothing is known yet, the wider first.
      const asked = waysOf(afresh(garden));
      expect(asked.isOpen(id, width + 0.01), `${id}: ${width}`).toBe(false);
      if (width > 0) expect(asked.isOpen(id, width - 0.01), `${id}: ${width}`).toBe(true);
    }
  });
});
