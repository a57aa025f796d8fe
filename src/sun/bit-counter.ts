import { type Cells, type Mask, wordsInRow } from "./cells.ts";

/**
 * A count for each cell, 32 of them raised at a time: the counts' binary digits lie in planes, one mask for each digit.
 * As shadows creep, a word is mostly counted with the bits it was counted with before: those are gathered, and go into the
 * planes together when others come.
 * @source D. E. Knuth, The Art of Computer Programming, vol. 4A, 2011, section 7.1.3 (bit-slicing)
 */
export class BitCounter {
  readonly #gathered: Mask;
  readonly #times: Int32Array;
  readonly #planes: Mask[] = [];

  constructor(words: number) {
    this.#gathered = new Int32Array(words);
    this.#times = new Int32Array(words);
  }

  /** Counts one more in each cell of a word whose bit is set. */
  add(word: number, bits: number): void {
    if (bits !== this.#gathered[word]!) {
      this.#settle(word);
      this.#gathered[word] = bits;
    }
    this.#times[word]!++;
  }

  #settle(word: number): void {
    const bits = this.#gathered[word]!;
    for (let times = this.#times[word]!, digit = 0; times !== 0; times >>>= 1, digit++) {
      if (times & 1) this.#carry(word, bits, digit);
    }
    this.#times[word] = 0;
  }

  #carry(word: number, bits: number, from: number): void {
    let carry = bits;
    for (let digit = from; carry !== 0; digit++) {
      while (this.#planes.length <= digit) this.#planes.push(new Int32Array(this.#times.length));
      const plane = this.#planes[digit]!;
      const before = plane[word]!;
      plane[word] = before ^ carry;
      carry &= before;
    }
  }

  /** Adds the counts times a factor to a total for each cell, row by row. */
  addTo(totals: Float64Array, cells: Cells, factor: number): void {
    const words = wordsInRow(cells);
    for (let word = 0; word < this.#times.length; word++) this.#settle(word);
    this.#planes.forEach((plane, digit) => {
      const worth = factor * 2 ** digit;
      for (let word = 0; word < plane.length; word++) {
        const start = Math.floor(word / words) * cells.columns + (word % words) * 32;
        for (let bits = plane[word]!; bits !== 0; bits &= bits - 1) {
          totals[start + 31 - Math.clz32(bits & -bits)]! += worth;
        }
      }
    });
  }
}

/** Counters by what each count is worth: one for full light, and one for each share that crowns and slats let through. */
export class LightCounters {
  readonly #byShare = new Map<number, BitCounter>();
  readonly #words: number;
  #lastShare = Number.NaN;
  #last: BitCounter | null = null;

  constructor(words: number) {
    this.#words = words;
  }

  of(share: number): BitCounter {
    // Mostly the same one is asked for again.
    if (share === this.#lastShare && this.#last) return this.#last;
    let counter = this.#byShare.get(share);
    if (!counter) {
      counter = new BitCounter(this.#words);
      this.#byShare.set(share, counter);
    }
    this.#lastShare = share;
    this.#last = counter;
    return counter;
  }

  /** The sum of all counts, each times its share, for each cell. */
  totals(cells: Cells): Float64Array {
    const totals = new Float64Array(cells.rows * cells.columns);
    for (const [share, counter] of this.#byShare) counter.addTo(totals, cells, share);
    return totals;
  }
}
