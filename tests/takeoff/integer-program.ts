import highs from "highs";
import type { CuttingList } from "./cutting-lists.ts";

/**
 * The least cost of a cutting list by an integer program of another make than ours: arc flow over the lengths of each
 * board (J. Valério de Carvalho, 1999), solved by HiGHS. A node is a length used up; an arc is a piece sawn at it.
 * Needs lengths that are whole sixteenths.
 */
export interface Solved {
  /** Proven within the time; otherwise `cost` is the best plan found and `bound` what no plan is below. */
  readonly optimal: boolean;
  readonly cost: number;
}

const SIXTEENTHS = 16;

let solver: Awaited<ReturnType<typeof highs>> | null = null;

export async function leastCostByProgram(list: CuttingList, seconds: number): Promise<Solved> {
  solver ??= await highs();
  const solution = solver.solve(arcFlow(list), {
    time_limit: seconds,
    mip_rel_gap: 0,
    mip_abs_gap: 1e-6,
    output_flag: false,
  });
  return { optimal: solution.Status === "Optimal", cost: solution.ObjectiveValue };
}

function arcFlow({ pieces, stock, kerf }: CuttingList): string {
  const whole = (length: number) => Math.round(length * SIXTEENTHS);
  // Every piece and board one kerf longer: cuts are forgotten.
  const sizes = pieces.map(({ length, count }) => ({ size: whole(length + kerf), count }));
  const sorted = sizes.toSorted((a, b) => b.size - a.size);
  const boards = stock.map(({ length, price }) => ({ end: whole(length + kerf), price }));
  const longest = Math.max(...boards.map(({ end }) => end));

  // Nodes that can be reached by sawing longest pieces first; arcs from each.
  const reachedBy = new Map<number, number>([[0, 0]]);
  const arcs = new Map<string, { from: number; to: number; piece: number }>();
  for (const [piece, { size, count }] of sorted.entries()) {
    const starts = [...reachedBy.keys()];
    for (const start of starts) {
      for (let n = 0, from = start; n < count && from + size <= longest; n++, from += size) {
        arcs.set(`${from} ${piece}`, { from, to: from + size, piece });
        reachedBy.set(from + size, piece);
      }
    }
  }
  const nodes = [...reachedBy.keys()].sort((a, b) => a - b);
  const into = new Map<number, string[]>();
  const outOf = new Map<number, string[]>();
  const byPiece = sorted.map((): string[] => []);
  const note = (map: Map<number, string[]>, node: number, name: string) =>
    map.set(node, [...(map.get(node) ?? []), name]);
  const variables: string[] = [];
  for (const { from, to, piece } of arcs.values()) {
    const name = `a${from}_${piece}`;
    variables.push(name);
    note(outOf, from, name);
    note(into, to, name);
    byPiece[piece]!.push(name);
  }
  // A board of each kind begins at 0 and ends wherever no more is sawn from it, up to its own end.
  const used = boards.map((_, i) => `n${i}`);
  const ends = boards.flatMap(({ end }, board) =>
    nodes
      .filter((node) => node > 0 && node <= end)
      .map((node) => ({ node, board, name: `e${board}_${node}` })),
  );
  const lines = [
    "Minimize",
    ` obj: ${boards.map(({ price }, i) => `${price} n${i}`).join(" + ")}`,
    "Subject To",
    ` start: ${(outOf.get(0) ?? []).join(" + ")} - ${used.join(" - ")} = 0`,
    ...nodes
      .filter((node) => node > 0)
      .map((node) => {
        const arriving = into.get(node) ?? [];
        const leaving = [
          ...(outOf.get(node) ?? []),
          ...ends.filter((e) => e.node === node).map((e) => e.name),
        ];
        return ` f${node}: ${arriving.join(" + ")} - ${leaving.join(" - ")} = 0`;
      }),
    ...boards.map(
      (_, board) =>
        ` b${board}: ${ends
          .filter((e) => e.board === board)
          .map((e) => e.name)
          .join(" + ")} - n${board} = 0`,
    ),
    ...sorted.map(({ count }, piece) => ` d${piece}: ${byPiece[piece]!.join(" + ")} >= ${count}`),
    "General",
    ` ${[...variables, ...used, ...ends.map(({ name }) => name)].join(" ")}`,
    "End",
  ];
  return lines.join("\n");
}
