import { narrowGaps, narrowGapsFrom } from "../access/narrow-gaps.ts";
import type { Gap } from "../access/types.ts";
import type { Garden } from "../garden/garden.ts";
import { headingOf } from "../garden/heading.ts";
import type { Item } from "../garden/item.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import type { Point } from "../geometry/types.ts";
import { add, scale, subtract, turned } from "../geometry/vector.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import type { Facts } from "./facts.ts";
import { RememberedWays } from "./remembered-ways.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { isWithinReach, soundlyChanged, wishesOf } from "./sound-change.ts";

/** Flags ground between a bed and what stands next to it that is too wide for a joint and too narrow for a path. */
export const narrowPath = defineRule({
  id: "narrow-path",
  grade: "must",
  promise: word("Beside every bed there is either no gap or a path wide enough for whoever gardens here."),
  why: word("Where nobody can stand, kneel or wheel, an edge of the bed is lost, and the strip grows weeds."),
  source: LIMITS.kneelingWay.source,
  limits: ["standingRoom", "kneelingWay", "wheelchairWay", "together"],
  needs: ["garden", "access"],

  check(facts) {
    const { garden, access } = facts;
    const wishes = wishesOf(garden);
    return narrowGaps(access.gaps, garden, wishes).flatMap((gap) => {
      const [bed, other] = gap.between.map((side) => garden.items.find(({ id }) => id === side));
      if (bed?.kind !== "bed") return [];
      const short = formatShort(wishes.asked - gap.width, garden.units);
      const what = other ? nameOf(other) : say`the edge of the yard`;
      return [
        {
          itemIds: other ? [bed.id, other.id] : [bed.id],
          at: [gap.from, gap.to],
          measured: gap.width,
          limit: wishes.asked,
          unit: "mm" as const,
          title: say`${nameOf(bed)} to ${what}: path ${short} too narrow`,
          detail: say`Between ${nameOf(bed)} and ${what} are ${formatShort(gap.width, garden.units)}; ${formatShort(wishes.asked, garden.units)} are needed ${purpose(garden)}.`,
          get waysOut() {
            return remembered.of(bed, garden, gap.between[1], [other], () =>
              waysOut(facts, gap, bed, other, wishes.asked),
            );
          },
        },
      ];
    });
  },
});

type Known = Pick<Facts, "garden" | "access">;

const remembered = new RememberedWays();

const purpose = ({ gardener }: Garden): string =>
  gardener.wheelchair ? say`for a wheelchair` : gardener.kneeling ? say`to kneel` : say`to stand`;

function waysOut(facts: Known, gap: Gap, bed: Bed, other: Item | undefined, asked: number): WayOut[] {
  const { garden } = facts;
  const towards = scale(subtract(gap.to, gap.from), 1 / gap.width);
  const short = asked - gap.width;
  const beds = other?.kind === "bed" ? [bed, other] : [bed];
  const ids = beds.map(({ id }) => id);
  const parting = [
    ...beds.map((each) =>
      shift(garden, each, scale(towards, each === bed ? -short : short), beds.length > 1),
    ),
    ...beds.map((each) =>
      narrow(garden, each, each === bed ? towards : scale(towards, -1), short, beds.length > 1),
    ),
  ];
  const joining = closeUp(bed, scale(towards, gap.width), other);
  const clears = (way: WayOut | null): Garden | null => {
    const after = way && soundlyChanged(facts, way.ops, ids);
    return after && !stillNarrow(after, bed, other) ? after : null;
  };
  const parted = parting.flatMap((way) => (way && clears(way) ? [way] : []));
  // Closing up gives an edge away for good: only where the soil is within reach without it.
  const joined = clears(joining);
  const isJoinGood = joined !== null && ids.every((id) => isWithinReach(id, joined, facts));
  return joining && isJoinGood ? [...parted, joining] : parted;
}

const stillNarrow = (after: Garden, bed: Bed, other: Item | undefined): boolean =>
  narrowGapsFrom(bed.id, after, wishesOf(after)).some(({ between }) => between[1] === (other?.id ?? "yard"));

const shift = (garden: Garden, bed: Bed, by: Point, named: boolean): WayOut => ({
  label: shiftWords(garden, named ? bed : null, by),
  ops: [{ op: "move", id: bed.id, by }],
});

function shiftWords(garden: Garden, named: Bed | null, by: Point): string {
  const far = formatShort(Math.hypot(...by), garden.units);
  const there = headingOf(by, garden.site.north);
  return named ? say`Shift ${nameOf(named)} ${far} ${there}` : say`Shift ${far} ${there}`;
}

const closeUp = (bed: Bed, by: Point, other: Item | undefined): WayOut | null =>
  other && other.kind !== "tree"
    ? { label: say`Close up against ${nameOf(other)}`, ops: [{ op: "move", id: bed.id, by }] }
    : null;

/** Takes the shortfall off a rectangle's side that faces the gap square on; the opposite side stays where it is. */
function narrow(garden: Garden, bed: Bed, towards: Point, short: number, named: boolean): WayOut | null {
  if (bed.shape.type !== "rectangle") return null;
  const [x, y] = turned(towards, -bed.turn);
  const across = Math.abs(x) > Math.abs(y) ? "width" : "length";
  const square = across === "width" ? Math.abs(y) : Math.abs(x);
  const size = bed.shape[across] - short;
  if (square > SQUARE || size < bed.shape[across] * LEAST_LEFT) return null;
  const to = formatShort(size, garden.units);
  return {
    label: named ? say`Narrow ${nameOf(bed)} to ${to}` : say`Narrow to ${to}`,
    ops: [
      {
        op: "set",
        id: bed.id,
        changes: { shape: { ...bed.shape, [across]: size }, at: add(bed.at, scale(towards, -short / 2)) },
      },
    ],
  };
}

/** A bed that loses more than half of its width is better moved. */
const LEAST_LEFT = 0.5;

/** Sine of the angle by which a side may be askew to the gap and still be said to face it: about 1/2 degree. */
const SQUARE = 0.01;
