import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CutJob, type CutPlan, proveBoardPlan, proveCutPlan } from "../../src/index.ts";
import { planAtOnce } from "../../src/takeoff/aimed-plan.ts";
import { cuttingList } from "./cutting-lists.ts";
import { leastCostByProgram } from "./integer-program.ts";

const SWEEP = 300;
/** An arc-flow program grows with the lengths; those with few are settled in a moment. The bench has them all. */
const FEW = 8;

const seeds = Array.from({ length: SWEEP }, (_, i) => i + 1);
const countOf = (seed: number) => cuttingList(seed).pieces.reduce((sum, { count }) => sum + count, 0);

function expectSound(
  { boards, cost }: CutPlan,
  { pieces, stock, kerf }: Pick<CutJob, "pieces" | "stock" | "kerf">,
) {
  for (const board of boards) {
    const used = board.pieces.reduce((sum, { length }) => sum + length + kerf, -kerf);
    expect(used, "no board is overfull").toBeLessThanOrEqual(board.stock.length + 1e-6);
  }
  for (const kind of stock) {
    const taken = boards.filter((board) => board.stock === kind).length;
    expect(taken).toBeLessThanOrEqual(kind.count ?? Number.POSITIVE_INFINITY);
  }
  const cut = boards.flatMap((board) => board.pieces.map(({ length }) => length)).sort((a, b) => a - b);
  const wanted = pieces.flatMap(({ length, count }) => Array<number>(count).fill(length));
  expect(cut, "no piece is lost").toEqual(wanted.sort((a, b) => a - b));
  expect(cost).toBeCloseTo(
    boards.reduce((sum, { stock: { price } }) => sum + price, 0),
    6,
  );
}

describe("a proof of the cut plan", () => {
  it("comes for every one of 300 lists of up to 60 pieces", async () => {
    for (const seed of seeds) {
      const list = cuttingList(seed);
      const plan = await proveCutPlan(list.pieces, list.stock, list.kerf);
      expectSound(plan, list);
      expect(plan.proven, `list ${seed}, ${countOf(seed)} pieces`).toBe(true);
    }
    expect(Math.max(...seeds.map(countOf))).toBe(60);
  }, 120_000);

  const few = seeds.filter((seed) => cuttingList(seed).pieces.length <= FEW).slice(0, 40);
  it("agrees with an arc-flow program solved by another solver on 40 of them", async () => {
    expect(few).toHaveLength(40);
    let settled = 0;
    for (const seed of few) {
      const list = cuttingList(seed);
      const [plan, program] = [
        await proveCutPlan(list.pieces, list.stock, list.kerf),
        await leastCostByProgram(list, 20),
      ];
      if (!program.optimal) continue;
      settled++;
      expect(plan.cost, `list ${seed}`).toBeCloseTo(program.cost, 6);
    }
    // A slow machine may run out of time on one or two.
    expect(settled).toBeGreaterThanOrEqual(38);
  }, 240_000);
});

describe("boards at home", () => {
  const inches = (min: number, max: number) =>
    fc.integer({ min: min * 16, max: max * 16 }).map((n) => n / 16);
  const job = fc.record({
    pieces: fc.array(fc.record({ length: inches(6, 110), count: fc.integer({ min: 1, max: 4 }) }), {
      minLength: 1,
      maxLength: 9,
    }),
    home: fc.array(fc.record({ length: inches(20, 192), count: fc.integer({ min: 1, max: 3 }) }), {
      maxLength: 3,
    }),
    aim: fc.constantFrom("least-cost" as const, "least-waste" as const),
  });
  const onSale = [
    { length: 120, price: 8.36 },
    { length: 192, price: 13.75 },
  ];

  it("and boards on sale are cut without losing a piece or overfilling a board, whatever the aim", () => {
    fc.assert(
      fc.property(job, ({ pieces, home, aim }) => {
        const atHome = home
          .filter(({ length }, i) => home.findIndex((other) => other.length === length) === i)
          .map((board) => ({ ...board, price: 0, onHand: true }));
        const stock = [...atHome, ...onSale];
        const { plan, excess } = planAtOnce({ pieces, stock, kerf: 0.125, aim });
        expectSound(plan, { pieces, stock, kerf: 0.125 });
        expect(plan.lowerBound).toBeLessThanOrEqual(plan.cost + 1e-9);
        expect(plan.proven).toBe(excess === 0);
      }),
      { seed: 611, numRuns: 200 },
    );
  });

  it("are used before any is bought, and no more of them begun than needed", async () => {
    const stock = [{ length: 130, price: 0, count: 3, onHand: true }, ...onSale];
    const pieces = [{ length: 40, count: 4 }];
    const { plan } = await proveBoardPlan({ pieces, stock, kerf: 0.125, aim: "least-cost" });
    expect(plan.cost).toBe(0);
    expect(plan.boards.map((board) => board.pieces.length).sort()).toEqual([1, 3]);
  });

  it("leave only the rest to be bought, at the least", async () => {
    const stock = [{ length: 100, price: 0, count: 1, onHand: true }, ...onSale];
    const pieces = [{ length: 95, count: 2 }];
    const { plan } = await proveBoardPlan({ pieces, stock, kerf: 0.125, aim: "least-cost" });
    expect(plan).toMatchObject({ cost: 8.36, proven: true });
  });
});

describe("the least waste", () => {
  // Two boards of 120 hold both pieces; one of 192 costs less but is 32 longer than one of 160.
  const stock = [
    { length: 160, price: 20 },
    { length: 192, price: 14 },
  ];
  const pieces = [{ length: 79, count: 2 }];

  it("buys the least length, where the least money buys more", async () => {
    const plan = (aim: CutJob["aim"]) => proveBoardPlan({ pieces, stock, kerf: 0.125, aim });
    const [money, waste] = [await plan("least-cost"), await plan("least-waste")];
    expect(money.plan.boards.map((board) => board.stock.length)).toEqual([192]);
    expect(waste.plan.boards.map((board) => board.stock.length)).toEqual([160]);
    expect(waste.plan).toMatchObject({ cost: 20, proven: true });
    expect(waste.plan.lowerBound).toBeLessThanOrEqual(14);
  });
});
