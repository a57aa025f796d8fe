import type { Job, Pattern } from "./job.ts";
import { fullestBoard } from "./knapsack.ts";
import { Master } from "./master.ts";
import type { Bill } from "./requirement.ts";

/** Whether the pieces could be sawn from the boards of a bill if boards could be sawn in any fraction. */
export interface FractionalFit {
  readonly fits: boolean;
  /** A worth of pieces: where they do not fit, one whose requirement the bill fails. */
  readonly worth: readonly number[];
  readonly used: readonly { readonly pattern: Pattern; readonly amount: number }[];
}

const MOST_ROUNDS = 2_000;
/** A pattern must be worth this much more than it takes before it is worth another round. */
const GAIN = 1e-7;

/**
 * @param known patterns found so far, to start from; grows by those found here
 * @param demand pieces still to be sawn of each size
 */
export function fractionalFit(
  job: Job,
  bill: Bill,
  known: Pattern[],
  demand: readonly number[] = job.demand,
): FractionalFit {
  const master = new Master(demand, bill, 1);
  const columnOf = ({ stock, counts }: Pattern) => ({
    cost: 0,
    entries: [...counts, ...job.stock.map((_, i) => (i === stock ? 1 : 0))],
  });
  const columns = known.map(columnOf);
  const worthNow = () => job.sizes.map((_, i) => Math.max(0, master.worth[i]!));
  let rounds = 0;
  for (let improved = true; improved && rounds < MOST_ROUNDS; ) {
    improved = false;
    for (const [index, column] of columns.entries()) {
      if (master.enter(column, index)) [improved, rounds] = [true, rounds + 1];
    }
    if (master.relax()) improved = true;
    if (improved) continue;
    for (const [stock, { capacity }] of job.stock.entries()) {
      if (bill[stock] === 0) continue;
      const { counts } = fullestBoard(job.sizes, worthNow(), demand, capacity);
      const column = columnOf({ stock, counts });
      if (master.reduced(column) > -GAIN) continue;
      known.push({ stock, counts });
      columns.push(column);
      if (master.enter(column, columns.length - 1)) [improved, rounds] = [true, rounds + 1];
    }
  }
  return {
    fits: !master.short,
    worth: worthNow(),
    used: master.solution().map(({ index, amount }) => ({ pattern: known[index]!, amount })),
  };
}
