import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { convexHull } from "../geometry/convex.ts";
import { ROUND_CHORDS } from "../geometry/shape.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { castersOf } from "./casters.ts";
import { leafMonths } from "./leaf.ts";
import { lightOf } from "./plane.ts";
import { skylineAt } from "./skyline.ts";
import { type Body, type Crown, type Prism, prismAbove } from "./solid.ts";
import { sunPosition } from "./sun-position.ts";
import { shadowPerHeight } from "./sunward.ts";

/** The shadow of a part of a thing on the level ground. */
export interface Shadow {
  readonly id: ItemId;
  /** Share of direct light that still falls in it, 0 for a solid thing. */
  readonly light: number;
  /** Convex outlines, clockwise, that may overlap; the ground under the thing belongs to its shadow. */
  readonly rings: readonly Ring[];
}

/**
 * The shadows on the ground at an instant, in the order of the things that throw them; none by night and while the sun is
 * behind the skyline.
 *
 * Straight from the sun's middle, without air: no half-shadow at the edges, and a level yard.
 * @param months in leaf, 1 for January, of trees that do not say; those of the hemisphere unless given
 */
export function shadowsAt(
  { items, site }: Pick<Garden, "items" | "site">,
  at: Date,
  months: readonly number[] = leafMonths(site.latitude),
): Shadow[] {
  const sun = sunPosition(at, site.latitude, site.longitude);
  if (sun.altitude <= 0 || sun.altitude <= skylineAt(site.skyline, sun.azimuth)) return [];
  const perHeight = shadowPerHeight(sun, site.north);
  const local = new Date(at.getTime() + site.longitude * 240_000);
  const month = local.getUTCMonth() + 1;
  const time = { month, inLeaf: months.includes(month) };
  return castersOf(items).flatMap(({ id, parts }) =>
    parts.map((part) => ({
      id,
      light: lightOf(part, time),
      rings: part.bodies.map((body) => shadowOf(body, perHeight, 0)).filter((ring) => ring !== null),
    })),
  );
}

/**
 * The shadow of a body on a level plane.
 * @param perHeight how far the shadow lies from under a point for each mm of height above the plane
 * @param level height of the plane above the ground, mm; what of the body lies below throws no shadow on it
 * @returns a convex clockwise ring, or null where nothing of the body stands above the plane
 */
export function shadowOf(body: Body, perHeight: Point, level: number): Ring | null {
  return body.body === "prism" ? prismShadow(body, perHeight, level) : crownShadow(body, perHeight, level);
}

function prismShadow(prism: Prism, perHeight: Point, level: number): Ring | null {
  const above = prismAbove(prism, level);
  if (!above) return null;
  return convexHull([
    ...above.ring.map((corner) => cast(corner, above.bottom - level, perHeight)),
    ...above.ring.map((corner, i) => cast(corner, above.tops[i]! - level, perHeight)),
  ]);
}

const cast = ([x, y]: Point, height: number, [perX, perY]: Point): Point => [
  x + height * perX,
  y + height * perY,
];

/**
 * The shadow of an egg is an ellipse about the shadow of its middle, as wide as the egg across the light, and
 * sqrt(across² + up² cot² altitude) long to either side along it. Where the plane cuts the egg, the shadow is that of the
 * line round the egg where light grazes it, as far as it lies above the plane, and the cut itself.
 */
function crownShadow({ at, middle, across, up }: Crown, perHeight: Point, level: number): Ring | null {
  const height = middle - level;
  if (height <= -up) return null;
  const cot = Math.hypot(...perHeight);
  const along: Point = cot === 0 ? [1, 0] : [perHeight[0] / cot, perHeight[1] / cot];
  const half = Math.hypot(across, up * cot);
  const centre = cast(at, height, perHeight);
  const points = circle().map(
    ([c, s]): Point => [
      centre[0] + half * c * along[0] - across * s * along[1],
      centre[1] + half * c * along[1] + across * s * along[0],
    ],
  );
  if (height >= up) return convexHull(points);
  // The ray up from p comes deepest into the egg at the plane or above it where (p - at) · ray <= height across² / up²; on
  // the outline that is where it grazes it.
  const grazedAbove = points.filter(
    ([x, y]) =>
      -((x - at[0]) * perHeight[0] + (y - at[1]) * perHeight[1]) <= (height * across ** 2) / up ** 2,
  );
  const cut = across * Math.sqrt(1 - (height / up) ** 2);
  const section = circle().map(([c, s]): Point => [at[0] + cut * c, at[1] + cut * s]);
  return convexHull([...grazedAbove, ...section]);
}

const circle = (): Point[] =>
  Array.from({ length: ROUND_CHORDS }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / ROUND_CHORDS;
    return [Math.cos(angle), Math.sin(angle)];
  });
