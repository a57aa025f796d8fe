import type { Box, Point } from "../../src/index.ts";
import { overlap } from "./label.ts";
import { MARK_RADIUS } from "./snag-marks.ts";

/** Parts of a line's length at which its words may stand, the best first. */
const PLACES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88];

/**
 * The box for words on a line, px: as near to its middle as it can stand clear of what is taken, or at its middle
 * where it cannot.
 */
export function clearPlace(
  line: readonly Point[],
  width: number,
  height: number,
  taken: readonly Box[],
): Box {
  const boxes = PLACES.map((part) => boxAbout(alongLine(line, part), width, height));
  return boxes.find((box) => taken.every((other) => !overlap(box, other))) ?? boxes[0]!;
}

/** The point at a part of a line's length, 0..1. */
export function alongLine(line: readonly Point[], part: number): Point {
  const lengths = line.slice(1).map(([x, y], i) => Math.hypot(x - line[i]![0], y - line[i]![1]));
  let left = lengths.reduce((sum, length) => sum + length, 0) * part;
  for (const [i, length] of lengths.entries()) {
    if (left <= length && length > 0) {
      const [[ax, ay], [bx, by]] = [line[i]!, line[i + 1]!];
      return [ax + ((bx - ax) * left) / length, ay + ((by - ay) * left) / length];
    }
    left -= length;
  }
  return line.at(-1) ?? [0, 0];
}

const boxAbout = ([x, y]: Point, width: number, height: number): Box => ({
  minX: x - width / 2,
  minY: y - height / 2,
  maxX: x + width / 2,
  maxY: y + height / 2,
});

export const markBox = (pixel: Point): Box => boxAbout(pixel, 2 * MARK_RADIUS, 2 * MARK_RADIUS);
