import { cropById } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import { seedFor } from "../crops/seed-rate.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { isPerennial } from "../planting/sowing-table.ts";
import { standingsOf } from "../planting/standings.ts";
import type { Standing } from "../planting/types.ts";
import { daysFrom, roundTheYear } from "../planting/year-day.ts";
import { groupedBy } from "../takeoff/purchase.ts";
import { formatArea } from "../units/format-figure.ts";
import { say, sayCount, told } from "../words/say.ts";
import {
  broadcastRate,
  COVER_DAYS_SOURCE,
  type CoverCrop,
  coverCropAt,
  livesThrough,
} from "./cover-crops.ts";
import type { Task } from "./types.ts";
import { capitalised, dayWords, listed, seedRange } from "./words.ts";
import { idsOf, type YearContext } from "./year-context.ts";
import { aboutLastFrost } from "./year-frame.ts";

/** Beds that have a cover crop over winter: not those in which something stands all year. */
export const coveredBeds = ({ beds }: Pick<YearContext, "beds">): readonly Bed[] =>
  beds.filter(
    ({ winter, plantings }) => winter === "cover-crop" && !plantings.some(({ crop }) => isPerennial(crop)),
  );

export const coverOf = ({ garden }: Pick<YearContext, "garden">): CoverCrop =>
  coverCropAt(garden.upkeep.cover, garden.site);

/** Seed of all covered beds, g: least and most of the rate. */
export function coverSeed(beds: readonly Bed[], context: YearContext): readonly [number, number] {
  const [least, most] = broadcastRate(coverOf(context));
  const area = context.areaOf(beds);
  return [seedFor(least, area), seedFor(most, area)];
}

/** Sown in time before frost, or as soon as the bed is empty; ended in time before what comes next. */
export function coverCropTasks(context: YearContext): Task[] {
  const cover = coverOf(context);
  const beds = coveredBeds(context);
  const sowings = groupedBy(beds, (bed) => String(sowDayOf(bed, cover, context)));
  return [
    ...[...sowings.values()].map((some) => sowTask(some, cover, context)),
    ...endTasks(beds, cover, context),
  ];
}

/** A cover crop sown later than this after its usual day makes too little growth, days. Common practice. */
const STILL_IN_TIME = 28;
const SOW_WITHIN = 14;

const usualSowDay = ({ sownBefore }: CoverCrop, { frame }: YearContext): number =>
  roundTheYear(frame.first - sownBefore);

/** What stands in a bed on a day. */
const standingOn = (bed: Bed, day: number, { garden }: YearContext): readonly Standing[] =>
  standingsOf(bed, garden.site).filter(({ from, days }) => daysFrom(from, day) < days);

/** The usual day, or the first after it on which the bed is empty, while that is still in time. */
function sowDayOf(bed: Bed, cover: CoverCrop, context: YearContext): number {
  const usual = usualSowDay(cover, context);
  for (let later = 0; later <= STILL_IN_TIME; later++) {
    const day = roundTheYear(usual + later);
    if (standingOn(bed, day, context).length === 0) return day;
  }
  return usual;
}

function sowTask(beds: readonly Bed[], cover: CoverCrop, context: YearContext): Task {
  const { units, frame } = context;
  const day = sowDayOf(beds[0]!, cover, context);
  const among = [
    ...new Set(beds.flatMap((bed) => standingOn(bed, day, context).map(({ planting }) => planting.crop))),
  ];
  const names = among.flatMap((id) => cropById(id) ?? []).map(cropWord);
  const lives = livesThrough(cover, frame.winter, frame.freezes);
  const seed = coverSeed(beds, context);
  return {
    id: `cover-sow-${beds[0]!.id}`,
    kind: "cover-crop",
    title: say`Sow ${cover.word} as a cover crop`,
    detail: say`On ${context.named(beds)}: rake smooth, broadcast the seed, rake it in and keep it moist until it is up. ${frame.freezes ? (lives ? say`It lives through the winter here.` : say`Frost kills it here, and it lies as mulch until spring.`) : say`Sow it when the bed rests.`}`,
    from: day,
    days: SOW_WITHIN,
    dayBy: frame.dayBy,
    since: 0,
    years: null,
    bedIds: idsOf(beds),
    quantities: [
      say`${seedRange(seed, units)} of ${cover.word} seed on ${formatArea(context.areaOf(beds), units)}`,
    ],
    tools: [say`rake`, say`watering can`],
    why: say`Roots hold the soil, keep what would wash out, and feed what lives in it.`,
    cautions: [
      ...(names.length > 0
        ? [
            sayCount(
              names.length,
              {
                one: "{{names}} still stands there: sow between the plants.",
                other: "{{names}} still stand there: sow between the plants.",
              },
              { names: capitalised(listed(names)) },
            ),
          ]
        : []),
      ...cover.cautions.map(told),
    ],
    source: cover.rateSource,
  };
}

