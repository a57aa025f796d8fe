import { boundsOf, centroid, signedArea } from "../geometry/ring.ts";
import type { Point } from "../geometry/types.ts";
import { distance, midpoint, placed } from "../geometry/vector.ts";
import { formatLength } from "../units/format-length.ts";
import { FOOT } from "../units/length.ts";
import { say } from "../words/say.ts";
import { LEAST_PT, textWidth } from "./lettering.ts";
import { PENS, type Pen, type PlanPlace } from "./plan-pen.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import type { Mark } from "./types.ts";

/** The two pegs everything is taped from. */
export function pegMarks({ pegs, garden }: SheetFacts, pen: Pen): Mark[] {
  const middle = centroid(garden.yard);
  return (
    [
      ["P1", pegs.p1],
      ["P2", pegs.p2],
    ] as const
  ).flatMap(([words, at]): Mark[] => {
    const [x, y] = pen.onPaper(at);
    const inwards = at[0] < middle[0] ? 1 : -1;
    return [
      pen.circle(at, pen.garden(1.1), PENS.bold, "paper"),
      {
        draw: "line",
        points: [
          [x - 1.8, y],
          [x + 1.8, y],
        ],
        closed: false,
        pen: PENS.line,
      },
      {
        draw: "line",
        points: [
          [x, y - 1.8],
          [x, y + 1.8],
        ],
        closed: false,
        pen: PENS.line,
      },
      {
        draw: "text",
        at: [x + inwards * 2.2, y - 1.6],
        text: words,
        pt: LEAST_PT,
        weight: "bold",
        anchor: inwards > 0 ? "start" : "end",
        halo: true,
      },
    ];
  });
}

/** Sides shorter than this on paper carry no figure: it would not fit. */
const LEAST_DIMENSIONED = 16;

/** The length of each side of the yard, along it, outside. */
export function yardDimensions({ garden, units }: SheetFacts, pen: Pen): Mark[] {
  const { yard } = garden;
  const clockwise = signedArea(yard) > 0;
  return yard.flatMap((start, i): Mark[] => {
    const end = yard[(i + 1) % yard.length]!;
    const length = distance(start, end);
    if (pen.size(length) < LEAST_DIMENSIONED) return [];
    const [dx, dy] = [(end[0] - start[0]) / length, (end[1] - start[1]) / length];
    const outward: Point = clockwise ? [dy, -dx] : [-dy, dx];
    const [mx, my] = pen.onPaper(midpoint(start, end));
    const angle = readable((Math.atan2(dy, dx) * 180) / Math.PI);
    // Type stands on its baseline: set a little further out where it hangs below the line.
    const away = 1.2 + (outward[1] > 0.5 || outward[0] > 0.5 ? 2.2 : 0);
    return [
      {
        draw: "text",
        at: [mx + outward[0] * away, my + outward[1] * away],
        text: formatLength(length, units),
        pt: LEAST_PT,
        weight: "normal",
        anchor: "middle",
        turn: angle,
        halo: true,
      },
    ];
  });
}

/** Type is read from below or from the right, never upside down. */
function readable(degrees: number): number {
  const within = ((degrees + 540) % 360) - 180;
  if (within >= 90) return within - 180;
  if (within < -90) return within + 180;
  return within;
}

/** A bar of a round length a few centimetres long, to prove the print with a ruler. */
export function scaleBar({ garden, units }: SheetFacts, place: PlanPlace): Mark[] {
  const { minX, minY, maxX, maxY } = boundsOf(garden.yard);
  const length = barLength((maxX - minX) / 3, units);
  const { x } = place;
  const y = place.y + (maxY - minY) / place.ratio + 7;
  const half = length / 2 / place.ratio;
  const box = (from: number, fill: "ink" | "paper"): Mark => ({
    draw: "line",
    points: [
      [x + from, y],
      [x + from + half, y],
      [x + from + half, y + 1.2],
      [x + from, y + 1.2],
    ],
    closed: true,
    pen: PENS.line,
    fill,
  });
  const onPaper = formatLength(length / place.ratio, units);
  const said = say`${formatLength(length, units)}; the bar is ${onPaper}`;
  // The north arrow stands at the other end; what is said about the bar is as long as there is room.
  const room = (maxX - minX) / place.ratio - 2 * half - 2 - ARROW_ROOM;
  const words =
    [say`${said} long when printed at 100 %`, say`${said} long at 100 %`].find(
      (one) => textWidth(one, LEAST_PT) <= room,
    ) ?? said;
  return [
    box(0, "ink"),
    box(half, "paper"),
    {
      draw: "text",
      at: [x + 2 * half + 2, y + 1.6],
      text: words,
      pt: LEAST_PT,
      weight: "normal",
      anchor: "start",
    },
  ];
}

const US_BARS = [1, 2, 4, 8, 16, 32, 64, 100, 200].map((feet) => feet * FOOT);
const METRIC_BARS = [0.5, 1, 2, 4, 5, 10, 20, 50, 100].map((metres) => metres * 1000);

const barLength = (most: number, units: "us" | "metric"): number => {
  const bars = units === "us" ? US_BARS : METRIC_BARS;
  return bars.findLast((length) => length <= most) ?? bars[0]!;
};

const ARROW = 3.3;
/** What the arrow and its letter take at the right end, mm, however it is turned. */
const ARROW_ROOM = 6 + ARROW + 1;

/** True north, in the lower right corner of the drawing. */
export function northArrow({ garden }: SheetFacts, place: PlanPlace): Mark[] {
  const { minX, minY, maxX, maxY } = boundsOf(garden.yard);
  const middle: Point = [
    place.x + (maxX - minX) / place.ratio - 6,
    place.y + (maxY - minY) / place.ratio + 6.4,
  ];
  const turned = (x: number, y: number): Point => placed([x, y], middle, garden.site.north);
  // Beside the arrow, where neither it nor the yard is in the way.
  const [nx, ny]: Point = [middle[0] + ARROW + 1.4, middle[1]];
  return [
    {
      draw: "line",
      points: [turned(0, -ARROW), turned(1.5, ARROW), turned(0, ARROW / 2)],
      closed: true,
      pen: PENS.line,
      fill: "ink",
    },
    {
      draw: "line",
      points: [turned(0, -ARROW), turned(-1.5, ARROW), turned(0, ARROW / 2)],
      closed: true,
      pen: PENS.line,
      fill: "paper",
    },
    { draw: "text", at: [nx, ny + 1], text: "N", pt: LEAST_PT, weight: "bold", anchor: "middle", halo: true },
  ];
}
