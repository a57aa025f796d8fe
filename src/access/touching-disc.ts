import type { Boundary } from "./boundary.ts";

/** Below this far apart, as unit vectors, two outlines that are touched lie in one line. */
const IN_LINE = 1e-3;
/** Newton steps until the disc touches all three; each doubles the digits, so five are plenty. */
const NEWTON_STEPS = 5;
/** Nearer than this to where the last step was, nothing is gained any more, mm. */
const SETTLED = 1e-4;

/** Where the last call of `touching` ended: written in place, for it is asked for every triangle that may be narrow. */
const found = { x: 0, y: 0, radius: 0 };
/** Feet on the three outlines: x, y and how far each is, in turn. */
const feet = new Float64Array(9);

/**
 * From a first place on to where the outlines about three samples are as far as each other.
 *
 * Newton's method; where two of the three lie in one line no disc is the one that touches all, and the one that is found
 * stands midway between the two outlines there are. So it does where two of the samples are the same.
 *
 * @returns a value that the next call overwrites
 */
export function touching(
  boundary: Boundary,
  a: number,
  b: number,
  c: number,
  start: Readonly<{ x: number; y: number }>,
): Readonly<{ x: number; y: number; radius: number }> {
  let { x, y } = start;
  for (let i = 0; ; i++) {
    footOn(boundary, a, x, y, 0);
    footOn(boundary, b, x, y, 3);
    footOn(boundary, c, x, y, 6);
    if (i === NEWTON_STEPS || !step(x, y)) break;
    const [dx, dy] = [move.x, move.y];
    // Far from where it began the pieces no longer speak for their outlines.
    if (Math.hypot(x + dx - start.x, y + dy - start.y) > boundary.step) break;
    x += dx;
    y += dy;
    if (Math.abs(dx) + Math.abs(dy) < SETTLED) break;
  }
  found.x = x;
  found.y = y;
  found.radius = Math.min(feet[2]!, feet[5]!, feet[8]!);
  return found;
}

const move = { x: 0, y: 0 };

/** The step towards equal distances from the three feet, each outline taken as straight there; false for none. */
function step(x: number, y: number): boolean {
  const [aFar, bFar, cFar] = [feet[2]!, feet[5]!, feet[8]!];
  if (aFar === 0 || bFar === 0 || cFar === 0) return false;
  const [ax, ay] = [(x - feet[0]!) / aFar, (y - feet[1]!) / aFar];
  const [ux, uy, u] = [ax - (x - feet[3]!) / bFar, ay - (y - feet[4]!) / bFar, bFar - aFar];
  const [vx, vy, v] = [ax - (x - feet[6]!) / cFar, ay - (y - feet[7]!) / cFar, cFar - aFar];
  const [uu, vv] = [ux * ux + uy * uy, vx * vx + vy * vy];
  const determinant = ux * vy - uy * vx;
  if (determinant * determinant > IN_LINE * IN_LINE * uu * vv && Math.min(uu, vv) > IN_LINE * IN_LINE) {
    move.x = (u * vy - v * uy) / determinant;
    move.y = (ux * v - vx * u) / determinant;
    return true;
  }
  // Two outlines in one line, or facing a third: straight to midway between those that face each other most.
  const [nx, ny, n, square] = uu > vv ? [ux, uy, u, uu] : [vx, vy, v, vv];
  if (square < IN_LINE * IN_LINE) return false;
  move.x = (nx * n) / square;
  move.y = (ny * n) / square;
  return true;
}

function footOn(
  { coords, previous, next }: Boundary,
  sample: number,
  x: number,
  y: number,
  slot: number,
): void {
  const [px, py] = [coords[2 * sample]!, coords[2 * sample + 1]!];
  feet[slot] = px;
  feet[slot + 1] = py;
  feet[slot + 2] = (x - px) * (x - px) + (y - py) * (y - py);
  footOnSide(px, py, coords, previous[sample]!, x, y, slot);
  footOnSide(px, py, coords, next[sample]!, x, y, slot);
  feet[slot + 2] = Math.sqrt(feet[slot + 2]!);
}

function footOnSide(
  px: number,
  py: number,
  coords: Float64Array,
  other: number,
  x: number,
  y: number,
  slot: number,
): void {
  const ux = coords[2 * other]! - px;
  const uy = coords[2 * other + 1]! - py;
  const square = ux * ux + uy * uy;
  const along = (x - px) * ux + (y - py) * uy;
  if (along <= 0 || square === 0) return;
  const t = Math.min(1, along / square);
  const [fx, fy] = [px + t * ux, py + t * uy];
  const far = (x - fx) * (x - fx) + (y - fy) * (y - fy);
  if (far >= feet[slot + 2]!) return;
  feet[slot] = fx;
  feet[slot + 1] = fy;
  feet[slot + 2] = far;
}