function endTasks(beds: readonly Bed[], cover: CoverCrop, context: YearContext): Task[] {
  const { frame } = context;
  if (!livesThrough(cover, frame.winter, frame.freezes)) return killedTask(beds, cover, context);
  const ends = groupedBy(beds, (bed) => String(endDayOf(bed, cover, context)));
  return [...ends.values()].map((some): Task => {
    const end = endDayOf(some[0]!, cover, context);
    return {
      ...endAbout(some, context),
      id: `cover-end-${some[0]!.id}`,
      title: say`End the ${cover.word}`,
      detail: say`${cover.endHow} on ${context.named(some)} ${isEarly(some[0]!, cover, context) ? say`in good time, whether it blooms or not: what comes next needs the ground` : cover.endWhen}; leave it lying as mulch. Then wait ${cover.rest} days: nothing is sown before ${dayWords(end + END_WITHIN + cover.rest)}.`,
      from: end,
      days: END_WITHIN,
      why: say`Cut in time it neither seeds nor starves the crop that follows; fresh growth holds back small seed while it rots.`,
      cautions: cover.cautions.map(told),
      source: COVER_DAYS_SOURCE,
    };
  });
}

const END_WITHIN = 10;
/** Where nothing else is grown, cover crops are ended about their bloom, days after the last frost. */
const BLOOM = 14;

/**
 * In time for the rest before what is next set in the bed after the winter, else at bloom. Where frost is unknown, so long
 * after sowing as buckwheat takes.
 */
function endDayOf(bed: Bed, cover: CoverCrop, context: YearContext): number {
  const sown = sowDayOf(bed, cover, context);
  if (!context.frame.freezes) return roundTheYear(sown + FAST_COVER);
  const ends = Math.min(bloomAfter(sown, context), inTimeAfter(sown, bed, cover, context));
  return roundTheYear(sown + Math.max(LEAST_COVER, ends));
}

const bloomAfter = (sown: number, { frame }: YearContext): number => daysFrom(sown, frame.last + BLOOM);

/** Days after it is sown by which it has to be ended for the next thing in the bed; endless where nothing follows. */
function inTimeAfter(sown: number, bed: Bed, cover: CoverCrop, { garden }: YearContext): number {
  const next = standingsOf(bed, garden.site)
    .map(({ from }) => daysFrom(sown, from))
    .filter((after) => after > LEAST_COVER);
  return Math.min(...next) - cover.rest - END_WITHIN;
}

/** Whether what comes next cannot wait for its bloom. */
function isEarly(bed: Bed, cover: CoverCrop, context: YearContext): boolean {
  const sown = sowDayOf(bed, cover, context);
  return context.frame.freezes && inTimeAfter(sown, bed, cover, context) < bloomAfter(sown, context);
}

/** Days a cover crop is left at least: less covers nothing. Common practice. */
const LEAST_COVER = 56;
/** "About 40 days after sowing" (Cornell Cover Crop Guide, buckwheat). */
const FAST_COVER = 40;

function killedTask(beds: readonly Bed[], cover: CoverCrop, context: YearContext): Task[] {
  if (beds.length === 0) return [];
  return [
    {
      ...endAbout(beds, context),
      id: "cover-clear",
      title: say`Rake the dead ${cover.word} aside`,
      detail: say`Frost has killed it on ${context.named(beds)}. Leave it between the rows as mulch; rake it aside where seed is sown.`,
      ...aboutLastFrost(context.frame, -35, 14),
      why: say`What the frost killed needs no cutting, and lies as mulch.`,
      cautions: [say`Should a mild winter leave it alive, cut it at the soil before it seeds.`],
      source: cover.hardinessSource,
    },
  ];
}

const endAbout = (beds: readonly Bed[], { frame }: YearContext) => ({
  kind: "cover-crop" as const,
  dayBy: frame.dayBy,
  since: 1,
  years: null,
  bedIds: idsOf(beds),
  quantities: [],
  tools: [say`shears or sickle`, say`rake`],
});
