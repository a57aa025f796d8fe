import { expect } from "vitest";
import { applyOps, type Garden, type Op, readGarden, writeGarden } from "../../src/index.ts";

/** Freezes a value through and through, so that changing it in place throws. */
export function deepFrozen<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const key of Object.keys(value)) deepFrozen(Reflect.get(value, key));
  }
  return value;
}

/**
 * Applies changes as every change must be: to a frozen garden, which stays as it was; with a result that a file keeps
 * whole; the same after a trip through JSON.
 */
export function testOps(garden: Garden, ops: readonly Op[]): Garden {
  const before = JSON.stringify(garden);
  const after = applyOps(deepFrozen(garden), deepFrozen(ops));
  expect(JSON.stringify(garden), "the garden given is untouched").toBe(before);
  expect(readGarden(JSON.parse(writeGarden(after))), "a file keeps the result").toEqual(after);
  const sent: Op[] = JSON.parse(JSON.stringify(ops));
  expect(applyOps(garden, sent), "changes are plain data").toEqual(after);
  return after;
}

/** Applies a change that must be refused, and leave nothing behind. */
export function refusedOp(garden: Garden, op: Op): string {
  const before = JSON.stringify(garden);
  let message = "";
  expect(() => {
    try {
      applyOps(deepFrozen(garden), [op]);
    } catch (error) {
      message = error instanceof Error ? error.message : "";
      throw error;
    }
  }, JSON.stringify(op)).toThrow(RangeError);
  expect(JSON.stringify(garden)).toBe(before);
  return message;
}
