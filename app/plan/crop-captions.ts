import {
  type Box,
  boundsOf,
  capital,
  type ItemOf,
  type PlantedPatch,
  placed,
  type Ring,
  say,
  sayCount,
  type Units,
} from "../../src/index.ts";
import { cropsInShort, cropTitle, cropWordOf, spacingWords } from "../planting/crop-words.ts";
import type { View } from "../store/editor.ts";
import { type Label, type LabelLine, LEADING, labelBox, overlap, readable } from "./label.ts";
import { labelRooms, type Room } from "./label-room.ts";
import { LETTERS, type Letters, type Measure } from "./lettering.ts";
import { toScreen } from "./viewport.ts";

type Bed = ItemOf<"bed">;

const NAME: Letters = { ...LETTERS.size, weight: 600, colour: "leaf" };
const NOTE: Letters = { ...LETTERS.note, colour: "leaf" };
/** Room kept free at the ends of words, px. */
const PADDING = 3;
/** Fewer letters than this before the dots say nothing. */
const LEAST_LETTERS = 6;
/** Words keep this far from other words, px. */
const APART = 4;

/** Places for the words in their room, from its middle (0) to its sides (±1): the bed's own name is mostly in the middle. */
const PLACES: readonly (readonly [number, number])[] = [
  [0, 0],
  [0, -0.8],
  [0, 0.8],
  [-0.8, 0],
  [0.8, 0],
  [0, -1],
  [0, 1],
  [-1, 0],
  [1, 0],
  [-1, -1],
  [1, -1],
  [-1, 1],
  [1, 1],
];

/**
 * The captions of what is shown in a bed: crop and spacing, the crop alone, as much of its name as there is room for.
 * Where none of its patches has room for words, the bed says in one place what it holds.
 *
 * @param taken boxes of words that are there already, px
 */
export function cropCaptions(
  bed: Bed,
  patches: readonly PlantedPatch[],
  all: readonly PlantedPatch[],
  view: View,
  units: Units,
  taken: readonly Box[],
  measure: Measure,
): readonly Label[] {
  const written = [...taken];
  const labels: Label[] = [];
  const put = (label: Label | null) => {
    if (!label) return;
    labels.push(label);
    written.push(labelBox(label));
  };
  for (const patch of patches) {
    const rooms = patch.ground.map(roomIn);
    put(fitted(bed, rooms, wordings(patch, followerOf(patch, all), units), view, written, measure));
  }
  if (labels.length > 0 || patches.length === 0) return labels;
  const crops = [...new Set(patches.map(({ crop }) => crop))];
  const count =
    crops.length > 1 ? [sayCount(crops.length, { one: "{{count}} crop", other: "{{count}} crops" })] : [];
  const lines = [cropsInShort(crops), ...count].map((text) => [{ text: capital(text), letters: NOTE }]);
  put(fitted(bed, labelRooms(bed.shape), lines, view, written, measure));
  return labels;
}

/** What follows in the same ground once a patch is cleared: the next to be set there. */
function followerOf(patch: PlantedPatch, all: readonly PlantedPatch[]): PlantedPatch | null {
  const end = patch.standing.from + patch.standing.days;
  const wait = ({ standing }: PlantedPatch) => (((standing.from - end) % 365) + 365) % 365;
  const next = all
    .filter((other) => other !== patch && other.crop !== patch.crop && isSameGround(patch, other))
    .filter((other) => wait(other) + other.standing.days + patch.standing.days <= 365)
    .toSorted((a, b) => wait(a) - wait(b));
  // Round the year everything follows everything: only what comes after in the same year is told.
  return next.find(({ standing }) => standing.from > patch.standing.from) ?? null;
}

function isSameGround(a: PlantedPatch, b: PlantedPatch): boolean {
  const [first, second] = [a.ground[0], b.ground[0]];
  if (!first || !second) return false;
  const [one, two] = [boundsOf(first), boundsOf(second)];
  const across = Math.min(one.maxX, two.maxX) - Math.max(one.minX, two.minX);
  const down = Math.min(one.maxY, two.maxY) - Math.max(one.minY, two.minY);
  // A shared edge, or a corner of one in the other, is not the same ground.
  return across > 0 && down > 0 && across * down > 0.5 * Math.min(a.areaMm2, b.areaMm2);
}

