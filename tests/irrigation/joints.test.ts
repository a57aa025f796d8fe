import { describe, expect, it } from "vitest";
import { dripPlan, EXAMPLES, type Point } from "../../src/index.ts";
import { jointsOf } from "../../src/irrigation/joints.ts";
import { path } from "../helpers/garden-of.ts";
import { dripBed, dripGarden } from "./drip-scene.ts";

describe("the joints of tubing", () => {
  const straight: readonly Point[] = [
    [0, 0],
    [5000, 0],
  ];

  it("are none along a straight run", () => {
    expect(jointsOf([straight], [])).toEqual({ tees: 0, elbows: 0 });
  });

  it("are a tee where something branches off in passing, an elbow where it goes on from the end", () => {
    expect(jointsOf([straight], [[2000, 0]])).toEqual({ tees: 1, elbows: 0 });
    expect(jointsOf([straight], [[5000, 0]])).toEqual({ tees: 0, elbows: 1 });
  });

  it("are two tees where four ends meet", () => {
    const beside: readonly Point[] = [
      [2000, 0],
      [2000, 900],
    ];
    expect(jointsOf([straight, beside], [[2000, 0]])).toEqual({ tees: 2, elbows: 0 });
  });

  it("are an elbow at a right angle, also where it is rounded in short pieces, and none at a slight bend", () => {
    const sharp: readonly Point[] = [
      [0, 0],
      [900, 0],
      [900, 700],
    ];
    const rounded: readonly Point[] = [
      [0, 0],
      [900, 0],
      [904, 2],
      [906, 6],
      [906, 700],
    ];
    const slight: readonly Point[] = [
      [0, 0],
      [900, 0],
      [1700, 500],
    ];
    expect([sharp, rounded, slight].map((run) => jointsOf([run], []).elbows)).toEqual([1, 1, 0]);
  });
});

describe("where a main crosses a path", () => {
  it("is told once for each path, and not for those it does not cross", () => {
    const garden = dripGarden([0, 0], dripBed("a", { x: -600, y: 5000 }));
    const crossed = path("crossed", { from: [-3000, 2500], to: [3000, 2500], width: 900 });
    const beside = path("beside", { from: [4000, -3000], to: [4000, 8000], width: 900 });
    const plan = dripPlan({ ...garden, items: [...garden.items, crossed, beside] });
    expect(plan.crossings.map(({ pathId }) => pathId)).toEqual(["crossed"]);
    expect(plan.crossings[0]!.at[0]).toBeCloseTo(0, 6);
  });

  it("is the gravel way of the southern example, all of whose beds get their water", () => {
    const plan = dripPlan(EXAMPLES.find(({ id }) => id === "southern-yard")!.garden);
    expect(plan.crossings.map(({ pathId }) => pathId)).toEqual(["gravel-way"]);
    expect(plan.beds.every(({ head }) => head !== null)).toBe(true);
    expect(plan.troubles).toEqual([]);
    expect(plan.supply.measured).toBe(true);
    expect(plan.zones.every(({ months }) => months !== null)).toBe(true);
  });
});
