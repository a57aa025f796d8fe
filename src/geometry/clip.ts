import { Clipper, ClipType, EndType, FillRule, JoinType, type Path64, type Paths64 } from "clipper2-ts";
import { signedArea } from "./ring.ts";
import type { Point, Region, Ring } from "./types.ts";

/**
 * Boolean operations and offsets of rings, by Clipper2 (A. Johnson's library, after B. Vatti, "A generic solution
 * to polygon clipping", 1992). Worked in whole micrometres, so results are within 1 µm of the exact outline.
 */
const PER_MM = 1000;

/** How far an offset's round corner may lie inside the true arc, mm. */
const ARC_TOLERANCE = 0.05;
const MITRE_LIMIT = 10;

const toPath = (ring: Ring): Path64 =>
  ring.map(([x, y]) => ({ x: Math.round(x * PER_MM), y: Math.round(y * PER_MM) }));
const toPaths = (rings: readonly Ring[]): Paths64 => rings.map(toPath);
const fromPaths = (paths: Paths64): Ring[] =>
  paths.map((path) => path.map(({ x, y }): Point => [x / PER_MM, y / PER_MM]));

/**
 * Ground covered by any of the rings.
 * @param rings clockwise rings, mm; rings running the other way are holes
 * @returns outer rings clockwise and holes the other way round
 */
export const union = (rings: readonly Ring[]): Ring[] =>
  fromPaths(Clipper.union(toPaths(rings), FillRule.NonZero));

/** What is left of the subject where none of the clips lie; outer rings clockwise, holes the other way round. */
export const difference = (subject: readonly Ring[], clips: readonly Ring[]): Ring[] =>
  fromPaths(Clipper.difference(toPaths(subject), toPaths(clips), FillRule.NonZero));

/** Ground that both cover; outer rings clockwise, holes the other way round. */
export const intersection = (first: readonly Ring[], second: readonly Ring[]): Ring[] =>
  fromPaths(Clipper.booleanOp(ClipType.Intersection, toPaths(first), toPaths(second), FillRule.NonZero));

/** Rings pushed outwards (above 0) or inwards (below 0) by `by` mm, with pointed (mitred) or round corners. */
export const offset = (rings: readonly Ring[], by: number, corners: "mitred" | "round"): Ring[] =>
  fromPaths(
    Clipper.inflatePaths(
      toPaths(rings),
      by * PER_MM,
      corners === "round" ? JoinType.Round : JoinType.Miter,
      EndType.Polygon,
      MITRE_LIMIT,
      ARC_TOLERANCE * PER_MM,
    ),
  );

/** A line of points made `width` mm thick, with ends cut square ("butt") or round. */
export const thickened = (line: readonly Point[], width: number, ends: "butt" | "round"): Ring[] =>
  fromPaths(
    Clipper.inflatePaths(
      [toPath(line)],
      (width / 2) * PER_MM,
      ends === "round" ? JoinType.Round : JoinType.Miter,
      ends === "round" ? EndType.Round : EndType.Butt,
      MITRE_LIMIT,
      ARC_TOLERANCE * PER_MM,
    ),
  );

/** Ground within `distance` mm of any of the lines: each made thick with round ends and corners; they may overlap. */
export const within = (lines: readonly (readonly Point[])[], distance: number): Ring[] =>
  fromPaths(
    Clipper.inflatePaths(
      toPaths(lines),
      distance * PER_MM,
      JoinType.Round,
      EndType.Round,
      MITRE_LIMIT,
      ARC_TOLERANCE * PER_MM,
    ),
  );

/** Sorts rings into outer rings with the holes that lie in them. */
export function regionsOf(rings: readonly Ring[], contains: (ring: Ring, point: Point) => boolean): Region[] {
  const areas = rings.map(signedArea);
  const outers = rings.filter((_, i) => areas[i]! > 0);
  const holes = rings.filter((_, i) => areas[i]! < 0);
  if (holes.length === 0) return outers.map((outer) => ({ outer, holes: [] }));
  // The smallest outer ring round a hole owns it: islands may lie inside other islands' lakes.
  const bySize = [...outers].sort((a, b) => signedArea(a) - signedArea(b));
  const owner = new Map(
    holes.map((hole) => [hole, bySize.find((outer) => hole[0] && contains(outer, hole[0]))]),
  );
  return outers.map((outer) => ({ outer, holes: holes.filter((hole) => owner.get(hole) === outer) }));
}