/** What a caption may say, fullest first. */
function wordings(
  patch: PlantedPatch,
  next: PlantedPatch | null,
  units: Units,
): readonly (readonly LabelLine[])[] {
  const title = cropTitle(patch.crop);
  const name = { text: title, letters: NAME };
  const spacing = spacingWords(patch, units);
  const then = next ? [{ text: say`then ${cropWordOf(next.crop)}`, letters: NOTE }] : [];
  const inOne = { text: `${title} · ${spacing}`, letters: NAME };
  const short = { text: title, letters: { ...NAME, size: 11 } };
  return [
    ...(next ? [[inOne, ...then]] : []),
    [inOne],
    [name, { text: spacing, letters: NOTE }],
    [name],
    [short],
    ...clipped(title),
  ];
}

/** A name cut at its end, the longest first. */
function clipped(title: string): readonly (readonly LabelLine[])[] {
  const lengths = Array.from(
    { length: Math.max(0, title.length - 1 - LEAST_LETTERS) },
    (_, i) => title.length - 2 - i,
  );
  return lengths.map((length) => [
    { text: `${title.slice(0, length).trimEnd()}…`, letters: { ...NAME, size: 11 } },
  ]);
}

function fitted(
  { at, turn, trellis }: Bed,
  rooms: readonly Room[],
  wordings: readonly (readonly LabelLine[])[],
  view: View,
  taken: readonly Box[],
  measure: Measure,
): Label | null {
  for (const lines of wordings) {
    const width = Math.max(...lines.map(({ text, letters }) => measure(text, letters)));
    const height = lines.reduce((sum, { letters }) => sum + letters.size * LEADING, 0);
    for (const room of rooms) {
      for (const stance of stances(turn)) {
        const [w, h] = stance.upright ? [height, width] : [width, height];
        const slack = [room.width - (w + 2 * PADDING) / view.scale, room.length - (h + 2) / view.scale];
        if (slack[0]! < 0 || slack[1]! < 0) continue;
        for (const [px, py] of PLACES) {
          // A trellis stands along the upper or the left side.
          const [x, y] = trellis === null ? [px, py] : [-px, -py];
          const own = [room.centre[0] + (x * slack[0]!) / 2, room.centre[1] + (y * slack[1]!) / 2] as const;
          const label: Label = {
            lines,
            at: toScreen(view, placed(own, at, turn)),
            turn: stance.turn,
            width,
            height,
          };
          const box = labelBox(label);
          if (taken.every((other) => !overlap(kept(box), other))) return label;
        }
      }
    }
  }
  return null;
}

const kept = ({ minX, minY, maxX, maxY }: Box): Box => ({
  minX: minX - APART,
  minY: minY - APART / 2,
  maxX: maxX + APART,
  maxY: maxY + APART / 2,
});

/** The two ways words can lie in the bed's own frame, the more level one first. */
function stances(turn: number): readonly { readonly turn: number; readonly upright: boolean }[] {
  const along = { turn: readable(turn), upright: false };
  const over = { turn: readable(turn + 90), upright: true };
  return Math.abs(along.turn) <= Math.abs(over.turn) ? [along, over] : [over, along];
}

const rooms = new WeakMap<Ring, Room>();

/** The room for words in some ground; remembered by its ring. */
function roomIn(ring: Ring): Room {
  let room = rooms.get(ring);
  if (!room) {
    room = isUprightBox(ring) ? boxRoom(boundsOf(ring)) : labelRooms({ type: "polygon", points: ring })[0]!;
    rooms.set(ring, room);
  }
  return room;
}

const boxRoom = ({ minX, minY, maxX, maxY }: Box): Room => ({
  centre: [(minX + maxX) / 2, (minY + maxY) / 2],
  width: maxX - minX,
  length: maxY - minY,
});

/** Whether every edge is level or upright and there are four. */
const isUprightBox = (ring: Ring): boolean =>
  ring.length === 4 &&
  ring.every(([x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % 4]!;
    return Math.abs(x - nextX) < 0.01 || Math.abs(y - nextY) < 0.01;
  });
