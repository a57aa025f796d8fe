import FlatQueue from "flatqueue";
import type { ItemId } from "../garden/fields.ts";
import type { Limits } from "../garden/limits.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance, midpoint } from "../geometry/vector.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { pieceGap } from "./piece-gap.ts";
import { pinchRun } from "./pinch-run.ts";
import type { Gap } from "./types.ts";
import type { Ways } from "./ways.ts";
import { exactDisc } from "./ways-disc.ts";
import { crosses, nextInTriangle, triangleOf, type WaysMesh } from "./ways-mesh.ts";
import { pinchThrough, widthThrough } from "./ways-width.ts";
import { pinchPasses } from "./wheelchair-standards.ts";

/** A place on a way that is narrower than the rule, for how long, and how far it is to the next. */
export interface PinchOnWay {
  readonly gap: Gap;
  readonly run: number;
  readonly toNext: number | null;
}

/** Where two pinches stand too near each other, another way round one of them is looked for; so often. */
const MOST_DETOURS = 6;

/**
 * Looks for ways that keep the rule for wheelchairs though not the whole of them is as wide as it asks: 403.5.1 lets
 * them narrow to 32 in over 24 in, 48 in apart. The widest way need not be one of these: a long stretch of 35 in fails
 * where two short ones of 33 in do not.
 *
 * @param rings all outlines, to measure pinches against
 * @returns for a bed, the pinches on such a way from the bed back to where all is wide; null where there is none
 */
export function waysWithPinches(
  ways: Ways,
  rings: readonly Ring[],
  limits: Limits,
): (bed: ItemId) => readonly PinchOnWay[] | null {
  const { mesh, widest } = ways;
  if (!widest) return () => null;
  const wide = limits.wheelchairWay - SAME_LENGTH;
  const runs = new Map<number, { gap: Gap; run: number } | null>();

  /** The pinch at an edge, if the step through it is one. */
  const pinchAt = (edge: number): { gap: Gap; run: number } | null => {
    const own = Math.min(edge, mesh.halfedges[edge]!);
    let known = runs.get(own);
    if (known === undefined) {
      const isPlace = crosses(mesh, edge) || pinchThrough(mesh, edge) < wide;
      const gap = widthThrough(mesh, edge) < wide && isPlace ? gapAt(mesh, edge) : null;
      known = gap && { gap, run: pinchRun(gap, rings, limits.wheelchairWay) };
      runs.set(own, known);
    }
    return known;
  };
  const isOpen = (edge: number, shut: ReadonlySet<number>): boolean => {
    if (widthThrough(mesh, edge) < limits.wheelchairPinch - SAME_LENGTH) return false;
    if (shut.has(Math.min(edge, mesh.halfedges[edge]!))) return false;
    const pinch = pinchAt(edge);
    return pinch === null || pinchPasses({ width: pinch.gap.width, run: pinch.run, toNext: null }, limits);
  };

  return (bed) => {
    const goals = trianglesAt(mesh, bed, wide);
    const shut = new Set<number>();
    for (let detour = 0; detour <= MOST_DETOURS; detour++) {
      const edges = wayTo(mesh, goals, { widest, wide, isOpen: (edge) => isOpen(edge, shut), pinchAt });
      if (!edges) return null;
      const pinches = withDistances(
        stretchesOf(edges, (edge) => widthThrough(mesh, edge) < wide).flatMap((stretch) =>
          onePinch(stretch, pinchAt),
        ),
      );
      const tooNear = pinches.find((pinch) => !pinchPasses({ ...pinch, width: pinch.gap.width }, limits));
      if (!tooNear) return pinches;
      for (const edge of tooNear.edges) shut.add(Math.min(edge, mesh.halfedges[edge]!));
    }
    return null;
  };
}

/** Triangles at a bed in which a wheelchair has all the room it asks for, touching it. */
function trianglesAt(mesh: WaysMesh, bed: ItemId, wide: number): ReadonlySet<number> {
  const { boundary, triangles } = mesh;
  const goals = new Set<number>();
  for (let i = 0; i < triangles.length; i++) {
    const t = triangleOf(i);
    if (boundary.sides[boundary.owner[triangles[i]!]!] !== bed || goals.has(t)) continue;
    if (2 * mesh.radii[t]! >= wide && 2 * exactDisc(mesh, t).radius >= wide) goals.add(t);
  }
  return goals;
}

