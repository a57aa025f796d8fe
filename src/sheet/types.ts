import type { Point } from "../geometry/types.ts";
import type { PaperId } from "./papers.ts";

/**
 * The build sheet before it is drawn: one page as drawing commands in paper millimetres from the page's top left
 * corner. The page draws exactly these; nothing is laid out twice.
 */
export type Hatch =
  | "soil"
  | "lawn"
  | "weeds"
  | "bark"
  | "gravel"
  | "paving"
  | "deck"
  | "building"
  | "out-of-reach";

export type Mark =
  | {
      readonly draw: "line";
      readonly points: readonly Point[];
      readonly closed: boolean;
      readonly pen: number;
      readonly dash?: readonly number[];
      readonly fill?: Hatch | "ink" | "paper";
    }
  | {
      readonly draw: "text";
      readonly at: Point;
      readonly text: string;
      /** Type size in points; never under 8. */
      readonly pt: number;
      readonly weight: "normal" | "bold";
      readonly anchor: "start" | "middle" | "end";
      /** Degrees clockwise about its place. */
      readonly turn?: number;
      /** A halo of paper behind letters that stand on a hatch. */
      readonly halo?: boolean;
    }
  | {
      readonly draw: "grade";
      readonly grade: "must" | "should" | "note";
      readonly at: Point;
      readonly size: number;
    };

export interface Sheet {
  readonly paper: PaperId;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Paper mm per garden mm, 1/48 for a quarter inch to the foot. */
  readonly scale: number;
  /** How the scale is written: "1/4 in = 1 ft", "1 : 50". */
  readonly scaleText: string;
  readonly marks: readonly Mark[];
  /** What did not fit and is therefore said on the page, in full sentences; empty where all fits. */
  readonly leftOut: readonly string[];
  /** The larger paper that holds all of it, where this one does not; null where none on the list does. */
  readonly larger: PaperId | null;
  /** The sheet in words, for screen readers and tests: headings with their lines. */
  readonly outline: readonly { readonly heading: string; readonly lines: readonly string[] }[];
}
