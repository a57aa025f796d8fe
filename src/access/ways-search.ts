import FlatQueue from "flatqueue";
import type { Point } from "../geometry/types.ts";
import { setOut } from "./set-out.ts";
import { type Begin, isSurelyOpen, triangleOf, WALL, type WaysMesh, widthOfSamples } from "./ways-mesh.ts";
import { widthThrough } from "./ways-width.ts";

/** A place to set out from. */
export interface Origin {
  readonly at: Point;
  /** Whatever the caller knows it by; comes back as `origin`. */
  readonly index: number;
}

/** The widest ways from some places to every triangle. */
export interface WidestWays {
  /**
   * Width of the widest way to each triangle, mm; `NOWHERE` where there is none as wide as was looked for, and `WALL`
   * where there is one through an outline only.
   */
  readonly width: Float64Array;
  /** The edge each triangle was entered by (of the triangle before it), or -1 where the way begins. */
  readonly enteredBy: Int32Array;
  /** Of each triangle: index of the place its way begins at. */
  readonly origin: Int32Array;
  /** Of the triangles that ways begin at: the room of somebody who sets out. */
  readonly begun: ReadonlyMap<number, Begin>;
  /**
   * Looks for ways so wide, mm, if it has not been done yet: `WALL` for ways through outlines too, to what is sealed off.
   * Much of the ground lies in gaps that no rule has a use for, and half of all triangles lie inside of things.
   */
  readonly lookDownTo: (least: number) => void;
}

export const NOWHERE = -2;

/**
 * Widest ways by Dijkstra's search, with the narrowest place in the role of the length.
 * @param locate the triangle a point lies in, or -1
 * @source the best bottleneck path: T. C. Hu, "The maximum capacity route problem", Operations Research 9, 1961
 */
export function widestWays(
  mesh: WaysMesh,
  origins: readonly Origin[],
  locate: (point: Point) => number,
): WidestWays {
  const { halfedges } = mesh;
  const count = mesh.radii.length;
  const slack = mesh.boundary.step / 2;
  const width = new Float64Array(count).fill(NOWHERE);
  const enteredBy = new Int32Array(count).fill(-1);
  const origin = new Int32Array(count).fill(-1);
  const queue = new FlatQueue<number>();
  // Most steps are no narrower than the way so far, and nothing in the queue is wider: they need no place in it. Each
  // triangle comes here once at most, and first come first served keeps ways short.
  const asWide = new Int32Array(count);
  let [next, last] = [0, 0];

  const begun = new Map<number, Begin>();
  for (const { at, index } of origins) {
    setOut(mesh, at, locate, (t, narrowest) => {
      const room = narrowest.width;
      if (room <= width[t]!) return;
      width[t] = room;
      origin[t] = index;
      begun.set(t, narrowest);
      queue.push(t, -room);
    });
  }
  let lookedDownTo = Infinity;
  return { width, enteredBy, origin, begun, lookDownTo };

  function lookDownTo(least: number): void {
    if (least >= lookedDownTo) return;
    // What was left aside as too narrow before is looked at now.
    for (let t = 0; t < count && lookedDownTo < Infinity; t++) if (width[t]! >= lookedDownTo) leave(t, least);
    lookedDownTo = least;
    search(least);
  }

  /** Over all ways at least so wide, the widest first. */
  function search(least: number): void {
    while (next < last || (queue.length > 0 && -queue.peekValue()! >= least)) {
      if (next < last) leave(asWide[next++]!, least);
      else {
        const reached = -queue.peekValue()!;
        const t = queue.pop()!;
        if (reached === width[t]) leave(t, least);
      }
    }
  }

  function leave(t: number, least: number): void {
    const reached = width[t]!;
    for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
      const across = halfedges[edge]!;
      if (across < 0) continue;
      const u = triangleOf(across);
      if (width[u]! >= reached) continue;
      // Most steps are so roomy that nobody has to measure them, or so narrow that they are of no use.
      const most = widthOfSamples(mesh, edge);
      if (most === WALL ? least > WALL : most + slack <= width[u]! || most + slack < least) continue;
      const room = isSurelyOpen(mesh, most, reached) ? reached : Math.min(reached, widthThrough(mesh, edge));
      if (room <= width[u]!) continue;
      width[u] = room;
      enteredBy[u] = edge;
      origin[u] = origin[t]!;
      if (room === reached && last < count) asWide[last++] = u;
      else queue.push(u, -room);
    }
  }
}
