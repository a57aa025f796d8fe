import { describe, expect, it } from "vitest";
import { LOUPE_RADIUS, lookedAt, loupePlace } from "../../../app/plan/hands/loupe-view.ts";
import { NUDGE_STEPS, nextStep } from "../../../app/plan/hands/nudge-steps.ts";
import { INCH, itemId, type Units } from "../../../src/index.ts";
import { bed, gardenOf } from "../../helpers/garden-of.ts";

const view = { x: 0, y: 0, scale: 0.1 };
/** Two beds 300 mm apart, 30 px: the gap runs from x 2000 to 2300. */
const left = bed("left", { x: 1000, y: 1000, w: 1000, h: 2000 });
const right = bed("right", { x: 2300, y: 1000, w: 1000, h: 2000 });
const garden = gardenOf(left, right);
const nothing = { finger: null, readout: null, held: [] } as const;

describe("what the loupe looks at", () => {
  it("is nothing without a finger, and nothing while the paper is carried", () => {
    expect(lookedAt(garden, view, { ...nothing, held: [left.id] })).toBeNull();
    expect(lookedAt(garden, view, { ...nothing, finger: [150, 200] })).toBeNull();
  });
  it("is the handle that is pulled, though the finger has it beside its middle", () => {
    const readout = { at: [1234, 2000] as const, text: "4 ft" };
    expect(lookedAt(garden, view, { ...nothing, finger: [140, 205], readout })).toEqual([123.4, 200]);
  });
  it("is the narrowest gap beside the one thing carried", () => {
    const [x, y] = lookedAt(garden, view, { finger: [150, 200], readout: null, held: [left.id] })!;
    expect(x).toBeCloseTo(215, 6);
    expect(y).toBeGreaterThanOrEqual(100);
    expect(y).toBeLessThanOrEqual(300);
  });
  it("is nothing where the gap is wide and far from the finger: it can be seen as it is", () => {
    const alone = gardenOf(bed("left", { x: 4000, y: 4000, w: 1000, h: 1000 }));
    expect(lookedAt(alone, view, { finger: [450, 450], readout: null, held: [itemId("left")] })).toBeNull();
  });
  it("is nothing for several things carried at once", () => {
    expect(
      lookedAt(garden, view, { finger: [150, 200], readout: null, held: [left.id, right.id] }),
    ).toBeNull();
  });
});

describe("where the loupe stands", () => {
  const clear = ([fx, fy]: readonly [number, number], [x, y]: readonly [number, number]) =>
    Math.hypot(fx - x, fy - y) - LOUPE_RADIUS;

  it("is above the finger, wholly on the plan and clear of the fingertip, wherever the finger is", () => {
    for (const width of [286, 356, 1000]) {
      for (let x = 0; x <= width; x += 13) {
        for (let y = 0; y <= 600; y += 13) {
          const [px, py] = loupePlace([x, y], width);
          expect(px - LOUPE_RADIUS).toBeGreaterThanOrEqual(0);
          expect(px + LOUPE_RADIUS).toBeLessThanOrEqual(width);
          expect(py - LOUPE_RADIUS).toBeGreaterThanOrEqual(0);
          expect(clear([x, y], [px, py])).toBeGreaterThanOrEqual(8);
        }
      }
    }
  });
});

describe("steps of the arrow pad", () => {
  it.each(["us", "metric"] as Units[])("go through all of them and round, in %s", (units) => {
    const steps = NUDGE_STEPS[units];
    let step = steps[0]!;
    const seen = steps.map(() => {
      const here = step;
      step = nextStep(units, step);
      return here;
    });
    expect(seen).toEqual(steps);
    expect(step).toBe(steps[0]);
  });
  it("give way to the arrow key's step where the units were changed", () => {
    expect(nextStep("metric", INCH)).toBe(10);
    expect(nextStep("us", 500)).toBe(INCH);
  });
});
