import type { Bed } from "../garden/kinds/bed.ts";
import { say } from "../words/say.ts";
import { controlPots, POT_TEST_SOURCE, POT_TEST_WEEKS, suspectPots, VERDICT_WORDS } from "./pot-test.ts";
import type { Task } from "./types.ts";
import { counted, potWords } from "./words.ts";
import { idsOf, type YearContext } from "./year-context.ts";
import { aboutLastFrost } from "./year-frame.ts";

const POTS = 3;
/** Long enough before the beds are filled that other compost can still be found, days from the last frost. */
const BEFORE = -63;

/** Whether compost or a ready mix goes into a bed that nobody has tried on plants yet. */
export const isUntested = ({ fill, already }: Bed): boolean =>
  !fill.tested && fill.way !== "native" && already === null && fill.recipe.compost + fill.recipe.soilless > 0;

/** Beans in pots of the new fill before it goes into the beds: once, in the first year. */
export function bioassayTasks(context: YearContext): Task[] {
  const beds = context.beds.filter(isUntested);
  if (beds.length === 0) return [];
  const { units, frame } = context;
  const [test, control] = [suspectPots(POTS), controlPots(POTS)];
  const [least, most] = POT_TEST_WEEKS;
  return [
    {
      id: "bioassay-fill",
      kind: "bioassay",
      title: say`Try the new fill on a pot of beans`,
      detail: say`Before it goes into ${context.named(beds)}: ${POTS} pots of 4 to 5 in with 2 parts of it to 1 of potting mix, ${POTS} of potting mix alone, 3 peas or beans in each, every pot on its own saucer. After ${least} to ${most} weeks, at three sets of true leaves, compare. ${Object.values(VERDICT_WORDS).join(" ")}`,
      ...aboutLastFrost(frame, BEFORE, most * 7),
      since: 0,
      years: [0],
      bedIds: idsOf(beds),
      quantities: [
        counted(test.pots + control.pots, "pot"),
        say`${potWords(test.suspectL, units)} of the fill or its compost`,
        say`${potWords(test.pottingMixL + control.pottingMixL, units)} of potting mix`,
        counted(test.seeds + control.seeds, "seed"),
      ],
      tools: [say`pots`, say`saucers`, say`labels`],
      why: say`Compost, manure, straw and hay may carry weedkillers that harm beans, peas and tomatoes at 3 parts in a thousand million and last for years.`,
      cautions: [
        say`One pot test speaks for one batch: take from several places of the heap.`,
        say`It finds that a weedkiller is there, not which.`,
      ],
      source: POT_TEST_SOURCE,
    },
  ];
}
