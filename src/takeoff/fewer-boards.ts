import type { CutBoard } from "./types.ts";

/**
 * Boards at home cost a plan nothing, so it may begin more of them than it needs. What is sawn from them is put
 * together anew, longest piece first, into the fullest board that takes it, if that begins fewer.
 */
export function fewerFrom(boards: readonly CutBoard[], kerf: number): readonly CutBoard[] {
  const atHome = boards.filter(({ stock }) => stock.onHand);
  if (atHome.length < 2) return boards;
  const empty = atHome.map(({ stock }) => stock).sort((a, b) => b.length - a.length);
  const pieces = atHome.flatMap((board) => board.pieces).sort((a, b) => b.length - a.length);
  const begun: { stock: CutBoard["stock"]; pieces: CutBoard["pieces"][number][]; left: number }[] = [];
  for (const piece of pieces) {
    const size = piece.length + kerf;
    const fitting = begun.filter(({ left }) => left >= size - 1e-6).sort((a, b) => a.left - b.left)[0];
    if (fitting) {
      fitting.pieces.push(piece);
      fitting.left -= size;
      continue;
    }
    const next = empty.shift();
    if (!next || next.length < piece.length - 1e-6) return boards;
    begun.push({ stock: next, pieces: [piece], left: next.length + kerf - size });
  }
  if (begun.length >= atHome.length) return boards;
  const packed = begun.map(({ stock, pieces: sawn, left }) => ({
    stock,
    pieces: sawn,
    offcut: Math.max(0, left - kerf),
  }));
  return [...packed, ...boards.filter(({ stock }) => !stock.onHand)];
}
