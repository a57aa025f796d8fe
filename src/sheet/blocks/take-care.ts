import { timberById } from "../../takeoff/timbers.ts";
import { type Block, paragraph } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** The usual cautions, and those that this garden gives cause for. */
export function takeCareBlock({ garden, beds, takeoff }: SheetFacts, width: number): Block {
  const treated = beds.some(
    ({ bed }) => bed.wall.made === "boards" && timberById(bed.wall.timber)?.treatment !== "none",
  );
  const oldPaint = garden.items.some((item) => "oldPaint" in item && item.oldPaint);
  const untested = beds.some(({ bed }) => !bed.fill.tested && bed.fill.way !== "native");
  const tap = garden.items.some(({ kind }) => kind === "tap");
  const cautions = [
    "Have services marked before you dig or drive a post.",
    "Saw with eyes, ears and lungs protected, outdoors.",
    treated ? "Never burn offcuts of treated wood." : "",
    "Lift no more than you can: a soaked bag is heavy.",
    oldPaint ? "Soil near old paint may hold lead: have it tested." : "",
    untested
      ? "Compost, straw, hay or manure may carry weedkiller: grow beans in a pot of it for three weeks before you fill."
      : "",
    tap ? "A hose tap needs a backflow device." : "",
    takeoff.beds.some(({ wallHeight }) => wallHeight > TALL)
      ? "A tall wall holds tonnes when wet: ask before you build."
      : "",
    "Local codes, permits and licensed trades decide.",
  ];
  return { heading: "Take care", rows: [paragraph(cautions.filter(Boolean).join(" "), width)] };
}

/** 24 in: where the 2009 IRC R404.4 asked for a designed wall. */
const TALL = 609.6;
