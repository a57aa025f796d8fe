import { applyOps, cutBoards, type Garden, itemId, takeoff } from "../../src/index.ts";
import { boardWastingSize } from "../../src/rules/board-wasting-size.ts";
import { computeFacts } from "../../src/rules/compute-facts.ts";
import { bed, gardenOf, path } from "../helpers/garden-of.ts";
import type { BenchRow } from "./row.ts";

/**
 * What a takeoff costs while one bed is moved and while one is resized: of a garden whose beds come in the dozen
 * sizes that real ones do. There is no outside reference for it; the bar is its share of a frame.
 */
const BARS = { move: 4, resize: 16, rule: 2, cut: 16 } as const;
const ROUNDS = 41;

function gardenOfBeds(count: number): Garden {
  const beds = Array.from({ length: count }, (_, i) =>
    bed(`bed-${i}`, {
      x: (i % 8) * 2400,
      y: Math.floor(i / 8) * 4200,
      w: 1219.2 - (i % 3) * 152.4,
      h: 2438.4 + (i % 4) * 304.8,
      mulch: i % 2 ? { material: "straw", depth: 50 } : null,
      bottom: i % 5 ? {} : { mesh: { opening: 12.7 } },
    }),
  );
  const ways = [-500, 3000].map((y, i) => path(`path-${i}`, { from: [0, y], to: [15_000, y] }));
  return gardenOf(...beds, ...ways);
}

function median(measure: (round: number) => number): number {
  const times = Array.from({ length: ROUNDS }, (_, round) => measure(round)).sort((a, b) => a - b);
  return times[(ROUNDS - 1) / 2] ?? Number.NaN;
}

function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

const row = (scene: string, what: string, productMs: number, most: number): BenchRow => ({
  scene,
  what,
  productMs,
  referenceMs: null,
  bar: `at most ${most} ms`,
  ok: productMs <= most,
});

export function run(): BenchRow[] {
  return [10, 40].flatMap((count) => {
    const scene = `${count} beds, 2 paths`;
    const id = itemId("bed-0");
    let garden = gardenOfBeds(count);
    takeoff(garden);
    const check = () => boardWastingSize.check(computeFacts(garden, boardWastingSize.needs));
    check();
    const moved = (work: () => unknown) => (round: number) => {
      garden = applyOps(garden, [{ op: "move", id, by: [3 + round, 1] }]);
      return timed(work);
    };
    const resized = (round: number) => {
      const shape = { type: "rectangle" as const, width: 1000 + round * 5, length: 2000 + round * 7 };
      garden = applyOps(garden, [{ op: "set", id, changes: { shape } }]);
      return timed(() => takeoff(garden));
    };
    const rows = [
      row(scene, "takeoff while a bed is moved", median(moved(() => takeoff(garden))), BARS.move),
      row(scene, "board-friendly sizes while a bed is moved", median(moved(check)), BARS.rule),
      row(scene, "takeoff while a bed is resized", median(resized), BARS.resize),
    ];
    const [plan] = takeoff(garden).boardPlans;
    const stock = garden.cutting.stockLengths.map((length) => ({ length, price: 1 + length / 260 }));
    const cut = median(() => timed(() => cutBoards(plan?.pieces ?? [], stock, garden.cutting.kerf)));
    return [...rows, row(scene, "cut plan with its bound", cut, BARS.cut)];
  });
}
