import { access } from "../access/access.ts";
import type { Access } from "../access/types.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { boundsOf } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import type { Snag } from "../rules/rule.ts";
import { type Curves, curvesOf, PLACE_RULES, withoutRule } from "./shift-curves.ts";
import { type ShiftGround, shiftGround } from "./shift-ground.ts";
import { type Belt, placesOn, slidesOn } from "./shift-places.ts";
import { routeCurves } from "./shift-routes.ts";
import { type Failed, shortened } from "./shift-shorter.ts";
import { type Trial, trialOf } from "./shift-trial.ts";

/** One move over the plan that puts some beds in order. */
export interface Shift {
  /** All of them by as much, [dx, dy] in mm. */
  readonly by: Point;
  /** Keys of the snags it clears. */
  readonly clears: readonly string[];
}

/** What stands in the way of every shift. */
export interface InTheWay {
  readonly rule: string;
  readonly title: string;
}

export type ShiftSearch =
  | { readonly found: "shift"; readonly shift: Shift }
  | { readonly found: "nothing to clear" }
  | {
      readonly found: "no shift";
      readonly inTheWay: InTheWay;
      /**
       * True where it is certain that there is none: nowhere in the yard is a place that is free, off what is kept
       * clear, and a joint or a path away from everything. False where there are such places, but at all that were
       * looked at something else is wrong: ways, routes or reach, which change from place to place.
       */
      readonly proven: boolean;
    };

/**
 * The smallest shift of some beds and sheds, all by as much, that clears every must-fix and should-fix snag of position
 * they have (`position-rules.ts` lists those) and makes no new one of any rule, to them or to anything else.
 *
 * @param ids as a rule one bed; several are moved together
 * @param known ways of this very garden, where the caller has them already
 * @returns null where there is nothing to clear, and where no shift does it: `whyNoShift` tells the two apart
 * @throws RangeError for an id of nothing in the garden, or of what is neither a bed nor a shed
 */
export function shiftToClear(garden: Garden, ids: readonly string[], known?: Access): Shift | null {
  const search = searchShift(garden, ids, known);
  return search.found === "shift" ? search.shift : null;
}

/** What is in the way of every shift, where beds have snags that none clears; null where one does or none is needed. */
export function whyNoShift(garden: Garden, ids: readonly string[], known?: Access): InTheWay | null {
  const search = searchShift(garden, ids, known);
  return search.found === "no shift" ? search.inTheWay : null;
}

/** `shiftToClear` and `whyNoShift` at once. */
export function searchShift(
  garden: Garden,
  ids: readonly string[],
  known: Access = access(garden),
): ShiftSearch {
  const shifted = new Set(ids.map((id) => movableId(garden, id)));
  const trial = trialOf(garden, shifted, known);
  const { toClear } = trial;
  if (toClear.length === 0) return { found: "nothing to clear" };
  const between = toClear.find((snag) => isBetween(snag, shifted));
  if (between) return { found: "no shift", inTheWay: wayOf(between), proven: true };
  const found = nearestSound(garden, shifted, trial);
  if ("inTheWay" in found)
    return { found: "no shift", inTheWay: wayOf(found.inTheWay), proven: found.proven };
  return { found: "shift", shift: { by: found.by, clears: toClear.map(({ key }) => key) } };
}

function movableId({ items }: Garden, id: string): ItemId {
  const item = items.find((candidate) => candidate.id === id);
  if (!item) throw new RangeError(`nothing in this garden is called "${id}"`);
  if (item.kind !== "bed" && item.kind !== "shed")
    throw new RangeError(`"${id}" is neither a bed nor a shed, and is not shifted`);
  return item.id;
}

/** Moved by as much, two beds stay as far from each other as they are. */
const isBetween = ({ rule, itemIds }: Snag, shifted: ReadonlySet<ItemId>): boolean =>
  (rule === "narrow-path" || rule === "overlapping") &&
  itemIds.length > 1 &&
  itemIds.every((id) => shifted.has(id));

const wayOf = ({ rule, title }: Snag): InTheWay => ({ rule, title });

type Found = { readonly by: Point } | { readonly inTheWay: Snag; readonly proven: boolean };

/** Most shifts are small, and the wider the search, the more there is to look at: it goes out by and by, mm. */
const RADII = [300, 600, 1000, 1500, 2250, 3400, 5000, 7500, 11_000];
/** So many shifts that stand well are tried before the search gives up; looking at ways and routes takes longest. */
const MOST_TRIED = 600;
const MOST_WAYS = 200;

const isSpent = (failed: readonly Failed[]): boolean =>
  failed.length >= MOST_TRIED ||
  failed.filter(({ why }) => why === "ways" || why === "closed").length >= MOST_WAYS;

function nearestSound(garden: Garden, ids: ReadonlySet<ItemId>, trial: Trial): Found {
  const most = farthestShift(garden, ids);
  const failed: Failed[] = [];
  const seen: Reach["seen"] = { nearest: null };
  let inner = 0;
  for (const far of [...RADII.filter((radius) => radius < most), most]) {
    const by = nearestWithin(garden, ids, trial, { inner, far, failed, seen });
    if (by) return { by: shortened(garden, ids, trial, { found: by, failed }) };
    if (isSpent(failed)) break;
    inner = far;
  }
  if (seen.nearest) {
    const inTheWay = commonest(trial, failed) ?? trial.at(seen.nearest).wrongPlace();
    return { inTheWay: inTheWay ?? farthestOff(trial.toClear), proven: false };
  }
  return { inTheWay: limitInTheWay(garden, ids, trial, most) ?? farthestOff(trial.toClear), proven: true };
}

