import { boundsOf } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { bedMarks } from "./plan-beds.ts";
import { northArrow, pegMarks, scaleBar, yardDimensions } from "./plan-figures.ts";
import { itemMarks, laterPathMarks } from "./plan-items.ts";
import { PENS, Pen, type PlanPlace } from "./plan-pen.ts";
import { snagMarks } from "./plan-snags.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import type { Mark } from "./types.ts";

/** Room round the yard for the pegs' letters, the side's dimensions and the scale bar, mm. */
export const PLAN_MARGIN = { left: 3.5, top: 4.5, right: 4.5, bottom: 11 } as const;

/** Size the drawing takes on paper, margins included, mm. */
export function planSize(yard: Ring, ratio: number): { readonly width: number; readonly height: number } {
  const { minX, minY, maxX, maxY } = boundsOf(yard);
  return {
    width: (maxX - minX) / ratio + PLAN_MARGIN.left + PLAN_MARGIN.right,
    height: (maxY - minY) / ratio + PLAN_MARGIN.top + PLAN_MARGIN.bottom,
  };
}

/** The whole yard to scale, as marks on the page. */
export function planMarks(facts: SheetFacts, place: PlanPlace): Mark[] {
  const { minX, minY, maxX } = boundsOf(facts.garden.yard);
  const onPaper = ([x, y]: Point): Point => [
    place.x + (x - minX) / place.ratio,
    place.y + (y - minY) / place.ratio,
  ];
  const pen = new Pen(onPaper, place.ratio, [place.x, place.x + (maxX - minX) / place.ratio]);
  return [
    ...facts.garden.items.flatMap((item) => {
      if (item.kind === "bed") return [];
      const later = item.kind === "path" && facts.stage !== "all" && item.stage > facts.stage;
      return later ? laterPathMarks(item, pen) : itemMarks(item, pen);
    }),
    pen.ring(facts.garden.yard, PENS.heavy),
    ...facts.allBeds.flatMap((marked) => bedMarks(marked, facts, pen)),
    ...pegMarks(facts, pen),
    ...yardDimensions(facts, pen),
    ...snagMarks(facts, pen),
    ...scaleBar(facts, place),
    ...northArrow(facts, place),
  ];
}
