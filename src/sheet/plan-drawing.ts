import { frameOf } from "../garden/frame.ts";
import { type Item, unreachable } from "../garden/item.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Cover } from "../garden/kinds/ground.ts";
import type { Door, Gate } from "../garden/kinds/opening.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { thickened } from "../geometry/clip.ts";
import { boundsOf, centroid, signedArea } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance, midpoint, placed } from "../geometry/vector.ts";
import { formatLength } from "../units/format-length.ts";
import { FOOT } from "../units/length.ts";
import { LEAST_PT, textWidth } from "./lettering.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import type { Hatch, Mark } from "./types.ts";

/** Where the plan lies on the page: the paper place of the yard's upper left bound, and garden mm for one paper mm. */
export interface PlanPlace {
  readonly x: number;
  readonly y: number;
  readonly ratio: number;
}

/** Room round the yard for the pegs' letters, the side's dimensions and the scale bar, mm. */
export const PLAN_MARGIN = { left: 5, top: 5, right: 6, bottom: 12 } as const;

/** Size the drawing takes on paper, margins included, mm. */
export function planSize(yard: Ring, ratio: number): { readonly width: number; readonly height: number } {
  const { minX, minY, maxX, maxY } = boundsOf(yard);
  return {
    width: (maxX - minX) / ratio + PLAN_MARGIN.left + PLAN_MARGIN.right,
    height: (maxY - minY) / ratio + PLAN_MARGIN.top + PLAN_MARGIN.bottom,
  };
}

const PENS = { heavy: 0.5, bold: 0.35, line: 0.2, fine: 0.1 } as const;

/** The whole yard to scale, as marks on the page. */
export function planMarks(facts: SheetFacts, place: PlanPlace): Mark[] {
  const { minX, minY } = boundsOf(facts.garden.yard);
  const onPaper = ([x, y]: Point): Point => [
    place.x + (x - minX) / place.ratio,
    place.y + (y - minY) / place.ratio,
  ];
  const pen = new Pen(onPaper, place.ratio);
  return [
    ...facts.garden.items.flatMap((item) => (item.kind === "bed" ? [] : itemMarks(item, pen))),
    pen.ring(facts.garden.yard, PENS.heavy),
    ...facts.beds.flatMap(({ bed, mark }) => bedMarks(bed, mark, facts, pen)),
    ...pegMarks(facts, pen),
    ...yardDimensions(facts, pen),
    ...snagMarks(facts, pen),
    ...scaleBar(facts, place),
    ...northArrow(facts, place),
  ];
}

