import type { Bed, BedWall } from "../garden/kinds/bed.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import { formatVolume } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { INCH, type Units } from "../units/length.ts";
import { say } from "../words/say.ts";
import { counted } from "./counted.ts";

import type { Settings } from "./settings.ts";
import type { Side } from "./sides.ts";
import type { Standing } from "./standing.ts";
import { midStakes } from "./structure.ts";

/** What holds a frame of boards up: so many, so long, and why. Lengths in mm. */
export interface Support {
  readonly count: number;
  readonly length: number;
  /** Null where there are none. */
  readonly why: string | null;
}

export interface FrameFacts {
  readonly bed: Bed;
  readonly wall: Extract<BedWall, { made: "boards" }>;
  /** Of the whole wall. */
  readonly height: number;
  /** Timbers that stand on one another and need neither posts nor stakes. */
  readonly heavy: boolean;
  readonly sides: readonly Side[];
  readonly corners: number;
  /** Places where a side is joined end to end. */
  readonly joints: number;
  readonly standing: Standing;
}

/** A stake is driven this far below the ground, at least (common practice: 12 in). */
const IN_GROUND = 12 * INCH;
const STAKE_LENGTHS = {
  us: [24, 36, 48, 60].map((inches) => inches * INCH),
  metric: [600, 900, 1200, 1500],
} as const;

/** Corner posts: 4x4, or 75 x 75 mm. Common practice. */
export const POST = { us: "4x4", metric: "75x75" } as const;

const NONE: Support = { count: 0, length: 0, why: null };

/**
 * Posts in the corners, where they are wanted, and at each joint. On a frame that is raised they are set in any case,
 * as high as the old courses and the new: they carry the next frame.
 */
export function postsOf(
  { bed, wall, height, heavy, corners, joints, standing }: FrameFacts,
  units: Units,
): Support {
  if (heavy || standing.coursesNew === 0) return NONE;
  const raised = standing.courses > 0;
  const inCorners = wall.cornerPosts || raised || bed.legs !== null ? corners : 0;
  const count = inCorners + joints;
  if (count === 0) return NONE;
  const square = boardSize(POST[units])?.height ?? 0;
  const inSoil = (count * square ** 2 * Math.max(0, height - bed.fill.belowRim)) / 1e6;
  const why = [
    ...(inCorners > 0
      ? [say`${inCorners} in the corners${raised ? say`, up both old and new courses` : ""}`]
      : []),
    ...(joints > 0 ? [say`${joints} where boards are joined end to end`] : []),
    ...(bed.legs === null ? [] : [say`${formatShort(bed.legs, units)} of leg below the box`]),
    say`inside, where they take ${formatVolume(inSoil, units)} of the soil, which the fill does not count off`,
  ].join(", ");
  return { count, length: height + (bed.legs ?? 0), why };
}

/** Stakes along sides that are longer than one span; all of them anew where a frame is raised, for they must be taller. */
export function stakesOf(
  { bed, wall, height, heavy, sides, standing }: FrameFacts,
  settings: Settings,
): Support {
  const braced = wall.bracing !== "none" && bed.legs === null && !heavy && standing.coursesNew > 0;
  if (!braced) return NONE;
  const { units, stakeEvery } = settings;
  const staked = sides.filter((side) => stakesOn(side, settings) > 0);
  const count = staked.reduce((sum, side) => sum + stakesOn(side, settings), 0);
  if (count === 0) return NONE;
  const longest = staked.reduce((a, b) => (b.outside > a.outside ? b : a));
  const { spacing } = midStakes(longest.outside, stakeEvery);
  const why = say`${counted(staked.length, "side")} longer than ${formatShort(stakeEvery, units)}: no span over ${formatShort(stakeEvery, units)}, so the longest, ${formatShort(longest.outside, units)}, is held every ${formatShort(spacing, units)}`;
  return { count, length: stakeLength(height, settings), why };
}

/** One tie from each stake of a long side to the one across, once the soil is deep enough to push the wall out. */
export function tiesOf(
  { bed, wall, height, sides, standing }: FrameFacts,
  stakes: Support,
  settings: Settings,
): Support {
  const soilDepth = Math.max(0, height - bed.fill.belowRim);
  const { units, tiesFrom } = settings;
  const tied = wall.bracing === "stakes-and-ties" && standing.coursesNew > 0 && soilDepth >= tiesFrom - 0.5;
  if (!tied) return NONE;
  const along = sides.filter(({ called }) => called !== "end");
  const stakesAlong = along.reduce((sum, side) => sum + stakesOn(side, settings), 0);
  const count = Math.max(1, Math.ceil(stakesAlong / 2));
  const why = say`${formatShort(soilDepth, units)} of soil, ties from ${formatShort(tiesFrom, units)}; ${stakes.count > 0 ? say`one from each stake of a long side to the one across` : say`one across the middle`}`;
  return { count, length: 0, why };
}

const stakesOn = (side: Side, { stakeEvery }: Settings): number => midStakes(side.outside, stakeEvery).count;

function stakeLength(height: number, { units }: Settings): number {
  const sold = STAKE_LENGTHS[units];
  return sold.find((length) => length >= height + IN_GROUND) ?? sold[sold.length - 1]!;
}
