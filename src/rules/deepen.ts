import { frameOf } from "../garden/frame.ts";
import type { Bed, BedWall } from "../garden/kinds/bed.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH, type Units } from "../units/length.ts";
import { say, sayCount } from "../words/say.ts";
import type { WayOut } from "./rule.ts";
import { capital, numberWord } from "./words.ts";

const MOST_COURSES = 12;

/** The way to give a bed soil at least `depth` mm deep: filled higher where its wall allows, else a higher wall. */
export function waysToDeepen(bed: Bed, depth: number, units: Units): WayOut[] {
  const { wallHeight } = frameOf(bed);
  if (wallHeight >= depth - SAME_LENGTH) return [fillHigher(bed, Math.max(0, wallHeight - depth), units)];
  const wall = higherWall(bed.wall, depth + bed.fill.belowRim, units);
  return wall ? [{ label: wall.label, ops: [{ op: "set", id: bed.id, changes: { wall: wall.wall } }] }] : [];
}

function fillHigher(bed: Bed, belowRim: number, units: Units): WayOut {
  const label =
    belowRim < SAME_LENGTH
      ? say`Fill to the rim`
      : say`Fill to ${formatShort(belowRim, units)} below the rim`;
  return { label, ops: [{ op: "set", id: bed.id, changes: { fill: { ...bed.fill, belowRim } } }] };
}

function higherWall(wall: BedWall, height: number, units: Units): { label: string; wall: BedWall } | null {
  switch (wall.made) {
    case "boards":
      return moreCourses(wall, boardSize(wall.board)?.height ?? 0, height);
    case "masonry":
      return moreCourses(wall, wall.unitHeight, height);
    case "metal":
    case "fabric":
      return { label: say`Make the wall ${formatShort(height, units)} high`, wall: { ...wall, height } };
    case "mound":
      return { label: say`Make the mound ${formatShort(height, units)} high`, wall: { ...wall, height } };
    default: {
      const never: never = wall;
      throw new RangeError(`unknown wall ${JSON.stringify(never)}`);
    }
  }
}

function moreCourses<W extends BedWall & { readonly courses: number }>(
  wall: W,
  course: number,
  height: number,
) {
  if (course <= 0) return null;
  const courses = Math.ceil((height - SAME_LENGTH) / course);
  if (courses > MOST_COURSES) return null;
  const more = courses - wall.courses;
  return {
    label: sayCount(
      more,
      { one: "{{count}} course higher", other: "{{count}} courses higher" },
      { count: capital(numberWord(more)) },
    ),
    wall: { ...wall, courses },
  };
}
