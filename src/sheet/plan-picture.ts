import { boundsOfItems } from "../garden/bounds-of-item.ts";
import type { Garden } from "../garden/garden.ts";
import { plainText } from "../garden/plain-text.ts";
import { boundsOf } from "../geometry/ring.ts";
import type { Box } from "../geometry/types.ts";
import { say, sayCount } from "../words/say.ts";
import { text } from "./flow.ts";
import { shortened } from "./lettering.ts";
import { boundsOfMarks } from "./marks-bounds.ts";
import { gradeKey, pictureKey } from "./picture-key.ts";
import { planMarks } from "./plan-drawing.ts";
import { PENS } from "./plan-pen.ts";
import { type Scale, scalesFor } from "./scales.ts";
import { factsOf, type KnownFacts, type SheetFacts } from "./sheet-facts.ts";
import { svgDocument } from "./svg-document.ts";
import type { Mark } from "./types.ts";

/** The plan alone, as a drawing in a file of its own. */
export interface PlanPicture {
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Garden mm for one mm of the drawing. */
  readonly ratio: number;
  /** How the scale is written: "1/4 in = 1 ft", "1 : 50". */
  readonly scaleText: string;
}

export interface PlanPictureOptions {
  /** The day it is made, as it should read; left out where it is not given, for the engine knows no clock. */
  readonly date?: string;
  /** What is already worked out about this very garden. */
  readonly known?: KnownFacts;
}

/** The largest that a garden is drawn, mm: with its margins on ISO 216 A3 or ANSI B, either way up. */
const LONGEST = 390;
const SHORTEST = 250;
const MARGIN = 7;
/** Title and the line under it; under the plan, and between that and the key. */
const HEAD = 13.5;
const GAP = 4;
/** Narrower than this the title and the key have no room. */
const LEAST_WIDTH = 110;
const TITLE_PT = 16;

/**
 * The plan as it stands on the build sheet, with its title, scale bar, north and a key to the beds, as an SVG document in
 * true size: at the largest standard scale at which garden and all stay within a sheet of A3 or ANSI B. A garden too
 * large for every scale is drawn at the smallest.
 */
export function planPicture(garden: Garden, options: PlanPictureOptions = {}): PlanPicture {
  const facts = factsOf(garden, "all", options.known);
  const scale = scaleFor(garden);
  // Words and marks beside the yard reach out of it: the drawing is as large as what is drawn.
  const { minX, minY } = boundsOf(garden.yard);
  const extent = boundsOfMarks(planMarks(facts, { x: 0, y: 0, ratio: scale.ratio }));
  const size = [extent.maxX - extent.minX, extent.maxY - extent.minY] as const;
  const inner = Math.max(LEAST_WIDTH, size[0]);
  const place = {
    x: MARGIN + (inner - size[0]) / 2 - extent.minX,
    y: MARGIN + HEAD - extent.minY,
    ratio: scale.ratio,
  };
  const keyTop = MARGIN + HEAD + size[1] + GAP;
  const key = pictureKey(facts, { x: MARGIN, y: keyTop, width: inner });
  const title = plainText(garden.name) || say`Garden`;
  const marks = [...head(facts, scale, title, inner, options.date), ...planMarks(facts, place), ...key.marks];
  const [widthMm, heightMm] = [rounded(inner + 2 * MARGIN), rounded(keyTop + key.height + MARGIN)];
  const origin = say`The yard’s upper left bound (${minX}, ${minY} mm) lies at ${rounded(place.x)}, ${rounded(place.y)}.`;
  return {
    svg: svgDocument(
      marks,
      { width: widthMm, height: heightMm },
      {
        title: say`Plan of ${title}`,
        description: say`Drawn at ${scale.text}; one unit is 1 mm on paper and ${scale.ratio} mm on the ground. ${origin}`,
      },
    ),
    widthMm,
    heightMm,
    ratio: scale.ratio,
    scaleText: scale.text,
  };
}

function head(facts: SheetFacts, scale: Scale, title: string, width: number, date?: string): Mark[] {
  const said = [say`Drawn at ${scale.text}`, ...(date ? [date] : [])].join(" · ");
  const beds = sayCount(facts.allBeds.length, { one: "{{count}} bed", other: "{{count}} beds" });
  const [left, right] = [MARGIN, MARGIN + width];
  return [
    text(shortened(title, width, TITLE_PT, "bold"), left, MARGIN + 4.6, { pt: TITLE_PT, weight: "bold" }),
    text(`${said} · ${beds}`, left, MARGIN + 9.2, { pt: 9 }),
    ...gradeKey(facts, right, MARGIN + 9.2),
    {
      draw: "line",
      points: [
        [left, MARGIN + 11],
        [right, MARGIN + 11],
      ],
      closed: false,
      pen: PENS.bold,
    },
  ];
}

function scaleFor(garden: Garden): Scale {
  const boxes: readonly Box[] = [
    boundsOf(garden.yard),
    ...(garden.items.length > 0 ? [boundsOfItems(garden.items)] : []),
  ];
  const across = Math.max(...boxes.map(({ maxX }) => maxX)) - Math.min(...boxes.map(({ minX }) => minX));
  const down = Math.max(...boxes.map(({ maxY }) => maxY)) - Math.min(...boxes.map(({ minY }) => minY));
  const [longer, shorter] = [Math.max(across, down), Math.min(across, down)];
  const scales = scalesFor(garden.units);
  return (
    scales.find(({ ratio }) => longer / ratio <= LONGEST && shorter / ratio <= SHORTEST) ?? scales.at(-1)!
  );
}

const rounded = (mm: number): number => Math.ceil(mm * 100) / 100;
