import { cutBoards, proveCutPlan } from "../../src/index.ts";
import { cuttingList } from "../takeoff/cutting-lists.ts";
import { leastCostByProgram } from "../takeoff/integer-program.ts";
import type { BenchRow } from "./row.ts";

/**
 * Cut plans of 300 seeded lists of up to 60 pieces: made at once, as while a bed is dragged, and proven, as when the
 * hand rests. The reference is an arc-flow program of the same list solved by HiGHS, which is given a second.
 */
const LISTS = 300;
const MOST = 1_000;
const PROGRAM_SECONDS = 1;

interface Measured {
  readonly quickMs: number;
  readonly proofMs: number;
  readonly programMs: number;
  readonly proven: boolean;
  /** Null where the program ran out of time. */
  readonly equal: boolean | null;
}

async function measured(seed: number): Promise<Measured> {
  const { pieces, stock, kerf } = cuttingList(seed);
  const began = performance.now();
  cutBoards(pieces, stock, kerf);
  const planned = performance.now();
  const plan = await proveCutPlan(pieces, stock, kerf);
  const proved = performance.now();
  const program = await leastCostByProgram({ pieces, stock, kerf }, PROGRAM_SECONDS);
  const solved = performance.now();
  return {
    quickMs: planned - began,
    proofMs: proved - planned,
    programMs: solved - proved,
    proven: plan.proven,
    equal: program.optimal ? Math.abs(program.cost - plan.cost) < 1e-6 : null,
  };
}

export async function run(): Promise<BenchRow[]> {
  await measured(0);
  const rows: Measured[] = [];
  for (let seed = 1; seed <= LISTS; seed++) rows.push(await measured(seed));
  const median = (times: readonly number[]) => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)]!;
  const [quick, proof, program] = [
    median(rows.map(({ quickMs }) => quickMs)),
    median(rows.map(({ proofMs }) => proofMs)),
    median(rows.map(({ programMs }) => programMs)),
  ];
  const slowest = Math.max(...rows.map(({ proofMs }) => proofMs));
  const settled = rows.filter(({ equal }) => equal !== null).length;
  const allProven = rows.every(({ proven }) => proven);
  const allEqual = rows.every(({ equal }) => equal !== false);
  const scene = `${LISTS} lists of up to 60 pieces`;
  return [
    {
      scene,
      what: "cut plan at once, median",
      productMs: quick,
      referenceMs: program,
      bar: "at least 20 times faster than the program",
      ok: program >= 20 * quick,
    },
    {
      scene,
      what: `cut plan proven, median; the program settles ${settled} in its second`,
      productMs: proof,
      referenceMs: program,
      bar: "all proven, none differs from the program",
      ok: allProven && allEqual,
    },
    {
      scene,
      what: "cut plan proven, the slowest list",
      productMs: slowest,
      referenceMs: null,
      bar: `at most ${MOST} ms`,
      ok: slowest <= MOST,
    },
  ];
}
