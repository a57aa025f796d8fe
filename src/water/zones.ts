import { aboveZero, atLeastZero } from "./within.ts";

/** The drip lines of a bed, alike. */
export interface BedLines {
  readonly id: string;
  readonly lines: number;
  /** Of one line. */
  readonly lineLh: number;
}

/** What of a bed runs in a zone: all of its lines, or some where the bed asks more than a zone may take. */
export interface ZonePart {
  readonly id: string;
  readonly lines: number;
  readonly flowLh: number;
}

export interface Zone {
  readonly parts: readonly ZonePart[];
  readonly flowLh: number;
}

export interface ZonePlan {
  readonly zones: readonly Zone[];
  /** Beds of which a single line asks more than the tap can give. */
  readonly tooThirsty: readonly string[];
  /** True where no plan needs fewer zones with the beds split as they are. */
  readonly fewest: boolean;
}

/** Steps of the search after which the plan that is at hand is taken; gardens of twenty beds stay far below. */
const MOST_STEPS = 50_000;

/**
 * Shares beds out into zones that run one after another, in as few zones as the flow allows. A bed stays whole unless it
 * alone asks more than a zone may take.
 *
 * @param limitLh the most that a zone may take
 * @throws RangeError for no limit, no flow or a part of a line
 */
export function planZones(beds: readonly BedLines[], limitLh: number): ZonePlan {
  atLeastZero(limitLh, "the limit of a zone");
  const tooThirsty: string[] = [];
  const parts = beds.flatMap((bed) => {
    const split = splitBed(bed, limitLh);
    if (!split) tooThirsty.push(bed.id);
    return split ?? [];
  });
  const sorted = parts.toSorted((a, b) => b.flowLh - a.flowLh);
  const { zones, fewest } = fewestZones(sorted, limitLh);
  return {
    zones: zones.map((inZone) => ({ parts: inZone, flowLh: flowOf(inZone) })),
    tooThirsty,
    fewest,
  };
}

/** A billionth of the limit: what rounding adds. */
const fits = (flowLh: number, limitLh: number) => flowLh <= limitLh * (1 + 1e-9);
const flowOf = (parts: readonly ZonePart[]) => parts.reduce((sum, { flowLh }) => sum + flowLh, 0);

function splitBed({ id, lines, lineLh }: BedLines, limitLh: number): ZonePart[] | null {
  if (!(Number.isInteger(lines) && lines >= 1)) throw new RangeError(`no number of lines: ${lines}`);
  if (!fits(aboveZero(lineLh, "the flow of a line"), limitLh)) return null;
  const most = Math.max(1, Math.floor((limitLh / lineLh) * (1 + 1e-9)));
  const count = Math.ceil(lines / most);
  // Evenly, so that the parts of a bed run alike.
  return Array.from({ length: count }, (_, i) => {
    const own = Math.floor(((i + 1) * lines) / count) - Math.floor((i * lines) / count);
    return { id, lines: own, flowLh: own * lineLh };
  });
}

/** No plan has fewer: all flows have to pass, and of the parts from the largest down to each only so many go into one zone. */
function leastZones(sorted: readonly ZonePart[], limitLh: number): number {
  if (sorted.length === 0) return 0;
  const bySum = Math.ceil((flowOf(sorted) / limitLh) * (1 - 1e-9));
  const byCount = sorted.map(({ flowLh }, at) =>
    Math.ceil((at + 1) / Math.floor((limitLh / flowLh) * (1 + 1e-9))),
  );
  return Math.max(bySum, ...byCount);
}

/** First the greedy plan; if it uses more zones than there must be, every other way, until one is as few. */
function fewestZones(sorted: readonly ZonePart[], limitLh: number) {
  const least = leastZones(sorted, limitLh);
  let best = greedy(sorted, limitLh);
  let steps = 0;
  const open: ZonePart[][] = [];
  const place = (next: number): void => {
    if (best.length <= least || open.length >= best.length || steps++ > MOST_STEPS) return;
    const part = sorted[next];
    if (!part) {
      best = open.map((zone) => [...zone]);
      return;
    }
    const tried = new Set<number>();
    for (const zone of open) {
      const filled = flowOf(zone);
      // Zones as full as one that was tried lead to the same plans.
      if (tried.has(filled) || !fits(filled + part.flowLh, limitLh)) continue;
      tried.add(filled);
      zone.push(part);
      place(next + 1);
      zone.pop();
    }
    open.push([part]);
    place(next + 1);
    open.pop();
  };
  place(0);
  return { zones: best, fewest: best.length <= least || steps <= MOST_STEPS };
}

function greedy(sorted: readonly ZonePart[], limitLh: number): ZonePart[][] {
  const zones: ZonePart[][] = [];
  for (const part of sorted) {
    const zone = zones.find((open) => fits(flowOf(open) + part.flowLh, limitLh));
    if (zone) zone.push(part);
    else zones.push([part]);
  }
  return zones;
}
