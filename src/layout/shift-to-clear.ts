import { access } from "../access/access.ts";
import type { Access } from "../access/types.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { boundsOf } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { scale, subtract } from "../geometry/vector.ts";
import type { Snag } from "../rules/rule.ts";
import { type Curves, curvesOf } from "./shift-curves.ts";
import { mayStand, placesOn, slidesOn } from "./shift-places.ts";
import { routeCurves } from "./shift-routes.ts";
import { type Trial, trialOf } from "./shift-trial.ts";

/** One move over the plan that puts some beds in order. */
export interface Shift {
  /** All of them by as much, [dx, dy] in mm. */
  readonly by: Point;
  /** Keys of the snags it clears. */
  readonly clears: readonly string[];
}

/** What stands in the way of every shift: at the shortest that comes nearest to being one. */
export interface InTheWay {
  readonly rule: string;
  readonly title: string;
}

export type ShiftSearch =
  | { readonly found: "shift"; readonly shift: Shift }
  | { readonly found: "nothing to clear" }
  | { readonly found: "no shift"; readonly inTheWay: InTheWay };

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
  if (between) return { found: "no shift", inTheWay: wayOf(between) };
  const found = nearestSound(garden, shifted, trial);
  if ("inTheWay" in found) return { found: "no shift", inTheWay: wayOf(found.inTheWay) };
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

type Found = { readonly by: Point } | { readonly inTheWay: Snag };

/** Most shifts are small, and the wider the search, the more there is to look at: it goes out by and by, mm. */
const RADII = [300, 600, 1000, 1500, 2250, 3400, 5000, 7500];
/** So many shifts that stand well are tried before the search gives up; looking at ways and routes takes longest. */
const MOST_TRIED = 240;
const MOST_WAYS = 40;

const isSpent = (failed: readonly Failed[]): boolean =>
  failed.length >= MOST_TRIED ||
  failed.filter(({ snag }) => snag.rule !== "unreachable-soil").length >= MOST_WAYS;

function nearestSound(garden: Garden, ids: ReadonlySet<ItemId>, trial: Trial): Found {
  const most = farthestShift(garden, ids);
  const failed: Failed[] = [];
  let inner = 0;
  for (const far of [...RADII.filter((radius) => radius < most), most]) {
    const by = nearestWithin(garden, ids, trial, { inner, far, failed });
    if (by) return { by: shortened(trial, by, failed) };
    if (isSpent(failed)) break;
    inner = far;
  }
  return { inTheWay: commonest(failed) ?? farthestOff(trial.toClear) };
}

/** Where there is no place to stand at all: the snag that takes the longest way to be clear of. */
function farthestOff(snags: readonly Snag[]): Snag {
  const off = ({ measured, limit, unit }: Snag) => (unit === "mm" ? Math.abs(measured - limit) : 0);
  return snags.toSorted((a, b) => off(b) - off(a))[0]!;
}

/** A shift after which the beds stand well, but something is wrong with ways. */
interface Failed {
  readonly by: Point;
  readonly snag: Snag;
}

interface Reach {
  readonly inner: number;
  readonly far: number;
  readonly failed: Failed[];
}

const ROUTE_RULES: ReadonlySet<string> = new Set(["long-walk", "long-hose"]);
/** Where the routes turn elsewhere after a shift, it is looked at anew from there; so often. */
const MOST_TURNS = 3;

function nearestWithin(garden: Garden, ids: ReadonlySet<ItemId>, trial: Trial, reach: Reach): Point | null {
  const { far, failed } = reach;
  let curves = curvesOf(garden, ids, far);
  if (trial.toClear.some(({ rule }) => ROUTE_RULES.has(rule)))
    curves = withRoutes(curves, garden, ids, trial, [0, 0]);
  for (let turns = 0; turns <= MOST_TURNS; turns++) {
    const tried = failed.length;
    const straight = firstSound(placesOn(curves, far), curves, trial, reach);
    const by = slidShorter(straight, tried, curves, trial, reach);
    if (by || isSpent(failed)) return by;
    const long = failed.slice(tried).find(({ snag }) => ROUTE_RULES.has(snag.rule));
    if (!long) return null;
    curves = withRoutes(curves, garden, ids, trial, long.by);
  }
  return null;
}

