import { frameOf } from "../../src/garden/frame.ts";
import {
  type Garden,
  type Item,
  type ItemOf,
  outlineOf,
  type Point,
  type Ring,
  unplaced,
} from "../../src/index.ts";
import { castersOf } from "../../src/sun/casters.ts";
import { sunPosition } from "../../src/sun/sun-position.ts";

/**
 * The naive way to sun hours: from a spot a ray to the sun for each minute, followed through every thing in the yard. It
 * knows nothing of convex pieces, planes and masks: buildings and beds are tested by their outlines and by the height of
 * their roof over each place, crowns by solving the ellipsoid's equation.
 */

/** Direction to the sun on the plan, for each mm the ray rises. */
export interface Ray {
  readonly dx: number;
  readonly dy: number;
}

/** The time of year: 1 for January, and whether most trees are in leaf. */
interface Season {
  readonly month: number;
  readonly inLeaf: boolean;
}

/** What of the light one thing lets through to a spot. */
type Test = (x: number, y: number, z: number, ray: Ray, season: Season) => number;

export interface Tested {
  readonly id: Item["id"];
  readonly test: Test;
}

/** A test for each thing that throws a shadow. */
export const raysOf = (items: readonly Item[]): Tested[] =>
  items.flatMap((item) => {
    const test = testOf(item);
    return test ? [{ id: item.id, test }] : [];
  });

function testOf(item: Item): Test | null {
  switch (item.kind) {
    case "house":
    case "shed":
      return buildingTest(item);
    case "bed":
      return bedTest(item);
    case "tree":
      return treeTest(item);
    case "wall":
      return ringsTest(barrierRings(item), 0, item.height, 0);
    case "fence":
      return ringsTest(barrierRings(item), 0, item.height, item.open);
    default:
      return null;
  }
}

/** Heights above the spot's level at which a ray enters and leaves a ring, in turn; from 0 where it starts inside. */
function passages(ring: Ring, x: number, y: number, { dx, dy }: Ray): number[] {
  const at: number[] = [];
  let inside = false;
  let [bx, by] = ring[ring.length - 1]!;
  for (const [ax, ay] of ring) {
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
    // Which side of the ray's line each end lies on.
    const sideA = (ax - x) * dy - (ay - y) * dx;
    const sideB = (bx - x) * dy - (by - y) * dx;
    if (sideA > 0 !== sideB > 0) {
      const share = sideA / (sideA - sideB);
      const [cx, cy] = [ax + share * (bx - ax), ay + share * (by - ay)];
      const t = Math.abs(dx) > Math.abs(dy) ? (cx - x) / dx : (cy - y) / dy;
      if (t > 0) at.push(t);
    }
    [bx, by] = [ax, ay];
  }
  at.sort((a, b) => a - b);
  return inside ? [0, ...at] : at;
}

/** A ring laid out for speed: x and y of each corner in turn. */
type Flat = Float64Array;
const flat = (ring: Ring): Flat => Float64Array.from(ring.flat());

/** Whether a ray from a spot passes through what stands on a ring between two heights. */
function hitsRing(
  ring: Flat,
  bottom: number,
  top: number,
  x: number,
  y: number,
  z: number,
  ray: Ray,
): boolean {
  if (top <= z) return false;
  const { dx, dy } = ray;
  const steep = Math.abs(dx) < Math.abs(dy);
  // A ray that is inside somewhere between the heights is so from the lower one on, or comes in later.
  const from = Math.max(0, bottom - z);
  let inside = false;
  const [startX, startY] = [x + from * dx, y + from * dy];
  let bx = ring[ring.length - 2]!;
  let by = ring[ring.length - 1]!;
  for (let i = 0; i < ring.length; i += 2) {
    const ax = ring[i]!;
    const ay = ring[i + 1]!;
    if (ay > startY !== by > startY && startX < ((bx - ax) * (startY - ay)) / (by - ay) + ax)
      inside = !inside;
    const sideA = (ax - x) * dy - (ay - y) * dx;
    const sideB = (bx - x) * dy - (by - y) * dx;
    if (sideA > 0 !== sideB > 0) {
      const share = sideA / (sideA - sideB);
      const t = steep ? (ay + share * (by - ay) - y) / dy : (ax + share * (bx - ax) - x) / dx;
      if (t > from && z + t < top) return true;
    }
    bx = ax;
    by = ay;
  }
  return inside;
}

