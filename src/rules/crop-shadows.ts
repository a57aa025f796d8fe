import { type Crop, cropById } from "../crops/crop-table.ts";
import { frameOf } from "../garden/frame.ts";
import type { Site } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import { intersection } from "../geometry/clip.ts";
import { convexHull } from "../geometry/convex.ts";
import { convexPieces } from "../geometry/convex-pieces.ts";
import { boundsOf } from "../geometry/ring.ts";
import type { Box, Point, Ring } from "../geometry/types.ts";
import { add, placed, scale, turned } from "../geometry/vector.ts";
import { groundArea } from "../planting/convex-cut.ts";
import { plantsOf } from "../planting/plants.ts";
import type { PlantedPatch } from "../planting/types.ts";
import { daysFrom } from "../planting/year-day.ts";
import { FOOT } from "../units/length.ts";
import { climbs, standsTall } from "./crop-support.ts";

/** Crops that stand together for less are no matter, days. */
const TOGETHER = 30;
/** Less difference in height is no matter, mm. */
const TALLER = FOOT;
/** Longest shadow reckoned with, times the height: that of a low sun far from the equator. */
const LONGEST = 4;

/** A planting that stands in a bed on the plan. */
export interface Grown {
  readonly bed: Bed;
  readonly patch: PlantedPatch;
  readonly row: Crop;
  /** Its ground on the plan. */
  readonly ground: readonly Ring[];
  readonly box: Box;
  /** Of its top and of the soil it stands in, above the ground, mm. */
  readonly top: number;
  readonly soil: number;
}

/** A low planting that wants full sun and that a taller one shades. */
export interface CropShadow {
  readonly tall: Grown;
  readonly low: Grown;
  /** Of the ground of the low one in shade at noon of the equinoxes, 0 to 1. */
  readonly share: number;
}

/**
 * How plantings shade those that want full sun by their own height, at noon of the equinoxes: then the sun stands as far below the zenith
 * as the place lies from the equator, and the shadow of so much height is its tangent, towards the pole. What climbs a trellis
 * is left to the sun hours where it shades another bed, for they reckon with the trellis.
 */
export function cropShadows(beds: readonly Bed[], site: Site): readonly CropShadow[] {
  const to = shadowOfOne(site);
  if (to[0] === 0 && to[1] === 0) return [];
  return beds.flatMap((bed) => beds.flatMap((other) => shadowsBetween(bed, other, site, to)));
}

interface Between {
  readonly site: Site;
  readonly shadows: readonly CropShadow[];
}

const between = new WeakMap<Bed, WeakMap<Bed, Between>>();

/** Shadows of what grows in one bed on what grows in another or the same; remembered by the two. */
function shadowsBetween(bed: Bed, other: Bed, site: Site, to: Point): readonly CropShadow[] {
  let ofBed = between.get(bed);
  if (!ofBed) {
    ofBed = new WeakMap();
    between.set(bed, ofBed);
  }
  const before = ofBed.get(other);
  if (before?.site === site) return before.shadows;
  const grown = grownIn(bed, site);
  const shadows =
    bed === other || reaches(bed, other, to, grown) ? shadowsOn(grown, grownIn(other, site), to) : [];
  ofBed.set(other, { site, shadows });
  return shadows;
}

/** The shadow that a millimetre of height throws at noon of the equinoxes, on the plan. */
function shadowOfOne({ latitude, north }: Site): Point {
  const length = Math.min(LONGEST, Math.tan((Math.min(89, Math.abs(latitude)) * Math.PI) / 180));
  // Up the plan is the pole of the northern hemisphere where north is up.
  return turned([0, latitude < 0 ? length : -length], north);
}

const remembered = new WeakMap<Bed, { readonly site: Site; readonly grown: readonly Grown[] }>();

function grownIn(bed: Bed, site: Site): readonly Grown[] {
  const before = remembered.get(bed);
  if (before?.site === site) return before.grown;
  const soil = (bed.legs ?? 0) + frameOf(bed).soilDepth;
  const grown = plantsOf(bed, site).flatMap((patch): Grown[] => {
    const row = cropById(patch.crop);
    if (!row || patch.count === 0) return [];
    const ground = patch.ground.map((ring) => ring.map((point) => placed(point, bed.at, bed.turn)));
    return [
      { bed, patch, row, ground, box: boundsOf(ground.flat()), top: soil + standsTall(row, bed), soil },
    ];
  });
  remembered.set(bed, { site, grown });
  return grown;
}

/** Whether the shadows of what grows in one bed may fall on another, by the boxes round them. */
function reaches(bed: Bed, other: Bed, to: Point, grown: readonly Grown[]): boolean {
  const most = Math.max(0, ...grown.map(({ top }) => top)) * Math.hypot(...to);
  const [a, b] = [boundsOf(outlineOf(bed)), boundsOf(outlineOf(other))];
  const apart = Math.hypot(
    Math.max(0, a.minX - b.maxX, b.minX - a.maxX),
    Math.max(0, a.minY - b.maxY, b.minY - a.maxY),
  );
  return apart < most;
}

const shadowsOn = (talls: readonly Grown[], lows: readonly Grown[], to: Point): CropShadow[] =>
  talls.flatMap((tall) =>
    lows
      .filter(
        (low) =>
          low.row.sun === "full" && low.top + TALLER <= tall.top && standTogether(tall.patch, low.patch),
      )
      .filter((low) => low.bed === tall.bed || tall.bed.trellis === null || !climbs(tall.row))
      .flatMap((low) => {
        const share = shadedShare(tall, low, scale(to, tall.top - low.top));
        return share > 0 ? [{ tall, low, share }] : [];
      }),
  );

function standTogether({ standing: a }: PlantedPatch, { standing: b }: PlantedPatch): boolean {
  const shared = (first: typeof a, second: typeof a) =>
    Math.min(second.days, Math.max(0, first.days - daysFrom(first.from, second.from)));
  return Math.max(shared(a, b), shared(b, a)) >= TOGETHER;
}

/** The ground swept from the tall crop to the end of its shadow, laid over that of the low one. */
function shadedShare(tall: Grown, low: Grown, by: Point): number {
  if (!meet(tall.box, low.box, by)) return 0;
  const swept = convexPieces(tall.ground).map((piece) =>
    convexHull([...piece, ...piece.map((point) => add(point, by))]),
  );
  return groundArea(intersection(swept, low.ground)) / groundArea(low.ground);
}

/** Whether a box swept along a shadow meets another. */
const meet = (a: Box, b: Box, [x, y]: Point): boolean =>
  a.minX + Math.min(0, x) < b.maxX &&
  a.maxX + Math.max(0, x) > b.minX &&
  a.minY + Math.min(0, y) < b.maxY &&
  a.maxY + Math.max(0, y) > b.minY;
