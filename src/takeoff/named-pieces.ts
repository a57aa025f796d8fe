import type { Piece } from "./types.ts";

/** Equal pieces of the same name on one line, and square ends left unsaid. */
export function namedPieces(pieces: readonly Piece[]): Piece[] {
  const byName = new Map<string, Piece>();
  for (const { length: drawn, count, label, ends } of pieces) {
    // Rid of the last digits of rounding only: a thousandth of a millimetre decides whether two ends share a board.
    const length = Math.round(drawn * 1e7) / 1e7;
    const angled = ends?.angles.some((angle) => angle !== 0) ? ends : undefined;
    const key = `${length} ${label} ${angled?.angles.join()}`;
    const all = count + (byName.get(key)?.count ?? 0);
    byName.set(key, {
      length,
      count: all,
      ...(label !== undefined && { label }),
      ...(angled && { ends: angled }),
    });
  }
  return [...byName.values()];
}