/** Turns things of the plan into marks on paper. */
class Pen {
  constructor(
    readonly onPaper: (point: Point) => Point,
    private readonly ratio: number,
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
    if (words === "" || textWidth(words, LEAST_PT) > this.size(room)) return [];
    const [x, y] = this.onPaper(at);
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

const COVER_HATCH: Readonly<Record<Cover, Hatch | "paper">> = {
  soil: "paper",
  lawn: "lawn",
  weeds: "weeds",
  bark: "bark",
  "loose-gravel": "gravel",
  "firm-gravel": "gravel",
  paving: "paving",
  deck: "deck",
  roof: "deck",
};

function itemMarks(item: Exclude<Item, Bed>, pen: Pen): Mark[] {
  switch (item.kind) {
    case "ground":
      return [pen.ring(outlineOf(item), PENS.fine, COVER_HATCH[item.cover])];
    case "path":
      return thickened(
        item.points.map((point) => placed(point, item.at, item.turn)),
        item.width,
        "butt",
      ).map((ring) => pen.ring(ring, PENS.fine, COVER_HATCH[item.surface]));
    case "house":
    case "shed": {
      const outline = outlineOf(item);
      const { minX, maxX } = boundsOf(outline);
      return [
        pen.ring(outline, PENS.heavy, "building"),
        ...pen.word(nameOf(item), centroid(outline), maxX - minX),
      ];
    }
    case "wall":
      return barrierRings(item).map((ring) => pen.ring(ring, PENS.line, "ink"));
    case "fence": {
      const line = item.points.map((point) => placed(point, item.at, item.turn));
      return [pen.line(line, PENS.bold, [2, 0.8])];
    }
    case "tree":
      return [
        pen.circle(item.at, item.canopy / 2, PENS.line, undefined, [2.5, 0.8, 0.5, 0.8]),
        pen.circle(item.at, item.trunk / 2, PENS.line, "ink"),
        ...pen.word(nameOf(item), [item.at[0], item.at[1] + item.trunk / 2 + pen.garden(3)], item.canopy),
      ];
    case "gate":
    case "door":
      return openingMarks(item, pen);
    case "tap":
      return [
        pen.circle(item.at, pen.garden(0.9), PENS.bold, "paper"),
        ...pen.word(nameOf(item), [item.at[0], item.at[1] + pen.garden(3.4)], pen.garden(20)),
      ];
    case "keep-clear": {
      const outline = outlineOf(item);
      const { minX, maxX } = boundsOf(outline);
      return [
        pen.ring(outline, PENS.line, undefined, [1.2, 0.8]),
        ...pen.word(item.name || "keep clear", centroid(outline), maxX - minX),
      ];
    }
    default:
      return unreachable(item);
  }
}

const barrierRings = (item: Extract<Item, { thickness: number }>): Ring[] =>
  thickened(
    item.points.map((point) => placed(point, item.at, item.turn)),
    item.thickness,
    "butt",
  );

/** The opening as a gap in what it stands in, with its leaf and the quarter it sweeps. */
function openingMarks(opening: Gate | Door, pen: Pen): Mark[] {
  const half = opening.width / 2;
  const local = (x: number, y: number) => placed([x, y], opening.at, opening.turn);
  const gap: Mark = { ...pen.line([local(-half, 0), local(half, 0)], 0.9), fill: "paper" } as Mark;
  const sill = pen.line([local(-half, 0), local(half, 0)], PENS.fine);
  const word = pen.word(opening.name, local(0, pen.garden(opening.kind === "gate" ? -4 : 4)), pen.garden(40));
  if (opening.swing === "sliding") return [sill, ...word];
  const side = opening.hinge === "left" ? 1 : -1;
  const towards = opening.swing === "out" ? 1 : -1;
  const sweep = Array.from({ length: 13 }, (_, i) => {
    const angle = ((i / 12) * Math.PI) / 2;
    return local(
      -side * half + side * opening.width * Math.cos(angle),
      towards * opening.width * Math.sin(angle),
    );
  });
  return [
    gap,
    sill,
    pen.line([local(-side * half, 0), sweep.at(-1)!], PENS.bold),
    pen.line(sweep, PENS.fine, [0.8, 0.6]),
    ...word,
  ];
}

function bedMarks(bed: Bed, mark: string, facts: SheetFacts, pen: Pen): Mark[] {
  const { outside, inside } = frameOf(bed);
  const beyond = facts.access.beds.find(({ id }) => id === bed.id)?.outOfReach ?? [];
  const middle = centroid(outside);
  const [x, y] = pen.onPaper(middle);
  const radius = Math.max(2.2, textWidth(mark, LEAST_PT, "bold") / 2 + 0.9);
  return [
    pen.ring(outside, PENS.bold, "paper"),
    ...inside.map((ring) => pen.ring(ring, PENS.fine, "soil")),
    ...beyond.map(({ outer }) => pen.ring(outer, PENS.fine, "out-of-reach")),
    pen.circle(middle, pen.garden(radius), PENS.line, "paper"),
    { draw: "text", at: [x, y + 1], text: mark, pt: LEAST_PT, weight: "bold", anchor: "middle" },
  ];
}

function pegMarks({ pegs, garden }: SheetFacts, pen: Pen): Mark[] {
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
function yardDimensions({ garden, units }: SheetFacts, pen: Pen): Mark[] {
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
  if (within > 90) return within - 180;
  if (within <= -90) return within + 180;
  return within;
}

const GRADE_SIZE = 3.2;

/** The mark of the gravest snag at each bed or place that has one. */
function snagMarks({ snags }: SheetFacts, pen: Pen): Mark[] {
  return snags
    .filter(({ grade }) => grade !== "note")
    .flatMap(({ grade, at }): Mark[] => {
      const [first] = at;
      if (!first) return [];
      const last = at.at(-1) ?? first;
      const [x, y] = pen.onPaper(midpoint(first, last));
      return [{ draw: "grade", grade, at: [x, y - 3.4], size: GRADE_SIZE }];
    });
}

/** A bar of a round length a few centimetres long, to prove the print with a ruler. */
function scaleBar({ garden, units }: SheetFacts, place: PlanPlace): Mark[] {
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
  return [
    box(0, "ink"),
    box(half, "paper"),
    {
      draw: "text",
      at: [x + 2 * half + 2, y + 1.6],
      text: `${formatLength(length, units)}; the bar is ${onPaper} long when printed at 100 %`,
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

const ARROW = 4.2;

/** True north, in the lower right corner of the drawing. */
function northArrow({ garden }: SheetFacts, place: PlanPlace): Mark[] {
  const { minX, minY, maxX, maxY } = boundsOf(garden.yard);
  const middle: Point = [
    place.x + (maxX - minX) / place.ratio - 5,
    place.y + (maxY - minY) / place.ratio + 5.4,
  ];
  const turned = (x: number, y: number): Point => placed([x, y], middle, garden.site.north);
  const [nx, ny] = turned(0, -ARROW - 1.6);
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
