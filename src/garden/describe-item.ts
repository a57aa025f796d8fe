import type { Shape } from "../geometry/shape.ts";
import type { Point } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { formatSpoken } from "../units/format-length.ts";
import type { Units } from "../units/length.ts";
import { midSentence } from "../words/phrases.ts";
import { say, told } from "../words/say.ts";
import { type Item, unreachable } from "./item.ts";
import { KIND_WORDS, ownName } from "./name-of.ts";

/**
 * A thing in one line, for lists and screen readers: what it is, its name and its size ("L-shaped bed Herbs, 7 ft by 3 ft 6 in").
 */
export function describeItem(item: Item, units: Units): string {
  const what = whatItIs(item);
  const name = ownName(item);
  // A house called House is a house.
  const named = name === "" || name.toLowerCase() === what.toLowerCase() ? what : `${what} ${name}`;
  const size = sizeOf(item, units);
  return size === "" ? named : `${named}, ${size}`;
}

function whatItIs(item: Item): string {
  const kind = told(KIND_WORDS[item.kind]);
  if (!("shape" in item)) return kind;
  const thing = midSentence(kind);
  switch (item.shape.type) {
    case "rectangle":
      return kind;
    case "l":
      return say`L-shaped ${thing}`;
    case "u":
      return say`U-shaped ${thing}`;
    case "oval":
      return item.shape.width === item.shape.length ? say`Round ${thing}` : say`Oval ${thing}`;
    case "keyhole":
      return say`Keyhole ${thing}`;
    case "polygon":
      return say`${item.shape.points.length}-sided ${thing}`;
    default: {
      const never: never = item.shape;
      throw new RangeError(`unknown shape ${JSON.stringify(never)}`);
    }
  }
}

function sizeOf(item: Item, units: Units): string {
  const size = (mm: number) => formatSpoken(mm, units);
  switch (item.kind) {
    case "bed":
    case "ground":
    case "house":
    case "shed":
    case "keep-clear":
      return acrossOf(item.shape, size);
    case "path":
      return say`${size(item.width)} wide, ${size(lengthOf(item.points))} long`;
    case "wall":
    case "fence":
      return say`${size(lengthOf(item.points))} long, ${size(item.height)} high`;
    case "tree":
      return say`crown ${size(item.canopy)} across, ${size(item.height)} high`;
    case "gate":
    case "door":
      return item.kind === "door" && item.kitchen
        ? say`${size(item.width)} wide, to the kitchen`
        : say`${size(item.width)} wide`;
    case "tap":
      return "";
    default:
      return unreachable(item);
  }
}

function acrossOf(shape: Shape, size: (mm: number) => string): string {
  if (shape.type === "keyhole") return say`${size(shape.diameter)} across`;
  if (shape.type === "oval" && shape.width === shape.length) return say`${size(shape.width)} across`;
  if (shape.type !== "polygon") return say`${size(shape.width)} by ${size(shape.length)}`;
  const xs = shape.points.map(([x]) => x);
  const ys = shape.points.map(([, y]) => y);
  return say`${size(Math.max(...xs) - Math.min(...xs))} by ${size(Math.max(...ys) - Math.min(...ys))}`;
}

const lengthOf = (points: readonly Point[]): number =>
  points.reduce((sum, point, i) => (i === 0 ? 0 : sum + distance(points[i - 1]!, point)), 0);
