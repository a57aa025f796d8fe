import type { Point } from "../../src/index.ts";
import type { Label } from "./label.ts";

/** Ground that lettering takes, turned about its middle, px. */
export type Lettered = Pick<Label, "at" | "turn" | "width" | "height">;

type Piece = readonly [Point, Point];
type Span = readonly [number, number];

/** Lines stop short of letters by so much, px. */
const CLEAR = 2;

/** A line as drawing practice breaks it where it would run through lettering: what is left of it, piece by piece. */
export function brokenLine(line: readonly Point[], places: readonly Lettered[]): readonly Piece[] {
  return line.slice(1).flatMap((to, i) => left([line[i]!, to], places));
}

export const isLettered = (point: Point, places: readonly Lettered[]): boolean =>
  places.some((place) => spanIn([point, point], place) !== null);

function left([from, to]: Piece, places: readonly Lettered[]): readonly Piece[] {
  const spans = places
    .map((place) => spanIn([from, to], place))
    .filter((span) => span !== null)
    .toSorted(([a], [b]) => a - b);
  const pieces: Piece[] = [];
  const along = (share: number): Point => [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ];
  let done = 0;
  for (const [begin, end] of spans) {
    if (begin > done) pieces.push([along(done), along(begin)]);
    done = Math.max(done, end);
  }
  if (done < 1) pieces.push([along(done), to]);
  return pieces;
}

/** Which part of a straight piece lies in a place, from 0 to 1 (Liang and Barsky 1984); null for none of it. */
function spanIn([from, to]: Piece, { at, turn, width, height }: Lettered): Span | null {
  const angle = (-turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const own = ([x, y]: Point): Point => [
    (x - at[0]) * cos - (y - at[1]) * sin,
    (x - at[0]) * sin + (y - at[1]) * cos,
  ];
  const [a, b] = [own(from), own(to)];
  const halves = [width / 2 + CLEAR, height / 2 + CLEAR];
  let [begin, end] = [0, 1];
  for (const axis of [0, 1] as const) {
    const [half, run] = [halves[axis]!, b[axis] - a[axis]];
    if (run === 0) {
      if (Math.abs(a[axis]) > half) return null;
      continue;
    }
    const [one, other] = [(-half - a[axis]) / run, (half - a[axis]) / run];
    begin = Math.max(begin, Math.min(one, other));
    end = Math.min(end, Math.max(one, other));
  }
  return begin <= end ? [begin, end] : null;
}
