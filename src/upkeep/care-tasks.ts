import type { Bed } from "../garden/kinds/bed.ts";
import { practice } from "../garden/source.ts";
import { SETTLING_SOURCE } from "../takeoff/fill-volumes.ts";
import { formatShort } from "../units/format-length.ts";
import { say } from "../words/say.ts";
import { volumeWords } from "./bought.ts";
import { firstSettling, layeredBeds, SINKING_SOURCE, woodSinking } from "./settling.ts";
import type { Task } from "./types.ts";
import { idsOf, type YearContext } from "./year-context.ts";
import { aboutFirstFrost, aboutLastFrost } from "./year-frame.ts";

/** What keeps soil and tools good: no digging, no treading, settling looked after, tools cleaned. */
export function careTasks(context: YearContext): Task[] {
  if (context.beds.length === 0) return [];
  return [noDigging(context), ...firstSettlingTask(context), ...sinkingTask(context), tools(context)];
}

function noDigging({ beds, frame, named }: YearContext): Task {
  return {
    id: "care-no-digging",
    kind: "care",
    title: say`Loosen, do not dig or tread`,
    detail: say`Work ${named(beds)} from the paths. Loosen the top with a fork pushed in and rocked; turn nothing over.`,
    ...aboutLastFrost(frame, -35, 21),
    since: 1,
    years: null,
    bedIds: idsOf(beds),
    quantities: [],
    tools: [say`broadfork or digging fork`, say`kneeling board`],
    why: say`Raised beds need no digging while nobody treads on them: worms keep the soil open, and digging brings weed seed up.`,
    cautions: [say`Not while a handful of soil still smears: wet soil packs.`],
    source: practice("beds that are not trodden on are not dug"),
  };
}

/** New fill sinks in its first season; what was ordered allows for it and is filled in as it sinks. */
function firstSettlingTask(context: YearContext): Task[] {
  const { units, frame } = context;
  const settling = context.beds.map((bed) => ({ bed, sinks: firstSettling(bed, context) }));
  const fresh = settling.filter(({ sinks }) => sinks >= LEAST_SINKING);
  if (fresh.length === 0) return [];
  const beds = fresh.map(({ bed }) => bed);
  const most = Math.max(...fresh.map(({ sinks }) => sinks));
  return [
    {
      id: "care-first-settling",
      kind: "care",
      title: say`Fill up what the new fill has sunk`,
      detail: say`New fill on ${context.named(beds)} sinks in its first season, by up to ${formatShort(most, units)}. The takeoff orders that much more: heap it now, or keep it and fill up.`,
      ...aboutLastFrost(frame, 56, 21),
      since: 0,
      years: [0],
      bedIds: idsOf(beds),
      quantities: [],
      tools: [say`shovel`, say`rake`, say`rule`],
      why: say`A bed half empty dries faster and shades its own edge.`,
      cautions: [],
      source: SETTLING_SOURCE,
    },
  ];
}

/** Less than this is not seen, mm. */
const LEAST_SINKING = 5;

function sinkingTask(context: YearContext): Task[] {
  const { units, frame, garden } = context;
  const beds = layeredBeds(context);
  if (beds.length === 0) return [];
  const woody = (bed: Bed) => context.quantitiesOf(bed).fill.woody;
  const all = beds.reduce((sum, bed) => sum + woody(bed), 0);
  const [next] = woodSinking(all, Math.max(2, garden.prices.horizon));
  const depth = next ? (next.litres * 1e6) / Math.max(1, context.areaOf(beds)) : 0;
  return [
    {
      id: "care-layered-settling",
      kind: "care",
      title: say`Measure how far layered beds have sunk`,
      detail: say`Wood in ${context.named(beds)} goes on rotting: reckon with about ${formatShort(depth, units)} in the next year and less in each that follows. Fill up with mix, besides the yearly compost.`,
      ...aboutLastFrost(frame, -42, 14),
      since: 1,
      years: null,
      bedIds: idsOf(beds),
      quantities: next ? [say`about ${volumeWords(next.litres, units)} of mix in the first year after`] : [],
      tools: [say`rule`, say`shovel`, say`barrow`],
      why: say`The roots’ depth shrinks with the wood under it.`,
      cautions: [say`Fresh wood takes nitrogen: watch for pale leaves in the first two years.`],
      source: SINKING_SOURCE,
    },
  ];
}

function tools({ beds, frame }: YearContext): Task {
  return {
    id: "care-tools",
    kind: "care",
    title: say`Clean, sharpen and oil the tools`,
    detail: say`Scrape off soil, sharpen hoe, spade and shears, oil steel and handles, pump up the barrow.`,
    ...aboutFirstFrost(frame, 35, 28),
    since: 0,
    years: null,
    bedIds: idsOf(beds),
    quantities: [],
    tools: [say`file or stone`, say`wire brush`, say`oil`, say`rag`],
    why: say`A sharp hoe is half the work, and clean blades carry no disease from bed to bed.`,
    cautions: [say`Oily rags can set themselves alight: dry them flat outdoors.`],
    source: practice("tools are cleaned and sharpened when the season is over"),
  };
}
