import { boundsOf } from "../geometry/ring.ts";
import type { Box, Point } from "../geometry/types.ts";
import { turnedAbout } from "../geometry/vector.ts";
import { POINT, textWidth } from "./lettering.ts";
import type { Mark } from "./types.ts";

/** Letters reach so much of their size above and below the line they stand on. */
const RISE = 0.8;
const DROP = 0.25;

/**
 * The box round everything that marks draw, mm.
 * @throws RangeError for no marks
 */
export const boundsOfMarks = (marks: readonly Mark[]): Box => boundsOf(marks.flatMap(cornersOf));

function cornersOf(mark: Mark): readonly Point[] {
  switch (mark.draw) {
    case "line":
      return mark.points.flatMap((point) => square(point, mark.pen / 2));
    case "grade":
      return square(mark.at, mark.size / 2);
    case "text": {
      const [x, y] = mark.at;
      const width = textWidth(mark.text, mark.pt, mark.weight);
      const left = x - { start: 0, middle: width / 2, end: width }[mark.anchor];
      const [top, bottom] = [y - RISE * mark.pt * POINT, y + DROP * mark.pt * POINT];
      const corners: readonly Point[] = [
        [left, top],
        [left + width, top],
        [left + width, bottom],
        [left, bottom],
      ];
      return corners.map((corner) => turnedAbout(corner, mark.at, mark.turn ?? 0));
    }
    default: {
      const never: never = mark;
      throw new RangeError(`unknown mark ${JSON.stringify(never)}`);
    }
  }
}

const square = ([x, y]: Point, half: number): readonly Point[] => [
  [x - half, y - half],
  [x + half, y + half],
];
