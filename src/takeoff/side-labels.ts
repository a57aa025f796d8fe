import { say } from "../words/say.ts";
import type { Side } from "./sides.ts";

/** What pieces of a wall and its rail are called on the cut plan. */

export function sideLabel(name: string, called: Side["called"]): string {
  if (called === "side") return say`${name}, side`;
  return called === "end" ? say`${name}, end` : say`${name}, round`;
}

/** A piece of a side that is longer than any board. */
export function partLabel(name: string, called: Side["called"]): string {
  if (called === "side") return say`${name}, part of side`;
  return called === "end" ? say`${name}, part of end` : say`${name}, part of round`;
}

export function railLabel(name: string, called: Side["called"]): string {
  if (called === "side") return say`${name}, rail on side`;
  return called === "end" ? say`${name}, rail on end` : say`${name}, rail on round`;
}

export function partRailLabel(name: string, called: Side["called"]): string {
  if (called === "side") return say`${name}, rail on part of side`;
  return called === "end" ? say`${name}, rail on part of end` : say`${name}, rail on part of round`;
}
