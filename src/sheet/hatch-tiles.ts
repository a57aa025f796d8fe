import type { Hatch } from "./types.ts";

/** A stroke of a hatch or sign: a path of SVG's own notation, mm. */
export interface TileStroke {
  readonly path: string;
  readonly colour: string;
  readonly width: number;
}

/** A hatch as a square that is laid side by side. */
export interface HatchTile {
  readonly hatch: Hatch;
  /** The square's side on paper, mm. */
  readonly size: number;
  /** Degrees clockwise that the whole hatch is turned by. */
  readonly turn?: number;
  readonly stroke: TileStroke;
}

const GREY = "#777";

const circle = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;

/** The hatches of drawing practice, thin enough to carry figures and to survive a copier. */
export const HATCH_TILES: readonly HatchTile[] = [
  {
    hatch: "soil",
    size: 2.4,
    stroke: { path: "M0.6 0.49v0.22M1.8 1.69v0.22", colour: GREY, width: 0.22 },
  },
  {
    hatch: "lawn",
    size: 4,
    stroke: {
      path: "M0.8 1.4v-0.7m0.3 0.7l0.25-0.55m1.45 2.6v-0.7m0.3 0.7l0.25-0.55",
      colour: GREY,
      width: 0.1,
    },
  },
  {
    hatch: "weeds",
    size: 3.6,
    stroke: {
      path: "M0.9 1.6l-0.35-0.8m0.35 0.8l0.05-0.95m-0.05 0.95l0.45-0.7M2.7 3.2l-0.35-0.8m0.35 0.8l0.45-0.7",
      colour: GREY,
      width: 0.1,
    },
  },
  {
    hatch: "bark",
    size: 3,
    stroke: { path: "M0.4 0.8l0.9-0.35M1.7 2.2l0.9 0.3M2.2 0.9l0.3 0.6", colour: GREY, width: 0.12 },
  },
  {
    hatch: "gravel",
    size: 3,
    stroke: {
      path: circle(0.8, 0.8, 0.32) + circle(2.2, 2.1, 0.24) + circle(2.3, 0.7, 0.14),
      colour: GREY,
      width: 0.1,
    },
  },
  {
    hatch: "paving",
    size: 4.4,
    stroke: { path: "M0 0H4.4M0 2.2H4.4M1.1 0V2.2M3.3 2.2V4.4", colour: "#888", width: 0.09 },
  },
  { hatch: "deck", size: 1.4, stroke: { path: "M0 0H1.4", colour: GREY, width: 0.14 } },
  { hatch: "building", size: 2, turn: -45, stroke: { path: "M0 0H2", colour: GREY, width: 0.16 } },
  { hatch: "out-of-reach", size: 1.1, turn: -45, stroke: { path: "M0 0H1.1", colour: "#000", width: 0.3 } },
];
