import { describe, expect, it } from "vitest";
import { contains, perimeter } from "../../src/geometry/ring.ts";
import { INCH, type Ring, takeoff } from "../../src/index.ts";
import { cheapestPurchase, type Need, type Terms } from "../../src/takeoff/bulk-purchase.ts";
import { DELIVERY, materialById, VOLUME_UNIT } from "../../src/takeoff/goods.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { seeded } from "./cutting-lists.ts";

const wall = {
  made: "boards",
  board: "2x6",
  timber: "douglas-fir",
  courses: 2,
  corner: "ends-between-sides",
  cornerPosts: true,
  capRail: null,
  bracing: "none",
} as const;
const THICKNESS = 1.5 * INCH;
const DEPTH = 2 * 5.5 * INCH;

const SHAPES = {
  rectangle: { type: "rectangle", width: 1219.2, length: 2438.4 },
  l: { type: "l", width: 2400, length: 3000, armWidth: 900, armLength: 1000 },
  u: { type: "u", width: 3000, length: 2600, bayWidth: 1100, bayLength: 1500 },
  oval: { type: "oval", width: 1500, length: 2200 },
  polygon: {
    type: "polygon",
    points: [
      [0, 0],
      [2100, 300],
      [2600, 1700],
      [1100, 2400],
      [-300, 1500],
    ],
  },
} as const;

/** Least distance from a point to an outline, by going along it; the slow way, for nothing but this test. */
function nearest([px, py]: readonly [number, number], ring: Ring): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, [bx, by]] of ring.entries()) {
    const [ax, ay] = ring.at(i - 1)!;
    const [dx, dy] = [bx - ax, by - ay];
    const t = Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / (dx * dx + dy * dy || 1)));
    least = Math.min(least, Math.hypot(px - ax - t * dx, py - ay - t * dy));
  }
  return least;
}

/** Soil by slicing: cells of 10 mm whose middle lies inside the outline and no nearer to it than the wall is thick. */
function sliced(outside: Ring): number {
  const cell = 10;
  const xs = outside.map(([x]) => x);
  const ys = outside.map(([, y]) => y);
  let cells = 0;
  for (let x = Math.min(...xs) + cell / 2; x < Math.max(...xs); x += cell) {
    for (let y = Math.min(...ys) + cell / 2; y < Math.max(...ys); y += cell) {
      if (contains(outside, [x, y]) && nearest([x, y], outside) >= THICKNESS) cells++;
    }
  }
  return (cells * cell * cell * DEPTH) / 1e6;
}

describe("fill by the outline and by slicing", () => {
  it.each(Object.entries(SHAPES))("agree about a bed of shape %s to 1 %%", (_, shape) => {
    const [counted] = takeoff(gardenOf(bed("b", { shape, at: [0, 0], wall }))).beds;
    const bySlices = sliced(counted!.outside);
    expect(bySlices).toBeGreaterThan(300);
    // Cells of 10 mm along a border of some 10 m err by a tenth of their area at most; mitred inner corners add a little.
    expect(Math.abs(counted!.soilVolumeL / bySlices - 1)).toBeLessThan(0.01);
  });
});

describe("boards by the piece list and by the outline", () => {
  it.each(Object.entries(SHAPES))("agree about a bed of shape %s", (name, shape) => {
    const [counted] = takeoff(gardenOf(bed("b", { shape, at: [0, 0], wall }))).beds;
    const pieces = counted!.boards.reduce((sum, { length, count }) => sum + length * count, 0) / 2;
    const around = perimeter(counted!.outside);
    // Butted: of two boards that meet at a corner one gives way by a thickness, at an inner corner one takes it on.
    // Outer corners outnumber inner ones by four. Mitred and bent: all the way round.
    const corners = name === "rectangle" || name === "l" || name === "u" ? 4 : 0;
    expect(pieces).toBeCloseTo(around - corners * THICKNESS, 3);
  });
});

/** The cheapest purchase by trying every number of steps by the load of each material, and every mix of bags. */
function byEveryWay(needs: readonly Need[], terms: Terms): number {
  const bagsFor = (need: Need, litres: number): number => {
    if (litres <= 1e-6) return 0;
    const { packs } = need.material;
    const from = (at: number, left: number): number => {
      if (left <= 0.01 * terms.unit) return 0;
      const pack = packs[at];
      if (!pack) return Number.POSITIVE_INFINITY;
      let best = Number.POSITIVE_INFINITY;
      for (let n = 0; n <= Math.ceil(left / pack.litres); n++) {
        best = Math.min(best, n * terms.priceOf(pack) + from(at + 1, left - n * pack.litres));
      }
      return best;
    };
    return from(0, litres);
  };
  const least = Math.ceil(terms.least / terms.step);
  const most = Math.floor(terms.most / terms.step);
  let best = Number.POSITIVE_INFINITY;
  const load = (at: number, steps: number, cost: number): void => {
    const need = needs[at];
    if (!need) {
      if (steps > 0 && steps < least) return;
      best = Math.min(best, cost + terms.fee * Math.ceil(steps / most));
      return;
    }
    const { bulk } = need.material;
    const enough = Math.max(least, Math.ceil(need.litres / terms.step));
    for (let n = 0; n <= (bulk ? enough : 0); n++) {
      const loose = bulk ? ((n * terms.step) / bulk.litres) * terms.priceOf(bulk) : 0;
      load(at + 1, steps + n, cost + loose + bagsFor(need, need.litres - n * terms.step));
    }
  };
  load(0, 0, 0);
  return best;
}

describe("purchases", () => {
  const random = seeded(52);
  const cases = Array.from({ length: 40 }, (_, i) => {
    const units = i % 2 ? ("metric" as const) : ("us" as const);
    const ids = ["compost", "topsoil", "bark"].slice(0, 1 + Math.floor(random() * 3));
    // Whole units of reckoning, up to a few hundred litres: every way can be tried.
    const needs = ids.map((id) => ({
      material: materialById(id, units),
      litres: VOLUME_UNIT[units] * Math.ceil(random() * (units === "us" ? 60 : 90)),
    }));
    const { step, least, most } = DELIVERY[units];
    const factor = new Map<string, number>();
    const terms: Terms = {
      ...{ unit: VOLUME_UNIT[units], step, least, most },
      fee: Math.round(random() * 60),
      priceOf: ({ key, example }) => {
        if (!factor.has(key)) factor.set(key, 0.6 + random());
        return Math.round(example * factor.get(key)! * 100) / 100;
      },
    };
    return [i, needs, terms] as const;
  });

  it.each(cases)("are the cheapest there are, by trying every one: seeded case %i", (_, needs, terms) => {
    const bought = cheapestPurchase(needs, terms);
    expect(bought?.cost).toBeCloseTo(byEveryWay(needs, terms), 6);
  });
});