/** Where soil was out of reach after a shift that lays the bed against something, it may not be a little along it. */
function slidShorter(
  found: Point | null,
  since: number,
  curves: Curves,
  trial: Trial,
  reach: Reach,
): Point | null {
  if (!reach.failed.slice(since).some(({ snag }) => snag.rule === "unreachable-soil")) return found;
  const far = found ? Math.hypot(...found) : reach.far;
  return firstSound(slidesOn(curves, far), curves, trial, reach) ?? found;
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

function firstSound(
  places: readonly Point[],
  curves: Curves,
  trial: Trial,
  { inner, failed }: Reach,
): Point | null {
  const known = new Set(failed.map(({ by }) => by.join()));
  for (const by of places) {
    if (Math.hypot(...by) < inner || known.has(by.join()) || !mayStand(curves, by)) continue;
    const tried = trial.at(by);
    if (tried.wrongPlace()) continue;
    const snag = tried.wrongReach() ?? tried.wrongWays();
    if (!snag) return by;
    failed.push({ by, snag });
    if (isSpent(failed)) return null;
  }
  return null;
}

/** Shorter by less than this is no matter, mm. */
const CLOSE_ENOUGH = 1;
/** Of the shorter shifts that did not do, so many are gone towards. */
const MOST_TOWARDS = 3;

/**
 * How much soil is within reach, and how long a route is, changes between curves too. From a shift that does, one goes
 * towards the shorter ones that did not, for as long as it does.
 */
function shortened(trial: Trial, found: Point, failed: readonly Failed[]): Point {
  const shorter = failed.filter(({ by }) => Math.hypot(...by) < Math.hypot(...found) - CLOSE_ENOUGH);
  const near = shorter.toSorted((a, b) => apart(a.by, found) - apart(b.by, found)).slice(0, MOST_TOWARDS);
  const better = near.map(({ by }) => lastSound(trial, found, by));
  return [found, ...better].sort((a, b) => Math.hypot(...a) - Math.hypot(...b))[0]!;
}

const apart = (a: Point, b: Point): number => Math.hypot(...subtract(a, b));

function lastSound(trial: Trial, sound: Point, unsound: Point): Point {
  let [good, bad] = [sound, unsound];
  while (apart(good, bad) > CLOSE_ENOUGH) {
    const middle = scale([good[0] + bad[0], good[1] + bad[1]], 1 / 2);
    const tried = trial.at(middle);
    if (tried.wrongPlace() || tried.wrongReach() || tried.wrongWays()) bad = middle;
    else good = middle;
  }
  return good;
}

/** What was wrong with most of the shifts that came near. */
function commonest(failed: readonly Failed[]): Snag | null {
  const counts = new Map<string, number>();
  for (const { snag } of failed) counts.set(snag.key, (counts.get(snag.key) ?? 0) + 1);
  const [most] = [...failed].sort(
    (a, b) =>
      (counts.get(b.snag.key) ?? 0) - (counts.get(a.snag.key) ?? 0) ||
      Math.hypot(...a.by) - Math.hypot(...b.by),
  );
  return most?.snag ?? null;
}

/** Farther than this a shift puts the beds out of the yard, mm. */
function farthestShift({ yard, items }: Garden, ids: ReadonlySet<ItemId>): number {
  const places = items.filter(({ id }) => ids.has(id)).map(({ at }) => at);
  const { minX, minY, maxX, maxY } = boundsOf([...yard, ...places]);
  return Math.hypot(maxX - minX, maxY - minY);
}
