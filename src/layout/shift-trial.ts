import { gapsOf } from "../access/gaps.ts";
import { narrowGapsFrom } from "../access/narrow-gaps.ts";
import { once } from "../access/once.ts";
import { bedReach } from "../access/reach.ts";
import type { Access } from "../access/types.ts";
import { type Ways, waysOf, waysWhenMoved } from "../access/ways.ts";
import { NARROWEST_WAY } from "../access/ways-told.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { limitsOf } from "../garden/limits.ts";
import { applyOps } from "../garden/operations.ts";
import type { Point } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { checkGarden, leavesOut } from "../rules/check-garden.ts";
import { RULES } from "../rules/index.ts";
import { narrowMainWay } from "../rules/narrow-main-way.ts";
import { narrowPath } from "../rules/narrow-path.ts";
import { bestWay } from "../rules/open-way.ts";
import type { Rule, Snag } from "../rules/rule.ts";
import { sealedOffBed } from "../rules/sealed-off-bed.ts";
import { wishesOf } from "../rules/sound-change.ts";
import { unreachableSoil } from "../rules/unreachable-soil.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { accessAfter } from "./access-after.ts";
import { isSoilFarther } from "./farthest-soil.ts";
import { POSITION_RULES } from "./position-rules.ts";

/** Trying shifts of some beds, all by as much. */
export interface Trial {
  /** The must-fix and should-fix snags of position that these beds have where they stand. */
  readonly toClear: readonly Snag[];
  readonly at: (by: Point) => Tried;
}

/** The garden after one shift. What is asked later takes longer. */
export interface Tried {
  /** Whether a gap beside the beds is neither a joint nor a path. */
  readonly hasNarrowGap: () => boolean;
  /** Whether the beds stand in or near something they must not. */
  readonly standsBadly: () => boolean;
  /** Whether soil is out of reach that was not, as far as one can tell without knowing the ways. */
  readonly losesReach: () => boolean;
  /** Whether some bed is got to less well than it is to be, on foot or with a barrow. */
  readonly closesWay: () => boolean;
  /** What is wrong with the widths of ways; null where nothing is. */
  readonly wrongWidths: () => Snag | null;
  /** What is wrong but for the sun. */
  readonly wrongOnGround: () => Snag | null;
  /** What is wrong with the sun, which takes longest. */
  readonly wrongSun: () => Snag | null;
  /** What is wrong with gaps, with what is stood in or near, and with reach: why it was turned down unseen. */
  readonly wrongPlace: () => Snag | null;
  readonly access: () => Access;
}

const isToFix = ({ grade }: Pick<Snag, "grade">): boolean => grade !== "note";

/** Quick rules first: a shift that fails one is not held to the next. */
const TRIED: readonly Rule[] = RULES.filter(isToFix);
const OF_PLACE = TRIED.filter(({ needs }) => !needs.includes("access"));
const OF_STANDING = OF_PLACE.filter(({ id }) => POSITION_RULES.has(id));
const OF_SUN = TRIED.filter((rule) => leavesOut("look", rule));
const OF_WAYS = TRIED.filter((rule) => rule.needs.includes("access") && !rule.slow && !OF_SUN.includes(rule));
const OF_ROUTES = TRIED.filter(({ slow }) => slow === true);

