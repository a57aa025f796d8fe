import { describe, expect, it } from "vitest";
import {
  applyOps,
  costAYear,
  dripPlan,
  type Garden,
  itemId,
  type Line,
  priceKeysOf,
  takeoff,
  takeoffCsv,
} from "../../src/index.ts";
import { bed, gardenOf, gardenWith, tap } from "../helpers/garden-of.ts";
import { dripBed, dripGarden, withWater } from "../irrigation/drip-scene.ts";

const soil = { w: 48 * 25.4 + 76.2, h: 96 * 25.4 + 76.2 } as const;
const waterOf = (garden: Garden, options: Parameters<typeof takeoff>[1] = {}): readonly Line[] =>
  takeoff(garden, options).lines.filter(({ part }) => part === "water");
const quantities = (lines: readonly Line[]) =>
  Object.fromEntries(lines.map(({ key, quantity }) => [key, quantity]));
const cost = (lines: readonly Line[]) => lines.reduce((sum, line) => sum + line.cost, 0);

/** A tap 3 m before one bed, and another bed beyond it. */
const garden = dripGarden(
  [0, 0],
  dripBed("a", { x: -600, y: 3000, ...soil }),
  dripBed("b", { x: 3000, y: 3000, ...soil, drip: { emittersApart: 152.4 } }),
);

describe("drip lines in the takeoff", () => {
  it("are bought in rolls by their emitters, with a twentieth over", () => {
    const lines = quantities(waterOf(garden));
    // Each bed has four lines of 92 in (96 less 2 at both ends, in mm): 30.7 ft, and 32.2 with what goes to waste.
    expect(lines["drip-line:305x1.89:50ft"]).toBe(1);
    expect(lines["drip-line:152x1.89:50ft"]).toBe(1);
    const together = dripGarden(
      [0, 0],
      dripBed("a", { y: 3000, ...soil }),
      dripBed("b", { x: 3000, y: 3000, ...soil }),
    );
    // 61.4 ft and a twentieth: a roll of 100 ft is cheaper than two of 50.
    expect(quantities(waterOf(together))["drip-line:305x1.89:100ft"]).toBe(1);
  });

  it("come with the main and what the plan of the lines counts", () => {
    const plan = dripPlan(garden);
    const lines = waterOf(garden);
    const count = (key: string) =>
      plan.fittings.reduce((sum, fitting) => sum + (fitting.key === key ? fitting.count : 0), 0);
    for (const key of ["tee", "elbow", "end-cap"]) {
      expect(lines.find((line) => line.key === `drip-${key}:half`)?.quantity).toBe(count(key));
    }
    expect(lines.find(({ key }) => key === "drip-timer")?.quantity).toBe(1);
    const tubing =
      plan.main.length + plan.beds.reduce((sum, one) => sum + one.headerLength + one.feedLength, 0);
    const rolls = lines.filter(({ key }) => key.startsWith("tubing:half"));
    const bought = rolls.reduce(
      (sum, { key, quantity }) => sum + quantity * Number(key.match(/(\d+)ft/)![1]) * 304.8,
      0,
    );
    expect(bought).toBeGreaterThan(tubing * 1.05);
    expect(bought).toBeLessThan(tubing * 1.05 + 100 * 304.8);
  });

  it("say how each quantity came about, with figures, and from where the way of counting comes", () => {
    for (const { how, source, what, price, ownPrice } of waterOf(garden)) {
      expect(how, what).toMatch(/\d/);
      expect(source.text.length, what).toBeGreaterThan(10);
      expect(price, what).toBeGreaterThan(0);
      expect(ownPrice).toBe(false);
    }
  });

  it("have a main of wider tubing where it is chosen, and half an inch in the beds", () => {
    const keys = waterOf(withWater(garden, { main: "threeQuarter" })).map(({ key }) => key);
    expect(keys.some((key) => key.startsWith("tubing:threeQuarter:"))).toBe(true);
    expect(keys.some((key) => key.startsWith("tubing:half:"))).toBe(true);
    expect(keys).toContain("drip-adapter:threeQuarter");
  });

  it("buy no vacuum breaker where the tap has one", () => {
    const without = {
      ...garden,
      items: garden.items.map((item) => (item.kind === "tap" ? { ...item, backflow: false } : item)),
    };
    expect(quantities(waterOf(garden))["drip-vacuum-breaker"]).toBeUndefined();
    expect(quantities(waterOf(without))["drip-vacuum-breaker"]).toBe(1);
  });

  it("take the gardener's own prices, and offer each row for them", () => {
    const own = { ...garden, prices: { ...garden.prices, own: { "drip-timer": 17 } } };
    expect(waterOf(own).find(({ key }) => key === "drip-timer")).toMatchObject({ cost: 17, ownPrice: true });
    expect(priceKeysOf(garden).map(({ key }) => key)).toContain("drip-line:305x1.89:100ft");
  });

  it("are in metric rolls in a metric garden", () => {
    const metric = gardenWith({ units: "metric" }, ...garden.items);
    expect(waterOf(metric).map(({ key }) => key)).toContain("drip-line:300x2:25000mm");
    for (const { what } of waterOf(metric)) expect(what).not.toMatch(/ in\b|ft\b|gal/);
  });
});

