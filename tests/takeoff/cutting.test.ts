import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutBoards, proveCutPlan } from "../../src/index.ts";
import type { CutPlan, Piece, Stock } from "../../src/takeoff/types.ts";

const stock: readonly Stock[] = [
  { length: 96, price: 8.5 },
  { length: 120, price: 11.25 },
  { length: 192, price: 19 },
];

/** Least cost by trying every way to share out at most nine pieces: each set of pieces on the cheapest board for it. */
function leastCost(lengths: readonly number[], boards: readonly Stock[], kerf: number): number {
  const sets = 2 ** lengths.length;
  const alone = Array.from({ length: sets }, (_, set) => {
    const used = lengths.reduce((sum, length, i) => (set & (1 << i) ? sum + length + kerf : sum), -kerf);
    const holding = boards.filter(({ length }) => length >= used - 1e-6);
    return Math.min(...holding.map(({ price }) => price));
  });
  const best = new Array<number>(sets).fill(Number.POSITIVE_INFINITY);
  best[0] = 0;
  for (let set = 1; set < sets; set++) {
    for (let part = set; part > 0; part = (part - 1) & set) {
      best[set] = Math.min(best[set]!, alone[part]! + best[set ^ part]!);
    }
  }
  return best[sets - 1]!;
}

/** The same by dynamic programming over how many of each of a few lengths are still wanted. */
function leastCostOfMany(pieces: readonly Piece[], boards: readonly Stock[], kerf: number): number {
  const known = new Map<string, number>();
  const from = (left: readonly number[]): number => {
    const first = left.findIndex((count) => count > 0);
    if (first < 0) return 0;
    const key = left.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = Number.POSITIVE_INFINITY;
    const saw = (index: number, rest: readonly number[], used: number): void => {
      const holding = boards.filter(({ length }) => length >= used - kerf - 1e-6).map(({ price }) => price);
      if (holding.length === 0) return;
      if (index === pieces.length) {
        best = Math.min(best, Math.min(...holding) + from(rest));
        return;
      }
      for (let n = index === first ? 1 : 0; n <= left[index]!; n++) {
        saw(index + 1, rest.with(index, left[index]! - n), used + n * (pieces[index]!.length + kerf));
      }
    };
    saw(0, left, 0);
    known.set(key, best);
    return best;
  };
  return from(pieces.map(({ count }) => count));
}

function expectSound({ boards, cost, lowerBound }: CutPlan, pieces: readonly Piece[], kerf: number) {
  for (const board of boards) {
    const used = board.pieces.reduce((sum, { length }) => sum + length + kerf, -kerf);
    expect(used).toBeLessThanOrEqual(board.stock.length + 1e-6);
  }
  const cut = boards.flatMap((board) => board.pieces.map(({ length }) => length)).sort((a, b) => a - b);
  const wanted = pieces
    .flatMap(({ length, count }) => Array<number>(count).fill(length))
    .sort((a, b) => a - b);
  expect(cut).toEqual(wanted);
  expect(lowerBound).toBeLessThanOrEqual(cost);
}

const eighths = (min: number, max: number) => fc.integer({ min: min * 8, max: max * 8 }).map((n) => n / 8);
const smallJob = fc.array(eighths(9, 110), { minLength: 1, maxLength: 8 });

