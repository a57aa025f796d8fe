import { describe, expect, it } from "vitest";
import { bedReach } from "../../src/access/reach.ts";
import { type Garden, type ItemOf, type Point, shiftToClear } from "../../src/index.ts";
import { wishesOf } from "../../src/rules/sound-change.ts";
import { gardenOf } from "../helpers/garden-of.ts";
import { smallGarden } from "../helpers/random-gardens.ts";
import { judge, shortestOnGrid } from "./grid-reference.ts";

/** Held to within 5 mm of what is found on a fine grid. */
const TOLERANCE = 5;

const bedsOf = ({ items }: Garden) => items.filter((item): item is ItemOf<"bed"> => item.kind === "bed");

function isTooWide(garden: Garden, bed: ItemOf<"bed">): boolean {
  const alone = {
    ...gardenOf({ ...bed, at: [0, 0] as const }),
    gardener: garden.gardener,
    limits: garden.limits,
  };
  const wishes = wishesOf(alone);
  return bedReach(bedsOf(alone)[0]!, alone, wishes).farthest.distance > wishes.reach + 0.5;
}

/** The first bed with something to clear, in a garden that has one. */
function caseOf(seed: number) {
  const garden = smallGarden(seed, { beds: 3, apart: seed % 3 === 0 ? -1 : 60 });
  for (const bed of bedsOf(garden)) {
    const judged = judge(garden, bed.id, isTooWide(garden, bed));
    if (judged.has.length > 0) return { garden, bed, ...judged };
  }
  throw new RangeError(`nothing to clear in garden ${seed}: choose another seed`);
}

const SEEDS = Array.from({ length: 60 }, (_, i) => i + 1);

describe("the smallest shift that clears, against a grid", () => {
  it.each(SEEDS)("is good, and no shorter one is: seed %i", { timeout: 60_000 }, (seed) =>
    holdsAgainstGrid(caseOf(seed)),
  );

  it(
    "regression: seed 68, shorter slid along the neighbour than straight up to it",
    { timeout: 60_000 },
    () => holdsAgainstGrid(caseOf(68)),
  );
});

function holdsAgainstGrid({ garden, bed, has, isGood }: ReturnType<typeof caseOf>): void {
  const shift = shiftToClear(garden, [bed.id]);
  if (!shift) {
    expect(shortestOnGrid(isGood, 2400, 300, 300)).toBe(Infinity);
    return;
  }
  expect(shift.clears.toSorted()).toEqual(has.map(({ key }) => key).toSorted());
  expect(isGood(shift.by)).toBe(true);
  const length = Math.hypot(...shift.by);
  const coarse = Math.max(TOLERANCE, length / 7);
  expect(shortestOnGrid(isGood, length - TOLERANCE, coarse, TOLERANCE)).toBe(Infinity);
  // Close about the answer on the fine grid itself.
  const near = (by: Point): Point => [by[0] + shift.by[0], by[1] + shift.by[1]];
  const local = around(25, TOLERANCE)
    .map(near)
    .filter((by) => Math.hypot(...by) < length - TOLERANCE);
  expect(local.filter(isGood)).toEqual([]);
}

function around(half: number, step: number): Point[] {
  const at: Point[] = [];
  for (let x = -half; x <= half; x += step) for (let y = -half; y <= half; y += step) at.push([x, y]);
  return at;
}
