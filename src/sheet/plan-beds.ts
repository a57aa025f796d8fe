import { frameOf } from "../garden/frame.ts";
import { boundsOf, centroid } from "../geometry/ring.ts";
import type { Point } from "../geometry/types.ts";
import { say } from "../words/say.ts";
import type { MarkedBed } from "./bed-kinds.ts";
import { bedState } from "./bed-states.ts";
import { LEAST_PT, textWidth } from "./lettering.ts";
import { PENS, type Pen } from "./plan-pen.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import type { Mark } from "./types.ts";

/** A bed with its mark and the soil in it that cannot be reached: heavy where it is built, light where it stands. */
export function bedMarks({ bed, mark }: MarkedBed, facts: SheetFacts, pen: Pen): Mark[] {
  const { outside, inside } = frameOf(bed);
  switch (bedState(bed, facts.stage)) {
    case "build": {
      const beyond = facts.access.beds.find(({ id }) => id === bed.id)?.outOfReach ?? [];
      return [
        pen.ring(outside, PENS.bold, "paper"),
        ...inside.map((ring) => pen.ring(ring, PENS.fine, "soil")),
        ...beyond.map(({ outer }) => pen.ring(outer, PENS.fine, "out-of-reach")),
        ...markOf(bed, mark, pen),
      ];
    }
    case "stands":
      return [
        pen.ring(outside, PENS.fine, "paper"),
        ...inside.map((ring) => pen.ring(ring, PENS.fine)),
        ...markOf(bed, mark, pen),
        ...stateWord(say`stands`, bed, pen),
      ];
    case "later":
      return [
        pen.ring(outside, PENS.fine, "paper", LATER),
        ...markOf(bed, mark, pen),
        ...stateWord(say`later`, bed, pen),
      ];
  }
}

const LATER = [1, 0.8];
/** Room between a mark's letters and its circle, mm. */
const ROUND = 0.9;
const LEAST_RADIUS = 2.2;
/** From the mark's circle to the baseline of the word under it, and from there to the bed's edge, mm. */
const WORD_BELOW = 2.1;
const UNDER_WORD = 0.3;

/** Letter and number in a circle; without one where the bed is too small on paper to hold it. */
function markOf(bed: MarkedBed["bed"], mark: string, pen: Pen): Mark[] {
  const { outside } = frameOf(bed);
  const middle = centroid(outside);
  const [x, y] = pen.onPaper(middle);
  const radius = Math.max(LEAST_RADIUS, textWidth(mark, LEAST_PT, "bold") / 2 + ROUND);
  const [across, down] = extentOf(bed, pen);
  const roomy = 2 * radius < Math.min(across, down);
  return [
    ...(roomy ? [pen.circle(middle, pen.garden(radius), PENS.line, "paper" as const)] : []),
    {
      draw: "text",
      at: [x, y + 1],
      text: mark,
      pt: LEAST_PT,
      weight: "bold",
      anchor: "middle",
      ...(roomy ? {} : { halo: true }),
    },
  ];
}

/** "stands", under the mark, where the bed has room for it on paper: beside its middle an L or a round bed has none. */
function stateWord(words: string, bed: MarkedBed["bed"], pen: Pen): Mark[] {
  const [across, down] = extentOf(bed, pen);
  const needed = 2 * (LEAST_RADIUS + WORD_BELOW + UNDER_WORD);
  if (bed.shape.type !== "rectangle" || textWidth(words, LEAST_PT) > across || needed > down) return [];
  const [x, y] = pen.onPaper(centroid(frameOf(bed).outside));
  return [
    {
      draw: "text",
      at: [x, y + LEAST_RADIUS + WORD_BELOW],
      text: words,
      pt: LEAST_PT,
      weight: "normal",
      anchor: "middle",
      halo: true,
    },
  ];
}

function extentOf(bed: MarkedBed["bed"], pen: Pen): readonly [across: number, down: number] {
  const { minX, minY, maxX, maxY } = boundsOf(frameOf(bed).outside);
  return [pen.size(maxX - minX), pen.size(maxY - minY)];
}

/** The upper right corner of a bed on paper: where the mark of its snags stands, clear of its letter. */
export function cornerOf(bed: MarkedBed["bed"], pen: Pen): Point {
  const { maxX, minY } = boundsOf(frameOf(bed).outside);
  return pen.onPaper([maxX, minY]);
}