function ringsTest(rings: readonly Ring[], bottom: number, top: number, light: number): Test {
  const laid = rings.map(flat);
  return (x, y, z, ray) => {
    for (const ring of laid) if (hitsRing(ring, bottom, top, x, y, z, ray)) return light;
    return 1;
  };
}

/** The strips of a wall or fence are those of the product: how they close at bends is its own decision. */
const barrierRings = (item: ItemOf<"wall" | "fence">): Ring[] =>
  castersOf([item]).flatMap(({ parts }) =>
    parts.flatMap(({ bodies }) => bodies.flatMap((body) => (body.body === "prism" ? [body.ring] : []))),
  );

function buildingTest(item: ItemOf<"house" | "shed">): Test {
  const ring = outlineOf(item);
  const { height, roof, roofRise, roofFalls } = item;
  if (roof === "flat") return ringsTest([ring], 0, height, 0);
  const own = ring.map((corner) => unplaced(corner, item.at, item.turn));
  const axis = roofFalls === "up" || roofFalls === "down" ? 1 : 0;
  const [low, high] = [Math.min(...own.map((at) => at[axis])), Math.max(...own.map((at) => at[axis]))];
  const middle = (low + high) / 2;
  /** Height of the roof over a place so far along the way it falls, in the building's own frame. */
  const roofAt = (place: number): number => {
    const share = (place - low) / (high - low);
    if (roof === "gabled") return height + roofRise * (1 - Math.abs(2 * share - 1));
    return height + roofRise * (roofFalls === "down" || roofFalls === "right" ? 1 - share : share);
  };
  const alongOf = (x: number, y: number) => unplaced([x, y], item.at, item.turn)[axis];
  const [offset, alongX, alongY] = [
    alongOf(0, 0),
    alongOf(1, 0) - alongOf(0, 0),
    alongOf(0, 1) - alongOf(0, 0),
  ];
  return (x, y, z, ray) => {
    if (z >= height + roofRise) return 1;
    const start = offset + alongX * x + alongY * y;
    const step = alongX * ray.dx + alongY * ray.dy;
    const isUnder = (t: number) => roofAt(start + t * step) > z + t;
    const ridge = (middle - start) / step;
    const through = passages(ring, x, y, ray);
    for (let i = 0; i + 1 < through.length; i += 2) {
      const [from, to] = [through[i]!, through[i + 1]!];
      // A roof less a straight line is highest at an end or under the ridge.
      if (isUnder(from) || isUnder(to) || (ridge > from && ridge < to && isUnder(ridge))) return 0;
    }
    return 1;
  };
}

