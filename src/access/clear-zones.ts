import type { Door, Gate } from "../garden/kinds/opening.ts";
import type { Tap } from "../garden/kinds/tap.ts";
import { union } from "../geometry/clip.ts";
import { ROUND_CHORDS } from "../geometry/shape.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { add, placed } from "../geometry/vector.ts";

const QUARTER_CHORDS = ROUND_CHORDS / 4;

/**
 * Ground to be kept clear before a gate or door: as far as asked for in front of the opening, and where the leaf
 * swings. A gate is walked through from both sides; behind a door is the house.
 * @param clear depth in front of the opening, mm
 * @returns clockwise rings, on the plan
 */
export function openingZone(opening: Gate | Door, clear: number): Ring[] {
  const half = opening.width / 2;
  const front: Ring = [
    [-half, 0],
    [half, 0],
    [half, clear],
    [-half, clear],
  ];
  const back = front.map(([x, y]): Point => [x, y - clear]);
  const inFront = opening.kind === "gate" ? [front, back] : [front];
  const leaf = leafZone(opening);
  const zone = leaf ? union([...inFront, leaf]) : union(inFront);
  return zone.map((ring) => ring.map((corner) => placed(corner, opening.at, opening.turn)));
}

/** The quarter round that the leaf sweeps, in the opening's own frame; null where it slides or swings into the house. */
function leafZone({ kind, width, hinge, swing }: Gate | Door): Ring | null {
  if (swing === "sliding" || (kind === "door" && swing === "in")) return null;
  const side = hinge === "left" ? 1 : -1;
  const towards = swing === "out" ? 1 : -1;
  const pivot: Point = [(-side * width) / 2, 0];
  const sweep = Array.from({ length: QUARTER_CHORDS + 1 }, (_, i): Point => {
    const angle = (i / QUARTER_CHORDS) * (Math.PI / 2);
    return [pivot[0] + side * width * Math.cos(angle), towards * width * Math.sin(angle)];
  });
  const quarter = [pivot, ...sweep];
  // Clockwise as seen: mirrored once it runs the other way round.
  return side * towards > 0 ? quarter : quarter.toReversed();
}

const rounds = new WeakMap<Point, Map<number, Ring>>();

/**
 * The ground within `radius` mm of a point, drawn outside the true round so that what clears it clears the round. The
 * same ring for the same point and radius.
 */
export function roundZone(at: Point, radius: number): Ring {
  const byRadius = rounds.get(at) ?? new Map<number, Ring>();
  rounds.set(at, byRadius);
  let ring = byRadius.get(radius);
  if (!ring) {
    const outer = radius / Math.cos(Math.PI / ROUND_CHORDS);
    ring = Array.from({ length: ROUND_CHORDS }, (_, i): Point => {
      const angle = ((2 * i + 1) / ROUND_CHORDS) * Math.PI;
      return add(at, [outer * Math.cos(angle), outer * Math.sin(angle)]);
    });
    byRadius.set(radius, ring);
  }
  return ring;
}

/** Ground to be kept clear round a tap; none where nothing is asked for. */
export const tapZone = (tap: Tap, clear: number): Ring[] => (clear > 0 ? [roundZone(tap.at, clear)] : []);
