import type { Piece, Stock } from "../types.ts";

/**
 * A cutting job with the kerf folded in: n pieces fit a board when sum(pieces) + (n - 1) x kerf <= board, which is
 * the same as sum(piece + kerf) <= board + kerf. So every piece and every board is taken one kerf longer, and cuts
 * are forgotten.
 */
export interface Job {
  /** Distinct lengths to be cut, longest first, each with its kerf. */
  readonly sizes: readonly number[];
  /** How many of each. */
  readonly demand: readonly number[];
  readonly stock: readonly JobStock[];
}

export interface JobStock {
  readonly capacity: number;
  readonly price: number;
  /** How many there are; Infinity where as many as wanted. */
  readonly limit: number;
  readonly from: Stock;
}

/** One way of sawing one board. */
export interface Pattern {
  /** Index of the job's stock. */
  readonly stock: number;
  /** Pieces of each size. */
  readonly counts: readonly number[];
}

/** Far below a saw's accuracy in any unit, far above what sums of lengths lose to rounding. */
export const FITS = 1e-6;

export interface Sorted {
  readonly job: Job;
  /** Labels of the pieces of each size, one for each piece. */
  readonly labels: readonly (readonly (string | undefined)[])[];
  readonly lengths: readonly number[];
  /** Pieces no board on sale can hold. */
  readonly tooLong: readonly Piece[];
}

/**
 * Reads a job: checks it, sets aside what is too long for any board, and joins equal lengths.
 * @throws RangeError naming the value for a length or price that is not finite, a length not above 0, a negative
 *   price or kerf, or a count that is not a whole number from 0 up
 */
export function sortedJob(pieces: readonly Piece[], stock: readonly Stock[], kerf: number): Sorted {
  if (!(kerf >= 0 && Number.isFinite(kerf))) throw new RangeError(`kerf ${kerf}`);
  for (const piece of pieces) checkPiece(piece);
  for (const board of stock) checkStock(board);
  const sold = stock.filter(({ count }) => count !== 0);
  const longest = Math.max(0, ...sold.map(({ length }) => length));

  const tooLong = pieces.filter(({ length, count }) => count > 0 && length > longest + FITS);
  const fitting = pieces
    .filter(({ length, count }) => count > 0 && length <= longest + FITS)
    .toSorted((a, b) => b.length - a.length);

  const lengths: number[] = [];
  const labels: (string | undefined)[][] = [];
  for (const { length, count, label } of fitting) {
    const last = lengths.at(-1);
    if (last === undefined || last - length > FITS) {
      lengths.push(length);
      labels.push([]);
    }
    for (let i = 0; i < count; i++) labels.at(-1)?.push(label);
  }
  const job: Job = {
    sizes: lengths.map((length) => length + kerf),
    demand: labels.map((list) => list.length),
    stock: sold.map((from) => ({
      capacity: from.length + kerf + FITS,
      price: from.price,
      limit: from.count ?? Number.POSITIVE_INFINITY,
      from,
    })),
  };
  return { job, labels, lengths, tooLong };
}

function checkPiece({ length, count }: Piece): void {
  if (!(length > 0 && Number.isFinite(length))) throw new RangeError(`a piece of length ${length}`);
  if (!(Number.isInteger(count) && count >= 0)) throw new RangeError(`${count} pieces`);
}

function checkStock({ length, price, count }: Stock): void {
  if (!(length > 0 && Number.isFinite(length))) throw new RangeError(`a board of length ${length}`);
  if (!(price >= 0 && Number.isFinite(price))) throw new RangeError(`a board at price ${price}`);
  if (count !== undefined && !(Number.isInteger(count) && count >= 0))
    throw new RangeError(`${count} boards`);
}

/** Length of a pattern, kerfs included. */
export function patternSize({ sizes }: Job, counts: readonly number[]): number {
  let size = 0;
  for (let i = 0; i < counts.length; i++) size += (sizes[i] ?? 0) * (counts[i] ?? 0);
  return size;
}

export const patternsCost = ({ stock }: Job, patterns: readonly Pattern[]): number =>
  patterns.reduce((sum, pattern) => sum + (stock[pattern.stock]?.price ?? 0), 0);
