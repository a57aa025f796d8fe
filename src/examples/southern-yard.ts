import type { CropId } from "../garden/crop-ids.ts";
import { emptyGarden } from "../garden/empty-garden.ts";
import type { Garden } from "../garden/garden.ts";
import type { Item, ItemOf } from "../garden/item.ts";
import { growing, newPlanting, type Planting } from "../garden/plantings.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { drawnIn } from "./drawn.ts";
import { EXAMPLE_CLIMATE } from "./example-climate.ts";

/**
 * A courtyard in metres, south of the equator, laid out for a gardener in a wheelchair: firm gravel throughout, beds 60 cm
 * tall that are reached from both sides, room to turn between them. One bed stands too near its neighbour for the chair,
 * and one is too low. Drip lines from the tap water them all.
 */

const drawn = drawnIn("metric");
const WIDTH = 14_000;
const LENGTH = 11_000;
/** Fences stand inside the boundary, with their outer face on it. */
const IN = 25;

const yard: Ring = [
  [0, 0],
  [WIDTH, 0],
  [WIDTH, LENGTH],
  [0, LENGTH],
];

const surroundings: readonly Item[] = [
  drawn("path", "gravel-way", [0, 0], {
    name: "Gravel way",
    points: [
      [0, 6600],
      [12_600, 6600],
    ],
    width: 1550,
    surface: "firm-gravel",
    depth: 100,
  }),
  drawn("house", "house", [6500, 9500], {
    name: "House",
    shape: { type: "rectangle", width: 9000, length: 3000 },
  }),
  // The house lies to the south, below: "out" is up the plan.
  drawn("door", "kitchen-door", [6500, 8000], { name: "Kitchen", turn: 180 }),
  drawn("tap", "tap", [9000, 8000], { name: "Tap", turn: 180, backflow: true }),
  drawn("fence", "fence", [0, 0], {
    name: "Slatted fence",
    points: [
      [IN, LENGTH],
      [IN, IN],
      [WIDTH - IN, IN],
      [WIDTH - IN, LENGTH],
    ],
    open: 0.3,
  }),
  drawn("gate", "street-gate", [IN, 6600], {
    name: "Street gate",
    turn: 90,
    width: 1100,
    swing: "sliding",
  }),
  drawn("tree", "lemon", [12_700, 9600], {
    name: "Lemon",
    trunk: 120,
    canopy: 1800,
    height: 2600,
    crownBase: 700,
    leaf: "evergreen",
    lightBare: 0.15,
  }),
];

interface BedPlan {
  readonly name: string;
  readonly at: Point;
  readonly plantings: readonly Planting[];
  readonly lastYear: readonly CropId[];
  readonly courses?: number;
  readonly changes?: Partial<Pick<ItemOf<"bed">, "shape" | "trellis" | "mulch">>;
}

function bed({ name, at, plantings, lastYear, courses = 3, changes }: BedPlan): ItemOf<"bed"> {
  const plain = drawn("bed", name.toLowerCase(), at, {
    name,
    plantings,
    lastYear,
    shape: { type: "rectangle", width: 1200, length: 3000 },
    wall: {
      made: "boards",
      board: "47x200",
      timber: "larch",
      courses,
      corner: "ends-between-sides",
      cornerPosts: true,
      capRail: null,
      bracing: "stakes-and-ties",
    },
    ...changes,
  });
  return {
    ...plain,
    fill: { ...plain.fill, tested: true },
    watering: { ...plain.watering, by: "drip" },
  };
}

const beds: readonly Item[] = [
  bed({ name: "Greens", at: [2300, 3300], plantings: growing("chard", "kale"), lastYear: ["tomato"] }),
  // 80 cm from the greens: too near for a wheelchair.
  bed({
    name: "Tomatoes",
    at: [4300, 3300],
    plantings: growing("tomato"),
    lastYear: ["bean-bush"],
    changes: { trellis: 1500 },
  }),
  bed({
    name: "Beans",
    at: [7600, 3300],
    plantings: [{ ...newPlanting("bean-bush"), set: "block" }, newPlanting("beet")],
    lastYear: ["leek"],
  }),
  // 40 cm tall: its soil lies below the reach of somebody seated.
  bed({
    name: "Salads",
    at: [10_400, 3300],
    courses: 2,
    plantings: growing("lettuce-leaf", "radish", "radish"),
    lastYear: ["carrot"],
  }),
];

const empty = emptyGarden("metric");

export const SOUTHERN_YARD: Garden = {
  ...empty,
  name: "Saltbush Court",
  site: {
    ...empty.site,
    place: "Near 35° south",
    latitude: -35.2,
    longitude: 138.7,
    timeZone: "Australia/Adelaide",
    winter: "mild",
    lastFrost: "09-05",
    firstFrost: "06-05",
    ground: { ...empty.site.ground, cover: "firm-gravel" },
  },
  gardener: { ...empty.gardener, kneeling: false, barrow: false, wheelchair: true, child: false },
  climate: EXAMPLE_CLIMATE,
  water: { ...empty.water, supply: { stillKPa: 380, openLh: 1260 } },
  yard,
  items: [...surroundings, ...beds],
};
