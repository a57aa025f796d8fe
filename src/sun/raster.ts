import { type Cells, type Mask, setBits, wordsInRow } from "./cells.ts";
import { type Body, type Crown, type Prism, prismAbove } from "./solid.ts";

/**
 * Shadows of convex bodies set into masks, row by row. A convex shadow is one run of cells in each row, so that all it takes
 * is where its outline crosses the middles of the rows. Places are in cells: the middle of the first cell is 0, 0.
 */

/** A body over a plane with cells, ready to be cast again and again as the sun moves. */
export type Castable = CastablePrism | CastableCrown;

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
  /** Height of its highest point above the plane, in cells. */
  readonly top: number;
}

interface CastablePrism extends Bounds {
  readonly body: "prism";
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly bottom: number;
  readonly tops: Float64Array;
  /** Outward from the side that begins at each corner. */
  readonly outX: Float64Array;
  readonly outY: Float64Array;
  readonly slopeX: number;
  readonly slopeY: number;
}

interface CastableCrown extends Bounds {
  readonly body: "crown";
  readonly x: number;
  readonly y: number;
  readonly middle: number;
  readonly across: number;
  readonly up: number;
}

/** A body as it stands over a level plane with cells; null where nothing of it is above the plane. */
export function castable(body: Body, cells: Cells, level: number): Castable | null {
  return body.body === "prism" ? castablePrism(body, cells, level) : castableCrown(body, cells, level);
}

function castablePrism(prism: Prism, { origin, cell }: Cells, level: number): CastablePrism | null {
  const above = prismAbove(prism, level);
  if (!above) return null;
  const { ring } = above;
  const x = Float64Array.from(ring, (corner) => (corner[0] - origin[0]) / cell - 0.5);
  const y = Float64Array.from(ring, (corner) => (corner[1] - origin[1]) / cell - 0.5);
  const tops = Float64Array.from(above.tops, (top) => (top - level) / cell);
  const next = (i: number) => (i + 1) % ring.length;
  return {
    body: "prism",
    x,
    y,
    bottom: (above.bottom - level) / cell,
    tops,
    outX: x.map((_, i) => y[next(i)]! - y[i]!),
    outY: x.map((_, i) => x[i]! - x[next(i)]!),
    slopeX: above.slope[0],
    slopeY: above.slope[1],
    minX: Math.min(...x),
    minY: Math.min(...y),
    maxX: Math.max(...x),
    maxY: Math.max(...y),
    top: Math.max(...tops),
  };
}

function castableCrown(crown: Crown, { origin, cell }: Cells, level: number): CastableCrown | null {
  const middle = (crown.middle - level) / cell;
  const [across, up] = [crown.across / cell, crown.up / cell];
  if (middle <= -up) return null;
  const x = (crown.at[0] - origin[0]) / cell - 0.5;
  const y = (crown.at[1] - origin[1]) / cell - 0.5;
  return {
    body: "crown",
    x,
    y,
    middle,
    across,
    up,
    minX: x - across,
    minY: y - across,
    maxX: x + across,
    maxY: y + across,
    top: middle + up,
  };
}

/** Casts shadows onto the cells of one plane. Holds the run of the shadow being cast in each row. */
export class Raster {
  readonly #columns: number;
  readonly #rows: number;
  readonly #words: number;
  readonly #left: Float64Array;
  readonly #right: Float64Array;
  /** Rows touched since they were last asked for; none while `firstRow` is above `lastRow`. */
  firstRow = 0;
  lastRow = -1;

  constructor(cells: Cells) {
    this.#columns = cells.columns;
    this.#rows = cells.rows;
    this.#words = wordsInRow(cells);
    this.#left = new Float64Array(cells.rows).fill(Infinity);
    this.#right = new Float64Array(cells.rows).fill(-Infinity);
    this.forgetRows();
  }

  forgetRows(): void {
    this.firstRow = this.#rows;
    this.lastRow = -1;
  }

  /** Whether the shadow of what stands within some bounds may fall on the cells: most of the day most do not. */
  isReached({ minX, minY, maxX, maxY, top }: Bounds, perX: number, perY: number): boolean {
    const farX = top * perX;
    const farY = top * perY;
    return (
      maxX + Math.max(farX, 0) >= 0 &&
      minX + Math.min(farX, 0) <= this.#columns - 1 &&
      maxY + Math.max(farY, 0) >= 0 &&
      minY + Math.min(farY, 0) <= this.#rows - 1
    );
  }

