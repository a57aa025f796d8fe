import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  boxOf,
  GRIPS,
  type Grip,
  gripAt,
  innerGripAt,
  innerPulledTo,
  LEAST_SIZE,
  resizedTo,
  sizeFor,
} from "../../../app/plan/hands/resize.ts";
import { applyOps, type Shape } from "../../../src/index.ts";
import { bed, gardenOf } from "../../helpers/garden-of.ts";

const SHAPES: readonly Shape[] = [
  { type: "rectangle", width: 1200, length: 2500 },
  { type: "oval", width: 1300, length: 2100 },
  { type: "l", width: 2400, length: 1900, armWidth: 700, armLength: 600 },
  { type: "u", width: 2300, length: 1700, bayWidth: 800, bayLength: 1000 },
];

const opposite = ([x, y]: Grip): Grip => [-x as Grip[0], -y as Grip[1]];

describe("pulling an edge or a corner", () => {
  it.each(SHAPES)("keeps the opposite one of a turned $type where it is", (shape) => {
    const turn = fc.integer({ min: 0, max: 359 });
    const mm = fc.integer({ min: 200, max: 5000 });
    fc.assert(
      fc.property(turn, mm, mm, fc.constantFrom(...GRIPS), (degrees, width, length, grip) => {
        const before = bed("one", { at: [3100, -700], turn: degrees, shape });
        const [w, l] = boxOf(shape)!;
        const size = [grip[0] === 0 ? w : width, grip[1] === 0 ? l : length] as const;
        const after = { ...before, ...resizedTo(before, grip, size) };
        const [then, now] = [gripAt(before, opposite(grip)), gripAt(after, opposite(grip))];
        expect(Math.hypot(then[0] - now[0], then[1] - now[1])).toBeLessThan(1e-6);
      }),
      { seed: 90_211, numRuns: 200 },
    );
  });

  it("gives the size that brings the pulled corner to the hand, turned or not", () => {
    const one = bed("one", {
      at: [500, 900],
      turn: 37,
      shape: { type: "rectangle", width: 1200, length: 2500 },
    });
    const to = gripAt({ ...one, shape: { type: "rectangle", width: 1200, length: 2500 } }, [1, 1]);
    const [width, length] = sizeFor(one, [1, 1], to);
    expect([width, length]).toEqual([expect.closeTo(1200, 6), expect.closeTo(2500, 6)]);
    const resized = { ...one, ...resizedTo(one, [1, 1], [1700, 2900]) };
    expect(sizeFor(one, [1, 1], gripAt(resized, [1, 1]))).toEqual([
      expect.closeTo(1700, 6),
      expect.closeTo(2900, 6),
    ]);
  });

  it("never pulls an edge through the opposite one", () => {
    const one = bed("one", { at: [0, 0], shape: { type: "rectangle", width: 1200, length: 2500 } });
    expect(sizeFor(one, [1, 0], [-4000, 0])[0]).toBe(LEAST_SIZE);
  });

  it("leaves an L's arms as they are while there is room, and always a garden can hold the result", () => {
    const one = bed("one", { at: [0, 0], shape: SHAPES[2]! });
    const wide = resizedTo(one, [1, 1], [3000, 2600]).shape;
    expect(wide).toMatchObject({ armWidth: 700, armLength: 600 });
    const tight = resizedTo(one, [1, 1], [300, 350]);
    expect(() => applyOps(gardenOf(one), [{ op: "set", id: one.id, changes: tight }])).not.toThrow();
  });

  it("pulls a keyhole by its diameter about the opposite edge", () => {
    const keyhole: Shape = { type: "keyhole", diameter: 1800, slotWidth: 450, middleDiameter: 600 };
    const one = bed("one", { at: [100, 200], shape: keyhole });
    const changes = resizedTo(one, [0, -1], [1800, 2200]);
    expect(changes.shape).toMatchObject({ diameter: 2200, middleDiameter: 600 });
    expect(changes.at).toEqual([100, 0]);
  });
});

describe("pulling an inner corner", () => {
  const whole = (mm: number) => Math.round(mm);
  it.each([SHAPES[2]!, SHAPES[3]!])("brings the inner corner of a turned $type to the hand", (shape) => {
    const one = bed("one", { at: [900, 300], turn: 60, shape });
    const aimed =
      shape.type === "l"
        ? { ...shape, armWidth: 900, armLength: 500 }
        : { ...shape, bayWidth: 600, bayLength: 700 };
    const to = innerGripAt({ ...one, shape: aimed as Shape })!;
    expect(innerPulledTo(one, to, whole)).toEqual(aimed);
  });

  it("leaves something standing however far it is pulled", () => {
    const one = bed("one", { at: [0, 0], shape: SHAPES[2]! });
    const shape = innerPulledTo(one, [9000, 9000], whole);
    expect(() => applyOps(gardenOf(one), [{ op: "set", id: one.id, changes: { shape } }])).not.toThrow();
  });
});
