import { type Crop, cropById } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import type { CropId } from "../garden/crop-ids.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { practice, type Source } from "../garden/source.ts";
import { plantCount } from "../planting/counts.ts";
import { plantsOf } from "../planting/plants.ts";
import { SOWING_SOURCES, sowingOf } from "../planting/sowing-table.ts";
import { sowingWindow } from "../planting/sowing-window.ts";
import type { PlantedPatch } from "../planting/types.ts";
import { daysFrom, roundTheYear, YEAR_DAYS } from "../planting/year-day.ts";
import { groupedBy } from "../takeoff/purchase.ts";
import { formatShort } from "../units/format-length.ts";
import { say } from "../words/say.ts";
import type { DayBy, Task } from "./types.ts";
import { capitalised, counted, dayWords } from "./words.ts";
import { idsOf, type YearContext } from "./year-context.ts";
import { lasting } from "./year-frame.ts";

/** One crop on one day, in all the beds in which it is set then. */
interface Sown {
  readonly crop: Crop;
  readonly beds: readonly Bed[];
  readonly patches: readonly PlantedPatch[];
  readonly id: string;
}

/** A sowing task lasts a fortnight at most: the first half of a long window is the better one. */
const SOW_WITHIN = 14;
const START_WITHIN = 7;

/**
 * What is started under cover, sown or set out, and picked. A crop set in several beds on the same day is one task.
 */
export function sowAndHarvestTasks(context: YearContext): Task[] {
  return sowings(context).flatMap((sown) => [
    ...startTask(sown, context),
    sowTask(sown, context),
    ...harvestTask(sown, context),
  ]);
}

function sowings({ beds, garden: { site } }: YearContext): Sown[] {
  const all = beds.flatMap((bed) => {
    const seen = new Map<CropId, number>();
    return plantsOf(bed, site).map((patch) => {
      const time = (seen.get(patch.crop) ?? 0) + 1;
      seen.set(patch.crop, time);
      return { bed, patch, id: `${bed.id}-${patch.crop}${time > 1 ? `-${time}` : ""}` };
    });
  });
  const together = groupedBy(all, ({ patch: { crop, standing } }) =>
    [crop, standing.from, standing.days, standing.pickFrom, standing.dayBy].join(" "),
  );
  return [...together.values()].flatMap((group): Sown[] => {
    const crop = cropById(group[0]!.patch.crop);
    if (!crop) return [];
    const beds = [...new Set(group.map(({ bed }) => bed))];
    return [{ crop, beds, patches: group.map(({ patch }) => patch), id: group[0]!.id }];
  });
}

/** As a title begins: "Pole bean". */
const titleWord = (crop: Crop): string => capitalised(cropWord(crop));

const dayByOf = ({ patches }: Sown, { frame }: YearContext): DayBy =>
  patches[0]!.standing.dayBy === "typed" ? "typed" : frame.dayBy;

const isStaying = (crop: Crop): boolean => sowingOf(crop.id).picked === "stays";

/** A crop that stays is set once, in the first year; any other each year anew. */
const yearsOf = (crop: Crop): Pick<Task, "since" | "years"> =>
  isStaying(crop) ? { since: 0, years: [0] } : { since: 0, years: null };

const plantsIn = ({ patches }: Sown): number => patches.reduce((sum, { count }) => sum + count, 0);

const FROST_SOURCE = SOWING_SOURCES.hardiness;
const TYPED_SOURCE: Source = practice("the day typed for this planting");

function startTask(sown: Sown, context: YearContext): Task[] {
  const { crop, beds, patches, id } = sown;
  const { underCover } = sowingOf(crop.id);
  const fromSeed = crop.sow === "transplant" || crop.sow === "either" || crop.sow === "sets/transplant";
  if (underCover === null || !fromSeed) return [];
  const plants = plantsIn(sown);
  const setOn = patches[0]!.standing.from;
  return [
    {
      id: `start-${id}`,
      kind: "sow",
      title: say`${titleWord(crop)}: start under cover`,
      detail: say`Sow in pots or trays, ${Math.round(underCover / 7)} weeks before they are set out on ${dayWords(setOn)} in ${context.named(beds)}. Sow a few more than are wanted.`,
      from: roundTheYear(setOn - underCover),
      days: START_WITHIN,
      dayBy: dayByOf(sown, context),
      ...yearsOf(crop),
      bedIds: idsOf(beds),
      quantities: plants > 0 ? [counted(plants, "plant")] : [],
      tools: [say`pots or trays`, say`seed compost`, say`labels`],
      why: say`Plants raised under cover stand ready when the ground is warm enough.`,
      cautions: [say`Harden them off: a week of days outdoors before they are set out.`],
      source: SOWING_SOURCES.underCover,
    },
  ];
}

