import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { boxOf, gapBetween } from "../geometry/gap.ts";
import type { Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { gapsFrom } from "./gaps.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { Gap } from "./types.ts";

export interface GapWishes {
  /** What a path beside a bed has to be wide, mm. */
  readonly asked: number;
  /** Up to this a gap is a joint, not a path, mm. */
  readonly together: number;
}

type Ground = Pick<Garden, "items" | "yard">;

/** Those of some gaps that are too wide for a joint and too narrow for a path. */
export function narrowGaps(gaps: readonly Gap[], garden: Ground, { asked, together }: GapWishes): Gap[] {
  return gaps.filter(
    (gap) =>
      gap.width > together + SAME_LENGTH && gap.width < asked - SAME_LENGTH && !isFilled(gap, gaps, garden),
  );
}

/** The narrow gaps of one bed, itself the first of each pair. */
export const narrowGapsFrom = (id: ItemId, garden: Ground, wishes: GapWishes): Gap[] =>
  narrowGaps(gapsFrom(id, garden), garden, wishes);

/**
 * Whether something else stands in the gap: between a bed and the yard's outline a fence, between two rows the row in
 * the middle. Then there are two gaps, and each has its own say.
 */
function isFilled(gap: Gap, gaps: readonly Gap[], garden: Ground): boolean {
  const { between, width, from, to } = gap;
  const { obstacles, near } = surroundingsOf(garden);
  const line: Ring = [from, to];
  return near(boxOf(line), 0).some((i) => {
    const { id, ring } = obstacles[i]!;
    if (between.includes(id) || gapBetween(line, ring).width > 0) return false;
    // Where a fence meets a wall, the corner between them is as near to both: the first to be told counts.
    const own = gaps.find((other) => other.between.includes(id) && other.between.includes(between[0]));
    return own !== undefined && (own.width < width || gaps.indexOf(own) < gaps.indexOf(gap));
  });
}
