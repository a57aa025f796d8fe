import { gapsFrom } from "../access/gaps.ts";
import type { BedAccess } from "../access/types.ts";
import type { Garden } from "../garden/garden.ts";
import { headingOf } from "../garden/heading.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import type { Shape } from "../geometry/shape.ts";
import type { Point } from "../geometry/types.ts";
import { add, scale, subtract, turned } from "../geometry/vector.ts";
import { formatArea, formatShare } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { FOOT, INCH, SAME_LENGTH } from "../units/length.ts";
import { say, sayCount, word } from "../words/say.ts";
import type { Facts } from "./facts.ts";
import { type Narrower, narrowerShapes } from "./reachable-shapes.ts";
import { RememberedWays } from "./remembered-ways.ts";
import { defineRule, type Finding, type WayOut } from "./rule.ts";
import { isWithinReach, soundlyChanged, wishesOf } from "./sound-change.ts";
import { listed } from "./words.ts";

type Known = Pick<Facts, "garden" | "access">;

/** Flags beds with soil that nobody can reach without stepping on it. */
export const unreachableSoil = defineRule({
  id: "unreachable-soil",
  grade: "must",
  promise: word("Every bit of a bed's soil is within reach from an edge where the gardener can really be."),
  why: word("What cannot be reached is stepped on, and soil that is stepped on grows little."),
  source: LIMITS.reach.source,
  limits: ["reach", "childReach", "seatedReach", "standingRoom", "kneelingWay", "wheelchairWay"],
  needs: ["garden", "access", "beds"],

  check(facts) {
    return facts.beds.flatMap((bed) => {
      const known = facts.access.beds.find(({ id }) => id === bed.id);
      const isBeyond = known && known.farthest.distance > known.reach + SAME_LENGTH;
      return isBeyond ? [finding(facts, bed, known)] : [];
    });
  },
});

const remembered = new RememberedWays();

function finding(facts: Known, bed: Bed, known: BedAccess): Finding {
  return {
    itemIds: [bed.id],
    at: [known.farthest.at],
    unit: "mm",
    ...words(facts.garden, bed, known),
    get waysOut() {
      return remembered.of(bed, facts.garden, "", [known.standing.length, known.farthest.distance], () =>
        waysOut(facts, bed, known),
      );
    },
  };
}

function words(garden: Garden, bed: Bed, known: BedAccess) {
  const shown = (mm: number) => formatShort(mm, garden.units);
  // How far soil lies is told as a hand would: no finer than an eighth of an inch, and never as nothing.
  const far = (mm: number) =>
    shown(garden.units === "us" ? Math.max(1, Math.round(mm / EIGHTH)) * EIGHTH : mm);
  const { reach, farthest } = known;
  if (known.standing.length === 0) {
    const { room } = wishesOf(garden);
    return {
      measured: 0,
      limit: room,
      title: say`${nameOf(bed)}: no edge to garden from`,
      detail: say`No edge of it has ${shown(room)} of ground beside it that can be got to${closers(garden, known)}.`,
    };
  }
  return {
    measured: toTenths(farthest.distance),
    limit: reach,
    title: say`${nameOf(bed)}: soil ${far(farthest.distance - reach)} out of reach`,
    detail: say`Its farthest soil is ${far(farthest.distance)} from where one can be, and reach is ${shown(reach)}: ${formatArea(known.outOfReachAreaMm2, garden.units)} cannot be reached${closers(garden, known)}.`,
  };
}

const EIGHTH = INCH / 8;

/** The farthest place is known to a tenth of a millimetre. */
const toTenths = (mm: number): number => Math.round(mm * 10) / 10;

function closers({ items }: Garden, { closedBy }: BedAccess): string {
  const names = closedBy.map((side) => {
    const item = items.find(({ id }) => id === side);
    return item ? nameOf(item) : say`the edge of the yard`;
  });
  return names.length > 0
    ? sayCount(
        names.length,
        { one: "; {{names}} closes an edge", other: "; {{names}} close an edge" },
        { names: listed(names.slice(0, 3)) },
      )
    : "";
}

