import { type Item, nameOf, type Op, type Point, say, subtract } from "../../../../src/index.ts";
import type { Desk, Gesture, Hand } from "../gesture.ts";
import { carriedBy } from "../onto-line.ts";
import { startPull } from "./pull.ts";

/** Turns are held to multiples of this with Shift, and drawn to them without it when near. */
export const TURN_STEP = 15;
const NEAR_STEP = 3;

/** Turns a thing about its own place, and the openings and taps that sit on it with it. */
export function startTurn(desk: Desk, item: Item, handle: Point, start: Hand): Gesture {
  const { garden } = desk.editor.getState();
  const along = carriedBy(garden, new Set([item]));
  const taken = angleOf(subtract(handle, item.at));
  return startPull(
    desk,
    {
      handle,
      held: [item.id],
      cursor: "grabbing",
      label: say`Turn ${nameOf(item)}`,
      pulledTo(to, hand) {
        const turn = heldTurn(item.turn + angleOf(subtract(to, item.at)) - taken, hand);
        const by = turn - item.turn;
        const ops: Op[] = [
          { op: "turn", id: item.id, by },
          ...along.map(({ id }): Op => ({ op: "turn", id, by, about: item.at })),
        ];
        return { ops, text: `${withinCircle(turn)}°` };
      },
    },
    start,
  );
}

/** The turn a hand means: whole degrees, and every 15th when near it; tenths of a degree with snapping off. */
export function heldTurn(degrees: number, hand: Pick<Hand, "free" | "even">): number {
  if (hand.free) return Math.round(degrees * 10) / 10;
  const step = Math.round(degrees / TURN_STEP) * TURN_STEP;
  return hand.even || Math.abs(degrees - step) <= NEAR_STEP ? step : Math.round(degrees);
}

const angleOf = ([x, y]: Point): number => (Math.atan2(y, x) * 180) / Math.PI;
const withinCircle = (degrees: number): number =>
  Math.round(((((degrees % 360) + 360) % 360) + Number.EPSILON) * 10) / 10;
