import { type Frame, frameOf } from "../garden/frame.ts";
import type { Garden, Gardener } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Limits } from "../garden/limits.ts";
import { bandsAbout } from "../geometry/band.ts";
import { difference, offset, regionsOf } from "../geometry/clip.ts";
import { type Farthest, farthestFrom } from "../geometry/farthest.ts";
import { type Inset, plainInset } from "../geometry/inset.ts";
import { contains, signedArea } from "../geometry/ring.ts";
import type { Point, Region, Ring } from "../geometry/types.ts";
import { add, distance, subtract } from "../geometry/vector.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { closedBy } from "./closed-by.ts";
import { type StandingPiece, standingPieces, stretchesOf } from "./standing.ts";
import type { BedAccess, Stretch } from "./types.ts";

export type BedReach = Pick<
  BedAccess,
  "standing" | "reach" | "outOfReach" | "outOfReachAreaMm2" | "farthest" | "closedBy"
>;

/** Reach that every bed has to be within: the least of those who garden here, mm. */
export function reachOf(gardener: Gardener, limits: Limits): number {
  return Math.min(
    limits.reach,
    gardener.child ? limits.childReach : Infinity,
    gardener.wheelchair ? limits.seatedReach : Infinity,
  );
}

export interface Gardening {
  /** Room to be at a bed's edge, mm across; `roomToStand` says how much these gardeners need. */
  readonly room: number;
  /** How far a hand gets, mm; `reachOf` says how far these gardeners' hands do. */
  readonly reach: number;
  /** Whether the ground at a point can be got to at all; everywhere unless told. */
  readonly canGetTo?: (point: Point) => boolean;
}

/**
 * What of a bed's soil can be reached, from where one can really stand.
 *
 * Reach is measured on the plan from the outside edge of the bed, where the body stops: a thick wall takes from it.
 *
 * @returns soil beyond reach as exact outlines; none where the farthest of it is beyond reach by no more than
 *   `SAME_LENGTH`. A bed whose walls leave no room for soil has nothing to reach: its farthest place is its middle, 0 away
 */
export function bedReach(bed: Bed, garden: Pick<Garden, "items" | "yard">, gardening: Gardening): BedReach {
  const { room, reach, canGetTo } = gardening;
  const roomy = standingPieces(bed, garden, room);
  const pieces = canGetTo ? roomy.filter(({ body }) => canGetTo(body)) : roomy;
  const before = known.get(bed);
  const same = before?.reach === reach && samePieces(before.pieces, pieces);
  if (same && before.roomy === roomy) return before.answer;
  // A neighbour that moves without closing or opening anything leaves the soil within reach as it was.
  const soil = same ? before.soil : soilRemembered(bed, stretchesOf(pieces), reach);
  const answer = { ...soil, reach, closedBy: closedBy(bed, garden, room) };
  known.set(bed, { roomy, pieces, reach, soil, answer });
  return answer;
}

interface Known {
  readonly roomy: readonly StandingPiece[];
  readonly pieces: readonly StandingPiece[];
  readonly reach: number;
  readonly soil: ReturnType<typeof soilBeyond>;
  readonly answer: BedReach;
}

const known = new WeakMap<Bed, Known>();

const samePieces = (a: readonly StandingPiece[], b: readonly StandingPiece[]): boolean =>
  a === b || (a.length === b.length && a.every((piece, i) => samePiece(piece, b[i]!)));
const samePiece = (a: StandingPiece, b: StandingPiece): boolean =>
  a === b ||
  (a.from[0] === b.from[0] && a.from[1] === b.from[1] && a.to[0] === b.to[0] && a.to[1] === b.to[1]);

interface Worked {
  readonly bed: Bed;
  readonly reach: number;
  readonly soil: ReturnType<typeof soilBeyond>;
}

const worked = new WeakMap<Bed["shape"], Worked>();