describe("cutBoards", () => {
  it("agrees with trying every way, where it says that its plan is proven", () => {
    fc.assert(
      fc.property(smallJob, fc.constantFrom(0, 0.125, 0.25), (lengths, kerf) => {
        const pieces = lengths.map((length) => ({ length, count: 1 }));
        const plan = cutBoards(pieces, stock, kerf);
        const least = leastCost(lengths, stock, kerf);
        expectSound(plan, pieces, kerf);
        expect(plan.lowerBound).toBeLessThanOrEqual(least + 1e-6);
        expect(plan.cost).toBeGreaterThanOrEqual(least - 1e-6);
        if (plan.proven) expect(plan.cost).toBeCloseTo(least, 6);
      }),
      { seed: 40317, numRuns: 300 },
    );
  });

  it("plans hundreds of pieces soundly, close above its bound", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(eighths(10, 190), fc.integer({ min: 1, max: 25 })), {
          minLength: 6,
          maxLength: 14,
        }),
        (rows) => {
          const pieces = rows.map(([length, count]) => ({ length, count }));
          const plan = cutBoards(pieces, stock, 0.125);
          expectSound(plan, pieces, 0.125);
          expect(plan.cost / plan.lowerBound).toBeLessThan(1.06);
        },
      ),
      { seed: 7, numRuns: 25 },
    );
  });

  it("gives each piece its label, and equal lengths of two beds both of theirs", () => {
    const pieces = [
      { length: 45, count: 2, label: "Salads, end" },
      { length: 45, count: 1, label: "Beans, end" },
      { length: 93, count: 1 },
    ];
    const cut = cutBoards(pieces, stock, 0.125).boards.flatMap((board) => board.pieces);
    expect(cut.map(({ label }) => label).sort()).toEqual([
      "Beans, end",
      "Salads, end",
      "Salads, end",
      undefined,
    ]);
  });

  it("lets a piece as long as the board have it without a cut, and a rest thinner than the saw go", () => {
    const [whole] = cutBoards([{ length: 96, count: 1 }], stock, 0.125).boards;
    expect(whole?.offcut).toBe(0);
    const [thin] = cutBoards([{ length: 95.95, count: 1 }], stock, 0.125).boards;
    expect(thin).toMatchObject({ stock: { length: 96 }, offcut: 0 });
    expect(cutBoards([{ length: 90, count: 1 }], stock, 0.125).boards[0]?.offcut).toBeCloseTo(5.875, 9);
  });

  it("buys nothing for no pieces", () => {
    const nothing = { boards: [], cost: 0, lowerBound: 0, proven: true, uncut: [] };
    expect(cutBoards([], stock, 0.125)).toEqual(nothing);
    expect(cutBoards([{ length: 40, count: 0 }], stock, 0.125)).toEqual(nothing);
  });

  it("lists what limited stock cannot give, and plans the rest", () => {
    const few = [{ length: 96, price: 10, count: 2 }];
    const plan = cutBoards([{ length: 50, count: 3, label: "side" }], few, 0.125);
    expect(plan.boards).toHaveLength(2);
    expect(plan.uncut).toEqual([{ length: 50, count: 1, label: "side" }]);
    expect(plan.proven).toBe(false);
    expect(cutBoards([{ length: 50, count: 1 }], [], 0).uncut).toEqual([{ length: 50, count: 1 }]);
  });

  it("uses few boards of a kind where they are worth most", () => {
    const some = [
      { length: 96, price: 10, count: 1 },
      { length: 120, price: 20 },
    ];
    const plan = cutBoards(
      [
        { length: 90, count: 1 },
        { length: 100, count: 1 },
      ],
      some,
      0.125,
    );
    expect(plan).toMatchObject({ cost: 30, lowerBound: 30, proven: true });
  });

  it("saves length where boards cost nothing", () => {
    const free = stock.map(({ length }) => ({ length, price: 0 }));
    const plan = cutBoards([{ length: 47, count: 2 }], free, 0.125);
    expect(plan.boards.map((board) => board.stock.length)).toEqual([96]);
    expect(plan).toMatchObject({ cost: 0, lowerBound: 0, proven: true });
  });

  it("cuts the same plan in millimetres as in inches", () => {
    const mm = (inches: number) => inches * 25.4;
    const inches = cutBoards([{ length: 47.9375, count: 6 }], [{ length: 96, price: 9 }], 0.125);
    const metric = cutBoards([{ length: mm(47.9375), count: 6 }], [{ length: mm(96), price: 9 }], mm(0.125));
    expect([inches.boards.length, metric.boards.length]).toEqual([3, 3]);
  });

  it.each([
    [[{ length: -3, count: 1 }], stock, 0.125, "-3"],
    [[{ length: Number.NaN, count: 1 }], stock, 0.125, "NaN"],
    [[{ length: 30, count: 1.5 }], stock, 0.125, "1.5"],
    [[{ length: 30, count: 1 }], [{ length: 0, price: 4 }], 0.125, "length 0"],
    [[{ length: 30, count: 1 }], [{ length: 96, price: -4 }], 0.125, "-4"],
    [[{ length: 30, count: 1 }], [{ length: 96, price: 4, count: -1 }], 0.125, "-1"],
    [[{ length: 30, count: 1 }], stock, Number.POSITIVE_INFINITY, "Infinity"],
  ] as const)("refuses what cannot be: %j %j kerf %d", (pieces, boards, kerf, named) => {
    expect(() => cutBoards(pieces, boards, kerf)).toThrow(RangeError);
    expect(() => cutBoards(pieces, boards, kerf)).toThrow(named);
  });
});

describe("proveCutPlan", () => {
  it("proves the least cost of every small job", async () => {
    await fc.assert(
      fc.asyncProperty(smallJob, async (lengths) => {
        const plan = await proveCutPlan(
          lengths.map((length) => ({ length, count: 1 })),
          stock,
          0.125,
        );
        expect(plan.proven).toBe(true);
        expect(plan.cost).toBeCloseTo(leastCost(lengths, stock, 0.125), 6);
      }),
      { seed: 1961, numRuns: 150 },
    );
  });

  it("proves it where each length is wanted many times", async () => {
    const row = fc.record({ length: eighths(20, 70), count: fc.integer({ min: 2, max: 6 }) });
    const rows = fc.uniqueArray(row, { minLength: 3, maxLength: 4, selector: ({ length }) => length });
    await fc.assert(
      fc.asyncProperty(rows, async (pieces) => {
        const plan = await proveCutPlan(pieces, stock, 0.125);
        expectSound(plan, pieces, 0.125);
        expect(plan.proven).toBe(true);
        expect(plan.cost).toBeCloseTo(leastCostOfMany(pieces, stock, 0.125), 6);
      }),
      { seed: 1990, numRuns: 120 },
    );
  });

  it("proves it with limited stock too", async () => {
    await fc.assert(
      fc.asyncProperty(smallJob, fc.integer({ min: 1, max: 3 }), async (lengths, count) => {
        const pieces = lengths.map((length) => ({ length, count: 1 }));
        const [first, ...rest] = stock;
        const plan = await proveCutPlan(pieces, [{ ...first!, count }, ...rest], 0.125);
        expectSound(plan, pieces, 0.125);
        expect(plan.proven).toBe(true);
        expect(plan.boards.filter((board) => board.stock.length === 96).length).toBeLessThanOrEqual(count);
        expect(plan.cost).toBeGreaterThanOrEqual(leastCost(lengths, stock, 0.125) - 1e-6);
        const without = await proveCutPlan(pieces, rest, 0.125);
        expect(plan.cost).toBeLessThanOrEqual(without.cost + 1e-6);
      }),
      { seed: 96, numRuns: 60 },
    );
  });
});
