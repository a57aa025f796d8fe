import { type Line, type Takeoff, told, word } from "../../../src/index.ts";

type Part = Line["part"];

/** The parts of the list, as they are called. Their order is that of the lines: as things are bought and built. */
export const PART_WORDS: Readonly<Record<Part, string>> = {
  boards: word("Boards"),
  posts: word("Posts and stakes"),
  walls: word("Walls"),
  fixings: word("Fixings"),
  bottom: word("Mesh and liner"),
  fill: word("Fill"),
  mulch: word("Mulch"),
  paths: word("Paths"),
  edging: word("Edging"),
  water: word("Water"),
  delivery: word("Delivery"),
};

const ORDER = Object.keys(PART_WORDS) as Part[];

export interface PartOfList {
  readonly label: string;
  readonly lines: readonly Line[];
  readonly cost: number;
}

/** The lines by part; parts with nothing in them are left out. */
export function partsOf({ lines }: Takeoff): readonly PartOfList[] {
  return ORDER.map((part) => {
    const own = lines.filter((line) => line.part === part);
    return { label: told(PART_WORDS[part]), lines: own, cost: own.reduce((sum, { cost }) => sum + cost, 0) };
  }).filter(({ lines: own }) => own.length > 0);
}