  /**
   * Sets the bits of the cells whose middles lie in a body's shadow.
   * @param perX, perY how far the shadow lies from under a point for each unit of its height
   */
  cast(body: Castable, perX: number, perY: number, mask: Mask): void {
    const farX = body.top * perX;
    const farY = body.top * perY;
    const minY = body.minY + Math.min(0, farY);
    const maxY = body.maxY + Math.max(0, farY);
    if (maxY < 0 || minY > this.#rows - 1) return;
    if (body.maxX + Math.max(0, farX) < 0 || body.minX + Math.min(0, farX) > this.#columns - 1) return;
    const first = Math.max(0, Math.ceil(minY));
    const last = Math.min(this.#rows - 1, Math.floor(maxY));
    if (first > last) return;
    if (body.body === "prism") this.#outlinePrism(body, perX, perY);
    else this.#outlineCrown(body, perX, perY, first, last);
    this.#fill(first, last, mask);
  }

  // The outline of the shadow is made of the edges between a side in the light and one that is not.
  #outlinePrism(body: CastablePrism, perX: number, perY: number): void {
    const { x, y, bottom, tops, outX, outY } = body;
    const topLit = body.slopeX * perX + body.slopeY * perY + 1 > 0;
    const count = x.length;
    const baseX = bottom * perX;
    const baseY = bottom * perY;
    let before = outX[count - 1]! * perX + outY[count - 1]! * perY < 0;
    for (let i = 0; i < count; i++) {
      const next = i + 1 === count ? 0 : i + 1;
      const lit = outX[i]! * perX + outY[i]! * perY < 0;
      const topX = x[i]! + tops[i]! * perX;
      const topY = y[i]! + tops[i]! * perY;
      if (lit !== before) this.#edge(x[i]! + baseX, y[i]! + baseY, topX, topY);
      if (lit) this.#edge(x[i]! + baseX, y[i]! + baseY, x[next]! + baseX, y[next]! + baseY);
      if (lit !== topLit)
        this.#edge(topX, topY, x[next]! + tops[next]! * perX, y[next]! + tops[next]! * perY);
      before = lit;
    }
  }

  #edge(fromX: number, fromY: number, toX: number, toY: number): void {
    if (fromY < toY) this.#slope(fromX, fromY, toX, toY);
    else this.#slope(toX, toY, fromX, fromY);
  }

  #slope(topX: number, topY: number, endX: number, endY: number): void {
    const left = this.#left;
    const right = this.#right;
    const first = topY > 0 ? Math.ceil(topY) : 0;
    const last = Math.min(this.#rows - 1, Math.floor(endY));
    if (first > last) return;
    const height = endY - topY;
    if (height < 1e-9) {
      left[first] = Math.min(left[first]!, topX, endX);
      right[first] = Math.max(right[first]!, topX, endX);
      return;
    }
    const step = (endX - topX) / height;
    for (let row = first, at = topX + (first - topY) * step; row <= last; row++, at += step) {
      if (at < left[row]!) left[row] = at;
      if (at > right[row]!) right[row] = at;
    }
  }

  /**
   * The shadow of an egg in each row: a run of the ellipse, see `shadow.ts`. Where the plane cuts the egg, only as far as
   * rays come deepest into it above the plane, and the cut itself.
   */
  #outlineCrown(body: CastableCrown, perX: number, perY: number, first: number, last: number): void {
    const { x, y, middle, across, up } = body;
    const acrossSquared = across * across;
    const cotSquared = perX * perX + perY * perY;
    // (px² + py²)/across² - (p·per)² up²/(across² (across² + up² cot²)) <= 1
    const squeeze = (up * up) / (acrossSquared * (acrossSquared + up * up * cotSquared));
    const a = 1 / acrossSquared - squeeze * perX * perX;
    const b = -squeeze * perX * perY;
    const c = 1 / acrossSquared - squeeze * perY * perY;
    const [centreX, centreY] = [x + middle * perX, y + middle * perY];
    const isCut = middle < up;
    for (let row = first; row <= last; row++) {
      const dy = row - centreY;
      const inside = b * b * dy * dy - a * (c * dy * dy - 1);
      if (inside >= 0) {
        const root = Math.sqrt(inside);
        const [from, to] = [centreX + (-b * dy - root) / a, centreX + (-b * dy + root) / a];
        if (isCut) this.#spanAbovePlane(body, perX, perY, row, from, to);
        else this.#span(row, from, to);
      }
      if (isCut) {
        const half = acrossSquared * (1 - (middle / up) ** 2) - (row - y) ** 2;
        if (half >= 0) this.#span(row, x - Math.sqrt(half), x + Math.sqrt(half));
      }
    }
  }

  #spanAbovePlane(
    { x, y, middle, across, up }: CastableCrown,
    perX: number,
    perY: number,
    row: number,
    from: number,
    to: number,
  ): void {
    // -(p - at) · per <= middle across² / up²
    const rest = (middle * across * across) / (up * up) + (row - y) * perY;
    if (perX === 0) {
      if (rest >= 0) this.#span(row, from, to);
      return;
    }
    const limit = x - rest / perX;
    const [low, high] = perX > 0 ? [Math.max(from, limit), to] : [from, Math.min(to, limit)];
    if (low <= high) this.#span(row, low, high);
  }

  #span(row: number, from: number, to: number): void {
    if (from < this.#left[row]!) this.#left[row] = from;
    if (to > this.#right[row]!) this.#right[row] = to;
  }

  #fill(first: number, last: number, mask: Mask): void {
    const left = this.#left;
    const right = this.#right;
    for (let row = first; row <= last; row++) {
      const from = Math.max(0, Math.ceil(left[row]!));
      const to = Math.min(this.#columns - 1, Math.floor(right[row]!));
      left[row] = Infinity;
      right[row] = -Infinity;
      if (from > to) continue;
      setBits(mask, row * this.#words, from, to);
      if (row < this.firstRow) this.firstRow = row;
      if (row > this.lastRow) this.lastRow = row;
    }
  }
}
