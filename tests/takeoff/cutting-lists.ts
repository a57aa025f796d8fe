import type { Piece, Stock } from "../../src/index.ts";

/** A cutting job as it might come from several beds of a garden, made up from a seed. Inches, with a kerf of 1/8. */
export interface CuttingList {
  readonly pieces: readonly Piece[];
  readonly stock: readonly Stock[];
  readonly kerf: number;
}

const LENGTHS = [
  [96, 192],
  [96, 120, 144, 192],
  [120, 144, 192],
  [96, 120, 144, 168, 192],
] as const;

/** A small generator with a period long enough for this: mulberry32. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Up to 60 pieces of up to 30 lengths, to 1/16 in, from two to five lengths of board at prices of no plain proportion. */
export function cuttingList(seed: number): CuttingList {
  const random = seeded(seed);
  const below = (n: number) => Math.floor(random() * n);
  const pieces = 1 + below(60);
  const kinds = 1 + below(Math.min(pieces, 30));
  const shortest = random() < 0.3 ? 4 : 12;
  const lengths = Array.from(
    { length: kinds },
    () => Math.round((shortest + random() * (120 - shortest)) * 16) / 16,
  );
  const counts = new Map<number, number>();
  for (let i = 0; i < pieces; i++) {
    const length = lengths[below(kinds)]!;
    counts.set(length, (counts.get(length) ?? 0) + 1);
  }
  const stock = LENGTHS[below(LENGTHS.length)]!.map((length) => ({
    length,
    price: Math.round(0.08 * length * (1 + 0.3 * (random() - 0.5)) * 100) / 100,
  }));
  return { pieces: [...counts].map(([length, count]) => ({ length, count })), stock, kerf: 0.125 };
}
