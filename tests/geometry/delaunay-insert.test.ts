import Delaunator from "delaunator";
import { describe, expect, it } from "vitest";
import { type MoreTriangles, withPoints } from "../../src/geometry/delaunay-insert.ts";
import { seeded } from "../helpers/scenes.ts";

/** Points put in one by one, against Delaunator's triangles of all of them at once. */

const FIRST = 80;
const following = (edge: number) => (edge % 3 === 2 ? edge - 2 : edge + 1);

/** A square that holds all points, so that none lies outside. */
const SQUARE = [-1, -1, 1001, -1, 1001, 1001, -1, 1001];

const strewn = (random: () => number, count: number) =>
  Array.from({ length: 2 * count }, () => random() * 1000);
/** On a grid four points lie on one circle everywhere, and many on the edge of a triangle. */
const onGrid = (random: () => number, count: number) => {
  const places = new Set<number>();
  while (places.size < count) places.add(Math.floor(random() * 20) * 20 + Math.floor(random() * 20));
  return [...places].flatMap((place) => [50 * Math.floor(place / 20), 50 * (place % 20)]);
};

function putIn(
  points: readonly number[],
  first = FIRST,
): { coords: Float64Array; more: MoreTriangles | null } {
  const coords = Float64Array.from([...SQUARE, ...points]);
  return { coords, more: withPoints(new Delaunator(coords.slice(0, 2 * first)), coords, first) };
}

/** The triangles as sets of corners, whichever comes first. */
const cornersOf = (triangles: Uint32Array): string[] =>
  Array.from({ length: triangles.length / 3 }, (_, t) =>
    [...triangles.subarray(3 * t, 3 * t + 3)].sort((a, b) => a - b).join(" "),
  ).sort();

function twiceArea(coords: Float64Array, [a, b, c]: readonly number[]): number {
  const at = (i: number | undefined) => [coords[2 * i!]!, coords[2 * i! + 1]!] as const;
  const [[ax, ay], [bx, by], [cx, cy]] = [at(a), at(b), at(c)];
  return (by - ay) * (cx - ax) - (bx - ax) * (cy - ay);
}

/** The circle through three points, by where the perpendiculars of two sides meet. */
function circleOf(coords: Float64Array, [a, b, c]: readonly number[]): { x: number; y: number; r: number } {
  const [ax, ay] = [coords[2 * a!]!, coords[2 * a! + 1]!];
  const [bx, by] = [coords[2 * b!]! - ax, coords[2 * b! + 1]! - ay];
  const [cx, cy] = [coords[2 * c!]! - ax, coords[2 * c! + 1]! - ay];
  const d = 2 * (bx * cy - by * cx);
  const x = (cy * (bx * bx + by * by) - by * (cx * cx + cy * cy)) / d;
  const y = (bx * (cx * cx + cy * cy) - cx * (bx * bx + by * by)) / d;
  return { x: ax + x, y: ay + y, r: Math.hypot(x, y) };
}

describe("points put into a Delaunay triangulation", () => {
  it.each([1, 2, 3, 4, 5, 6])("make the triangles that all of them make at once: seed %i", (seed) => {
    const { coords, more } = putIn(strewn(seeded(seed), 200));
    expect(more && cornersOf(more.triangles)).toEqual(cornersOf(new Delaunator(coords).triangles));
  });

  it.each([1, 2, 3, 4, 5, 6])("leave no point in a circle on a grid, and no ground bare: seed %i", (seed) => {
    const { coords, more } = putIn(onGrid(seeded(seed), 200));
    if (!more) throw new Error("nothing here is too awkward");
    let covered = 0;
    for (let t = 0; t < more.triangles.length; t += 3) {
      const corners = [...more.triangles.subarray(t, t + 3)];
      expect(twiceArea(coords, corners)).toBeGreaterThan(0);
      covered += twiceArea(coords, corners);
      const { x, y, r } = circleOf(coords, corners);
      let nearest = Infinity;
      for (let i = 0; i < coords.length; i += 2)
        nearest = Math.min(nearest, Math.hypot(coords[i]! - x, coords[i + 1]! - y));
      expect(nearest).toBeGreaterThan(r - 1e-6);
    }
    expect(covered / 2).toBeCloseTo(1002 * 1002, 3);
  });

  it.each([1, 2, 3])("know their neighbours, and what was there before: seed %i", (seed) => {
    const points = [...strewn(seeded(seed), 120), ...onGrid(seeded(seed), 60)];
    const { coords, more } = putIn(points);
    if (!more) throw new Error("nothing here is too awkward");
    const { triangles, halfedges, changed } = more;
    const outside = halfedges.filter((across) => across < 0).length;
    expect(outside).toBe(new Delaunator(coords).hull.length);
    halfedges.forEach((across, edge) => {
      if (across < 0) return;
      expect(halfedges[across]).toBe(edge);
      expect(triangles[across]).toBe(triangles[following(edge)]);
    });
    const before = new Delaunator(coords.slice(0, 2 * FIRST));
    expect(changed.indexOf(0)).toBeGreaterThanOrEqual(0);
    changed.forEach((flag, t) => {
      if (flag !== 0) return;
      for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
        expect(triangles[edge]).toBe(before.triangles[edge]);
      }
    });
  });

  it("split both triangles about an edge they lie on", () => {
    const { more } = putIn([500, 500], 4);
    expect(more && cornersOf(more.triangles)).toEqual(["0 1 4", "0 3 4", "1 2 4", "2 3 4"]);
  });

  it("are left to a fresh start outside, on the outside and on a point that is there", () => {
    expect(putIn([2000, 500], 4).more).toBeNull();
    expect(putIn([1001, 500], 4).more).toBeNull();
    expect(putIn([300, 400, 300, 400], 5).more).toBeNull();
    expect(
      withPoints(new Delaunator(Float64Array.of(0, 0, 1, 0)), Float64Array.of(0, 0, 1, 0, 1, 1), 2),
    ).toBeNull();
  });

  it("change neither the triangles nor the points they are given", () => {
    const coords = Float64Array.from([...SQUARE, ...strewn(seeded(9), 50)]);
    const before = new Delaunator(coords.slice(0, 40));
    const [triangles, halfedges] = [before.triangles.slice(), before.halfedges.slice()];
    withPoints(before, coords, 20);
    expect(before.triangles).toEqual(triangles);
    expect(before.halfedges).toEqual(halfedges);
  });
});
