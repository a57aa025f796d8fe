import type { Bed } from "../garden/kinds/bed.ts";
import { practice } from "../garden/source.ts";
import { isPerennial } from "../planting/sowing-table.ts";
import { litresOver } from "../takeoff/fill-volumes.ts";
import { formatArea } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { INCH } from "../units/length.ts";
import { say } from "../words/say.ts";
import { volumeWords } from "./bought.ts";
import type { Task } from "./types.ts";
import { capitalised } from "./words.ts";
import { idsOf, type YearContext } from "./year-context.ts";
import { aboutFirstFrost, aboutLastFrost } from "./year-frame.ts";

/** Leaves or straw on a bed over winter, mm. */
const WINTER_MULCH = 4 * INCH;
const MULCHED = practice("3 to 4 in of leaves or straw over winter; 4 in is reckoned");
const SHEETED = practice("beds are covered with a dark or woven sheet over winter");
const TENDED = practice("stakes, hoses and cans are brought in before hard frost");

/** Beds that lie under leaves in winter: those meant to, and those in which something stands that rules a cover crop out. */
const leafy = ({ winter, plantings }: Bed): boolean =>
  winter === "mulch" || (winter === "cover-crop" && plantings.some(({ crop }) => isPerennial(crop)));

/** Soil covered for winter and uncovered in spring. None where there is no frost. */
export function winterTasks(context: YearContext): Task[] {
  if (!context.frame.freezes) return [];
  return [
    ...leavesTask(context.beds.filter(leafy), context),
    ...sheetTasks(
      context.beds.filter(({ winter }) => winter === "sheet"),
      context,
    ),
    ...bareTask(
      context.beds.filter(({ winter }) => winter === "nothing"),
      context,
    ),
    ...putAway(context),
  ];
}

const each = (beds: readonly Bed[]) => ({ kind: "winter" as const, years: null, bedIds: idsOf(beds) });

function leavesTask(beds: readonly Bed[], context: YearContext): Task[] {
  if (beds.length === 0) return [];
  const { units, frame } = context;
  const area = context.areaOf(beds);
  return [
    {
      ...each(beds),
      id: "winter-mulch",
      title: say`Cover beds with leaves for winter`,
      detail: say`${formatShort(WINTER_MULCH, units)} of shredded leaves or straw on ${context.named(beds)} once the ground has cooled; round what stays, not over its crowns.`,
      ...aboutFirstFrost(frame, 14, 21),
      since: 0,
      quantities: [
        say`${volumeWords(litresOver(area, WINTER_MULCH), units)} of leaves or straw on ${formatArea(area, units)}`,
      ],
      tools: [say`rake`, say`barrow`],
      why: say`Bare soil is beaten flat by rain, and heaving frost lifts young roots.`,
      cautions: [say`Straw, not hay; from a field without weedkiller.`],
      source: MULCHED,
    },
    {
      ...each(beds),
      id: "winter-mulch-off",
      title: say`Draw the winter leaves aside`,
      detail: say`On ${context.named(beds)}, where seed is to be sown; leave them between the rows.`,
      ...aboutLastFrost(frame, -35, 14),
      since: 1,
      quantities: [],
      tools: [say`rake`],
      why: say`Covered soil warms late.`,
      cautions: [],
      source: MULCHED,
    },
  ];
}

function sheetTasks(beds: readonly Bed[], context: YearContext): Task[] {
  if (beds.length === 0) return [];
  const { units, frame } = context;
  const area = context.areaOf(beds);
  return [
    {
      ...each(beds),
      id: "winter-sheet",
      title: say`Cover beds with a sheet for winter`,
      detail: say`On ${context.named(beds)}: water if dry, spread the sheet and weigh its edges down.`,
      ...aboutFirstFrost(frame, 7, 21),
      since: 0,
      quantities: [say`${formatArea(area, units)} of sheet, and its edges`],
      tools: [say`weights or pegs`],
      why: say`A sheet keeps rain from washing the bed out and weeds from growing.`,
      cautions: [say`Look under it for slugs and voles in a mild spell.`],
      source: SHEETED,
    },
    {
      ...each(beds),
      id: "winter-sheet-off",
      title: say`Take the sheet off the beds`,
      detail: say`From ${context.named(beds)}; hose it clean, dry it and store it out of the sun.`,
      ...aboutLastFrost(frame, -35, 14),
      since: 1,
      quantities: [],
      tools: [],
      why: say`Soil wants air and rain before it is sown.`,
      cautions: [],
      source: SHEETED,
    },
  ];
}

function bareTask(beds: readonly Bed[], context: YearContext): Task[] {
  if (beds.length === 0) return [];
  return [
    {
      ...each(beds),
      id: "winter-bare",
      title: say`Clear the beds that stay bare`,
      detail: say`${capitalised(context.named(beds))}: cut old crops at the soil and leave their roots in it.`,
      ...aboutFirstFrost(context.frame, 7, 21),
      since: 0,
      quantities: [],
      tools: [say`shears`],
      why: say`Roots left in hold the soil a little.`,
      cautions: [say`Bare soil washes and blows: a cover crop, leaves or a sheet would keep it.`],
      source: practice("old crops are cut, not pulled, where soil is not dug"),
    },
  ];
}

function putAway(context: YearContext): Task[] {
  const { beds, frame } = context;
  if (beds.length === 0) return [];
  const trellised = beds.filter(({ trellis }) => trellis !== null);
  return [
    {
      ...each(beds),
      id: "winter-put-away",
      title: say`Bring hoses, cans and stakes in`,
      detail: say`Shut off and drain the tap${frame.winter === "freezing" ? say`, and take its backflow device and hose off` : ""}. ${trellised.length > 0 ? say`Take netting off the trellis on ${context.named(trellised)}.` : say`Stack stakes dry.`}`,
      ...aboutFirstFrost(frame, -7, 14),
      since: 0,
      quantities: [],
      tools: [],
      why: say`A hose left on keeps water in the tap, and ice bursts it.`,
      cautions: [],
      source: TENDED,
    },
  ];
}
