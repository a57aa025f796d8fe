import type { CropId } from "../garden/crop-ids.ts";
import { emptyGarden } from "../garden/empty-garden.ts";
import type { Garden } from "../garden/garden.ts";
import type { Item, ItemOf } from "../garden/item.ts";
import { growing, newPlanting, type Planting } from "../garden/plantings.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { FOOT, INCH } from "../units/length.ts";
import { drawnIn } from "./drawn.ts";

/**
 * A back yard in feet and inches, north of the equator. Three things in it must be put right, each by dragging one bed:
 * squash and roots stand too close to kneel between; the beans stand against the fence and are deeper than an arm
 * reaches; the peppers stand half on paving with too little soil over it.
 */

const feet = (x: number, y: number): Point => [x * FOOT, y * FOOT];
const size = (width: number, length: number) => ({
  type: "rectangle" as const,
  width: width * FOOT,
  length: length * FOOT,
});

const WIDTH = 44;
const LENGTH = 32;
/** Fences stand inside the boundary, with their outer face on it. */
const IN = 1 / 12;

const drawn = drawnIn("us");

interface BedPlan {
  /** Left and top edges and size, feet. */
  readonly box: readonly [x: number, y: number, w: number, h: number];
  readonly courses?: number;
  readonly plantings: readonly Planting[];
  readonly lastYear: readonly CropId[];
  readonly changes?: Partial<Omit<ItemOf<"bed">, "kind" | "id" | "wall" | "fill">>;
  readonly untested?: boolean;
}

function bed(
  name: string,
  { box: [x, y, w, h], courses = 2, plantings, lastYear, changes, untested }: BedPlan,
): ItemOf<"bed"> {
  const plain = drawn("bed", name.toLowerCase(), feet(x + w / 2, y + h / 2), {
    name,
    shape: size(w, h),
    plantings,
    lastYear,
  });
  return {
    ...plain,
    wall: plain.wall.made === "boards" ? { ...plain.wall, courses } : plain.wall,
    fill: { ...plain.fill, tested: !untested },
    ...changes,
  };
}

/** A planting in a part of its bed: left and top edges and size in the bed's own frame, from its middle, inches. */
const patched = (
  crop: CropId,
  [x, y, w, h]: readonly [x: number, y: number, w: number, h: number],
  changes: Partial<Planting> = {},
): Planting => ({
  ...newPlanting(crop),
  patch: { at: [(x + w / 2) * INCH, (y + h / 2) * INCH], width: w * INCH, length: h * INCH },
  ...changes,
});
const planted = (crop: CropId, changes: Partial<Planting>): Planting => ({
  ...newPlanting(crop),
  ...changes,
});

const yard: Ring = [feet(0, 0), feet(WIDTH, 0), feet(WIDTH, LENGTH), feet(0, LENGTH)];

const surroundings: readonly Item[] = [
  drawn("ground", "patio", feet(39, 5.5), { name: "Patio", shape: size(10, 11) }),
  drawn("path", "main-way", [0, 0], {
    name: "Main way",
    points: [feet(10, 7), feet(10, 14.5), feet(WIDTH, 14.5)],
    width: 36 * INCH,
  }),
  drawn("house", "house", feet(18, 3.5), { name: "House", shape: size(24, 7) }),
  drawn("door", "kitchen-door", feet(10, 7), { name: "Kitchen" }),
  drawn("tap", "tap", feet(22.5, 7), { name: "Tap" }),
  drawn("shed", "shed", feet(41.25, 4), { name: "Shed", shape: size(5, 7) }),
  drawn("fence", "fence", [0, 0], {
    name: "Board fence",
    points: [feet(IN, 0), feet(IN, LENGTH - IN), feet(WIDTH - IN, LENGTH - IN), feet(WIDTH - IN, 0)],
  }),
  // Turned so that "in" is into the yard.
  drawn("gate", "side-gate", feet(WIDTH - IN, 14.5), { name: "Side gate", turn: 270 }),
  drawn("tree", "plum", feet(41.25, 28.5), {
    name: "Plum",
    trunk: 6 * INCH,
    canopy: 6 * FOOT,
    height: 11 * FOOT,
    crownBase: 4 * FOOT,
  }),
];

const beds: readonly Item[] = [
  bed("Herbs", {
    box: [13.5, 9.25, 7, 3.5],
    plantings: [
      patched("chives", [-40.5, 1.5, 21, 18]),
      patched("parsley", [-40.5, -19.5, 25, 21]),
      patched("thyme", [-15.5, -19.5, 19, 21]),
      patched("basil", [3.5, -19.5, 37, 21], { apart: 12 * INCH, rowsApart: 12 * INCH }),
    ],
    lastYear: ["chives", "thyme", "spinach"],
    changes: {
      shape: {
        type: "l",
        width: 84 * INCH,
        length: 42 * INCH,
        armWidth: 24 * INCH,
        armLength: 24 * INCH,
      },
    },
  }),
  bed("Strawberries", {
    box: [24.25, 9.25, 3.5, 3.5],
    plantings: [planted("strawberry", { set: "block", apart: 12 * INCH })],
    lastYear: ["strawberry"],
    changes: { shape: { type: "oval", width: 42 * INCH, length: 42 * INCH } },
  }),
  bed("Peppers", {
    box: [32.5, 2.5, 4, 8],
    plantings: [planted("pepper", { set: "block" })],
    lastYear: ["onion-bulb"],
  }),
  // Spinach makes way for beans in May, and radishes come twice.
  bed("Salads", {
    box: [9, 17, 8, 4],
    plantings: [
      patched("lettuce-leaf", [-46.5, -22.5, 31, 45], { set: "block" }),
      patched("spinach", [-15.5, -22.5, 31, 45]),
      patched("bean-bush", [-15.5, -22.5, 31, 45]),
      patched("radish", [15.5, -22.5, 31, 45], { run: "across" }),
      patched("radish", [15.5, -22.5, 31, 45], { run: "across", from: "08-20" }),
    ],
    lastYear: ["carrot", "leek"],
  }),
  bed("Tomatoes", {
    box: [20.5, 17, 8, 4],
    courses: 3,
    plantings: [planted("tomato", { apart: 18 * INCH, rowsApart: 22 * INCH })],
    lastYear: ["potato"],
    changes: { trellis: 6 * FOOT },
  }),
  bed("Beans", {
    box: [2 * IN, 17, 3, 8],
    plantings: growing("bean-pole"),
    lastYear: ["kale"],
    changes: { trellis: 6 * FOOT },
  }),
  bed("Roots", {
    box: [9, 24.5, 8, 4],
    courses: 3,
    plantings: growing("carrot", "beet", "parsnip"),
    lastYear: ["pea"],
  }),
  bed("Squash", {
    box: [17 + 20 / 12, 24.5, 8, 4],
    courses: 3,
    plantings: growing("squash-winter"),
    lastYear: ["cabbage"],
    untested: true,
  }),
];

const empty = emptyGarden("us");

export const NORTHERN_YARD: Garden = {
  ...empty,
  name: "Heron Lane, back yard",
  site: {
    ...empty.site,
    north: 12,
    place: "Near 40° north",
    latitude: 40.4,
    longitude: -86.9,
    timeZone: "America/Indiana/Indianapolis",
    lastFrost: "04-28",
    firstFrost: "10-14",
  },
  yard,
  items: [...surroundings, ...beds],
};
