import type { Garden } from "../garden/garden.ts";
import type { Cover } from "../garden/kinds/ground.ts";
import { outlineOf } from "../garden/outline.ts";
import { contains } from "../geometry/ring.ts";
import type { Point } from "../geometry/types.ts";
import { pathStrip } from "./barriers.ts";
import type { Route, WayGround } from "./types.ts";

/** Ground that is firm and stable under wheels; bark, lawn and loose gravel are not (302.1, by common practice). */
const FIRM: ReadonlySet<Cover> = new Set(["paving", "firm-gravel", "deck", "roof"]);

interface GroundHere {
  readonly on: WayGround["on"];
  readonly cover: Cover;
  readonly slope: number;
  readonly falls: number;
}

/** The ground at a point: the front-most path or patch drawn there, else the yard at large. A path lies on the slope. */
export function groundAt({ items, site }: Pick<Garden, "items" | "site">, point: Point): GroundHere {
  const patch = items.findLast((item) => item.kind === "ground" && contains(outlineOf(item), point));
  const lie = patch?.kind === "ground" ? patch : site.ground;
  const drawn = items.findLast(
    (item) =>
      (item.kind === "ground" && contains(outlineOf(item), point)) ||
      (item.kind === "path" && pathStrip(item).some((ring) => contains(ring, point))),
  );
  const cover = drawn?.kind === "path" ? drawn.surface : drawn?.kind === "ground" ? drawn.cover : lie.cover;
  return { on: drawn?.id ?? null, cover, slope: lie.slope, falls: lie.falls };
}

/** How far apart places on a way are looked at, mm. */
const EVERY = 150;

/**
 * The ground along a way, leg by leg: for each path, patch or the yard at large where it is worst.
 * @param route its first point is the opening, which stands on the building's own ground and is left out
 */
export function groundAlong(garden: Pick<Garden, "items" | "site">, route: Route): WayGround[] {
  const worst = new Map<WayGround["on"], WayGround>();
  route.points.slice(1).forEach((to, i) => {
    const from = route.points[i]!;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (length === 0) return;
    const heading: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    for (let far = i === 0 ? length : Math.min(EVERY, length) / 2; far <= length; far += EVERY) {
      const at: Point = [from[0] + far * heading[0], from[1] + far * heading[1]];
      const { on, cover, slope, falls } = groundAt(garden, at);
      const downhill: Point = [Math.sin((falls * Math.PI) / 180), -Math.cos((falls * Math.PI) / 180)];
      const found: WayGround = {
        bed: route.to,
        on,
        at,
        firm: FIRM.has(cover),
        along: slope * Math.abs(heading[0] * downhill[0] + heading[1] * downhill[1]),
        across: slope * Math.abs(heading[0] * downhill[1] - heading[1] * downhill[0]),
        route,
      };
      const before = worst.get(on);
      // Short arcs round corners point every way: the slope along and the slope across are kept apart.
      worst.set(on, before ? steeper(before, found) : found);
    }
  });
  return [...worst.values()];
}

const steeper = (a: WayGround, b: WayGround): WayGround => ({
  ...(b.along > a.along ? b : a),
  along: Math.max(a.along, b.along),
  across: Math.max(a.across, b.across),
});