/** What is done with what is set: seed is sown, plants are set out, the rest is planted. "Pole bean: sow" */
function sowTitle(crop: Crop): string {
  const name = titleWord(crop);
  const isSown = crop.sow === "direct" || (crop.sow === "either" && sowingOf(crop.id).underCover === null);
  if (isSown) return say`${name}: sow`;
  if (crop.sow === "transplant" || crop.sow === "either") return say`${name}: set out`;
  return say`${name}: plant`;
}

function sowTask(sown: Sown, context: YearContext): Task {
  const { crop, beds, patches, id } = sown;
  const { units, garden } = context;
  const { standing, apart, rowsApart } = patches[0]!;
  const plants = plantsIn(sown);
  const rows = patches.reduce((sum, patch) => sum + plantCount(patch).rows, 0);
  const window = windowOf(sown, context);
  const spacing = say`${formatShort(apart, units)} apart${standing.planting.set === "rows" ? say`, rows ${formatShort(rowsApart, units)} apart` : say` every way`}`;
  const unplaced = patches.some(({ notPlaced }) => notPlaced > 0);
  const late = sowingWindow(crop.id, garden.site).windows.length === 0;
  return {
    id: `sow-${id}`,
    kind: "sow",
    title: sowTitle(crop),
    detail: say`In ${context.named(beds)}, ${spacing}. ${window.words}`,
    from: standing.from,
    days: lasting(Math.min(SOW_WITHIN, window.left)),
    dayBy: dayByOf(sown, context),
    ...yearsOf(crop),
    bedIds: idsOf(beds),
    quantities:
      plants > 0
        ? [
            `${counted(plants, "plant")}${standing.planting.set === "rows" && rows > 0 ? say` in ${counted(rows, "row")}` : ""}`,
          ]
        : [],
    tools: [say`rake`, say`line`, say`dibber or trowel`, say`labels`],
    why:
      crop.season === "warm"
        ? say`A warm crop: frost kills it, and cold soil stops it.`
        : say`A cool crop: it grows best before or after the heat.`,
    cautions: [
      ...(unplaced ? [say`Not all of it has room where it is drawn.`] : []),
      ...(late ? [say`The days without frost are too few for it to ripen in the open.`] : []),
      say`Lean in from the path: no foot on the soil.`,
    ],
    source: standing.dayBy === "typed" ? TYPED_SOURCE : FROST_SOURCE,
  };
}

/** The window its day lies in, in a sentence, and how many days of it are left then. */
function windowOf(
  { crop, patches }: Sown,
  { garden }: YearContext,
): { readonly words: string; readonly left: number } {
  const { from } = patches[0]!.standing;
  const { windows } = sowingWindow(crop.id, garden.site);
  const within = windows.find((window) => daysFrom(window.from, from) < window.days);
  if (!within) {
    return {
      words: windows.length > 0 ? say`That day lies outside its usual time.` : "",
      left: START_WITHIN,
    };
  }
  const end = roundTheYear(within.from + within.days - 1);
  return {
    words: say`Its time is ${dayWords(within.from)} to ${dayWords(end)}.`,
    left: within.days - daysFrom(within.from, from),
  };
}

/** Perennials whose picking has to stop so that they last, days from the first. Common practice. */
const PICKED_FOR: Partial<Record<CropId, number>> = { asparagus: 49 };

function harvestTask(sown: Sown, context: YearContext): Task[] {
  const { crop, beds, patches, id } = sown;
  const { standing } = patches[0]!;
  const staying = isStaying(crop);
  const ready = daysFrom(standing.from, standing.pickFrom);
  const days = staying ? perennialDays(sown, context) : standing.days - ready;
  // Taken out before any of it is ready: there is nothing to pick.
  if (!staying && days <= 0) return [];
  const [least, most] = [crop.daysToMaturity.least, crop.daysToMaturity.most];
  const plants = plantsIn(sown);
  return [
    {
      id: `harvest-${id}`,
      kind: "harvest",
      title: say`${titleWord(crop)}: pick`,
      detail: say`From ${context.named(beds)}, first ready ${least === most ? least : say`${least} to ${most}`} days after it is set.${
        crop.id in PICKED_FOR
          ? say` Stop after about seven weeks so that the crowns keep their strength.`
          : ""
      }`,
      from: standing.pickFrom,
      days: lasting(days),
      dayBy: dayByOf(sown, context),
      since: Math.floor((standing.from - 1 + least) / YEAR_DAYS),
      years: null,
      bedIds: idsOf(beds),
      quantities: plants > 0 ? [say`from ${counted(plants, "plant")}`] : [],
      tools: [say`knife or scissors`, say`basket`],
      why: say`Picked when ready it is at its best, and many crops bear longer for it.`,
      cautions: [],
      source: SOWING_SOURCES.picked,
    },
  ];
}

/** Perennials are picked until the first frost of autumn, those of the table so many days. */
function perennialDays({ crop, patches }: Sown, { frame }: YearContext): number {
  const { pickFrom } = patches[0]!.standing;
  return PICKED_FOR[crop.id] ?? daysFrom(pickFrom, frame.first);
}
