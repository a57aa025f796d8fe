import type { ItemOf, Units } from "../../../../src/index.ts";
import { INCH } from "../../../../src/index.ts";

export type BedWall = ItemOf<"bed">["wall"];
export type Made<K extends BedWall["made"]> = Extract<BedWall, { made: K }>;
/** Sets the wall of the bed on the card; `what` names the change in the history. */
export type SetWall = (what: string, next: BedWall) => void;

export const MOST_COURSES = 12;

/** What a wall of another make starts with: common sizes, round in the units given. All can be changed. */
export function usualWall(made: BedWall["made"], units: Units): BedWall {
  const mm = (inches: number, metric: number) => (units === "us" ? inches * INCH : metric);
  switch (made) {
    case "boards":
      return {
        made,
        board: units === "us" ? "2x6" : "47x150",
        timber: units === "us" ? "douglas-fir" : "larch",
        courses: 2,
        corner: "ends-between-sides",
        cornerPosts: true,
        capRail: null,
        bracing: "stakes",
      };
    case "metal":
      return { made, height: mm(17, 430), thickness: mm(1 / 16, 1) };
    case "fabric":
      return { made, height: mm(12, 300) };
    case "masonry":
      return {
        made,
        unitLength: mm(16, 400),
        unitHeight: mm(8, 200),
        thickness: mm(8, 200),
        courses: 2,
      };
    case "mound":
      return { made, height: mm(8, 200) };
  }
}
