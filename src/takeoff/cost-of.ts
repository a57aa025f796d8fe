import type { Garden } from "../garden/garden.ts";
import type { Op } from "../garden/op.ts";
import { applyOps } from "../garden/operations.ts";
import { takeoff } from "./takeoff.ts";

const totals = new WeakMap<Garden, number>();

function totalOf(garden: Garden): number {
  let known = totals.get(garden);
  if (known === undefined) {
    known = takeoff(garden).total;
    totals.set(garden, known);
  }
  return known;
}

/**
 * What these changes add to the takeoff's total, in the garden's currency; below 0 where they save. Only the things
 * changed are counted anew, and only what is cut or loaded differently is planned anew.
 * @returns null where the changes cannot be made
 */
export function costOf(garden: Garden, ops: readonly Op[]): number | null {
  let changed: Garden;
  try {
    changed = applyOps(garden, ops);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
  return Math.round((totalOf(changed) - totalOf(garden)) * 100) / 100;
}
