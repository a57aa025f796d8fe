import type { Point } from "../geometry/types.ts";
import type { KeptOff, Solid } from "./kept-off.ts";
import { outermost, type Turn, type TurningGround } from "./route-turns.ts";
import { Shade } from "./shade.ts";

/** Straight walks from one place to the turns that may be seen from it. */
export interface Legs {
  /** Indices of the solids in sight: nothing else can be in the way of a leg. The nearest first, the yard last. */
  readonly inSight: readonly number[];
  /** Indices of the turns. */
  readonly to: readonly number[];
  /** mm */
  readonly length: readonly number[];
  /** Whether nothing is in the way: `UNTRIED` until somebody has looked, who writes it down here. */
  readonly clear: number[];
}

export const UNTRIED = 0;
export const CLEAR = 1;
export const BLOCKED = -1;

/** @param turn the turn that is at this place, if one is: a walk goes on without going through what is rounded there */
export function legsFrom(ground: TurningGround, at: Point, turn: Turn | null): Legs {
  const inSight = solidsInSight(ground, at);
  const to: number[] = [];
  const length: number[] = [];
  const clear: number[] = [];
  for (const solid of inSight) {
    for (const i of ground.turnsOf[solid]!) {
      const other = ground.turns[i]!;
      const dx = other.at[0] - at[0];
      const dy = other.at[1] - at[1];
      if (other === turn || !touches(other, dx, dy) || (turn && !touches(turn, dx, dy))) continue;
      to.push(i);
      length.push(Math.sqrt(dx * dx + dy * dy));
      clear.push(UNTRIED);
    }
  }
  return { inSight, to, length, clear };
}

/** Whether a line passes a turn without going through what is rounded: both sides lie to one side of it. */
function touches({ before, after }: Turn, dx: number, dy: number): boolean {
  const slack = 1e-9 * (Math.abs(dx) + Math.abs(dy));
  const back = dy * before[0] - dx * before[1];
  const on = dx * after[1] - dy * after[0];
  return (back >= -slack && on >= -slack) || (back <= slack && on <= slack);
}

/**
 * The solids that can be seen from a place, or nearly: those that lie all in the shade of nearer ones are left out. What
 * is in the shade is in nobody's way either, for whatever shades it is met first.
 */
function solidsInSight({ solids, half }: KeptOff, [x, y]: Point): number[] {
  const away: number[] = [];
  const nearest: number[] = [];
  const order: number[] = [];
  for (let i = 0; i < solids.length; i++) {
    const solid = solids[i]!;
    const dx = solid.x - x;
    const dy = solid.y - y;
    const far = Math.sqrt(dx * dx + dy * dy);
    away.push(far);
    nearest.push(far - outermost(solid, half));
    if (!solid.isYard) order.push(i);
  }
  order.sort((a, b) => nearest[a]! - nearest[b]!);
  const shade = new Shade();
  const found: number[] = [];
  // Those that throw their shade only on what lies all beyond them, and have not come to it yet.
  const waiting: Shadow[] = [];
  for (const i of order) {
    for (let k = waiting.length - 1; k >= 0; k--) {
      const { from, to, farthest } = waiting[k]!;
      if (farthest > nearest[i]!) continue;
      shade.add(from, to);
      waiting[k] = waiting.at(-1)!;
      waiting.pop();
    }
    const solid = solids[i]!;
    if (nearest[i]! > 0) {
      const middle = Math.atan2(solid.y - y, solid.x - x);
      const spread = Math.asin(outermost(solid, half) / away[i]!);
      if (shade.covers(middle - spread, middle + spread)) continue;
    }
    found.push(i);
    waiting.push(shadowOf(solid, away[i]!, x, y));
  }
  for (let i = 0; i < solids.length; i++) if (solids[i]!.isYard) found.push(i);
  return found;
}

/** The directions, radians, in which a ring is met from a place, and how far off the last of it is. */
interface Shadow {
  readonly from: number;
  readonly to: number;
  readonly farthest: number;
}

/** Of a round, some corners do: the chords between them lie in it. */
const CORNERS = 16;

function shadowOf({ ring, radius }: Solid, away: number, x: number, y: number): Shadow {
  const every = Math.max(1, Math.floor(ring.length / CORNERS));
  let previous = Math.atan2(ring[0]![1] - y, ring[0]![0] - x);
  // The direction is followed round the ring, so that it is met in every direction between the least and the greatest.
  let direction = previous;
  let [from, to] = [direction, direction];
  for (let i = every; i < ring.length; i += every) {
    const next = Math.atan2(ring[i]![1] - y, ring[i]![0] - x);
    let turn = next - previous;
    if (turn > Math.PI) turn -= 2 * Math.PI;
    else if (turn < -Math.PI) turn += 2 * Math.PI;
    direction += turn;
    previous = next;
    if (direction < from) from = direction;
    if (direction > to) to = direction;
  }
  return { from, to, farthest: away + radius };
}
