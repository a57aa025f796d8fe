/**
 * A small linear program grown column by column: least cost of columns that together meet every row at least
 * (`demand`), while no limit row is passed. Primal simplex with the basis inverse held in full, which is right for
 * the few dozen rows a cutting job has.
 */
export interface Column {
  readonly cost: number;
  /** Entries over demand rows and then limit rows. */
  readonly entries: readonly number[];
}

const EPSILON = 1e-9;

export class Master {
  /** What a piece of each size is worth, then what a board of each limited stock costs beyond its price. */
  readonly worth: number[];
  readonly #rows: number;
  readonly #demandRows: number;
  readonly #inverse: number[][];
  readonly #basis: { column: Column; index: number }[];
  readonly #amounts: number[];

  /**
   * @param demand rows to be met
   * @param limits rows not to be passed
   * @param missing cost of leaving one piece uncut; far above any board, so that it happens only when it must
   */
  constructor(demand: readonly number[], limits: readonly number[], missing: number) {
    this.#demandRows = demand.length;
    this.#rows = demand.length + limits.length;
    const unit = (at: number) => Array.from({ length: this.#rows }, (_, i) => (i === at ? 1 : 0));
    this.#inverse = Array.from({ length: this.#rows }, (_, i) => unit(i));
    this.#basis = Array.from({ length: this.#rows }, (_, i) => ({
      column: { cost: i < demand.length ? missing : 0, entries: unit(i) },
      index: i < demand.length ? MISSING : SLACK,
    }));
    this.#amounts = [...demand, ...limits];
    this.worth = [];
    this.#price();
  }

  /** Reduced cost of a column: below 0, it would make the whole cheaper. */
  reduced({ cost, entries }: Column): number {
    let reduced = cost;
    for (let i = 0; i < this.#rows; i++) reduced -= this.worth[i]! * (entries[i] ?? 0);
    return reduced;
  }

  /**
   * Takes a column into the basis. @returns false where it would not make the whole cheaper
   */
  enter(column: Column, index: number): boolean {
    if (this.reduced(column) > -EPSILON) return false;
    const direction = this.#inverse.map((row) =>
      row.reduce((sum, value, i) => sum + value * (column.entries[i] ?? 0), 0),
    );
    let leaving = -1;
    let step = Number.POSITIVE_INFINITY;
    for (let i = 0; i < this.#rows; i++) {
      if (direction[i]! <= EPSILON) continue;
      const ratio = this.#amounts[i]! / direction[i]!;
      // Among equal steps the largest pivot keeps the inverse sound.
      const tie = ratio < step + EPSILON && leaving >= 0 && direction[i]! > direction[leaving]!;
      if (ratio < step - EPSILON || tie) [leaving, step] = [i, Math.min(ratio, step)];
    }
    if (leaving < 0) return false;
    this.#pivot(leaving, direction);
    this.#basis[leaving] = { column, index };
    this.#price();
    return true;
  }

  /** Lets rows be over-met and limits be unused wherever that is cheaper. @returns true if anything changed */
  relax(): boolean {
    let changed = false;
    for (let i = 0; i < this.#rows; i++) {
      const sign = i < this.#demandRows ? -1 : 1;
      const entries = Array.from({ length: this.#rows }, (_, row) => (row === i ? sign : 0));
      if (this.enter({ cost: 0, entries }, SLACK)) changed = true;
    }
    return changed;
  }

  /** Columns in use, by the index they came with, and how much of each. */
  solution(): { readonly index: number; readonly amount: number }[] {
    return this.#basis
      .map(({ index }, i) => ({ index, amount: this.#amounts[i]! }))
      .filter(({ index, amount }) => index >= 0 && amount > EPSILON);
  }

  /** True where some demand can only be met by leaving pieces uncut. */
  get short(): boolean {
    return this.#basis.some(({ index }, i) => index === MISSING && this.#amounts[i]! > 1e-7);
  }

  #pivot(leaving: number, direction: readonly number[]): void {
    const pivot = direction[leaving]!;
    const row = this.#inverse[leaving]!;
    for (let j = 0; j < this.#rows; j++) row[j]! /= pivot;
    this.#amounts[leaving]! /= pivot;
    for (let i = 0; i < this.#rows; i++) {
      const factor = direction[i]!;
      if (i === leaving || factor === 0) continue;
      const other = this.#inverse[i]!;
      for (let j = 0; j < this.#rows; j++) other[j]! -= factor * row[j]!;
      this.#amounts[i] = Math.max(0, this.#amounts[i]! - factor * this.#amounts[leaving]!);
    }
  }

  #price(): void {
    for (let j = 0; j < this.#rows; j++) {
      let worth = 0;
      for (let i = 0; i < this.#rows; i++) worth += this.#basis[i]!.column.cost * this.#inverse[i]![j]!;
      this.worth[j] = worth;
    }
  }
}

const MISSING = -1;
const SLACK = -2;
