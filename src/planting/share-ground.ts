import { frameOf } from "../garden/frame.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Planting } from "../garden/plantings.ts";
import { difference } from "../geometry/clip.ts";
import type { Box, Ring } from "../geometry/types.ts";
import { clipToBox } from "./convex-cut.ts";
import { evenParts } from "./even-parts.ts";
import { lieOver } from "./standings.ts";
import type { Standing } from "./types.ts";
import { meetInTime } from "./year-day.ts";

/** The soil of a bed in its own frame. */
export const ownSoil = (bed: Bed): readonly Ring[] => frameOf({ ...bed, at: [0, 0], turn: 0 }).inside;

type Patch = NonNullable<Planting["patch"]>;

/** The sides of a patch, in the bed's own frame. */
export const patchBox = ({ at: [x, y], width, length }: Patch): Box => ({
  minX: x - width / 2,
  maxX: x + width / 2,
  minY: y - length / 2,
  maxY: y + length / 2,
});

/**
 * The ground each planting has, in the order of the list.
 *
 * A patch has its place within the soil; where patches of plantings that stand at the same time lie over one another, the
 * one that comes first in the list has the ground. Plantings without a patch share what those leave, in parts of the same
 * area along the longer side: as many parts as stand at the same time, and who comes later in the year takes over the part
 * of who has gone.
 */
export function shareGround(
  soil: readonly Ring[],
  along: "x" | "y",
  standings: readonly Standing[],
): readonly (readonly Ring[])[] {
  const grounds: (readonly Ring[])[] = standings.map(() => []);
  const placed = standings.filter(({ planting }) => planting.patch !== null);
  for (const standing of placed) {
    const taken = placed.filter(
      (other) =>
        other.index < standing.index &&
        meetInTime(other, standing) &&
        lieOver(other.planting, standing.planting),
    );
    const { patch } = standing.planting;
    const own = patch ? clipToBox(soil, patchBox(patch)) : [];
    const rings = taken.flatMap(({ index }) => grounds[index]!);
    grounds[standing.index] = rings.length > 0 ? difference(own, rings) : own;
  }
  for (const together of groupsInTime(standings.filter(({ planting }) => planting.patch === null))) {
    const taken = placed
      .filter((one) => together.some((other) => meetInTime(one, other)))
      .flatMap(({ index }) => grounds[index]!);
    const left = taken.length > 0 ? difference(soil, taken) : soil;
    const lanes = lanesOf(together);
    const parts = evenParts(left, along, Math.max(...lanes.values()) + 1);
    for (const [{ index }, lane] of lanes) grounds[index] = parts[lane]!;
  }
  return grounds;
}

/** Plantings that stand at the same time, and those that stand at the same time as one of them, and so on. */
function groupsInTime(standings: readonly Standing[]): Standing[][] {
  const groups: Standing[][] = [];
  for (const standing of standings) {
    const met = groups.filter((group) => group.some((other) => meetInTime(other, standing)));
    for (const group of met) groups.splice(groups.indexOf(group), 1);
    groups.push([...met.flat(), standing]);
  }
  return groups;
}

/** The part each takes, 0 for the first: none that meet have the same, and they lie in the order of the list. */
function lanesOf(together: readonly Standing[]): Map<Standing, number> {
  const lanes: Standing[][] = [];
  for (const standing of together.toSorted((a, b) => a.from - b.from || a.index - b.index)) {
    const free = lanes.find((lane) => lane.every((other) => !meetInTime(other, standing)));
    if (free) free.push(standing);
    else lanes.push([standing]);
  }
  const first = (lane: readonly Standing[]) => Math.min(...lane.map(({ index }) => index));
  lanes.sort((a, b) => first(a) - first(b));
  return new Map(lanes.flatMap((lane, i) => lane.map((standing) => [standing, i] as const)));
}
