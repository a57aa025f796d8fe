import { routeGround } from "../access/route-ground.ts";
import { offset } from "../geometry/clip.ts";
import { contains, signedArea } from "../geometry/ring.ts";
import { nearestOnSegment } from "../geometry/segment.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import type { BedLines, LaidLine } from "./bed-lines.ts";
import { lengthOf } from "./bed-lines.ts";
import { pipeTree } from "./pipe-tree.ts";

/** What joins the lines of a bed to the place where water comes into it, in the bed's own frame. */
export interface Header {
  /** The place, within the soil. */
  readonly entry: Point;
  readonly runs: readonly (readonly Point[])[];
  readonly length: number;
  /** Pipe from the entry to the farthest head of a line. */
  readonly farthest: number;
  /** The lines, each from its head. */
  readonly lines: readonly LaidLine[];
}

/** The header keeps so far off the soil's sides, mm: half of its own thickness. */
const OFF = 8;

/**
 * Joins the heads of a bed's lines by a tree of tubing within the soil, all at one end of the lines: the end at which that
 * takes less.
 * @param from where the water comes to the bed, in the bed's own frame; null where none does
 */
export function headerOf(bed: BedLines, from: Point | null): Header | null {
  const [first] = bed.lines;
  if (!first) return null;
  const entry = from ? intoSoil(bed.soil, from) : first.points[0]!;
  // Drawn lines begin where they are drawn to begin.
  const ways = bed.drawn ? [bed.lines] : [bed.lines, bed.lines.map(turnedRound)];
  const headers = ways.map((lines) => joined(bed.soil, entry, lines));
  return headers.reduce((best, header) => (header.length < best.length - 1e-6 ? header : best));
}

const turnedRound = (line: LaidLine): LaidLine => ({
  ...line,
  points: line.points.toReversed(),
  emitters: line.emitters.toReversed(),
});

function joined(soil: readonly Ring[], entry: Point, lines: readonly LaidLine[]): Header {
  const heads = lines.map(({ points }, id) => ({ id, ring: [points[0]!] }));
  const tree = treeIn(soil, entry, heads);
  // Soil that thick walls part, or a line drawn beyond it: straight across.
  const straight = tree.unreached.map((id) => [entry, lines[id]!.points[0]!] as const);
  const lengths = straight.map(lengthOf);
  return {
    entry,
    runs: [...tree.runs, ...straight],
    length: lengths.reduce((sum, length) => sum + length, tree.length),
    farthest: Math.max(0, ...lengths, ...[...tree.heads.values()].map(({ along }) => along)),
    lines,
  };
}

function treeIn(
  soil: readonly Ring[],
  entry: Point,
  heads: readonly { readonly id: number; readonly ring: Ring }[],
) {
  const outer = soil.find((ring) => signedArea(ring) > 0 && contains(ring, entry));
  const none = {
    runs: [],
    length: 0,
    heads: new Map<number, { along: number }>(),
    unreached: heads.map(({ id }) => id),
  };
  if (!outer) return none;
  const holes = soil.filter((ring) => signedArea(ring) < 0).map((ring) => ring.toReversed());
  return pipeTree(routeGround(outer, holes, OFF / 4), entry, heads);
}

/** The nearest place in the soil, a little off its sides. */
function intoSoil(soil: readonly Ring[], from: Point): Point {
  const room = offset(soil, -OFF, "mitred");
  const sides = (room.length > 0 ? room : soil).flatMap((ring) =>
    ring.map((corner, i) => nearestOnSegment(from, corner, ring[(i + 1) % ring.length]!)),
  );
  return sides.reduce((best, at) => (distance(at, from) < distance(best, from) ? at : best));
}
