import { difference, offset, within } from "../geometry/clip.ts";
import { boundsOf, centroid, signedArea } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";

/** Lines keep this far from the wall where there is room, mm. */
const OFF_THE_WALL = 50;
/** A piece of soil smaller than this gets no line of its own, mm². */
const CRUMB = 50 ** 2;
const MOST_ROUNDS = 8;

/** A drip line, from its lesser end in the direction it runs to its greater. */
export type Line = readonly [Point, Point];

/**
 * Straight drip lines over soil of any outline, all in one direction and evenly apart: no farther from line to line than
 * `apart` and half of that from the soil's sides. Where an arm of the soil lies between two lines it gets one of its own, so
 * that no soil is farther from a line than `apart`. All of each line lies in the soil.
 *
 * @param soil outer rings clockwise, holes the other way round, mm
 * @param apart mm, above 0
 * @returns in the order in which one comes to them across their direction; none where there is no soil
 */
export function layLines(soil: readonly Ring[], apart: number, runs: "x" | "y"): readonly Line[] {
  const across: readonly Ring[] =
    runs === "x" ? soil : soil.map((ring) => ring.map(([x, y]): Point => [y, x]));
  const lines = laidAlongX(runs === "x" ? across : across.map((ring) => ring.toReversed()), apart);
  return runs === "x"
    ? lines
    : lines.map(
        ([[ax, ay], [bx, by]]): Line => [
          [ay, ax],
          [by, bx],
        ],
      );
}

function laidAlongX(soil: readonly Ring[], apart: number): Line[] {
  const room = roomFor(soil);
  if (room.length === 0) return [];
  const { minY, maxY } = boundsOf(soil.flat());
  const count = Math.max(1, Math.ceil((maxY - minY) / apart - 1e-6));
  const heights = Array.from({ length: count }, (_, i) => minY + ((i + 0.5) * (maxY - minY)) / count);
  let lines = heights.flatMap((y) => across(room, y));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const dry = difference(soil, lines.length > 0 ? within(lines, apart) : []).filter(
      (ring) => signedArea(ring) > CRUMB,
    );
    if (dry.length === 0) break;
    const more = dry.flatMap((ring) => through(ring, room, soil));
    if (more.length === 0) break;
    lines = [...lines, ...more];
  }
  return lines.toSorted(([a], [b]) => a[1] - b[1] || a[0] - b[0]);
}

/** Where lines may lie: off the wall, as far as that leaves room for any. */
function roomFor(soil: readonly Ring[]): readonly Ring[] {
  for (let off = OFF_THE_WALL; off >= 1; off /= 2) {
    const room = offset(soil, -off, "mitred");
    if (room.length > 0) return room;
  }
  return [];
}

/** A line through the middle of a dry piece; off the wall where that can be. */
function through(dry: Ring, room: readonly Ring[], soil: readonly Ring[]): Line[] {
  const [x, y] = centroid(dry);
  const isHere = ([[from], [to]]: Line) => from <= x && x <= to;
  const free = across(room, y).filter(isHere);
  const narrow = free.length > 0 ? free : across(soil, y).filter(isHere).map(shortened);
  const { minX, maxX } = boundsOf(dry);
  // Only as long as the soil is dry: the rest of this height has a line near by.
  return narrow.map(
    ([[from], [to]]): Line => [
      [Math.max(from, minX), y],
      [Math.min(to, maxX), y],
    ],
  );
}

const shortened = ([[from, y], [to]]: Line): Line => {
  const off = Math.min(OFF_THE_WALL, (to - from) / 4);
  return [
    [from + off, y],
    [to - off, y],
  ];
};

/** The pieces of a level line that lie within rings. */
function across(rings: readonly Ring[], y: number): Line[] {
  const met: number[] = [];
  for (const ring of rings) {
    let [ax, ay] = ring.at(-1)!;
    for (const [bx, by] of ring) {
      if (ay > y !== by > y) met.push(ax + ((y - ay) / (by - ay)) * (bx - ax));
      [ax, ay] = [bx, by];
    }
  }
  met.sort((a, b) => a - b);
  const lines: Line[] = [];
  for (let i = 0; i + 1 < met.length; i += 2) {
    if (met[i + 1]! - met[i]! > 1)
      lines.push([
        [met[i]!, y],
        [met[i + 1]!, y],
      ]);
  }
  return lines;
}

/**
 * Emitters of a line laid along points: evenly apart, with what is over left at both its ends; a line shorter than the
 * spacing has one in its middle.
 */
export function emittersAlong(points: readonly Point[], apart: number): readonly Point[] {
  const legs = points.slice(1).map((to, i) => ({
    from: points[i]!,
    to,
    long: Math.hypot(to[0] - points[i]![0], to[1] - points[i]![1]),
  }));
  const length = legs.reduce((sum, { long }) => sum + long, 0);
  const count = Math.floor(length / apart + 1e-9) + 1;
  const first = (length - (count - 1) * apart) / 2;
  const emitters: Point[] = [];
  let gone = 0;
  for (const { from, to, long } of legs) {
    for (
      let at = first + emitters.length * apart;
      emitters.length < count && at <= gone + long + 1e-6;
      at += apart
    ) {
      const share = long > 0 ? Math.min(1, (at - gone) / long) : 0;
      emitters.push([from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]);
    }
    gone += long;
  }
  return emitters;
}
