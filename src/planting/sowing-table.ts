import { CROP_IDS, type CropId, isCropId } from "../garden/crop-ids.ts";
import { fromMemory, practice, type Source } from "../garden/source.ts";
import { SOWING_ROWS } from "./sowing-rows.ts";

const WORDS = ["hardy", "semi-hardy", "tender", "very-tender", "autumn"] as const;

export type Hardiness = (typeof WORDS)[number];

/** A row of the sowing table. */
export interface Sowing {
  readonly hardiness: Hardiness;
  /** Whether a second sowing in summer, for autumn, is usual. */
  readonly again: boolean;
  /** Under cover before it is set out, days; null where that is not usual. */
  readonly underCover: number | null;
  /**
   * Gone when all of it is ripe; picked for so many days from when the first is ready; picked until the first frost; or
   * standing from year to year.
   */
  readonly picked: "once" | "frost" | "stays" | number;
}

/** Days from the last frost of spring on which a crop is first and usually set out or sown in the open. */
export const HARDINESS: Readonly<
  Record<Exclude<Hardiness, "autumn">, { readonly from: number; readonly usual: number }>
> = {
  hardy: { from: -28, usual: -21 },
  "semi-hardy": { from: -14, usual: -7 },
  tender: { from: 0, usual: 0 },
  "very-tender": { from: 14, usual: 14 },
};

/** Cool crops set later than this after the last frost meet the heat of summer, days. */
export const COOL_UNTIL = 28;
/** Towards autumn the days grow short and crops take so much longer, days. */
export const SHORT_DAYS = 14;
/** What hardy and semi-hardy crops stand of frost in autumn: days from the first frost until they are spoilt. */
export const STANDS_FROST: Readonly<Record<Exclude<Hardiness, "autumn">, number>> = {
  hardy: 28,
  "semi-hardy": 14,
  tender: 0,
  "very-tender": 0,
};
/** How long before its last day a second sowing may begin. */
export const AGAIN_DAYS = 42;
/** Crops that stand over winter: set from, usually at and until, days from the first frost of autumn. */
export const OVER_WINTER = { from: -14, usual: 0, until: 28 };

export const SOWING_SOURCES = {
  hardiness: fromMemory(
    "Colorado State University Extension, CMG GardenNotes 720: hardy crops 2 to 4 weeks before the last frost, semi-hardy 0 to 2 weeks before, tender at it, very tender 2 weeks after",
  ),
  perennials: practice("perennial crops and herbs as they are usually set; they stand all year"),
  coolUntil: practice("spring sowings of cool crops end about four weeks after the last frost"),
  again: practice(
    "counted back from the first frost by the days to maturity and two weeks for short days; hardy crops stand four weeks of frost, semi-hardy two",
  ),
  overWinter: practice("garlic is set about the first frost, four to six weeks before the ground freezes"),
  underCover: practice("weeks under cover as most extension calendars give them"),
  picked: practice("how long a crop is usually picked"),
} as const satisfies Record<string, Source>;

const TABLE: ReadonlyMap<CropId, Sowing> = new Map(SOWING_ROWS.trim().split("\n").map(readRow));
for (const id of CROP_IDS) {
  if (!TABLE.has(id)) throw new RangeError(`the sowing table has no row for ${id}`);
}

/** When a crop is sown and how it is picked. */
export const sowingOf = (id: CropId): Sowing => TABLE.get(id)!;

/** Whether it stands from year to year. */
export const isPerennial = (id: CropId): boolean => sowingOf(id).picked === "stays";

function readRow(line: string): [CropId, Sowing] {
  const [id = "", hardiness = "", again = "", weeks = "", picked = ""] = line.split(" | ");
  const known = WORDS.find((word) => word === hardiness);
  if (!isCropId(id) || !known || !/^(yes|no)$/.test(again)) throw new RangeError(`no sowing row: ${line}`);
  return [
    id,
    {
      hardiness: known,
      again: again === "yes",
      underCover: weeks === "-" ? null : daysOf(weeks, line),
      picked: picked === "once" || picked === "frost" || picked === "stays" ? picked : daysOf(picked, line),
    },
  ];
}

function daysOf(weeks: string, line: string): number {
  const days = Number(weeks) * 7;
  if (!(days > 0)) throw new RangeError(`no number of weeks "${weeks}" in: ${line}`);
  return days;
}
