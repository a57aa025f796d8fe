import {
  access,
  applyOps,
  checkGarden,
  type Garden,
  gapsOf,
  type Item,
  type Point,
  SAME_LENGTH,
  type Snag,
} from "../../src/index.ts";
import { POSITION_RULES } from "../../src/layout/position-rules.ts";
import { RULES } from "../../src/rules/index.ts";
import { narrowPath } from "../../src/rules/narrow-path.ts";

/**
 * The smallest shift found the plain way: every place of a grid is held to every rule, as if the gardener had tried it.
 */

const isToFix = ({ grade }: Snag) => grade !== "note";

/** Rules that speak of the narrowest place on the way to some beds, whichever it is: judged bed by bed instead. */
const WAYS = ["sealed-off-bed", "narrow-main-way", "wheelchair-narrow-way"];

interface Looked {
  readonly snags: readonly Snag[];
  readonly widths: ReadonlyMap<string, number>;
}

function look(garden: Garden): Looked {
  const found = access(garden);
  const widths = found.beds.map(({ id, fromGate, fromDoor }) => {
    const both = [fromGate?.width, fromDoor?.width].filter((width) => width !== undefined);
    return [id, both.length > 0 ? Math.max(...both) : Infinity] as const;
  });
  return {
    snags: checkGarden(garden, { access: found }, RULES, "look").filter(isToFix),
    widths: new Map(widths),
  };
}

/** What `isGood` says of a shift: whether it clears all snags of position of a bed and leaves nothing worse anywhere. */
export function judge(
  garden: Garden,
  id: string,
  isTooWide: boolean,
): { has: readonly Snag[]; isGood: (by: Point) => boolean } {
  const before = look(garden);
  const isIts = ({ rule, itemIds }: Snag) =>
    POSITION_RULES.has(rule) &&
    itemIds.some((item) => item === id) &&
    !(isTooWide && rule === "unreachable-soil");
  const item: Item = garden.items.find((candidate) => candidate.id === id)!;
  return {
    has: before.snags.filter(isIts),
    isGood: (by) => {
      const after = applyOps(garden, [{ op: "move", id: item.id, by }]);
      // Most places are bad for the plainest of reasons: those rules first.
      if (checkGarden(after, {}, QUICK, "look").some(isIts)) return false;
      const gaps = { freeGround: [], gaps: gapsOf(after), beds: [], wheelchair: null };
      if (checkGarden(after, { access: gaps }, [narrowPath], "look").some(isIts)) return false;
      const { snags, widths } = look(after);
      return snags.every(
        (snag) =>
          !isIts(snag) &&
          (WAYS.includes(snag.rule)
            ? isNoWorseWay(snag, before.widths, widths)
            : wasThere(snag, before.snags)),
      );
    },
  };
}

const QUICK = RULES.filter(({ id }) =>
  ["overlapping", "outside-yard", "bed-in-path", "blocked-door"].includes(id),
);

function wasThere(snag: Snag, before: readonly Snag[]): boolean {
  const parts = (other: Snag) =>
    other.rule === snag.rule &&
    (other.key === snag.key ||
      (snag.itemIds.length > 0 && snag.itemIds.every((item) => other.itemIds.includes(item))));
  const off = ({ measured, limit }: Snag) => Math.abs(measured - limit);
  const same = before.find(({ key }) => key === snag.key) ?? before.find(parts);
  return (
    same !== undefined &&
    !(same.grade === "should" && snag.grade === "must") &&
    off(snag) <= off(same) + SAME_LENGTH
  );
}

function isNoWorseWay(
  { itemIds, measured }: Snag,
  before: Looked["widths"],
  after: Looked["widths"],
): boolean {
  return itemIds.every((id) => {
    const now = after.get(id) ?? Infinity;
    return now > measured + SAME_LENGTH || now >= (before.get(id) ?? Infinity) - SAME_LENGTH;
  });
}

/**
 * The shortest good shift on a grid, of those shorter than `most`: all over it coarsely, and finely about the places
 * where a shorter one was found.
 * @returns its length, mm; Infinity where there is none
 */
export function shortestOnGrid(
  isGood: (by: Point) => boolean,
  most: number,
  coarse: number,
  fine: number,
): number {
  let best = Infinity;
  const scan = (middle: Point, half: number, step: number) => {
    const places: Point[] = [];
    for (let x = middle[0] - half; x <= middle[0] + half; x += step)
      for (let y = middle[1] - half; y <= middle[1] + half; y += step) places.push([x, y]);
    let found: Point | null = null;
    for (const by of places.sort((a, b) => Math.hypot(...a) - Math.hypot(...b))) {
      const length = Math.hypot(...by);
      if (length >= Math.min(best, most)) break;
      if (!isGood(by)) continue;
      best = length;
      found = by;
    }
    return found;
  };
  const first = scan([0, 0], most, coarse);
  if (first) scan(first, coarse, fine);
  return best;
}