/** Where there is no place to stand at all: the snag that takes the longest way to be clear of. */
function farthestOff(snags: readonly Snag[]): Snag {
  const off = ({ measured, limit, unit }: Snag) => (unit === "mm" ? Math.abs(measured - limit) : 0);
  return snags.toSorted((a, b) => off(b) - off(a))[0]!;
}

interface Reach extends Belt {
  readonly failed: Failed[];
  /** The nearest shift that stands well as far as one can tell from the shift alone; null as long as none was met. */
  readonly seen: { nearest: Point | null };
}

const ROUTE_RULES: ReadonlySet<string> = new Set(["long-walk", "long-hose"]);
/** Where the routes turn elsewhere after a shift, it is looked at anew from there; so often. */
const MOST_TURNS = 3;

function nearestWithin(garden: Garden, ids: ReadonlySet<ItemId>, trial: Trial, reach: Reach): Point | null {
  const { far, failed } = reach;
  let curves = curvesOf(garden, ids, far);
  const ground = shiftGround(curves);
  if (trial.toClear.some(({ rule }) => ROUTE_RULES.has(rule)))
    curves = withRoutes(curves, garden, ids, trial, [0, 0]);
  for (let turns = 0; turns <= MOST_TURNS; turns++) {
    const tried = failed.length;
    const straight = firstSound(placesOn(curves, ground, reach), trial, reach);
    const by = slidShorter(straight, tried, { curves, ground }, trial, reach);
    if (by || isSpent(failed)) return by;
    const long = failed.slice(tried).find(({ snag }) => snag && ROUTE_RULES.has(snag.rule));
    if (!long) return null;
    curves = withRoutes(curves, garden, ids, trial, long.by);
  }
  return null;
}

/** Where soil was out of reach after a shift that lays the bed against something, it may not be a little along it. */
function slidShorter(
  found: Point | null,
  since: number,
  { curves, ground }: { readonly curves: Curves; readonly ground: ShiftGround },
  trial: Trial,
  reach: Reach,
): Point | null {
  if (!reach.failed.slice(since).some(({ why }) => why === "reach")) return found;
  const belt = { inner: reach.inner, far: found ? Math.hypot(...found) : reach.far };
  return firstSound(slidesOn(curves, ground, belt), trial, reach) ?? found;
}

function withRoutes(
  curves: Curves,
  garden: Garden,
  ids: ReadonlySet<ItemId>,
  trial: Trial,
  by: Point,
): Curves {
  const rings: readonly Ring[] = routeCurves(garden, trial.at(by).access(), ids, by);
  return { ...curves, others: [...curves.others, ...rings] };
}

function firstSound(places: readonly Point[], trial: Trial, { failed, seen }: Reach): Point | null {
  const known = new Set(failed.map(({ by }) => by.join()));
  for (const by of places) {
    seen.nearest ??= by;
    if (known.has(by.join())) continue;
    const tried = trial.at(by);
    if (tried.hasNarrowGap()) continue;
    if (tried.losesReach()) failed.push({ by, why: "reach", snag: null });
    else if (tried.closesWay()) failed.push({ by, why: "closed", snag: null });
    else if (!tried.standsBadly()) {
      const snag = tried.wrongOnGround() ?? tried.wrongSun();
      if (!snag) return by;
      failed.push({ by, why: "ways", snag });
    }
    if (isSpent(failed)) return null;
  }
  return null;
}

/** What was wrong with most of the shifts that came near: of those nearest to none, as long as a look takes. */
function commonest(trial: Trial, failed: readonly Failed[]): Snag | null {
  const told = failed
    .toSorted((a, b) => Math.hypot(...a.by) - Math.hypot(...b.by))
    .slice(0, MOST_TOLD)
    .flatMap(({ by, snag }) => snag ?? trial.at(by).wrongPlace() ?? trial.at(by).wrongWidths() ?? []);
  const counts = new Map<string, number>();
  for (const { key } of told) counts.set(key, (counts.get(key) ?? 0) + 1);
  return told.toSorted((a, b) => counts.get(b.key)! - counts.get(a.key)!)[0] ?? null;
}

const MOST_TOLD = 12;

/** The one limit but for which there would be a place, as it is missed at the nearest such place. */
function limitInTheWay(garden: Garden, ids: ReadonlySet<ItemId>, trial: Trial, far: number): Snag | null {
  const curves = curvesOf(garden, ids, far);
  for (const rule of PLACE_RULES) {
    const without = withoutRule(curves, rule);
    const ground = shiftGround(without);
    const places = ground.mayStand([0, 0]) ? [[0, 0] as Point] : placesOn(without, ground, { inner: 0, far });
    for (const by of places.slice(0, MOST_TOLD)) {
      const snag = trial.at(by).wrongPlace();
      if (snag?.rule === rule) return snag;
    }
  }
  return null;
}

/** Farther than this a shift puts the beds out of the yard, mm. */
function farthestShift({ yard, items }: Garden, ids: ReadonlySet<ItemId>): number {
  const places = items.filter(({ id }) => ids.has(id)).map(({ at }) => at);
  const { minX, minY, maxX, maxY } = boundsOf([...yard, ...places]);
  return Math.hypot(maxX - minX, maxY - minY);
}
