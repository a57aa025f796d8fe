import {
  type Box,
  formatDistance,
  formatShort,
  frameOf,
  type Garden,
  type Item,
  type ItemOf,
  ownName,
  type Point,
  placed,
  type Shape,
  say,
  told,
  type Units,
  word,
} from "../../src/index.ts";
import type { View } from "../store/editor.ts";
import { labelRooms } from "./label-room.ts";
import { LETTERS, type Letters, letteringAge, type Measure, measure as measureLetters } from "./lettering.ts";
import { toScreen } from "./viewport.ts";

export interface LabelLine {
  readonly text: string;
  readonly letters: Letters;
}

/** Words as they stand on the plan, px. */
export interface Label {
  readonly lines: readonly LabelLine[];
  readonly at: Point;
  /** Degrees clockwise, from -90 up to but not 90: never upside down, and upright words read from the right. */
  readonly turn: number;
  readonly width: number;
  readonly height: number;
}

type Shaped = Extract<Item, { shape: unknown }>;

/** Room kept free at the ends of words, and above and below them, px. */
const PADDING = { along: 4, across: 2 } as const;
export const LEADING = 1.22;
export const SMALL_NAME: Letters = { ...LETTERS.name, size: 12 };

/** What to call a thing that the gardener has not named, in English, to be told. */
const KIND_WORDS = {
  bed: word("Bed"),
  path: word("path"),
  ground: word("ground"),
  house: word("House"),
  shed: word("Shed"),
  wall: word("wall"),
  fence: word("fence"),
  tree: word("tree"),
  gate: word("gate"),
  door: word("door"),
  tap: word("tap"),
  "keep-clear": word("keep clear"),
} as const satisfies Record<Item["kind"], string>;

/** The label of a thing that has an outline, or null where there is no room for its words. */
function shapeLabel(item: Shaped, view: View, units: Units, measure: Measure): Label | null {
  const rooms = labelRooms(item.shape);
  for (const lines of wordings(item, units)) {
    const width = Math.max(...lines.map(({ text, letters }) => measure(text, letters)));
    const height = lines.reduce((sum, { letters }) => sum + letters.size * LEADING, 0);
    for (const room of rooms) {
      const across = room.width * view.scale;
      const down = room.length * view.scale;
      for (const { turn, box } of stances(item.turn, across, down)) {
        if (width > box[0] - 2 * PADDING.along || height > box[1] - 2 * PADDING.across) continue;
        const at = toScreen(view, placed(room.centre, item.at, item.turn));
        return { lines, at, turn, width, height };
      }
    }
  }
  return null;
}

/** What a thing's label may say, fullest first. */
function wordings(item: Shaped, units: Units): readonly (readonly LabelLine[])[] {
  const name = ownName(item) || told(KIND_WORDS[item.kind]);
  switch (item.kind) {
    case "bed": {
      const big = { text: name, letters: LETTERS.name };
      const size = { text: bedSize(item, units), letters: LETTERS.size };
      return [[big, size], [big], [{ text: name, letters: SMALL_NAME }]];
    }
    case "house":
    case "shed": {
      const text = name.toUpperCase();
      return [16, 13, 11].map((points) => [
        { text, letters: { ...LETTERS.building, size: points, spaced: points / 4 } },
      ]);
    }
    case "ground":
    case "keep-clear":
      return [[{ text: name, letters: LETTERS.note }]];
  }
}

/** The two ways words can lie in a turned box, the more level one first. */
function stances(turn: number, across: number, down: number) {
  const along = { turn: readable(turn), box: [across, down] as const };
  const over = { turn: readable(turn + 90), box: [down, across] as const };
  return Math.abs(along.turn) <= Math.abs(over.turn) ? [along, over] : [over, along];
}

/** The same line of words the right way up. */
export const readable = (turn: number): number => ((((turn + 90) % 180) + 180) % 180) - 90;

/** "48 × 96 · 11 in": across, along, and how high it stands; one unit said once. */
export function bedSize(bed: ItemOf<"bed">, units: Units): string {
  const { wallHeight, rim } = frameOf(bed);
  const height = formatShort(bed.legs === null ? wallHeight : rim, units);
  const unit = height.slice(height.lastIndexOf(" "));
  const figure = (mm: number) => {
    const text = formatShort(mm, units);
    return text.endsWith(unit) ? text.slice(0, -unit.length) : text;
  };
  const plan = planSize(bed.shape).map(figure).join(" × ");
  return plan === "" ? height : `${plan} · ${height}`;
}

function planSize(shape: Shape): readonly number[] {
  switch (shape.type) {
    case "polygon":
      return [];
    case "keyhole":
      return [shape.diameter];
    case "oval":
      return shape.width === shape.length ? [shape.width] : [shape.width, shape.length];
    default:
      return [shape.width, shape.length];
  }
}

