import { offset } from "../../src/geometry/clip.ts";
import { contains } from "../../src/geometry/ring.ts";
import { nearestOnSegment } from "../../src/geometry/segment.ts";
import type { Garden, Point, Region, Ring } from "../../src/index.ts";
import { eroded } from "./erosion-reference.ts";

/**
 * Shortest walks the plain way: shrink the ground by half the width, join every corner of it to every other that can be
 * seen, and search the whole graph (T. Lozano-Perez and M. Wesley, Communications of the ACM 22, 1979).
 * @returns length of the shortest walk from the point until one touches an outline; Infinity where there is none
 */
export function walksByVisibility(garden: Garden, from: Point, width: number): (outline: Ring) => number {
  const ground = eroded(garden, width);
  const region = ground.regions.find((candidate) => lies(candidate, from));
  if (!region) return () => Infinity;
  const walk = walksIn(region, [from]);
  return (outline) => walk(endsAt(outline, ground.half));
}

/** The same from wherever one touches an outline to wherever one touches another. */
export function walkBetweenByVisibility(garden: Garden, from: Ring, to: Ring, width: number): number {
  const { regions, half } = eroded(garden, width);
  const lengths = regions.map((region) => {
    const starts = endsAt(from, half).filter((point) => lies(region, point));
    const ends = endsAt(to, half).filter((point) => lies(region, point));
    return starts.length > 0 && ends.length > 0 ? walksIn(region, starts)(ends) : Infinity;
  });
  return Math.min(Infinity, ...lengths);
}

/** Arcs drawn with chords may lie up to 2 mm inside: walks end (and begin) that much before they touch. */
const endsAt = (outline: Ring, half: number): Point[] =>
  offset([outline], half + 2.5, "round").flatMap(everySoOften);

const lies = ({ outer, holes }: Region, point: Point): boolean =>
  contains(outer, point) && !holes.some((hole) => contains(hole, point));

function walksIn({ outer, holes }: Region, starts: readonly Point[]): (ends: readonly Point[]) => number {
  const region = { outer: plainer(outer), holes: holes.map(plainer) };
  const nodes = [
    ...starts,
    ...[region.outer, ...region.holes].flatMap((ring) => ring.filter((_, i) => isReflex(ring, i))),
  ];
  const far = nodes.map((_, i) => (i < starts.length ? 0 : Infinity));
  const open = new Set(nodes.keys());
  while (open.size > 0) {
    const u = [...open].reduce((a, b) => (far[b]! < far[a]! ? b : a));
    open.delete(u);
    for (const v of open) {
      const reached = far[u]! + Math.hypot(nodes[v]![0] - nodes[u]![0], nodes[v]![1] - nodes[u]![1]);
      if (reached < far[v]! && sees(region, nodes[u]!, nodes[v]!)) far[v] = reached;
    }
  }
  return (ends) => {
    let best = Infinity;
    nodes.forEach((node, i) => {
      for (const end of ends) {
        const length = far[i]! + Math.hypot(end[0] - node[0], end[1] - node[1]);
        if (length < best && sees(region, node, end)) best = length;
      }
    });
    return best;
  };
}

const EVERY = 40;

function everySoOften(ring: Ring): Point[] {
  return ring.flatMap(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    const parts = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / EVERY));
    return Array.from(
      { length: parts },
      (_, k): Point => [ax + ((bx - ax) * k) / parts, ay + ((by - ay) * k) / parts],
    );
  });
}

/** Arcs with fewer chords: corners go that lie within 2 mm of the line between those kept. */
function plainer(ring: Ring): Ring {
  const kept: Point[] = [ring[0]!];
  let skipped: Point[] = [];
  for (const [i, corner] of ring.entries()) {
    if (i === 0) continue;
    const next = ring[(i + 1) % ring.length]!;
    const near = [...skipped, corner].every((point) => {
      const [x, y] = nearestOnSegment(point, kept.at(-1)!, next);
      return Math.hypot(x - point[0], y - point[1]) < 2;
    });
    if (near) skipped.push(corner);
    else {
      kept.push(corner);
      skipped = [];
    }
  }
  return kept;
}

/** Corners that stick out into the ground: outer rings run clockwise, holes the other way, ground always at the right. */
function isReflex(ring: Ring, i: number): boolean {
  const [a, b, c] = [ring.at(i - 1)!, ring[i]!, ring[(i + 1) % ring.length]!];
  return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]) < 0;
}

const SLACK = 0.01;

function sees({ outer, holes }: Region, a: Point, b: Point): boolean {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length < SLACK) return true;
  const crossed = [outer, ...holes].some((ring) =>
    ring.some((p, i) => crosses(a, b, p, ring[(i + 1) % ring.length]!)),
  );
  if (crossed) return false;
  // Between its corners a line that crosses no side may still run outside: look at places along it.
  return [0.03, 0.21, 0.5, 0.77, 0.97].every((t) => {
    const point: Point = [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
    const inside = contains(outer, point) && !holes.some((hole) => contains(hole, point));
    return inside || [outer, ...holes].some((ring) => onOutline(ring, point));
  });
}

const onOutline = (ring: Ring, point: Point): boolean =>
  ring.some((p, i) => {
    const [x, y] = nearestOnSegment(point, p, ring[(i + 1) % ring.length]!);
    return Math.hypot(x - point[0], y - point[1]) < SLACK;
  });

function crosses(a: Point, b: Point, p: Point, q: Point): boolean {
  const side = (o: Point, d: Point, x: Point) =>
    ((d[0] - o[0]) * (x[1] - o[1]) - (d[1] - o[1]) * (x[0] - o[0])) /
    (Math.hypot(d[0] - o[0], d[1] - o[1]) || 1);
  const [pSide, qSide, aSide, bSide] = [side(a, b, p), side(a, b, q), side(p, q, a), side(p, q, b)];
  const parted = (x: number, y: number) => (x > SLACK && y < -SLACK) || (x < -SLACK && y > SLACK);
  return parted(pSide, qSide) && parted(aSide, bSide);
}
