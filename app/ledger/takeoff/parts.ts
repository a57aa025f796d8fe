import type { Line, Takeoff } from "../../../src/index.ts";

/** The parts of the list in the order things are bought and built. */
const PARTS: readonly { readonly part: Line["part"]; readonly label: string }[] = [
  { part: "boards", label: "Boards" },
  { part: "posts", label: "Posts and stakes" },
  { part: "walls", label: "Walls" },
  { part: "fixings", label: "Fixings" },
  { part: "bottom", label: "Mesh and liner" },
  { part: "fill", label: "Fill" },
  { part: "mulch", label: "Mulch" },
  { part: "paths", label: "Paths" },
  { part: "delivery", label: "Delivery" },
];

export interface PartOfList {
  readonly label: string;
  readonly lines: readonly Line[];
  readonly cost: number;
}

/** The lines by part; parts with nothing in them are left out. */
export function partsOf({ lines }: Takeoff): readonly PartOfList[] {
  return PARTS.map(({ part, label }) => {
    const own = lines.filter((line) => line.part === part);
    return { label, lines: own, cost: own.reduce((sum, { cost }) => sum + cost, 0) };
  }).filter(({ lines: own }) => own.length > 0);
}
