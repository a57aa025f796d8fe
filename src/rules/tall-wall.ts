import { frameOf } from "../garden/frame.ts";
import type { BedWall } from "../garden/kinds/bed.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import { centroid } from "../geometry/ring.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH, type Units } from "../units/length.ts";
import { say, sayCount, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";
import { capital, numberWord } from "./words.ts";

/** Flags walls so tall that they are retaining walls, which somebody who knows local ground and code has to look at. */
export const tallWall = defineRule({
  id: "tall-wall",
  grade: "should",
  promise: word("No wall is so tall that it has to be designed."),
  why: word("Above this height wet soil can push a home-made wall over, and many places ask for a permit."),
  source: LIMITS.engineerFrom.source,
  limits: ["engineerFrom"],
  needs: ["beds", "limits", "units"],

  check({ beds, limits, units }) {
    const limit = limits.engineerFrom;
    return beds.flatMap((bed) => {
      const { wallHeight } = frameOf(bed);
      if (wallHeight <= limit + SAME_LENGTH) return [];
      const lower = lowerWall(bed.wall, limit, units);
      const [high, most] = [formatShort(wallHeight, units), formatShort(limit, units)];
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: wallHeight,
          limit,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: ${high} high, ask a professional`,
          detail: say`Above ${most} a wall that holds soil is designed, not guessed; local codes differ, so ask for yours.`,
          waysOut: lower
            ? [
                {
                  label: lower.label,
                  ops: [{ op: "set" as const, id: bed.id, changes: { wall: lower.wall } }],
                },
              ]
            : [],
        },
      ];
    });
  },
});

export function lowerWall(
  wall: BedWall,
  height: number,
  units: Units,
): { label: string; wall: BedWall } | null {
  switch (wall.made) {
    case "boards":
      return fewerCourses(wall, boardSize(wall.board)?.height ?? 0, height);
    case "masonry":
      return fewerCourses(wall, wall.unitHeight, height);
    case "metal":
    case "fabric":
    case "mound":
      return height > 0
        ? { label: say`Lower it to ${formatShort(height, units)}`, wall: { ...wall, height } }
        : null;
    default: {
      const never: never = wall;
      throw new RangeError(`unknown wall ${JSON.stringify(never)}`);
    }
  }
}

/** None where even one course is too high. */
function fewerCourses<W extends BedWall & { readonly courses: number }>(
  wall: W,
  course: number,
  height: number,
) {
  const courses = Math.floor((height + SAME_LENGTH) / course);
  if (!(courses >= 1)) return null;
  const less = wall.courses - courses;
  const label = sayCount(
    less,
    { one: "{{count}} course lower", other: "{{count}} courses lower" },
    { count: capital(numberWord(less)) },
  );
  return { label, wall: { ...wall, courses } };
}
