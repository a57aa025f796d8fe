import type { Point, Ring } from "../geometry/types.ts";
import { LEAST_PT, textWidth } from "./lettering.ts";
import type { Hatch, Mark } from "./types.ts";

/** Where the plan lies on the page: the paper place of the yard's upper left bound, and garden mm for one paper mm. */
export interface PlanPlace {
  readonly x: number;
  readonly y: number;
  readonly ratio: number;
}

/** Line thicknesses on paper, mm: what is built stands out from what is there. */
export const PENS = { heavy: 0.5, bold: 0.35, line: 0.2, fine: 0.1 } as const;

/** Turns things of the plan into marks on paper. */
export class Pen {
  constructor(
    readonly onPaper: (point: Point) => Point,
    private readonly ratio: number,
    /** Left and right end of the drawing on paper: words stay between them. */
    private readonly ends: readonly [left: number, right: number],
  ) {}

  ring(ring: Ring, pen: number, fill?: Hatch | "ink" | "paper", dash?: readonly number[]): Mark {
    return {
      draw: "line",
      points: ring.map(this.onPaper),
      closed: true,
      pen,
      ...(fill ? { fill } : {}),
      ...(dash ? { dash } : {}),
    };
  }

  line(points: readonly Point[], pen: number, dash?: readonly number[]): Mark {
    return { draw: "line", points: points.map(this.onPaper), closed: false, pen, ...(dash ? { dash } : {}) };
  }

  circle(at: Point, radius: number, pen: number, fill?: "ink" | "paper", dash?: readonly number[]): Mark {
    return this.ring(circleRing(at, radius), pen, fill, dash);
  }

  /** A word on the plan, in the middle of a place; nothing where it has no room. */
  word(words: string, at: Point, room: number): Mark[] {
    const width = textWidth(words, LEAST_PT);
    if (words === "" || width > this.size(room)) return [];
    const [wanted, y] = this.onPaper(at);
    const [left, right] = this.ends;
    const x = Math.max(left + width / 2 + 0.8, Math.min(right - width / 2 - 0.8, wanted));
    return [
      {
        draw: "text",
        at: [x, y + 1],
        text: words,
        pt: LEAST_PT,
        weight: "normal",
        anchor: "middle",
        halo: true,
      },
    ];
  }

  /** Paper mm for so many mm of garden. */
  size(mm: number): number {
    return mm / this.ratio;
  }

  /** Garden mm for so many mm of paper. */
  garden(mm: number): number {
    return mm * this.ratio;
  }
}

const CIRCLE_CORNERS = 48;

const circleRing = ([x, y]: Point, radius: number): Ring =>
  Array.from({ length: CIRCLE_CORNERS }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / CIRCLE_CORNERS;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
