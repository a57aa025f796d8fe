import { practice, type Source } from "../garden/source.ts";
import type { Point } from "../geometry/types.ts";
import { FOOT } from "../units/length.ts";
import type { Header } from "./bed-header.ts";
import type { Main } from "./garden-main.ts";
import { jointsOf } from "./joints.ts";
import type { BedDrip, DripZone, Fitting, FittingKey } from "./types.ts";

export const FITTINGS_SOURCE: Source = practice(
  "at the tap a timer, vacuum breaker, filter, pressure regulator and tubing adapter; tees where tubing forks, elbows at sharp bends and over the rim, an end cap on each line, a stake every 3 ft",
);

/** Tubing is held down this often, mm. */
const HELD_EVERY = 3 * FOOT;
/** Up the wall and over the rim: one at each edge of it. The one at the foot is a joint of the main. */
const ELBOWS_AT_RIM = 2;

interface FittedBed {
  readonly drip: BedDrip;
  /** In the bed's own frame, as joints do not mind where it stands. */
  readonly header: Header;
}

/** All that the main and the lines of beds are put together with; what the tap has already is left out. */
export function fittingsOf(
  main: Main,
  beds: readonly FittedBed[],
  zones: readonly DripZone[],
): readonly Fitting[] {
  if (beds.length === 0) return [];
  const heads = beds.flatMap(({ drip }): Point[] => (drip.head ? [drip.head] : []));
  const onMain = jointsOf(main.runs, heads);
  const atTap: Fitting[] = (["timer", "vacuum-breaker", "filter", "regulator", "adapter"] as const)
    .filter((key) => key !== "vacuum-breaker" || !main.tap?.backflow)
    .map((key) => ({ key, count: 1, bedId: null }));
  const along: Fitting[] = [
    { key: "tee", count: onMain.tees, bedId: null },
    { key: "elbow", count: onMain.elbows, bedId: null },
    { key: "hold-down", count: holdDowns(main.length), bedId: null },
  ];
  const inBeds = beds.flatMap((bed) => ofBed(bed, zones));
  return [...atTap, ...along, ...inBeds].filter(({ count }) => count > 0);
}

const holdDowns = (length: number): number => Math.ceil(length / HELD_EVERY - 1e-6);

function ofBed({ drip, header }: FittedBed, zones: readonly DripZone[]): Fitting[] {
  const heads = header.lines.map(({ points }) => points[0]!);
  const { tees, elbows } = jointsOf(header.runs, [header.entry, ...heads]);
  // With one zone the timer at the tap does it; with several each part of a bed is opened by itself.
  const valves = zones.length > 1 ? zones.filter(({ bedIds }) => bedIds.includes(drip.bedId)).length : 0;
  const counts: readonly (readonly [FittingKey, number])[] = [
    ["valve", valves],
    ["tee", tees],
    ["elbow", elbows + (drip.head ? ELBOWS_AT_RIM : 0)],
    ["end-cap", header.lines.length],
    ["hold-down", holdDowns(drip.length + drip.headerLength)],
  ];
  return counts.map(([key, count]) => ({ key, count, bedId: drip.bedId }));
}
