/** Triangles of some points: the corners of each, three a triangle, and each half-edge's other side, or -1 outside. */
export interface Triangles {
  readonly triangles: Uint32Array;
  readonly halfedges: Int32Array;
}

/** The triangles once more points are among them. Those that were there before and still are keep their numbers. */
export interface MoreTriangles extends Triangles {
  /** Of each triangle: 1 if it is new, or no longer the one of this number that was there before. */
  readonly changed: Uint8Array;
}

/** Nearer to an edge than this, mm, a point lies on it; and so near to a corner, it is that corner. */
const ON = 1e-6;

/**
 * The Delaunay triangles of all points from those of the first of them: each further point splits the triangle that it
 * lies in, and edges are flipped about it until no circle holds a point.
 *
 * Takes the time of the points that are put in, not of those that are there.
 *
 * @param before triangles of the points up to `first`, all of which run the way that Delaunator has them run
 * @param coords x and y of all points, in turn
 * @returns null where the further points lie outside, or so awkwardly that rounding decides: on a corner that is there
 *   already, or beside triangles without an inside
 * @source C. L. Lawson, "Software for C1 surface interpolation", in: Mathematical Software III, 1977
 */
export function withPoints(before: Triangles, coords: Float64Array, first: number): MoreTriangles | null {
  const count = coords.length / 2;
  if (before.triangles.length === 0) return null;
  const growing = new Growing(before, coords, count - first);
  for (let point = first; point < count; point++) if (!growing.insert(point)) return null;
  return growing;
}

class Growing implements MoreTriangles {
  readonly triangles: Uint32Array;
  readonly halfedges: Int32Array;
  readonly changed: Uint8Array;
  readonly #coords: Float64Array;
  /** Half-edges opposite the point that is being put in, which may have to be flipped. */
  readonly #doubtful: number[] = [];
  #size: number;
  #last = 0;

  constructor({ triangles, halfedges }: Triangles, coords: Float64Array, more: number) {
    // Every point inside makes two triangles more.
    this.triangles = new Uint32Array(triangles.length + 6 * more);
    this.triangles.set(triangles);
    this.halfedges = new Int32Array(halfedges.length + 6 * more);
    this.halfedges.set(halfedges);
    this.changed = new Uint8Array(triangles.length / 3 + 2 * more);
    this.#coords = coords;
    this.#size = triangles.length;
  }

  /** False where it cannot be done for sure. */
  insert(point: number): boolean {
    const t = this.#find(point);
    if (t < 0) return false;
    let on = -1;
    for (let edge = t; edge < t + 3; edge++) {
      const away = this.#away(edge, point);
      if (away > ON) continue;
      if (on >= 0) return false; // at a corner
      on = edge;
    }
    if (!(on < 0 ? this.#splitTriangle(t, point) : this.#splitEdge(on, point))) return false;
    return this.#flipAll();
  }

  /** Number of the first half-edge of the triangle that a point lies in, or on; -1 if there is none. */
  #find(point: number): number {
    let t = this.#last;
    for (let steps = 0; steps <= this.#size; steps++) {
      const beyond = this.#outwards(t, point);
      if (beyond < 0) {
        this.#last = t;
        return t;
      }
      const across = this.halfedges[beyond]!;
      if (across < 0) return -1;
      t = across - (across % 3);
    }
    return -1;
  }

  #outwards(t: number, point: number): number {
    for (let edge = t; edge < t + 3; edge++) {
      if (this.#turn(this.triangles[edge]!, this.triangles[following(edge)]!, point) < 0) return edge;
    }
    return -1;
  }

  /** How far inside of an edge a point lies, mm. */
  #away(edge: number, point: number): number {
    const [a, b] = [this.triangles[edge]!, this.triangles[following(edge)]!];
    const dx = this.#coords[2 * b]! - this.#coords[2 * a]!;
    const dy = this.#coords[2 * b + 1]! - this.#coords[2 * a + 1]!;
    return this.#turn(a, b, point) / Math.sqrt(dx * dx + dy * dy);
  }

