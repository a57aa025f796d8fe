import type { Bed } from "../garden/kinds/bed.ts";
import { litresOver } from "../takeoff/fill-volumes.ts";
import { TOP_UPS, topUpDepth } from "../takeoff/top-ups.ts";
import { formatArea, formatVolume } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { say, told } from "../words/say.ts";
import { boughtWords, volumeWords } from "./bought.ts";
import type { Task } from "./types.ts";
import { counted, depthRange } from "./words.ts";
import { idsOf, type YearContext } from "./year-context.ts";
import { aboutFirstFrost, aboutLastFrost } from "./year-frame.ts";

/** Compost of one time on these beds, litres. */
export const topUpLitres = (beds: readonly Bed[], { garden, areaOf }: YearContext): number =>
  litresOver(areaOf(beds), topUpDepth(garden.upkeep));

/** Compost on top of every bed: in spring before sowing and, where it is done twice, in autumn. Not in the first year. */
export function topUpTasks(context: YearContext): Task[] {
  const { garden, beds, frame, units } = context;
  if (context.areaOf(beds) <= 0) return [];
  const { topUp, topUpsAYear } = garden.upkeep;
  const depth = topUpDepth(garden.upkeep);
  const { why, source } = TOP_UPS[topUp];
  const litres = topUpLitres(beds, context);
  const bought = boughtWords("compost", litres, context);
  const common: Omit<Task, "id" | "title" | "from" | "days" | "dayBy"> = {
    kind: "top-up",
    detail: say`${formatShort(depth, units)} of compost on ${context.named(beds)}, spread on top and left there: worms take it down. ${bothWays(context)}`,
    since: 1,
    years: null,
    bedIds: idsOf(beds),
    quantities: [
      say`${volumeWords(litres, units)} of compost: ${formatShort(depth, units)} on ${formatArea(context.areaOf(beds), units)}`,
      ...(bought === null ? [] : [bought]),
      ...(beds.length > 1 ? [byBed(beds, depth, context)] : []),
    ],
    tools: [say`barrow`, say`shovel`, say`rake`],
    why: told(why),
    cautions: [
      say`Try each new batch of compost or manure on a pot of peas or beans first: it may carry weedkiller.`,
      say`A soil test that shows 25 ppm of phosphorus or more says: no compost this year.`,
      say`Keep the top of the soil under the rim, or rain washes it out.`,
    ],
    source,
  };
  const spring = { id: "top-up-spring", title: say`Top up the beds`, ...aboutLastFrost(frame, -35, 21) };
  const autumn = {
    id: "top-up-autumn",
    title: say`Top up the beds for the second time`,
    ...aboutFirstFrost(frame, -14, 28),
  };
  return (topUpsAYear === 2 ? [spring, autumn] : [spring]).map((when) => ({ ...common, ...when }));
}

/** Both ways side by side, with what each takes in a year. */
function bothWays({ garden, beds, areaOf, units }: YearContext): string {
  const times = garden.upkeep.topUpsAYear;
  const takes = (depth: number) => formatVolume(litresOver(areaOf(beds), depth), units);
  const [least, most] = TOP_UPS.habit.depths;
  const depths = depthRange(TOP_UPS.habit.depths, units);
  const [from, to] = [takes(least * times), takes(most * times)];
  const habit =
    times === 2
      ? say`The habit is ${depths} each time, ${from} to ${to} a year`
      : say`The habit is ${depths}, ${from} to ${to} a year`;
  const advised = TOP_UPS.advice.depths[0];
  const advice = say`extension advice is ${formatShort(advised, units)} a year or less, ${takes(advised)}`;
  const taken = garden.upkeep.topUp === "habit" ? say`This is by the habit.` : say`This is by the advice.`;
  return `${habit}; ${advice}. ${taken}`;
}

/** "3.33 ft³ each for 6 beds, 2.1 ft³ for Beans" */
function byBed(beds: readonly Bed[], depth: number, { areaOf, named, units }: YearContext): string {
  const groups = new Map<string, Bed[]>();
  for (const bed of beds) {
    const volume = formatVolume(litresOver(areaOf([bed]), depth), units);
    groups.set(volume, [...(groups.get(volume) ?? []), bed]);
  }
  const [only] = groups.keys();
  if (groups.size === 1 && only !== undefined) return say`${only} a bed`;
  return [...groups]
    .map(([volume, some]) => {
      const whose = some.length > 3 ? counted(some.length, "bed") : named(some);
      return some.length > 1 ? say`${volume} each for ${whose}` : say`${volume} for ${whose}`;
    })
    .join(", ");
}
