import { timberById } from "../../takeoff/timbers.ts";
import type { BedTakeoff } from "../../takeoff/types.ts";
import { formatWeight } from "../../units/format-figure.ts";
import type { Units } from "../../units/length.ts";
import { say } from "../../words/say.ts";
import { type Block, paragraph } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** The usual cautions, and those that this garden gives cause for. */
export function takeCareBlock({ garden, beds, takeoff, units }: SheetFacts, width: number): Block {
  const treated = beds.some(
    ({ bed }) => bed.wall.made === "boards" && timberById(bed.wall.timber)?.treatment !== "none",
  );
  const oldPaint = garden.items.some((item) => "oldPaint" in item && item.oldPaint);
  const untested = beds.some(({ bed }) => !bed.fill.tested && bed.fill.way !== "native");
  const tap = garden.items.some(({ kind }) => kind === "tap");
  const cautions = [
    say`Have services marked before you dig or drive a post.`,
    say`Saw with eyes, ears and lungs protected, outdoors.`,
    treated ? say`Never burn offcuts of treated wood.` : "",
    liftWords(takeoff.beds, units),
    oldPaint ? say`Soil near old paint may hold lead: have it tested.` : "",
    untested
      ? say`Compost, straw, hay or manure may carry weedkiller: grow beans in a pot of it for three weeks before you fill.`
      : "",
    tap ? say`A hose tap needs a backflow device.` : "",
    takeoff.beds.some(({ wallHeight }) => wallHeight > TALL)
      ? say`A tall wall holds tonnes when wet: ask before you build.`
      : "",
    say`Local codes, permits and licensed trades decide.`,
  ];
  return { heading: say`Take care`, rows: [paragraph(cautions.filter(Boolean).join(" "), width)] };
}

/** What can be lifted, and what the fill of the heaviest bed comes to. */
function liftWords(beds: readonly BedTakeoff[], units: Units): string {
  const heaviest = beds.reduce((most, { weightKg }) => Math.max(most, weightKg), 0);
  const lift = say`Two carry what is over ${LIFT[units]}.`;
  return heaviest > 0 ? say`${lift} One bed weighs up to ${formatWeight(heaviest, units)} soaked.` : lift;
}

/** NIOSH lifting equation, load constant: 23 kg, 51 lb. */
const LIFT: Readonly<Record<Units, string>> = { us: "51 lb", metric: "23 kg" };
/** 24 in: where the 2009 IRC R404.4 asked for a designed wall. */
const TALL = 609.6;
