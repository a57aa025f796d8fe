import { boundsOf } from "../geometry/ring.ts";
import type { Ring } from "../geometry/types.ts";
import { clipToBox, groundArea } from "./convex-cut.ts";

/**
 * Cuts ground into parts of the same area, one after another along one side.
 * @param rings outer rings clockwise, holes the other way round
 */
export function evenParts(rings: readonly Ring[], along: "x" | "y", parts: number): (readonly Ring[])[] {
  if (parts === 1) return [rings];
  if (rings.length === 0) return Array.from({ length: parts }, () => []);
  const axis = along === "x" ? 0 : 1;
  const box = boundsOf(rings.flat());
  const cuts = cutsAt(rings, axis, parts);
  return cuts.slice(1).map((to, i) => {
    const from = cuts[i]!;
    return clipToBox(rings, axis === 0 ? { ...box, minX: from, maxX: to } : { ...box, minY: from, maxY: to });
  });
}

/** Where the parts begin and the last ends, along the axis. */
function cutsAt(rings: readonly Ring[], axis: 0 | 1, parts: number): number[] {
  const corners = [...new Set(rings.flatMap((ring) => ring.map((corner) => corner[axis])))].sort(
    (a, b) => a - b,
  );
  const areas = corners.map((at) => areaBefore(rings, axis, at));
  const whole = groundArea(rings);
  const cuts = [corners[0]!];
  let slab = 0;
  for (let part = 1; part < parts; part++) {
    const wanted = (whole * part) / parts;
    while (slab + 2 < corners.length && areas[slab + 1]! < wanted) slab++;
    const [from, to] = [corners[slab]!, corners[slab + 1]!];
    const middle = areaBefore(rings, axis, (from + to) / 2);
    cuts.push(
      from + (to - from) * shareOfSlab(areas[slab]! - wanted, middle - wanted, areas[slab + 1]! - wanted),
    );
  }
  return [...cuts, corners.at(-1)!];
}

/**
 * Where the area that lies before a line comes to nothing too much or too little. Between corners the ground is as wide as
 * straight sides make it, so the area is a quadratic, known by its values at the start, the middle and the end of the slab.
 */
function shareOfSlab(start: number, middle: number, end: number): number {
  const a = 2 * (start - 2 * middle + end);
  const b = 4 * middle - 3 * start - end;
  // The root that stays steady where `a` is next to nothing.
  const root = (-2 * start) / (b + Math.sqrt(Math.max(0, b * b - 4 * a * start)));
  return Math.min(1, Math.max(0, root));
}

/**
 * Area of the ground before a line across the axis: the sides up to it swept against the axis (Green's theorem; what closes
 * the outline along the line adds nothing).
 */
function areaBefore(rings: readonly Ring[], axis: 0 | 1, line: number): number {
  const other = axis === 0 ? 1 : 0;
  let sum = 0;
  for (const ring of rings) {
    let before = ring.at(-1)!;
    for (const corner of ring) {
      const a = before[axis];
      const b = corner[axis];
      if (a !== b && Math.min(a, b) < line) {
        const slope = (corner[other] - before[other]) / (b - a);
        const from = Math.min(a, line);
        const to = Math.min(b, line);
        const middle = before[other] + slope * ((from + to) / 2 - a);
        sum += middle * (to - from);
      }
      before = corner;
    }
  }
  return axis === 0 ? -sum : sum;
}