describe("the cost of drip lines", () => {
  it("is in the total, borne by the beds that have them, and by no other", () => {
    const items = [...garden.items, bed("c", { x: 8000, y: 3000, ...soil })];
    const [whole, without] = [takeoff(gardenOf(...items)), takeoff(gardenOf(...items), { drip: null })];
    const water = whole.byPart.find(({ part }) => part === "water")!.cost;
    expect(whole.total - without.total).toBeCloseTo(water, 2);
    const extra = (id: string) =>
      whole.beds.find((one) => one.id === id)!.cost - without.beds.find((one) => one.id === id)!.cost;
    expect(extra("c")).toBeCloseTo(0, 2);
    expect(extra("a") + extra("b")).toBeCloseTo(water, 1);
    // Twice as many emitters bear twice as much of what stands at the tap.
    expect(extra("b")).toBeGreaterThan(extra("a"));
  });

  it("is none in a garden watered by hand", () => {
    expect(waterOf(gardenOf(tap("tap"), bed("a")))).toEqual([]);
  });

  it("is counted by a plan that is given, for the beds that are still there", () => {
    const plan = dripPlan(garden);
    const fewer = applyOps(garden, [{ op: "remove", id: itemId("b") }]);
    expect(cost(waterOf(fewer, { drip: plan }))).toBeLessThan(cost(waterOf(garden)));
    expect(quantities(waterOf(fewer, { drip: plan }))["drip-line:152x1.89:50ft"]).toBeUndefined();
    expect(waterOf(garden, { drip: plan })).toEqual(waterOf(garden));
    expect(waterOf(garden, { drip: null })).toEqual([]);
  });

  it("parts by the stages of the work: the main comes with the first", () => {
    const staged = {
      ...garden,
      items: garden.items.map((item) =>
        item.kind === "bed" ? { ...item, stage: item.id === "a" ? 2 : 3 } : item,
      ),
    };
    const [second, third] = [2, 3].map((stage) => waterOf(staged, { stage }));
    expect(second!.some(({ key }) => key === "drip-timer")).toBe(true);
    expect(third!.some(({ key }) => key === "drip-timer")).toBe(false);
    expect(quantities(third!)["drip-line:152x1.89:50ft"]).toBe(1);
    expect(quantities(second!)["drip-line:152x1.89:50ft"]).toBeUndefined();
    expect(waterOf(staged).find(({ key }) => key === "drip-timer")!.stages).toEqual([2, 3]);
    const caps = (lines: readonly Line[]) => quantities(lines)["drip-end-cap:half"] ?? 0;
    expect(caps(second!) + caps(third!)).toBe(caps(waterOf(staged)));
  });

  it("comes again within the horizon for lines and timers, and stands in the list for a spreadsheet", () => {
    const rows = costAYear(garden).rows;
    const of = (what: RegExp) => rows.find((row) => what.test(row.what))!;
    expect(of(/^Drip lines$/)).toMatchObject({ times: 1, life: [5, 10] });
    expect(of(/^Timer/)).toMatchObject({ times: 1 });
    const water = rows
      .filter(({ what }) => /Drip lines|Timer|tubing/.test(what))
      .reduce((sum, row) => sum + row.cost, 0);
    expect(water).toBeCloseTo(cost(waterOf(garden)), 1);
    expect(takeoffCsv(takeoff(garden), garden)).toMatch(/^1,water,"?Drip line/m);
  });
});