/** A bed that is carried about with the same edges open takes its answer along. */
function soilRemembered(
  bed: Bed,
  standing: readonly Stretch[],
  reach: number,
): ReturnType<typeof soilBeyond> {
  const before = worked.get(bed.shape);
  if (before?.reach === reach && before.bed.wall === bed.wall && before.bed.turn === bed.turn) {
    const by = subtract(bed.at, before.bed.at);
    if (sameLines(before.soil.standing, standing, by)) return carried(before.soil, standing, by);
  }
  const soil = soilBeyond(bed, standing, reach);
  worked.set(bed.shape, { bed, reach, soil });
  return soil;
}

/** Below this, places are the same but for the noise of carrying them about, mm. */
const NOISE = 1e-6;

const sameLines = (before: readonly Stretch[], now: readonly Stretch[], by: Point): boolean =>
  before.length === now.length &&
  before.every((line, i) => {
    const other = now[i]!;
    return (
      line.length === other.length && line.every((point, j) => distance(add(point, by), other[j]!) < NOISE)
    );
  });

function carried(
  { farthest, outOfReach, outOfReachAreaMm2 }: ReturnType<typeof soilBeyond>,
  standing: readonly Stretch[],
  by: Point,
): ReturnType<typeof soilBeyond> {
  const carry = (ring: Ring): Ring => ring.map((corner) => add(corner, by));
  return {
    standing,
    farthest: { ...farthest, at: add(farthest.at, by) },
    outOfReach: outOfReach.map(({ outer, holes }) => ({ outer: carry(outer), holes: holes.map(carry) })),
    outOfReachAreaMm2,
  };
}

/** The soil of a bed that is farther than `reach` mm from every one of some stretches of its edge. */
export function soilBeyond(
  bed: Bed,
  standing: readonly Stretch[],
  reach: number,
): {
  standing: readonly Stretch[];
  farthest: Farthest;
  outOfReach: readonly Region[];
  outOfReachAreaMm2: number;
} {
  const inset = insetOf(bed, standing, reach);
  // What is farthest lies out of reach if anything does: less ground to search than all the soil.
  const ground = inset ? [inset.chorded] : frameOf(bed).inside;
  const farthest: Farthest = farthestFrom(ground, standing) ?? { at: bed.at, distance: 0 };
  if (farthest.distance <= reach + SAME_LENGTH)
    return { standing, farthest, outOfReach: [], outOfReachAreaMm2: 0 };
  const rings = inset ? [inset.ring] : ringsBeyond(bed, standing, reach);
  const areas = rings.map(signedArea);
  return {
    standing,
    farthest,
    outOfReach: regionsOf(
      rings.filter((_, i) => Math.abs(areas[i]!) > HAIR),
      contains,
    ),
    outOfReachAreaMm2: areas.reduce((sum, area) => sum + area, 0),
  };
}

/** Open all round, what is left is the bed drawn in by the reach, and by no less than twice a mitred wall. */
const isDrawnIn = ({ outside, wallThickness }: Frame, standing: readonly Stretch[], reach: number): boolean =>
  isAllRound(standing, outside) && reach > 2 * wallThickness;

/** What is left, where it is plain to tell without clipping. */
function insetOf(bed: Bed, standing: readonly Stretch[], reach: number): Inset | null {
  const frame = frameOf(bed);
  return isDrawnIn(frame, standing, reach) ? plainInset(frame.outside, reach) : null;
}

function ringsBeyond(bed: Bed, standing: readonly Stretch[], reach: number): readonly Ring[] {
  const frame = frameOf(bed);
  const { outside, inside } = frame;
  if (isDrawnIn(frame, standing, reach)) return offset([outside], -reach, "round");
  const corners = inside.flat();
  const bands = standing.flatMap((stretch) => bandsAbout(stretch, reach, corners));
  return bands.length > 0 ? difference(inside, bands) : inside;
}

function isAllRound([only, another]: readonly Stretch[], outside: Ring): boolean {
  if (!only || another || only.length !== outside.length + 1) return false;
  const [start, end] = [only[0]!, only.at(-1)!];
  return start[0] === end[0] && start[1] === end[1];
}

/** Where two reaches just meet, clipping leaves hairs a thousandth of a millimetre thin: nothing to draw. */
const HAIR = 1;
