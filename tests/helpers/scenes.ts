import { gapBetween, overlaps } from "../../src/geometry/gap.ts";
import type { Garden, Item, ItemOf, Point, Ring } from "../../src/index.ts";
import { outlineOf } from "../../src/index.ts";
import { bed, door, fence, gardenWith, gate, house, tree } from "./garden-of.ts";

/**
 * Seeded gardens for laws and benches: a house with a door, a fence with a gate in it, and beds of every shape. The same
 * seed gives the same garden for ever.
 */

/** Pseudo-random numbers in [0, 1) that depend on nothing but the seed (the mulberry32 generator). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

type Bed = ItemOf<"bed">;
type Shape = Bed["shape"];

const between = (random: () => number, least: number, most: number) => least + random() * (most - least);

/** Six in ten are rectangles, half of those turned freely; the rest L, U, round and keyhole. Sizes vary about 8 x 4 ft. */
export function someBed(id: string, random: () => number, at: Point = [0, 0]): Bed {
  const pick = random();
  const free = between(random, 0, 360);
  const quarter = 90 * Math.floor(random() * 4);
  const turn = pick < 0.3 ? quarter : pick < 0.6 ? free : random() < 0.5 ? quarter : free;
  return bed(id, { shape: someShape(pick, random), at, turn });
}

function someShape(pick: number, random: () => number): Shape {
  const mm = (least: number, most: number) => Math.round(between(random, least, most));
  if (pick < 0.6) return { type: "rectangle", width: mm(900, 1500), length: mm(1500, 2600) };
  if (pick < 0.72) {
    return {
      type: "l",
      width: mm(1900, 2600),
      length: mm(1900, 2600),
      armWidth: mm(700, 1300),
      armLength: mm(700, 1300),
    };
  }
  if (pick < 0.84) {
    return {
      type: "u",
      width: mm(2200, 2900),
      length: mm(1600, 2300),
      bayWidth: mm(400, 1000),
      bayLength: mm(600, 1100),
    };
  }
  if (pick < 0.94) return { type: "oval", width: mm(900, 1700), length: mm(900, 1700) };
  return {
    type: "keyhole",
    diameter: mm(1800, 2600),
    slotWidth: mm(460, 700),
    middleDiameter: mm(720, 1000),
  };
}

/** Beds in rows, 2 to 4 ft apart, as gardeners set them out. */
export function rowsScene(count: number, seed: number): Garden {
  const random = seeded(seed);
  const columns = Math.max(1, Math.ceil(Math.sqrt(count * 0.7)));
  const pitch = 3800;
  const beds = Array.from({ length: count }, (_, i) => {
    const shift = (spread: number) => between(random, -spread, spread);
    const at: Point = [
      (i % columns) * pitch + pitch / 2 + shift(250),
      Math.floor(i / columns) * pitch + pitch / 2 + shift(250),
    ];
    return someBed(`bed-${i + 1}`, random, at);
  });
  return yardRound(beds, columns * pitch, Math.ceil(count / columns) * pitch);
}

/** Beds strewn about at random, at least 9 in apart, in a yard of about 8 by 7.5 ft for each. */
export function denseScene(count: number, seed: number): Garden {
  const random = seeded(seed);
  const side = Math.sqrt(count * 2440 * 2290) + 2000;
  const beds: Bed[] = [];
  for (let tries = 0; beds.length < count && tries < count * 400; tries++) {
    const at: Point = [between(random, 1700, side - 1700), between(random, 1700, side - 1700)];
    const next = someBed(`bed-${beds.length + 1}`, random, at);
    const near = beds.filter((other) => Math.hypot(other.at[0] - at[0], other.at[1] - at[1]) < 4200);
    if (near.every((other) => gapBetween(outlineOf(other), outlineOf(next)).width >= 229)) beds.push(next);
  }
  return yardRound(beds, side, side);
}

/** Beds that may touch and overlap, stand half outside the yard, and are few: for what must never break. */
export function tangledScene(count: number, seed: number): Garden {
  const random = seeded(seed);
  const side = 2600 * Math.sqrt(count);
  const beds = Array.from({ length: count }, (_, i) =>
    someBed(`bed-${i + 1}`, random, [between(random, 0, side), between(random, 0, side)]),
  );
  return yardRound(beds, side, side);
}

/** The yard, with notches along its right side, the house above it, a fence with a gate below, and trees clear of the beds. */
function yardRound(beds: readonly Bed[], width: number, length: number): Garden {
  const margin = 1200;
  const notches: Ring = Array.from({ length: 4 }, (_, i): Ring => {
    const y = (length / 4) * i;
    return [
      [width + margin, y + 300],
      [width + margin, y + length / 9],
      [width + margin - 500, y + length / 9],
      [width + margin - 500, y + length / 6],
      [width + margin, y + length / 6],
    ];
  }).flat();
  const yard: Ring = [
    [-margin, -5500],
    [width + margin, -5500],
    ...notches,
    [width + margin, length + margin],
    [-margin, length + margin],
  ];
  const houseWidth = Math.min(9000, width);
  const fenceY = length + margin - 60;
  const fixed: Item[] = [
    house("house", {
      shape: { type: "l", width: houseWidth, length: 3600, armWidth: houseWidth * 0.45, armLength: 2400 },
      at: [width / 2, -3200],
    }),
    door("door", { at: [width / 2 - houseWidth * 0.28, -1400], width: 900, turn: 0 }),
    fence("fence", { from: [-margin, fenceY], to: [width + margin, fenceY] }),
    gate("gate", { at: [width / 2, fenceY], width: 1100, turn: 0 }),
  ];
  const trees = [0.27, 0.71].flatMap((share, i) => {
    const planted = tree(`tree-${i + 1}`, { at: [width * share, length * (1 - share)], trunk: 300 });
    const [x, y] = planted.at;
    const trunk: Ring = [
      [x - 200, y - 200],
      [x + 200, y - 200],
      [x + 200, y + 200],
      [x - 200, y + 200],
    ];
    return beds.some((other) => overlaps(outlineOf(other), trunk)) ? [] : [planted];
  });
  return gardenWith({ yard }, ...fixed, ...trees, ...beds);
}

/** The garden with one thing elsewhere, all others being the very same values: what a drag gives at each move. */
export function withMoved(garden: Garden, id: string, by: Point): Garden {
  return {
    ...garden,
    items: garden.items.map((item) =>
      item.id === id ? { ...item, at: [item.at[0] + by[0], item.at[1] + by[1]] as const } : item,
    ),
  };
}
