import { nearestOnSegment } from "../geometry/segment.ts";
import type { Point } from "../geometry/types.ts";
import { cross, distance, dot, subtract } from "../geometry/vector.ts";

/** What runs of tubing are joined with. */
export interface Joints {
  readonly tees: number;
  readonly elbows: number;
}

/** Places nearer than this are one, mm. */
const SAME_PLACE = 1;
/** Bends that follow one another within this are one bend, mm. */
const ONE_BEND = 60;
/** Tubing is bent by hand up to this; sharper it takes an elbow. Degrees; common practice. */
const BENDS_BY_HAND = 45;

/**
 * The joints of runs of tubing and of what branches off them. Where three ends meet there is a tee, where four meet there are
 * two; where two meet at something that branches off, and at each sharp bend, there is an elbow.
 *
 * @param branches where something else begins: a riser, a drip line; several at one place are listed as often
 */
export function jointsOf(runs: readonly (readonly Point[])[], branches: readonly Point[]): Joints {
  const places: Point[] = [];
  for (const at of [...branches, ...runs.flatMap((run) => [run[0]!, run.at(-1)!])]) {
    if (!places.some((other) => distance(at, other) < SAME_PLACE)) places.push(at);
  }
  let tees = 0;
  let elbows = runs.reduce((sum, run) => sum + sharpBends(run), 0);
  for (const at of places) {
    const branching = branches.filter((branch) => distance(at, branch) < SAME_PLACE).length;
    const ends = branching + runs.reduce((sum, run) => sum + endsAt(run, at), 0);
    if (ends > 2) tees += ends - 2;
    else if (ends === 2 && branching > 0) elbows += 1;
  }
  return { tees, elbows };
}

/** Two where a run passes, one where it ends, none elsewhere. */
function endsAt(run: readonly Point[], at: Point): number {
  const isEnd = [run[0]!, run.at(-1)!].filter((end) => distance(end, at) < SAME_PLACE).length;
  if (isEnd > 0) return isEnd;
  const passes = run.slice(1).some((to, i) => distance(nearestOnSegment(at, run[i]!, to), at) < SAME_PLACE);
  return passes ? 2 : 0;
}

function sharpBends(run: readonly Point[]): number {
  let count = 0;
  let bend = 0;
  for (let i = 1; i + 1 < run.length; i++) {
    bend += turnAt(run[i - 1]!, run[i]!, run[i + 1]!);
    const isLast = i + 2 >= run.length || distance(run[i]!, run[i + 1]!) > ONE_BEND;
    if (!isLast) continue;
    if (Math.abs(bend) > BENDS_BY_HAND + 1e-6) count += 1;
    bend = 0;
  }
  return count;
}

function turnAt(before: Point, at: Point, after: Point): number {
  const [into, out] = [subtract(at, before), subtract(after, at)];
  return (Math.atan2(cross(into, out), dot(into, out)) * 180) / Math.PI;
}
