import { frameOf } from "../garden/frame.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import { timberById } from "../takeoff/timbers.ts";
import { formatShort } from "../units/format-length.ts";
import type { Units } from "../units/length.ts";
import { say, sayCount, told, word } from "../words/say.ts";
import { coursesOf, coursesStanding, standsWhole } from "./bed-states.ts";

/** "96 × 48 in": two sizes in one unit say it once. */
export function pairWords(first: number, second: number, units: Units): string {
  const [a, b] = [formatShort(first, units), formatShort(second, units)];
  const unit = (words: string) => words.slice(words.lastIndexOf(" "));
  return unit(a) === unit(b) ? `${a.slice(0, a.lastIndexOf(" "))} × ${b}` : `${a} × ${b}`;
}

/** The outline of a bed and its sizes. */
export function sizeWords({ shape }: Bed, units: Units): string {
  const size = (mm: number) => formatShort(mm, units);
  switch (shape.type) {
    case "rectangle":
      return pairWords(shape.width, shape.length, units);
    case "l":
      return say`L ${pairWords(shape.width, shape.length, units)}, arms ${pairWords(shape.armLength, shape.armWidth, units)}`;
    case "u":
      return say`U ${pairWords(shape.width, shape.length, units)}, bay ${pairWords(shape.bayWidth, shape.bayLength, units)}`;
    case "oval":
      return shape.width === shape.length
        ? say`round, ${size(shape.width)} across`
        : `oval, ${pairWords(shape.width, shape.length, units)}`;
    case "keyhole":
      return say`keyhole, ${size(shape.diameter)} across, way in ${size(shape.slotWidth)}`;
    case "polygon":
      return say`free outline, ${shape.points.length} corners`;
    default: {
      const never: never = shape;
      throw new RangeError(`unknown shape ${JSON.stringify(never)}`);
    }
  }
}

/** "11 in tall, 2 courses". */
export function heightWords(bed: Bed, units: Units): string {
  const height = say`${formatShort(frameOf(bed).wallHeight, units)} tall`;
  return "courses" in bed.wall ? `${height}, ${courseWords(coursesOf(bed))}` : height;
}

/** What stands of it already; nothing for a new bed. */
export function standingWords(bed: Bed): string {
  if (!bed.already) return "";
  if (standsWhole(bed)) return "stands";
  const standing = coursesStanding(bed);
  return sayCount(
    standing,
    { one: "{{count}} course stands, {{more}} to add", other: "{{count}} courses stand, {{more}} to add" },
    { more: coursesOf(bed) - standing },
  );
}

const courseWords = (count: number): string =>
  sayCount(count, { one: "{{count}} course", other: "{{count}} courses" });

/** What the wall is made of, and what is unusual about how it is put together. */
export function materialWords({ wall }: Bed, units: Units): string {
  switch (wall.made) {
    case "boards": {
      const extras = [
        wall.cornerPosts ? "" : say`no corner posts`,
        wall.capRail ? say`cap rail ${boardWords(wall.capRail, units)}` : "",
      ].filter(Boolean);
      return [`${boardWords(wall.board, units)} ${timberWords(wall.timber)}`, ...extras].join(", ");
    }
    case "metal":
      return say`metal panels`;
    case "fabric":
      return "fabric";
    case "masonry":
      return "masonry";
    case "mound":
      return say`a mound without a wall`;
    default: {
      const never: never = wall;
      throw new RangeError(`unknown wall ${JSON.stringify(never)}`);
    }
  }
}

export const timberWords = (id: string): string => timberById(id)?.label ?? id;

/** A board by its trade name; one of the gardener's own by its sizes. */
export function boardWords(board: string, units: Units): string {
  const size = boardSize(board);
  return size && board.endsWith("mm") ? pairWords(size.thickness, size.height, units) : board;
}

/** What it is filled with: "1 compost : 2 topsoil", "wood below, mix on top". */
export function fillWords({ fill }: Bed, units: Units): string {
  if (fill.way === "native") return say`the yard’s own soil`;
  const parts = (["compost", "topsoil", "soilless"] as const)
    .filter((part) => fill.recipe[part] > 0)
    .map((part) => ({ share: fill.recipe[part], name: told(MIX_WORDS[part]) }));
  const [only] = parts;
  const mix =
    parts.length === 1 && only ? only.name : parts.map(({ share, name }) => `${share} ${name}`).join(" : ");
  return fill.way === "layered" ? say`${formatShort(fill.mixDepth, units)} of ${mix} over wood` : mix;
}

const MIX_WORDS = {
  compost: word("compost"),
  topsoil: word("topsoil"),
  soilless: word("soilless"),
} as const;
