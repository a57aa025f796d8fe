import { describe, expect, it } from "vitest";
import { type Garden, sunCosts, sunHours } from "../../src/index.ts";
import { bed, gardenWith, house, tree } from "../helpers/garden-of.ts";
import { shadyYard } from "../helpers/sun-scenes.ts";

const without = (garden: Garden, id: string): Garden => ({
  ...garden,
  items: garden.items.filter((item) => item.id !== id),
});

/** Mean over the cells that both maps speak of, h. */
function gained(now: Garden, then: Garden): number {
  const [a, b] = [now, then].map(
    (garden) => sunHours({ ...garden, items: garden.items }, { cell: 304.8 }).yard,
  );
  let [sum, count] = [0, 0];
  a!.hours.forEach((hours, i) => {
    const other = b!.hours[i]!;
    if (Number.isNaN(hours) || Number.isNaN(other)) return;
    sum += other - hours;
    count++;
  });
  return sum / count;
}

describe("sunCosts", () => {
  it.each([1, 2, 3])(
    "seed %i: what a thing costs a bed is what the bed gains when it alone is gone",
    (seed) => {
      const garden = shadyYard(seed);
      const costs = sunCosts(garden);
      expect(costs.length).toBeGreaterThan(3);
      const now = sunHours(garden);
      for (const { id, beds } of costs.slice(0, 3)) {
        const then = sunHours(without(garden, id));
        for (const cost of beds) {
          const gain =
            then.beds.find((one) => one.id === cost.id)!.hours -
            now.beds.find((one) => one.id === cost.id)!.hours;
          expect(cost.hours).toBeCloseTo(gain, 6);
        }
      }
    },
  );

  it("of the yard is the mean gain over its open ground", () => {
    const yard = [
      [0, 0],
      [9000, 0],
      [9000, 7000],
      [0, 7000],
    ] as const;
    const site = { latitude: 44, longitude: 0, north: 0 };
    const garden = gardenWith(
      { yard, site },
      tree("maple", { at: [4500, 6000], canopy: 4000, height: 7000, crownBase: 1500 }),
      tree("plum", { at: [8000, 2000], canopy: 2000, height: 4000, crownBase: 1500 }),
    );
    const costs = sunCosts(garden);
    expect(costs.map(({ id }) => id)).toEqual(["maple", "plum"]);
    for (const { id, yard: cost, beds } of costs) {
      expect(cost).toBeCloseTo(gained(garden, without(garden, id)), 4);
      expect(beds).toEqual([]);
    }
  });

  it("is nothing in an empty yard, and puts the costliest first", () => {
    expect(sunCosts(gardenWith({}))).toEqual([]);
    const site = { latitude: 44, longitude: 0, north: 0 };
    const costs = sunCosts(
      gardenWith(
        { site },
        bed("salads", { x: 0, y: -3000, w: 1200, h: 2400 }),
        tree("plum", { at: [1000, 2500], canopy: 2000, height: 4000, crownBase: 1500 }),
        house("house", { x: -4000, y: 4000, w: 9000, h: 5000, height: 5000 }),
      ),
    );
    expect(costs.map(({ yard }) => yard)).toEqual(costs.map(({ yard }) => yard).toSorted((a, b) => b - a));
    expect(costs[0]!.id).toBe("house");
  });
});
