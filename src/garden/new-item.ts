import type { Shape } from "../geometry/shape.ts";
import type { Point } from "../geometry/types.ts";
import { FOOT, INCH, type Units } from "../units/length.ts";
import { word } from "../words/say.ts";
import { type ItemId, itemId } from "./fields.ts";
import type { Garden } from "./garden.ts";
import type { Item, ItemOf, Kind } from "./item.ts";
import { HAND_WATERED } from "./watering.ts";

/** What the barrow holds: everything that can be put in a yard, in the order it is offered. */
export const BARROW = [
  { preset: "bed", kind: "bed", label: word("Bed") },
  { preset: "bed-l", kind: "bed", label: word("L bed") },
  { preset: "bed-u", kind: "bed", label: word("U bed") },
  { preset: "bed-round", kind: "bed", label: word("Round bed") },
  { preset: "bed-oval", kind: "bed", label: word("Oval bed") },
  { preset: "bed-keyhole", kind: "bed", label: word("Keyhole bed") },
  { preset: "bed-free", kind: "bed", label: word("Free bed") },
  { preset: "path", kind: "path", label: word("Path") },
  { preset: "ground", kind: "ground", label: word("Ground") },
  { preset: "house", kind: "house", label: word("House") },
  { preset: "shed", kind: "shed", label: word("Shed") },
  { preset: "wall", kind: "wall", label: word("Wall") },
  { preset: "fence", kind: "fence", label: word("Fence") },
  { preset: "tree", kind: "tree", label: word("Tree") },
  { preset: "keep-clear", kind: "keep-clear", label: word("Keep clear") },
  { preset: "gate", kind: "gate", label: word("Gate") },
  { preset: "door", kind: "door", label: word("Door") },
  { preset: "tap", kind: "tap", label: word("Tap") },
] as const satisfies readonly { readonly preset: string; readonly kind: Kind; readonly label: string }[];

export type Preset = (typeof BARROW)[number]["preset"];

const byPreset = new Map<string, (typeof BARROW)[number]>(BARROW.map((entry) => [entry.preset, entry]));

export const isPreset = (text: string): text is Preset => byPreset.has(text);

/**
 * A new thing of the barrow, in sizes that are round in the units given.
 * @param at its middle on the plan, mm
 */