/** Sets out to try shifts of some beds and sheds. */
export function trialOf(garden: Garden, ids: ReadonlySet<ItemId>, known: Access): Trial {
  const before = checkGarden(garden, { access: known }, TRIED, "look").filter(isToFix);
  const inShade = once(() => checkGarden(garden, { access: known }, OF_SUN, "reading").filter(isToFix));
  const tooWide = new Set([...ids].filter((id) => isOutOfReachAnywhere(garden, id)));
  const isTheirs = (snag: Snag) =>
    isOfPosition(snag, ids) &&
    !(snag.rule === "unreachable-soil" && snag.itemIds.every((id) => tooWide.has(id)));
  const ways = waysOf(garden);
  const wishes = wishesOf(garden);
  const waysAfter = once(() => waysWhenMoved(garden, ids));
  const toKeepOpen = waysToKeepOpen(garden, ids, known);
  const closed: { readonly by: Point; readonly short: number }[] = [];
  // Whoever goes along a way to a bed that stays loses no more room to each side than a thing comes nearer.
  const isNearClosed = (by: Point) => closed.some((other) => 2 * distance(by, other.by) < other.short);
  const unmoved = new Map(bedsOf(garden).map((bed) => [bed.id, bed]));
  const reached = mostReach(known, ids, tooWide, wishes.reach);
  return {
    toClear: before.filter(isTheirs),
    at: (by) => {
      const after = once(() => shifted(garden, ids, by));
      const waysNow = once(() => waysAfter()(after()));
      const found = once(() => {
        waysNow();
        return accessAfter(after(), known, ids);
      });
      const isWrong = (snag: Snag) =>
        isToFix(snag) &&
        (isTheirs(snag) ||
          (WAY_RULES.has(snag.rule) ? isNarrowedFor(snag, ways, waysNow()) : isNew(snag, before)));
      const wrong = (rules: readonly Rule[], access?: Access) =>
        checkGarden(after(), access && { access }, rules, "look").find(isWrong) ?? null;
      const wrongSun = () =>
        checkGarden(after(), { access: found() }, OF_SUN, "reading").find(
          (snag) => isToFix(snag) && isNew(snag, inShade()),
        ) ?? null;
      const wrongPlace = () => wrong([narrowPath], gapsAlone(after())) ?? wrong(OF_PLACE);
      const wrongWidths = () => wrong([sealedOffBed, narrowMainWay], waysAlone(after(), waysNow()));
      return {
        hasNarrowGap: () =>
          [...ids].some((id) => isBed(garden, id) && narrowGapsFrom(id, after(), wishes).length > 0),
        standsBadly: () => wrong(OF_STANDING) !== null,
        losesReach: () =>
          bedsOf(after()).some((bed) => {
            const reaching = { room: wishes.room, reach: reached.get(bed.id) ?? 0 };
            return isSoilFarther(bed, after(), reaching, unmoved.get(bed.id));
          }),
        closesWay: once(() => {
          if (isNearClosed(by)) return true;
          const shut = toKeepOpen.find(({ id, width }) => !waysNow().isOpen(id, width));
          if (!shut) return wrongWidths() !== null;
          if (!ids.has(shut.id) && beginAlike(ways, waysNow())) {
            const width = Math.max(NARROWEST_WAY, bestWay(waysNow().toBed(shut.id))?.width ?? 0);
            closed.push({ by, short: shut.width - width });
          }
          return true;
        }),
        wrongWidths,
        wrongOnGround: () => wrongPlace() ?? wrong(OF_WAYS, found()) ?? wrong(OF_ROUTES, found()),
        wrongSun,
        wrongPlace: () => wrongPlace() ?? wrong([unreachableSoil], reachAlone(after())),
        access: found,
      };
    },
  };
}

/**
 * The beds that a way so wide leads to, and those that are shifted. Less than twice what rules allow is left to the rules
 * themselves.
 */
function waysToKeepOpen(
  garden: Garden,
  ids: ReadonlySet<ItemId>,
  { beds }: Access,
): { readonly id: ItemId; readonly width: number }[] {
  const { standingRoom, barrowWay } = limitsOf(garden);
  return (garden.gardener.barrow ? [barrowWay, standingRoom] : [standingRoom]).flatMap((width) =>
    beds
      .filter((bed) => ids.has(bed.id) || (bestWay(bed)?.width ?? 0) >= width - SAME_LENGTH)
      .map(({ id }) => ({ id, width: width - 2 * SAME_LENGTH })),
  );
}

const shifted = (garden: Garden, ids: ReadonlySet<ItemId>, by: Point): Garden =>
  applyOps(
    garden,
    [...ids].map((id) => ({ op: "move" as const, id, by })),
  );

const isBed = ({ items }: Garden, id: ItemId): boolean =>
  items.some((item) => item.id === id && item.kind === "bed");

/** Whether nothing has come so near to gates and doors that ways begin elsewhere. */
const beginAlike = (before: Ways, after: Ways): boolean =>
  before.entrances.every(({ starts }, i) => starts === after.entrances[i]?.starts);

