import { describe, expect, it } from "vitest";
import { deltaOf } from "../../../app/live/delta.ts";
import { createSunAnswers } from "../../../app/workers/sun-answers.ts";
import {
  applyOps,
  bedMonths,
  bedPlane,
  type Garden,
  itemId,
  type Point,
  SUN_SETTLED,
  type SunMap,
  sunCosts,
  sunHours,
} from "../../../src/index.ts";
import { bed, gardenWith, thing } from "../../helpers/garden-of.ts";

const salads = bed("salads", { x: 0, y: 0, w: 1219.2, h: 2438.4 });
const beans = bed("beans", { x: 2600, y: 500, w: 900, h: 1800 });
const wall = thing("wall", "wall", { at: [2000, -3000] });
const before = gardenWith(
  {
    yard: [
      [-2000, -4000],
      [5000, -4000],
      [5000, 4500],
      [-2000, 4500],
    ],
  },
  salads,
  beans,
  wall,
);
const moved = (garden: Garden, id: string, by: Point) =>
  applyOps(garden, [{ op: "move", id: itemId(id), by }]);

function expectSame(quick: SunMap, whole: SunMap) {
  expect(quick.beds.map(({ id }) => id)).toEqual(whole.beds.map(({ id }) => id));
  quick.beds.forEach(({ hours }, i) => {
    expect(hours).toBeCloseTo(whole.beds[i]!.hours, 9);
  });
  const apart = quick.yard.hours.map((hours, i) => Math.abs(hours - whole.yard.hours[i]!));
  expect(Math.max(...apart.filter((by) => !Number.isNaN(by)))).toBeLessThan(1e-5);
}

describe("the worker's answers about the sun", () => {
  it.each(["wall", "salads"])(
    "follow the %s from one place to the next, and say what a whole map says",
    (id) => {
      const answers = createSunAnswers();
      let known: Garden | null = null;
      const ask = (garden: Garden, closeness: "following" | "live") => {
        const map = answers.hours(deltaOf(known, garden), closeness);
        known = garden;
        return map;
      };
      expectSame(ask(before, "live"), sunHours(before, { bareGround: true }));
      for (const by of [
        [200, 100],
        [400, -300],
        [400, -300],
      ] as const) {
        const draft = moved(before, id, by);
        expectSame(ask(draft, "following"), sunHours(draft, { bareGround: true }));
      }
      // Another one is taken hold of, and then two change at once.
      const other = moved(moved(before, id, [400, -300]), "beans", [0, 300]);
      expectSame(ask(other, "following"), sunHours(other, { bareGround: true }));
      const two = moved(moved(other, "beans", [0, 90]), id, [30, 0]);
      expectSame(ask(two, "following"), sunHours(two, { bareGround: true }));
    },
  );

  it("show the yard's ground as it would be without beds", () => {
    const { yard } = createSunAnswers().hours(deltaOf(null, before), "live");
    expect(yard).toEqual(sunHours({ ...before, items: [wall] }).yard);
  });

  it("look closer at a hand that rests: within half a minute a day of the closest look", () => {
    const answers = createSunAnswers();
    const closer = answers.hours(deltaOf(null, before), "closer");
    const settled = answers.hours(deltaOf(before, before), "settled");
    for (const [i, { hours }] of closer.beds.entries()) {
      expect(Math.abs(hours - settled.beds[i]!.hours)).toBeLessThan(0.5 / 60);
    }
    const apart = closer.yard.hours
      .map((hours, i) => Math.abs(hours - settled.yard.hours[i]!))
      .filter((by) => !Number.isNaN(by));
    expect(apart.reduce((sum, by) => sum + by, 0) / apart.length).toBeLessThan(0.75 / 60);
  });

  it("look as closely as it gets when asked to", () => {
    const map = createSunAnswers().hours(deltaOf(null, before), "settled");
    expect([map.days.length, map.step]).toEqual([SUN_SETTLED.days, SUN_SETTLED.step]);
    // A day is 13 h long on the mean: 24 days every 2 minutes and 12 every 10 part by minutes.
    expect(Math.abs(map.beds[0]!.hours - sunHours(before).beds[0]!.hours)).toBeLessThan(0.15);
  });

  it("answer all else about the garden they were told of last", () => {
    const answers = createSunAnswers();
    answers.hours(deltaOf(null, before), "live");
    const later = moved(before, "wall", [0, 700]);
    expect(answers.bedMonths(deltaOf(before, later), salads.id)).toEqual(bedMonths(later, salads.id));
    expect(answers.plane(deltaOf(later, later), salads.id)).toEqual(bedPlane(later, salads.id));
    expect(answers.sunCosts(deltaOf(later, later))).toEqual(sunCosts(later));
  });
});