/** The least change of each sort that really clears the snag: another place, another size, a quarter turn. */
function waysOut(facts: Known, bed: Bed, known: BedAccess): WayOut[] {
  const clears = ({ ops }: WayOut) => {
    const after = soundlyChanged(facts, ops, [bed.id]);
    return after !== null && isWithinReach(bed.id, after, facts);
  };
  const firstOf = (ways: readonly WayOut[]) => ways.find(clears);
  return [
    firstOf(shifts(facts.garden, bed)),
    firstOf(narrowings(facts.garden, bed, known)),
    firstOf([{ label: say`Turn by 90°`, ops: [{ op: "turn", id: bed.id, by: 90 }] }]),
  ].filter((way) => way !== undefined);
}

/** Farther than this a bed is put somewhere else, which is for the gardener to think out. */
const FARTHEST = 10 * FOOT;

/** Away from each thing that closes an edge, by what is missing to a path; the shortest first. */
function shifts(garden: Garden, bed: Bed): WayOut[] {
  const { room } = wishesOf(garden);
  return gapsFrom(bed.id, garden)
    .filter(({ width }) => width < room - SAME_LENGTH)
    .flatMap(({ width, from, to }) => {
      const ways = width > 0 ? [scale(subtract(from, to), 1 / width)] : sidesOf(bed);
      return ways.map((way) => scale(way, room - width));
    })
    .filter((by) => Math.hypot(...by) <= FARTHEST)
    .sort((a, b) => Math.hypot(...a) - Math.hypot(...b))
    .map((by) => ({
      label: say`Shift ${formatShort(Math.hypot(...by), garden.units)} ${headingOf(by, garden.site.north)}`,
      ops: [{ op: "move", id: bed.id, by }],
    }));
}

/** Where a bed touches something it can go any way that its own sides face. */
const sidesOf = ({ turn }: Bed): readonly Point[] =>
  [0, 90, 180, 270].map((more) => turned([1, 0], turn + more));

const CENTIMETRE = 10;

/** Smaller shapes, drawn in about the middle or towards a side that stays where it is. */
function narrowings(garden: Garden, bed: Bed, { reach, farthest }: BedAccess): WayOut[] {
  const { room } = wishesOf(garden);
  const step = garden.units === "us" ? INCH : CENTIMETRE;
  const shapes = narrowerShapes(bed.shape, { reach, room, farthest: farthest.distance, step });
  return shapes.flatMap((narrower) =>
    anchors(bed.shape, narrower.shape).map((shift): WayOut => {
      const at = add(bed.at, turned(shift, bed.turn));
      return {
        label: labelOf(narrower, garden),
        ops: [{ op: "set", id: bed.id, changes: { shape: narrower.shape, at } }],
      };
    }),
  );
}

const labelOf = ({ verb, figure }: Narrower, { units }: Garden): string =>
  `${verb} ${"mm" in figure ? formatShort(figure.mm, units) : formatShare(figure.share)}`;

/** Shifts of a shape's middle, in its own frame, that keep the middle or one of its sides in place. */
function anchors(before: Shape, after: Shape): Point[] {
  const [was, is] = [sizeOf(before), sizeOf(after)];
  if (!was || !is) return [[0, 0]];
  const [dx, dy] = [(was[0] - is[0]) / 2, (was[1] - is[1]) / 2];
  const along = (d: number) => (d > 0 ? [0, -d, d] : [0]);
  return along(dx).flatMap((x) => along(dy).map((y): Point => [x, y]));
}

function sizeOf(shape: Shape): Point | null {
  if (shape.type === "polygon") return null;
  return shape.type === "keyhole" ? [shape.diameter, shape.diameter] : [shape.width, shape.length];
}