/** How far the farthest soil of each bed may be from where one can be: no farther than now, or than reach. */
function mostReach(
  { beds }: Access,
  ids: ReadonlySet<ItemId>,
  tooWide: ReadonlySet<ItemId>,
  reach: number,
): ReadonlyMap<ItemId, number> {
  return new Map(
    beds.map(({ id, farthest }) => {
      const may = ids.has(id) && !tooWide.has(id) ? reach : Math.max(reach, farthest.distance);
      return [id, may + SAME_LENGTH];
    }),
  );
}

const NOTHING: Access = { freeGround: [], gaps: [], beds: [], wheelchair: null };

/** All that the rule about gaps looks at, without the search for ways. */
const gapsAlone = (garden: Garden): Access => ({ ...NOTHING, gaps: gapsOf(garden) });

const bedsOf = ({ items }: Garden): Bed[] => items.filter((item) => item.kind === "bed");

const NO_WAYS = { fromGate: null, fromDoor: null, kitchen: null, hose: null };

/** Reach as if every edge with room before it could be got to: soil out of reach then is so whatever the ways are. */
function reachAlone(garden: Garden): Access {
  const wishes = wishesOf(garden);
  const beds = bedsOf(garden).map((bed) => ({
    id: bed.id,
    ...NO_WAYS,
    ...bedReach(bed, garden, wishes),
  }));
  return { ...NOTHING, beds };
}

/** The widths of ways without reach and routes. */
function waysAlone(garden: Garden, ways: Ways): Access {
  const nothingReached = { standing: [], reach: 0, outOfReach: [], outOfReachAreaMm2: 0, closedBy: [] };
  const beds = bedsOf(garden).map((bed) => ({
    id: bed.id,
    ...NO_WAYS,
    ...nothingReached,
    farthest: { at: bed.at, distance: 0 },
    ...ways.toBed(bed.id),
  }));
  return { ...NOTHING, beds };
}

/** Rules that speak of the narrowest place on a way and of all beds behind it, whichever place that is. */
const WAY_RULES: ReadonlySet<string> = new Set([
  "sealed-off-bed",
  "narrow-main-way",
  "wheelchair-narrow-way",
]);

/**
 * Whether the way to some bed that a snag is about has become narrower. Where a bed opens the narrowest place on a way,
 * the next narrowest comes to be told: no new snag, the way is wider than it was.
 */
function isNarrowedFor({ itemIds, measured }: Snag, before: Ways, after: Ways): boolean {
  return itemIds.some((id) => {
    const now = bestWay(after.toBed(id))?.width ?? Infinity;
    const was = bestWay(before.toBed(id))?.width ?? Infinity;
    return now <= measured + SAME_LENGTH && now < was - SAME_LENGTH;
  });
}

const isOfPosition = ({ rule, itemIds }: Snag, ids: ReadonlySet<ItemId>): boolean =>
  POSITION_RULES.has(rule) && itemIds.some((id) => ids.has(id));

/** Whether some of a bed's soil is out of reach even with open ground all round it: then no shift is a remedy. */
function isOutOfReachAnywhere(garden: Garden, id: ItemId): boolean {
  const bed = garden.items.find((item): item is Bed => item.id === id && item.kind === "bed");
  if (!bed) return false;
  const wishes = wishesOf(garden);
  const { farthest } = bedReach(bed, { items: [bed], yard: openRound(bed.at) }, wishes);
  return farthest.distance > wishes.reach + SAME_LENGTH;
}

const FAR = 1e6;
const openRound = ([x, y]: Point): Garden["yard"] => [
  [x - FAR, y - FAR],
  [x + FAR, y - FAR],
  [x + FAR, y + FAR],
  [x - FAR, y + FAR],
];

/**
 * Whether a snag was not there before: not by its key, nor as part of a snag of the same rule about more things (with
 * one bed out of the way, "No way to A and B" is "No way to B"). One that has become worse or graver counts as new.
 */
function isNew(snag: Snag, before: readonly Snag[]): boolean {
  const same =
    before.find(({ key }) => key === snag.key) ??
    before.find(
      ({ rule, itemIds }) =>
        rule === snag.rule && snag.itemIds.length > 0 && snag.itemIds.every((id) => itemIds.includes(id)),
    );
  if (!same || (same.grade === "should" && snag.grade === "must")) return true;
  const off = ({ measured, limit }: Snag) => Math.abs(measured - limit);
  return off(snag) > off(same) + SAME_LENGTH;
}
