import type { Line, Takeoff } from "../../../src/index.ts";

type Part = Line["part"];

/** The parts of the list, as they are called. Their order is that of the lines: as things are bought and built. */
export const PART_WORDS: Readonly<Record<Part, string>> = {
  boards: "Boards",
  posts: "Posts and stakes",
  walls: "Walls",
  fixings: "Fixings",
  bottom: "Mesh and liner",
  fill: "Fill",
  mulch: "Mulch",
  paths: "Paths",
  edging: "Edging",
  water: "Water",
  delivery: "Delivery",
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
    return { label: PART_WORDS[part], lines: own, cost: own.reduce((sum, { cost }) => sum + cost, 0) };
  }).filter(({ lines: own }) => own.length > 0);
}
