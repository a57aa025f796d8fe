import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Limits } from "../garden/limits.ts";
import { contains } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance, midpoint } from "../geometry/vector.ts";
import { FOOT } from "../units/length.ts";
import { deadEnds } from "./dead-ends.ts";
import { halfTurnsRound } from "./half-turns.ts";
import { keptOff } from "./kept-off.ts";
import { once } from "./once.ts";
import { pinchRun } from "./pinch-run.ts";
import { walksFrom } from "./routes.ts";
import { surroundingsOf } from "./surroundings.ts";
import { turningSpaces } from "./turning-spaces.ts";
import type { Gap, Route, WheelchairAccess } from "./types.ts";
import { groundAlong } from "./way-ground.ts";
import type { Ways } from "./ways.ts";
import type { WaysMesh } from "./ways-mesh.ts";
import { passingPasses, passingTeeOf, pinchPasses } from "./wheelchair-standards.ts";
import { crossings, teeAt } from "./wheelchair-tee.ts";
import { waysWithPinches } from "./wheelchair-way.ts";

/** What the wheelchair rules look at; see `types.ts` for each, and `wheelchair-standards.ts` for the arithmetic. */
export function wheelchairAccess(garden: Garden, ways: Ways, limits: Limits): WheelchairAccess {
  const beds = garden.items.filter((item) => item.kind === "bed");
  const spaces = turningSpaces(garden, ways, limits);
  const walks = walksFrom(ways.entrances, garden, limits.wheelchairPinch);
  const routes = beds.flatMap((bed) => walks.walkTo(bed) ?? []);
  return {
    turningAt: beds.map((bed) => ({ bed: bed.id, space: spaces.at(bed) })),
    deadEnds: deadEnds(ways, limits).map((at) => ({ at, space: spaces.near(at) })),
    halfTurns: beds.flatMap((bed) => halfTurnsRound(bed, garden, limits.turnElement, limits.wheelchairWay)),
    pinches: pinchesOn(beds, garden, ways, limits),
    ground: routes.flatMap((route) => groundAlong(garden, route)),
    passing: passingOn(routes, garden, ways, limits),
  };
}

/** On a way that keeps the rule for pinches if there is one, on the widest otherwise. */
function pinchesOn(
  beds: readonly Bed[],
  garden: Garden,
  ways: Ways,
  limits: Limits,
): WheelchairAccess["pinches"] {
  const rings = [garden.yard, ...surroundingsOf(garden).obstacles.map(({ ring }) => ring)];
  const kept = once(() => waysWithPinches(ways, rings, limits));
  return beds.flatMap((bed) => {
    const widest = pinchesOf(bed, rings, ways, limits);
    if (widest.every((pinch) => pinchPasses({ ...pinch, width: pinch.gap.width }, limits))) return widest;
    return kept()(bed.id)?.map(({ gap, run, toNext }) => ({ bed: bed.id, gap, run, toNext })) ?? widest;
  });
}

function pinchesOf(
  bed: Bed,
  rings: readonly Ring[],
  ways: Ways,
  limits: Limits,
): WheelchairAccess["pinches"] {
  const gaps = ways.pinchesTo(bed.id, limits.wheelchairWay);
  const runs = gaps.map((gap) => pinchRun(gap, rings, limits.wheelchairWay));
  return gaps.map((gap, i) => {
    const next = gaps[i + 1];
    const toNext = next
      ? Math.max(0, distance(middleOf(gap), middleOf(next)) - (runs[i]! + runs[i + 1]!) / 2)
      : null;
    return { bed: bed.id, gap, run: runs[i]!, toNext };
  });
}

const middleOf = ({ from, to }: Gap): Point => midpoint(from, to);

/** The longest run on each route without a place to pass. Where circles alone leave it too long, ways that meet count too. */
function passingOn(
  routes: readonly Route[],
  garden: Garden,
  ways: Ways,
  limits: Limits,
): WheelchairAccess["passing"] {
  const tees = once(() => passingTees(garden, ways, limits));
  return routes.map((route) => {
    const found = longestRun(route, ways.mesh, limits.passingSpace, []);
    const isTooLong = !passingPasses({ width: 0, length: found.run }, limits);
    return {
      bed: route.to,
      ...(isTooLong ? longestRun(route, ways.mesh, limits.passingSpace, tees()) : found),
    };
  });
}

/** The ground of all places where two ways meet and go on far enough for one wheelchair to wait. */
function passingTees(garden: Garden, ways: Ways, limits: Limits): Ring[] {
  const tee = passingTeeOf(garden.gardener.edition);
  if (!tee) return [];
  const rings = surroundingsOf(garden).obstacles.map(({ ring }) => ring);
  const ground = { yard: garden.yard, off: keptOff(garden.yard, rings, 0), rings };
  const found = crossings(ways, limits, tee, limits.passingSpace).map((at) => teeAt(ground, at, tee));
  return found.flatMap((space) => (space ? [space.outline] : []));
}

/** The longest piece of a route on which two wheelchairs cannot pass each other, and where it ends. */
function longestRun(
  { points }: Route,
  { radii, centres }: WaysMesh,
  passing: number,
  tees: readonly Ring[],
): { run: number; at: Point } {
  const roomy = [...radii.keys()].filter((t) => 2 * radii[t]! >= passing);
  const canPass = ([x, y]: Point) =>
    roomy.some((t) => Math.hypot(centres[2 * t]! - x, centres[2 * t + 1]! - y) <= radii[t]!) ||
    tees.some((outline) => contains(outline, [x, y]));
  let [run, longest, at] = [0, 0, points[0]!];
  points.slice(1).forEach((to, i) => {
    const from = points[i]!;
    const length = distance(from, to);
    const parts = Math.max(1, Math.ceil(length / FOOT));
    for (let part = 1; part <= parts; part++) {
      const share = part / parts;
      const point: Point = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
      run = canPass(point) ? 0 : run + length / parts;
      if (run > longest) [longest, at] = [run, point];
    }
  });
  return { run: longest, at };
}