interface Passing {
  readonly widest: Float64Array;
  readonly wide: number;
  readonly isOpen: (edge: number) => boolean;
  readonly pinchAt: (edge: number) => object | null;
}

/** A pinch is gone through only to save so much of a walk, mm. */
const DETOUR_FOR_A_PINCH = 10_000;

/** Edges of the shortest way from any triangle that a full-width way leads to; from the bed back; null where there is none. */
function wayTo(
  mesh: WaysMesh,
  goals: ReadonlySet<number>,
  { widest, wide, isOpen, pinchAt }: Passing,
): number[] | null {
  const length = new Float64Array(mesh.radii.length).fill(Infinity);
  const by = new Int32Array(mesh.radii.length).fill(-1);
  const queue = new FlatQueue<number>();
  widest.forEach((width, t) => {
    if (width < wide) return;
    length[t] = 0;
    queue.push(t, 0);
  });
  for (;;) {
    const so = queue.peekValue();
    const t = queue.pop();
    if (t === undefined || so === undefined) return null;
    if (so > length[t]!) continue;
    if (goals.has(t)) return backFrom(t, by);
    for (const edge of [3 * t, 3 * t + 1, 3 * t + 2]) {
      const across = mesh.halfedges[edge]!;
      if (across < 0 || !isOpen(edge)) continue;
      const u = triangleOf(across);
      const on = so + stepBetween(mesh, t, u) + (pinchAt(edge) ? DETOUR_FOR_A_PINCH : 0);
      if (on >= length[u]!) continue;
      length[u] = on;
      by[u] = edge;
      queue.push(u, on);
    }
  }
}

function backFrom(end: number, by: Int32Array): number[] {
  const edges: number[] = [];
  for (let edge = by[end]!; edge >= 0; edge = by[triangleOf(edge)]!) edges.push(edge);
  return edges;
}

const stepBetween = ({ centres }: WaysMesh, t: number, u: number): number =>
  Math.hypot(centres[2 * t]! - centres[2 * u]!, centres[2 * t + 1]! - centres[2 * u + 1]!);

/** Edges of a way that follow each other without full width between them. */
function stretchesOf(edges: readonly number[], isNarrow: (edge: number) => boolean): number[][] {
  const stretches: number[][] = [];
  edges.forEach((edge, i) => {
    if (!isNarrow(edge)) return;
    const goesOn = i > 0 && isNarrow(edges[i - 1]!);
    if (goesOn) stretches.at(-1)!.push(edge);
    else stretches.push([edge]);
  });
  return stretches;
}

interface Pinch {
  readonly gap: Gap;
  readonly run: number;
  readonly edges: readonly number[];
}

/** A stretch is one pinch: its narrowest place, as long as any of it, and no shorter than from its first place to its last. */
function onePinch(
  edges: readonly number[],
  pinchAt: (edge: number) => { gap: Gap; run: number } | null,
): Pinch[] {
  const places = edges.flatMap((edge) => pinchAt(edge) ?? []);
  const [first, last] = [places[0], places.at(-1)];
  if (!first || !last) return [];
  const { gap } = places.reduce((a, b) => (b.gap.width < a.gap.width ? b : a));
  const bent = distance(middleOf(first.gap), middleOf(last.gap)) > Math.max(first.run, last.run);
  const along = places
    .slice(1)
    .reduce((sum, place, i) => sum + distance(middleOf(places[i]!.gap), middleOf(place.gap)), 0);
  const run = Math.max(...places.map((place) => place.run));
  return [{ gap, run: bent ? Math.max(run, along) : run, edges }];
}

/** Each with the full-width way left to the next. */
const withDistances = (pinches: readonly Pinch[]): (PinchOnWay & Pinch)[] =>
  pinches.map((pinch, i) => {
    const next = pinches[i + 1];
    const between = next && distance(middleOf(pinch.gap), middleOf(next.gap)) - (pinch.run + next.run) / 2;
    return { ...pinch, toNext: between === undefined ? null : Math.max(0, between) };
  });

const middleOf = ({ from, to }: Gap): Point => midpoint(from, to);

function gapAt({ boundary, triangles }: WaysMesh, edge: number): Gap {
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  const side = (sample: number) => boundary.sides[boundary.owner[sample]!]!;
  return { between: [side(p), side(q)], ...pieceGap(boundary, p, q) };
}