function bedTest(bed: ItemOf<"bed">): Test {
  const { outside, rim, soilDepth } = frameOf(bed);
  const legs = bed.legs ?? 0;
  const box = ringsTest([outside], legs, rim, 0);
  if (bed.trellis === null) return box;
  // A foot thick along the middle of the longer side, letting three tenths through: as the product says of itself.
  const own = outside.map((corner) => unplaced(corner, bed.at, bed.turn));
  const [xs, ys] = [own.map(([x]) => x), own.map(([, y]) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const upright = bottom - top >= right - left;
  const [cx, cy] = [(left + right) / 2, (top + bottom) / 2];
  const screen: Ring = upright
    ? [
        [cx - 150, top],
        [cx + 150, top],
        [cx + 150, bottom],
        [cx - 150, bottom],
      ]
    : [
        [left, cy - 150],
        [right, cy - 150],
        [right, cy + 150],
        [left, cy + 150],
      ];
  const soil = legs + soilDepth;
  const laid = flat(screen);
  return (x, y, z, ray, season) => {
    const rest = box(x, y, z, ray, season);
    if (rest === 0) return 0;
    const [ownX, ownY] = unplaced([x, y], bed.at, bed.turn);
    const [dx, dy] = unplaced([ray.dx, ray.dy], [0, 0], bed.turn);
    return hitsRing(laid, soil, soil + bed.trellis!, ownX, ownY, z, { dx, dy }) ? 0.3 : 1;
  };
}

function treeTest(tree: ItemOf<"tree">): Test {
  const base = Math.min(tree.crownBase, tree.height);
  const [middle, up, across] = [(base + tree.height) / 2, (tree.height - base) / 2, tree.canopy / 2];
  const [atX, atY] = tree.at;
  const trunk = Array.from({ length: 8 }, (_, i): Point => {
    const angle = (i * Math.PI) / 4;
    return [atX + (tree.trunk / 2) * Math.cos(angle), atY + (tree.trunk / 2) * Math.sin(angle)];
  });
  const laid = flat(trunk);
  return (x, y, z, ray, season) => {
    if (hitsRing(laid, 0, middle, x, y, z, ray)) return 0;
    // |(p + t d - c) / axes|² = 1
    const a = (ray.dx ** 2 + ray.dy ** 2) / across ** 2 + 1 / up ** 2;
    const b = ((x - atX) * ray.dx + (y - atY) * ray.dy) / across ** 2 + (z - middle) / up ** 2;
    const c = ((x - atX) ** 2 + (y - atY) ** 2) / across ** 2 + ((z - middle) / up) ** 2 - 1;
    const inside = b * b - a * c;
    if (inside < 0 || -b + Math.sqrt(inside) < 0) return 1;
    return tree.leaf === "evergreen" || isInLeaf(tree, season) ? tree.lightInLeaf : tree.lightBare;
  };
}

function isInLeaf({ inLeaf }: ItemOf<"tree">, season: Season): boolean {
  if (!inLeaf) return season.inLeaf;
  const { from, to } = inLeaf;
  return from <= to ? season.month >= from && season.month <= to : season.month >= from || season.month <= to;
}

export interface Look {
  readonly ray: Ray;
  readonly season: Season;
}

/** Height of the skyline in a direction: each side of it in turn, the last through north. */
function horizonAt(skyline: Garden["site"]["skyline"], azimuth: number): number {
  const points = skyline.toSorted((a, b) => a.azimuth - b.azimuth);
  for (const [i, from] of points.entries()) {
    const to = points[(i + 1) % points.length]!;
    const span = i + 1 < points.length ? to.azimuth - from.azimuth : to.azimuth + 360 - from.azimuth;
    const past = (azimuth - from.azimuth + 360) % 360;
    if (past < span) return from.altitude + (past / span) * (to.altitude - from.altitude);
  }
  return 0;
}

/** Every look at the sun over some days, a step of minutes apart. */
export function looksOf(garden: Garden, days: readonly string[], step: number): Look[] {
  const { latitude, longitude, north, skyline } = garden.site;
  const leaf = latitude < 0 ? [11, 12, 1, 2, 3, 4] : [5, 6, 7, 8, 9, 10];
  return days.flatMap((day) => {
    const start = Date.parse(`${day}T00:00:00Z`) - longitude * 240_000;
    return Array.from({ length: 1440 / step }, (_, i) => start + (i + 0.5) * step * 60_000).flatMap((ms) => {
      const { altitude, azimuth } = sunPosition(new Date(ms), latitude, longitude);
      if (altitude <= 0 || altitude <= horizonAt(skyline, azimuth)) return [];
      const month = Number(day.slice(5, 7));
      const bearing = ((azimuth + north) * Math.PI) / 180;
      const level = 1 / Math.tan((altitude * Math.PI) / 180);
      return {
        ray: { dx: level * Math.sin(bearing), dy: -level * Math.cos(bearing) },
        season: { month, inLeaf: leaf.includes(month) },
      };
    });
  });
}

/** Minutes of light at a spot over all looks, each worth a step. */
export function minutesAt(
  tests: readonly Tested[],
  looks: readonly Look[],
  step: number,
  [x, y]: Point,
  z: number,
): number {
  let sum = 0;
  for (const { ray, season } of looks) {
    let light = 1;
    for (const { test } of tests) {
      light *= test(x, y, z, ray, season);
      if (light === 0) break;
    }
    sum += light;
  }
  return sum * step;
}
