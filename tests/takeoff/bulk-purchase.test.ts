import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cheapestPurchase, type Terms } from "../../src/takeoff/bulk-purchase.ts";
import type { Material } from "../../src/takeoff/goods.ts";

const good = (key: string, litres: number, example: number) => ({
  key,
  label: key,
  unit: "bag",
  example,
  litres,
});
const compost: Material = {
  id: "compost",
  label: "Compost",
  packs: [good("c25", 25, 4.1), good("c40", 40, 6.3)],
  bulk: good("c", 1000, 45),
};
const bark: Material = {
  id: "bark",
  label: "Bark",
  packs: [good("b50", 50, 6.9)],
  bulk: good("b", 1000, 52),
};
const straw: Material = { id: "straw", label: "Straw", packs: [good("s", 550, 8)], bulk: null };
const sand: Material = { id: "sand", label: "Sand", packs: [], bulk: good("sand", 1000, 30) };
const terms: Terms = {
  unit: 5,
  step: 500,
  least: 1000,
  most: 2000,
  fee: 55,
  priceOf: ({ example }) => example,
};

describe("the cheapest purchase", () => {
  it("buys nothing for nothing", () => {
    expect(cheapestPurchase([{ material: compost, litres: 0 }], terms)).toMatchObject({ loads: 0, cost: 0 });
    expect(cheapestPurchase([], terms)).toEqual({ bought: [], loads: 0, cost: 0 });
  });

  it("is an exact fit where bags come out even, and never short", () => {
    const [bought] = cheapestPurchase([{ material: compost, litres: 80 }], terms)!.bought;
    expect(bought?.packs).toEqual([{ good: compost.packs[1], count: 2 }]);
    const [more] = cheapestPurchase([{ material: compost, litres: 80.2 }], terms)!.bought;
    expect(more?.packs.reduce((sum, pack) => sum + pack.good.litres * pack.count, 0)).toBeGreaterThanOrEqual(
      80.2,
    );
  });

  it("orders the least load where even that beats bags", () => {
    // 700 L: bags 17 x 40 + 25 = 111.20; a load of 1000 L with its fee 100.
    expect(cheapestPurchase([{ material: compost, litres: 700 }], terms)).toMatchObject({
      loads: 1,
      cost: 100,
      bought: [{ bulk: 1000, packs: [] }],
    });
  });

  it("brings several materials on one lorry and pays for it once", () => {
    const needs = [
      { material: compost, litres: 500 },
      { material: bark, litres: 500 },
    ];
    expect(cheapestPurchase(needs, terms)).toMatchObject({
      loads: 1,
      cost: 22.5 + 26 + 55,
      bought: [{ bulk: 500 }, { bulk: 500 }],
    });
  });

  it("sends a second lorry when one is full", () => {
    expect(cheapestPurchase([{ material: sand, litres: 2400 }], terms)).toMatchObject({
      loads: 2,
      bought: [{ bulk: 2500 }],
      cost: 75 + 110,
    });
  });

  it("knows materials that come only in bags or only loose, or not at all", () => {
    const [bales] = cheapestPurchase([{ material: straw, litres: 600 }], terms)!.bought;
    expect(bales).toMatchObject({ packs: [{ count: 2 }], bulk: 0 });
    expect(cheapestPurchase([{ material: { ...straw, packs: [] }, litres: 600 }], terms)).toBeNull();
  });

  it("stays quick and close for a very large need", () => {
    const needs = [
      { material: compost, litres: 5_000_003 },
      { material: straw, litres: 9_000_000 },
    ];
    const plan = cheapestPurchase(needs, terms)!;
    expect(plan.bought[0]!.bulk).toBeGreaterThanOrEqual(5_000_003 - 500);
    expect(plan.bought[1]!.packs[0]!.count).toBe(Math.ceil(9_000_000 / 550));
  });

  /** Every number of bulk steps and of each bag, one material. */
  function leastCost(litres: number, { packs, bulk }: Material): number {
    let best = Number.POSITIVE_INFINITY;
    for (let loose = 0; loose <= litres + 1000; loose += 500) {
      if (loose > 0 && loose < terms.least) continue;
      const loads = Math.ceil(loose / terms.most);
      const left = Math.max(0, litres - loose);
      for (let large = 0; large <= Math.ceil(left / 40); large++) {
        const small = Math.max(0, Math.ceil((left - large * 40 - 0.05) / 25));
        const bags = large * packs[1]!.example + small * packs[0]!.example;
        best = Math.min(best, bags + loads * terms.fee + (loose / 1000) * bulk!.example);
      }
    }
    return best;
  }
  it("agrees with trying every purchase", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4200 }), (litres) => {
        const plan = cheapestPurchase([{ material: compost, litres }], terms)!;
        expect(plan.cost).toBeCloseTo(leastCost(litres, compost), 6);
        const [bought] = plan.bought;
        const got =
          bought!.bulk + bought!.packs.reduce((sum, { good: g, count }) => sum + g.litres * count, 0);
        expect(got).toBeGreaterThanOrEqual(litres - 0.05);
      }),
      { seed: 27, numRuns: 200 },
    );
  });
});
