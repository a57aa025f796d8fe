import type { Shape } from "../geometry/shape.ts";
import type { Point } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { formatSpoken } from "../units/format-length.ts";
import type { Units } from "../units/length.ts";
import { type Item, unreachable } from "./item.ts";
import { KIND_WORDS, ownName } from "./name-of.ts";

/**
 * A thing in one line, for lists and screen readers: what it is, its name and its size ("L-shaped bed Herbs, 7 ft by 3 ft 6 in").
 */
export function describeItem(item: Item, units: Units): string {
  const word = shapeWord(item);
  const what = word === "" ? KIND_WORDS[item.kind] : `${word} ${KIND_WORDS[item.kind].toLowerCase()}`;
  const name = ownName(item);
  // A house called House is a house.
  const named = name === "" || name.toLowerCase() === what.toLowerCase() ? what : `${what} ${name}`;
  const size = sizeOf(item, units);
  return size === "" ? named : `${named}, ${size}`;
}

function shapeWord(item: Item): string {
  if (!("shape" in item)) return "";
  switch (item.shape.type) {
    case "rectangle":
      return "";
    case "l":
      return "L-shaped";
    case "u":
      return "U-shaped";
    case "oval":
      return item.shape.width === item.shape.length ? "Round" : "Oval";
    case "keyhole":
      return "Keyhole";
    case "polygon":
      return `${item.shape.points.length}-sided`;
    default: {
      const never: never = item.shape;
      throw new RangeError(`unknown shape ${JSON.stringify(never)}`);
    }
  }
}

function sizeOf(item: Item, units: Units): string {
  const say = (mm: number) => formatSpoken(mm, units);
  switch (item.kind) {
    case "bed":
    case "ground":
    case "house":
    case "shed":
    case "keep-clear":
      return acrossOf(item.shape, say);
    case "path":
      return `${say(item.width)} wide, ${say(lengthOf(item.points))} long`;
    case "wall":
    case "fence":
      return `${say(lengthOf(item.points))} long, ${say(item.height)} high`;
    case "tree":
      return `crown ${say(item.canopy)} across, ${say(item.height)} high`;
    case "gate":
    case "door":
      return `${say(item.width)} wide${item.kind === "door" && item.kitchen ? ", to the kitchen" : ""}`;
    case "tap":
      return "";
    default:
      return unreachable(item);
  }
}

function acrossOf(shape: Shape, say: (mm: number) => string): string {
  if (shape.type === "keyhole") return `${say(shape.diameter)} across`;
  if (shape.type === "oval" && shape.width === shape.length) return `${say(shape.width)} across`;
  if (shape.type !== "polygon") return `${say(shape.width)} by ${say(shape.length)}`;
  const xs = shape.points.map(([x]) => x);
  const ys = shape.points.map(([, y]) => y);
  return `${say(Math.max(...xs) - Math.min(...xs))} by ${say(Math.max(...ys) - Math.min(...ys))}`;
}

const lengthOf = (points: readonly Point[]): number =>
  points.reduce((sum, point, i) => (i === 0 ? 0 : sum + distance(points[i - 1]!, point)), 0);
