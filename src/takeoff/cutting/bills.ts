import type { Job } from "./job.ts";
import { type Bill, type Requirement, spare } from "./requirement.ts";

export interface Priced {
  readonly bill: Bill;
  readonly cost: number;
}

/** Prices are told apart to a hundredth of a cent. */
const FINEST = 1e-4;
const SAME_COST = 1e-7;

/**
 * Bills of boards by what they cost, cheapest first. Boards that cost nothing are on every bill, as many as there
 * are: to leave one out saves nothing.
 *
 * For each requirement a table says how much the stocks yet to be chosen can hold at most for exactly so much money,
 * so that no choice is followed which cannot lead to a bill within the window of costs.
 */
export class Bills {
  readonly #job: Job;
  /** Stock by stock in the order they are chosen. */
  readonly #order: readonly number[];
  readonly #unit: number;
  readonly #price: readonly number[];
  /** Steps that rounding prices down can lose on a bill. */
  readonly #lost: number;
  #tables: readonly (readonly Float64Array[])[] | null = null;
  readonly #main: readonly Requirement[];
  readonly #most: readonly number[];
  readonly #steps: number;

  /**
   * @param main requirements that prune while bills are put together, the bound's own first
   * @param upTo no bill that costs more is of interest
   * @param finest steps that costs up to there are counted in at most; finer prices are rounded down for the tables
   */
  constructor(job: Job, main: readonly Requirement[], upTo: number, finest: number) {
    this.#job = job;
    this.#main = main;
    this.#order = [...job.stock.keys()].sort((a, b) => job.stock[a]!.price - job.stock[b]!.price);
    const fine = job.stock.map(({ price }) => Math.round(price / FINEST));
    const shared = fine.reduce(greatestCommonDivisor, 0) * FINEST;
    this.#unit = Math.max(shared, upTo / finest);
    const exact = shared >= upTo / finest;
    const pieces = job.demand.reduce((sum, count) => sum + count, 0);
    this.#lost = exact ? 0 : pieces;
    this.#price = job.stock.map(({ price }) => Math.floor(price / this.#unit + 1e-6));
    this.#most = job.stock.map(({ limit }) => Math.min(limit, pieces));
    this.#steps = Math.ceil(upTo / this.#unit) + 1;
  }

  /** The tables tell every cost apart. */
  get exact(): boolean {
    return this.#lost === 0;
  }

  /** The least that a bill can cost which costs `cost` or more; `cost` itself where prices are too fine to say. */
  atLeast(cost: number): number {
    if (!this.exact) return cost;
    const nothing = this.#main.map(() => 0);
    let at = Math.max(0, Math.ceil(cost / this.#unit - 1e-6));
    while (at < this.#steps && !this.#leads(0, at, at, nothing)) at++;
    return at * this.#unit;
  }

  /**
   * Bills that cost at least `from` and less than `below` and meet all requirements.
   * @returns null where it takes more than `most` steps to list them
   */
  between(
    from: number,
    below: number,
    requirements: readonly Requirement[],
    most: number,
  ): readonly Priced[] | null {
    const least = Math.ceil(from / this.#unit - 1e-6) - this.#lost;
    const last = Math.ceil(below / this.#unit - 1e-6) - 1;
    const bill = this.#job.stock.map(() => 0);
    const held = this.#main.map(() => 0);
    const bills: Priced[] = [];
    let steps = 0;

    const choose = (depth: number, spent: number): boolean => {
      const at = this.#order[depth];
      if (at === undefined) {
        const cost = bill.reduce((sum, count, i) => sum + count * this.#job.stock[i]!.price, 0);
        const meets = cost > from - SAME_COST && cost < below - SAME_COST;
        if (meets && requirements.every((requirement) => spare(requirement, bill) >= 0))
          bills.push({ bill: [...bill], cost });
        return true;
      }
      const price = this.#price[at]!;
      const free = this.#job.stock[at]!.price === 0;
      for (let count = free ? this.#most[at]! : 0; count <= this.#most[at]!; count++) {
        if (++steps > most) return false;
        const now = spent + count * price;
        if (now > last) break;
        bill[at] = count;
        for (let j = 0; j < held.length; j++) held[j]! += count * this.#main[j]!.holds[at]!;
        const open = this.#leads(depth + 1, least - now, last - now, held);
        const done = !open || choose(depth + 1, now);
        for (let j = 0; j < held.length; j++) held[j]! -= count * this.#main[j]!.holds[at]!;
        if (!done) return false;
      }
      bill[at] = 0;
      return true;
    };
    if (!choose(0, 0)) return null;
    return bills.sort((a, b) => a.cost - b.cost);
  }

  /** Whether the stocks from `depth` on can bring each requirement up to what it needs, within the window of steps. */
  #leads(depth: number, least: number, last: number, held: readonly number[]): boolean {
    this.#tables ??= this.#main.map(({ holds }) => this.#tablesOf(holds, this.#steps));
    const tables = this.#tables;
    return this.#main.every(({ needed }, j) => {
      const table = tables[j]![depth]!;
      const missing = needed * (1 - 1e-9) - held[j]!;
      for (let cost = Math.max(0, least); cost <= last; cost++) if (table[cost]! >= missing) return true;
      return false;
    });
  }

  /** For each depth and each cost in steps, the most that the stocks from there on hold for exactly that cost. */
  #tablesOf(holds: readonly number[], steps: number): Float64Array[] {
    const tables: Float64Array[] = [];
    let next = new Float64Array(steps + 1).fill(Number.NEGATIVE_INFINITY);
    next[0] = 0;
    tables.unshift(next);
    for (const at of this.#order.toReversed()) {
      const table = next.slice();
      const price = this.#price[at]!;
      if (price === 0) {
        const all = holds[at]! * this.#most[at]!;
        for (let cost = 0; cost <= steps; cost++) table[cost]! += all;
      }
      for (let cost = price; price > 0 && cost <= steps; cost++) {
        const held = table[cost - price]! + holds[at]!;
        if (held > table[cost]!) table[cost] = held;
      }
      tables.unshift(table);
      next = table;
    }
    return tables;
  }
}

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);