/** Name and height of a tree, under its trunk. */
function treeLabel(tree: ItemOf<"tree">, view: View, units: Units, measure: Measure): Label | null {
  const letters: Letters = { ...LETTERS.note, colour: "leaf" };
  const text = `${ownName(tree) || told(KIND_WORDS.tree)} ${formatDistance(tree.height, units)}`;
  const width = measure(text, letters);
  const height = letters.size * LEADING;
  if (width > tree.canopy * view.scale * 0.9) return null;
  const [x, y] = toScreen(view, tree.at);
  const below = Math.max(5, (tree.trunk / 2) * view.scale) + height / 2 + 4;
  return { lines: [{ text, letters }], at: [x, y + below], turn: 0, width, height };
}

/** Name and clear width of a gate or door, on the side that its leaf does not sweep. */
function openingLabel(
  item: ItemOf<"gate" | "door">,
  view: View,
  units: Units,
  measure: Measure,
): Label | null {
  const letters = LETTERS.note;
  const text =
    item.kind === "gate"
      ? `${ownName(item) || told(KIND_WORDS.gate)} ${formatShort(item.width, units)}`
      : doorName(item);
  const width = measure(text, letters);
  const height = letters.size * LEADING;
  const opening = item.width * view.scale;
  if (opening < OPENING_IN_SIGHT || width > MOST_OVERHANG * opening) return null;
  const away = item.swing === "out" ? -1 : 1;
  const turn = readable(item.turn);
  const gap = height / 2 + 7;
  const at = toScreen(view, placed([0, (away * gap) / view.scale], item.at, item.turn));
  return { lines: [{ text, letters }], at, turn, width, height };
}

const OPENING_IN_SIGHT = 14;
/** Words much wider than their opening would lie on what is beside it. */
const MOST_OVERHANG = 2.2;
const doorName = (door: ItemOf<"door">): string =>
  ownName(door) || (door.kitchen ? say`kitchen` : told(KIND_WORDS.door));

function tapLabel(tap: ItemOf<"tap">, view: View, measure: Measure): Label | null {
  if (view.scale < 0.02) return null;
  const letters: Letters = { ...LETTERS.note, colour: "water" };
  const text = ownName(tap) || told(KIND_WORDS.tap);
  const [width, height] = [measure(text, letters), letters.size * LEADING];
  const [x, y] = toScreen(view, tap.at);
  return { lines: [{ text, letters }], at: [x + 11 + width / 2, y + 9], turn: 0, width, height };
}

interface Lettered {
  readonly view: View;
  readonly units: Units;
  readonly age: number;
  readonly label: Label | null;
}
const lettered = new WeakMap<Item, Lettered>();

/** The label of any thing as it is drawn, or null for none; remembered while the view stays. */
export function labelOf(item: Item, view: View, units: Units): Label | null {
  const known = lettered.get(item);
  if (known && known.view === view && known.units === units && known.age === letteringAge())
    return known.label;
  const label = makeLabel(item, view, units, measureLetters);
  lettered.set(item, { view, units, age: letteringAge(), label });
  return label;
}

/** The same with words measured in another way. */
export function makeLabel(item: Item, view: View, units: Units, measure: Measure): Label | null {
  switch (item.kind) {
    case "bed":
    case "house":
    case "shed":
    case "keep-clear":
      return shapeLabel(item, view, units, measure);
    case "tree":
      return treeLabel(item, view, units, measure);
    case "gate":
    case "door":
      return openingLabel(item, view, units, measure);
    case "tap":
      return tapLabel(item, view, measure);
    // What is underfoot is named where nothing stands on it: see ground-labels.ts.
    case "ground":
    case "path":
    case "wall":
    case "fence":
      return null;
  }
}

/** The upright box that a label fills, px. */
export function labelBox({ at: [x, y], turn, width, height }: Label): Box {
  const [c, s] = [Math.abs(Math.cos((turn * Math.PI) / 180)), Math.abs(Math.sin((turn * Math.PI) / 180))];
  const [w, h] = [(width * c + height * s) / 2, (width * s + height * c) / 2];
  return { minX: x - w, minY: y - h, maxX: x + w, maxY: y + h };
}

export const overlap = (a: Box, b: Box): boolean =>
  a.minX < b.maxX && a.maxX > b.minX && a.minY < b.maxY && a.maxY > b.minY;

/** The boxes of all labels of a garden, px. */
export const labelBoxes = ({ items, units }: Pick<Garden, "items" | "units">, view: View): Box[] =>
  items.flatMap((item) => {
    const label = labelOf(item, view, units);
    return label ? [labelBox(label)] : [];
  });

export const lineLeading = ({ letters }: LabelLine): number => letters.size * LEADING;
