import { describe, expect, it } from "vitest";
import { cutBoards, proveCutPlan } from "../../src/takeoff/cutting/cut-boards.ts";
import type { CutPlan, Piece, Stock } from "../../src/takeoff/types.ts";
import { type CuttingCase, expected, FACTS, given } from "./cases.ts";

// CS-01 to CS-22: optima proved by integer programming in two formulations with two independent open-source solvers
// (see the file's own notes); optimal costs are unique, plans are not, so costs and feasibility are checked.
const CASES = [
  ...["CS-01", "CS-02", "CS-03", "CS-04", "CS-05", "CS-06", "CS-07", "CS-08", "CS-09", "CS-10", "CS-11"],
  ...["CS-12", "CS-13", "CS-14", "CS-15", "CS-16", "CS-17", "CS-18", "CS-19", "CS-20", "CS-21", "CS-22"],
].map((id) => FACTS.cutting_stock.find((row) => row.id === id)!);

/** Trim is squared off a board before anything is cut from it: the board is that much shorter. */
const jobOf = (row: CuttingCase): [Piece[], Stock[], number] => [
  row.pieces.map(([length, count]) => ({ length, count, label: `${length}` })),
  row.stock.map(({ length, price, available }) => ({
    length: length - row.trim_per_board,
    price,
    ...(available === undefined ? {} : { count: available }),
  })),
  row.kerf,
];

/** Every piece is cut once, no board is over-full, no stock over-used, and the cost is that of the boards. */
function expectSound(plan: CutPlan, [pieces, stock, kerf]: [Piece[], Stock[], number]) {
  for (const board of plan.boards) {
    const used = board.pieces.reduce((sum, { length }) => sum + length, 0) + kerf * (board.pieces.length - 1);
    expect(used).toBeLessThanOrEqual(board.stock.length + 1e-6);
    expect(board.pieces.length).toBeGreaterThan(0);
    expect(board.offcut).toBeCloseTo(Math.max(0, board.stock.length - used - kerf), 6);
  }
  const cut = plan.boards.flatMap((board) => board.pieces.map(({ length, label }) => `${length} ${label}`));
  const wanted = pieces.flatMap(({ length, count, label }) => Array(count).fill(`${length} ${label}`));
  expect(cut.sort()).toEqual(wanted.sort());
  for (const kind of stock) {
    const bought = plan.boards.filter((board) => board.stock === kind).length;
    expect(bought).toBeLessThanOrEqual(kind.count ?? Number.POSITIVE_INFINITY);
  }
  expect(plan.cost).toBeCloseTo(
    plan.boards.reduce((sum, board) => sum + board.stock.price, 0),
    6,
  );
  expect(plan.uncut).toEqual([]);
}

describe("the cut plan", () => {
  it("knows all published cutting cases", () => {
    expect(CASES.map((row) => row.id)).toEqual(FACTS.cutting_stock.map(({ id }) => id));
  });

  it.each(CASES.filter((row) => row.feasible))("is proven the cheapest: $id", async (row) => {
    const plan = await proveCutPlan(...jobOf(row));
    expectSound(plan, jobOf(row));
    expect(plan.cost).toBeCloseTo(row.optimal_cost!, 6);
    expect(plan.lowerBound).toBeCloseTo(row.optimal_cost!, 6);
    expect(plan.proven).toBe(true);
  });

  it.each(CASES.filter((row) => row.feasible))("made at once stands by its bound: $id", (row) => {
    const plan = cutBoards(...jobOf(row));
    expectSound(plan, jobOf(row));
    expect(plan.lowerBound).toBeLessThanOrEqual(row.optimal_cost! + 1e-6);
    expect(plan.cost).toBeGreaterThanOrEqual(row.optimal_cost! - 1e-6);
    if (plan.proven) expect(plan.cost).toBeCloseTo(row.optimal_cost!, 6);
  });

  it("says which piece is longer than any board on sale: CS-15", async () => {
    const row = CASES.find(({ feasible }) => !feasible)!;
    expect(row.id).toBe("CS-15");
    const [pieces, stock, kerf] = jobOf(row);
    const plan = await proveCutPlan([...pieces, { length: 90, count: 1 }], stock, kerf);
    expect(plan.uncut).toEqual([{ length: 200, count: 1, label: "200" }]);
    expect(plan.proven).toBe(false);
    expect(plan.cost).toBe(10);
  });

  // The Kentucky GROW list calls for four 12 in posts from one 4 ft 2x4: so only where the saw takes nothing.
  it("cuts four 12 in posts from a 4 ft board only without a kerf: KY-1, KY-2", () => {
    const [board, count] = [given("KY-1", "stock_in"), given("KY-1", "pieces")];
    const stock = [{ length: board, price: 5 }];
    const boards = (length: number, kerf: number) =>
      cutBoards([{ length, count }], stock, kerf).boards.length;
    expect(boards(given("KY-1", "piece_in"), given("KY-1", "kerf_in"))).toBe(1);
    expect(boards(12, given("KY-2", "kerf_in"))).toBe(2);
    expect(boards(expected("KY-2", "max_post_in"), given("KY-2", "kerf_in"))).toBe(1);
    expect(boards(expected("KY-2", "max_post_in") + 0.00001, given("KY-2", "kerf_in"))).toBe(2);
  });
});
