import type { Limits } from "../garden/limits.ts";
import type { Point } from "../geometry/types.ts";
import { INCH, SAME_LENGTH } from "../units/length.ts";
import type { Ways } from "./ways.ts";
import { centreOf, triangleOf } from "./ways-mesh.ts";
import { widthThrough } from "./ways-width.ts";

/** An end of a way no deeper than this is backed out of without a thought, mm: a wheelchair's own length and a little. */
const DEEP = 60 * INCH;

/**
 * Where ways end, so that a wheelchair has to turn or to back out: leaves are taken off the graph of ways, one after
 * another, until only through ways and places to turn in are left; a branch taken off that is deep is a dead end.
 * @returns the far end of each
 */
export function deadEnds({ mesh, widest }: Ways, limits: Limits): Point[] {
  if (!widest) return [];
  const least = limits.wheelchairPinch - SAME_LENGTH;
  const isIn = (t: number) => widest[t]! >= least && 2 * mesh.radii[t]! >= least;
  const canTurn = (t: number) => 2 * mesh.radii[t]! >= limits.turningCircle - SAME_LENGTH;
  const neighbours = (t: number): number[] =>
    [3 * t, 3 * t + 1, 3 * t + 2].flatMap((edge) => {
      const across = mesh.halfedges[edge]!;
      if (across < 0 || widthThrough(mesh, edge) < least) return [];
      const u = triangleOf(across);
      return isIn(u) ? [u] : [];
    });

  const degree = new Map<number, number>();
  for (let t = 0; t < mesh.radii.length; t++) if (isIn(t)) degree.set(t, neighbours(t).length);
  const deepest = new Map<number, { depth: number; at: Point }>();
  const leaves = [...degree.keys()].filter((t) => degree.get(t)! <= 1 && !canTurn(t));
  const found: Point[] = [];
  while (leaves.length > 0) {
    const t = leaves.pop()!;
    degree.delete(t);
    const own = deepest.get(t) ?? { depth: 0, at: centreOf(mesh, t) };
    const onward = neighbours(t).find((u) => degree.has(u));
    if (onward === undefined) continue;
    const [[ax, ay], [bx, by]] = [centreOf(mesh, t), centreOf(mesh, onward)];
    const branch = { depth: own.depth + Math.hypot(bx - ax, by - ay), at: own.at };
    degree.set(onward, degree.get(onward)! - 1);
    if (degree.get(onward)! <= 1 && !canTurn(onward)) {
      if (branch.depth > (deepest.get(onward)?.depth ?? 0)) deepest.set(onward, branch);
      leaves.push(onward);
    } else if (branch.depth > DEEP && degree.get(onward)! > 1) found.push(branch.at);
    else if (branch.depth > DEEP && canTurn(onward)) found.push(branch.at);
    else if (branch.depth > (deepest.get(onward)?.depth ?? 0)) deepest.set(onward, branch);
  }
  return found;
}