  /** Above 0 where a triangle of three points runs the way that all of them run; twice its area, mm². */
  #turn(a: number, b: number, c: number): number {
    const coords = this.#coords;
    const [ax, ay] = [coords[2 * a]!, coords[2 * a + 1]!];
    return (
      (coords[2 * b + 1]! - ay) * (coords[2 * c]! - ax) - (coords[2 * b]! - ax) * (coords[2 * c + 1]! - ay)
    );
  }

  #splitTriangle(t: number, point: number): boolean {
    const [a, b, c] = [this.triangles[t]!, this.triangles[t + 1]!, this.triangles[t + 2]!];
    const [overB, overC] = [this.halfedges[t + 1]!, this.halfedges[t + 2]!];
    const second = this.#add(point, b, c);
    const third = this.#add(point, c, a);
    this.triangles[t + 2] = point;
    this.#link(second + 1, overB);
    this.#link(third + 1, overC);
    this.#link(t + 1, second);
    this.#link(second + 2, third);
    this.#link(third + 2, t + 2);
    this.changed[t / 3] = 1;
    this.#doubtful.push(t, second + 1, third + 1);
    return true;
  }

  /** A point on the edge that two triangles share leaves four. */
  #splitEdge(edge: number, point: number): boolean {
    const across = this.halfedges[edge]!;
    if (across < 0) return false;
    const [one, two] = [following(edge), following(across)];
    const [oneLast, twoLast] = [following(one), following(two)];
    const [b, c, a, d] = [
      this.triangles[one]!,
      this.triangles[oneLast]!,
      this.triangles[two]!,
      this.triangles[twoLast]!,
    ];
    const areas = [
      this.#turn(point, b, c),
      this.#turn(point, c, a),
      this.#turn(point, a, d),
      this.#turn(point, d, b),
    ];
    if (areas.some((area) => area <= 0)) return false;
    const [overOne, overTwo] = [this.halfedges[one]!, this.halfedges[two]!];
    // The triangle a-b-c becomes a-point-c, and b-a-d becomes b-point-d; point-b-c and point-a-d are new.
    const third = this.#add(point, b, c);
    const fourth = this.#add(point, a, d);
    this.triangles[one] = point;
    this.triangles[two] = point;
    this.#link(third + 1, overOne);
    this.#link(fourth + 1, overTwo);
    this.#link(third + 2, one);
    this.#link(fourth + 2, two);
    this.#link(edge, fourth);
    this.#link(across, third);
    this.changed[(edge / 3) | 0] = 1;
    this.changed[(across / 3) | 0] = 1;
    this.#doubtful.push(third + 1, fourth + 1, oneLast, twoLast);
    return true;
  }

  #add(a: number, b: number, c: number): number {
    const t = this.#size;
    this.triangles[t] = a;
    this.triangles[t + 1] = b;
    this.triangles[t + 2] = c;
    this.changed[t / 3] = 1;
    this.#size = t + 3;
    return t;
  }

  #link(edge: number, other: number): void {
    this.halfedges[edge] = other;
    if (other >= 0) this.halfedges[other] = edge;
  }

  #flipAll(): boolean {
    for (let edge = this.#doubtful.pop(); edge !== undefined; edge = this.#doubtful.pop()) {
      const across = this.halfedges[edge]!;
      if (across < 0) continue;
      const beyond = following(following(across));
      const point = this.triangles[following(following(edge))]!;
      if (!this.#isInCircle(edge, point, this.triangles[beyond]!)) continue;
      if (!this.#flip(edge, across, point)) return false;
    }
    return true;
  }

  /** Whether a point lies in the circle of the triangle that an edge belongs to. */
  #isInCircle(edge: number, apex: number, point: number): boolean {
    const coords = this.#coords;
    const [a, b] = [this.triangles[edge]!, this.triangles[following(edge)]!];
    const [x, y] = [coords[2 * point]!, coords[2 * point + 1]!];
    const [dx, dy] = [coords[2 * a]! - x, coords[2 * a + 1]! - y];
    const [ex, ey] = [coords[2 * b]! - x, coords[2 * b + 1]! - y];
    const [fx, fy] = [coords[2 * apex]! - x, coords[2 * apex + 1]! - y];
    const [d2, e2, f2] = [dx * dx + dy * dy, ex * ex + ey * ey, fx * fx + fy * fy];
    return dx * (ey * f2 - e2 * fy) - dy * (ex * f2 - e2 * fx) + d2 * (ex * fy - ey * fx) < 0;
  }

  /** The other diagonal of the two triangles about an edge. */
  #flip(edge: number, across: number, point: number): boolean {
    const [next, beyondNext] = [following(edge), following(across)];
    const [last, beyond] = [following(next), following(beyondNext)];
    const [a, b, c] = [this.triangles[edge]!, this.triangles[next]!, this.triangles[beyond]!];
    if (this.#turn(point, a, c) <= 0 || this.#turn(point, c, b) <= 0) return false;
    const [overLast, overBeyond] = [this.halfedges[last]!, this.halfedges[beyond]!];
    // a-b-point becomes c-b-point, and b-a-c becomes point-a-c.
    this.triangles[edge] = c;
    this.triangles[across] = point;
    this.#link(edge, overBeyond);
    this.#link(across, overLast);
    this.#link(last, beyond);
    this.changed[(edge / 3) | 0] = 1;
    this.changed[(across / 3) | 0] = 1;
    this.#doubtful.push(edge, beyondNext);
    return true;
  }
}

const following = (edge: number): number => (edge % 3 === 2 ? edge - 2 : edge + 1);