export function newItem(preset: Preset, place: { id: ItemId; at: Point; units: Units }): Item {
  const { id, at, units } = place;
  const standing = { id, name: "", at, turn: 0 };
  // Sizes are given twice, round in inches and round in centimetres, never converted.
  const mm = (inches: number, metric: number) => (units === "us" ? inches * INCH : metric);
  switch (preset) {
    case "bed":
      return newBed(standing, units, { type: "rectangle", width: mm(48, 1200), length: mm(96, 2400) });
    case "bed-l":
      return newBed(standing, units, {
        type: "l",
        width: mm(96, 2400),
        length: mm(96, 2400),
        armWidth: mm(36, 900),
        armLength: mm(36, 900),
      });
    case "bed-u":
      return newBed(standing, units, {
        type: "u",
        width: mm(96, 2400),
        length: mm(72, 1800),
        bayWidth: mm(36, 900),
        bayLength: mm(48, 1200),
      });
    case "bed-round":
      return newBed(standing, units, { type: "oval", width: mm(48, 1200), length: mm(48, 1200) });
    case "bed-oval":
      return newBed(standing, units, { type: "oval", width: mm(48, 1200), length: mm(84, 2100) });
    case "bed-keyhole":
      return newBed(standing, units, {
        type: "keyhole",
        diameter: mm(72, 1800),
        slotWidth: mm(18, 450),
        middleDiameter: mm(24, 600),
      });
    case "bed-free":
      return newBed(standing, units, { type: "polygon", points: freeCorners(units) });
    case "path":
      return {
        kind: "path",
        ...standing,
        points: alongX(mm(120, 3000)),
        width: mm(36, 900),
        use: "main",
        surface: "bark",
        depth: mm(3, 75),
        edging: null,
        stage: 1,
      };
    case "ground":
      return {
        kind: "ground",
        ...standing,
        shape: { type: "rectangle", width: mm(120, 3000), length: mm(96, 2400) },
        cover: "paving",
        contaminated: false,
        burrowing: "none",
        slope: 0,
        falls: 0,
      };
    case "house":
      return {
        kind: "house",
        ...standing,
        shape: { type: "rectangle", width: mm(288, 8000), length: mm(120, 4000) },
        height: mm(108, 2700),
        roof: "gabled",
        roofRise: mm(72, 1800),
        roofFalls: "down",
        oldPaint: false,
      };
    case "shed":
      return {
        kind: "shed",
        ...standing,
        shape: { type: "rectangle", width: mm(96, 2400), length: mm(72, 1800) },
        height: mm(78, 2000),
        roof: "single-pitch",
        roofRise: mm(18, 450),
        roofFalls: "down",
        oldPaint: false,
      };
    case "wall":
      return {
        kind: "wall",
        ...standing,
        points: alongX(mm(120, 3000)),
        thickness: mm(8, 200),
        height: mm(48, 1200),
        oldPaint: false,
      };
    case "fence":
      return {
        kind: "fence",
        ...standing,
        points: alongX(mm(192, 4800)),
        thickness: mm(2, 50),
        height: mm(72, 1800),
        open: 0,
      };
    case "tree":
      return {
        kind: "tree",
        ...standing,
        trunk: mm(12, 300),
        canopy: mm(180, 4500),
        height: mm(240, 6000),
        crownBase: mm(72, 1800),
        leaf: "leaf-dropping",
        lightInLeaf: 0.15,
        lightBare: 0.6,
        inLeaf: null,
        species: "other",
      };
    case "keep-clear":
      return {
        kind: "keep-clear",
        ...standing,
        shape: { type: "rectangle", width: mm(36, 900), length: mm(36, 900) },
      };
    case "gate":
      return { kind: "gate", ...standing, width: mm(42, 1100), hinge: "left", swing: "in" };
    case "door":
      return { kind: "door", ...standing, width: mm(36, 900), hinge: "left", swing: "in", kitchen: true };
    case "tap":
      return { kind: "tap", ...standing, backflow: false };
    default: {
      const never: never = preset;
      throw new RangeError(`nothing in the barrow is called "${never}"`);
    }
  }
}

type Standing = Pick<Item, "id" | "name" | "at" | "turn">;

/** Two courses of boards that any timber yard has, stakes along the sides, open to the ground, all mix. */
function newBed(standing: Standing, units: Units, shape: Shape): ItemOf<"bed"> {
  const us = units === "us";
  return {
    kind: "bed",
    ...standing,
    shape,
    wall: {
      made: "boards",
      board: us ? "2x6" : "47x150",
      timber: us ? "douglas-fir" : "larch",
      courses: 2,
      corner: "ends-between-sides",
      bracing: "stakes",
      cornerPosts: true,
      capRail: null,
    },
    bottom: { mesh: null, liner: null },
    fill: {
      way: "mix",
      mixDepth: us ? FOOT : 300,
      // A little rim keeps mulch and water in.
      belowRim: us ? INCH : 25,
      // Maryland Extension: one part of compost to one or two of topsoil.
      recipe: { compost: 1, topsoil: 2, soilless: 0 },
      tested: false,
    },
    mulch: null,
    plantings: [],
    lastYear: [],
    watering: HAND_WATERED,
    winter: "cover-crop",
    trellis: null,
    legs: null,
    already: null,
    stage: 1,
  };
}

const alongX = (length: number): readonly Point[] => [
  [-length / 2, 0],
  [length / 2, 0],
];

/** A five-cornered bed to be pulled into shape; within reach from both sides as it comes. */
function freeCorners(units: Units): readonly Point[] {
  const step = units === "us" ? FOOT : 300;
  return [
    [-4 * step, -2 * step],
    [3 * step, -2 * step],
    [4 * step, 0],
    [3 * step, 2 * step],
    [-4 * step, 2 * step],
  ];
}

/** The first id of its kind that is free in a garden: "bed-3". */
export function freshId(garden: Pick<Garden, "items">, preset: Preset): ItemId {
  const taken = new Set<string>(garden.items.map(({ id }) => id));
  const kind = byPreset.get(preset)?.kind ?? preset;
  let number = 1;
  while (taken.has(`${kind}-${number}`)) number++;
  return itemId(`${kind}-${number}`);
}
