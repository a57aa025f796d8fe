import { type Crop, cropById, type Range } from "../crops/crop-table.ts";
import { CROP_IDS, type CropId, isCropId } from "../garden/crop-ids.ts";
import { fromMemory, practice, published, type Source } from "../garden/source.ts";
import { CROP_WATER_ROWS } from "./crop-water-rows.ts";

/** Initial, development, mid and late stage, days. */
export type Stages = readonly [initial: number, development: number, mid: number, late: number];

/** How a crop uses water, from its own row of the tables or from that of a near relative. */
export interface CropWater {
  /** Name of the row in FAO-56 Table 12. */
  readonly row: string;
  /** Crop coefficients of the stages, in the mild, fairly dry air of the table. */
  readonly kcInitial: number;
  readonly kcMid: number;
  readonly kcEnd: number;
  /** Instead of `kcMid` where the crop grows up supports 1.5 to 2 m high; null where that is no custom. */
  readonly kcMidOnSupports: number | null;
  /** Of the grown crop, mm. */
  readonly height: number;
  /** Share of the soil's store that is taken with ease at 5 mm a day, 0 to 1. */
  readonly easyShare: number;
  /** In open ground; the lesser end where soil is watered often. mm */
  readonly rootZone: Range;
  /** As printed: only their proportion is used. */
  readonly stages: Stages;
}

export const CROP_WATER_SOURCES = {
  kc: published("FAO Irrigation and Drainage Paper 56, Table 12"),
  kcMidOnSupports: published("FAO Irrigation and Drainage Paper 56, Table 12, note 2"),
  easyShare: published("FAO Irrigation and Drainage Paper 56, Table 22"),
  stages: fromMemory("FAO Irrigation and Drainage Paper 56, Table 11; proportions only"),
  stagesGuessed: practice(
    "no row in Table 11: garlic guessed as dry onions, turnip as table beets, parsnip as carrots, okra as eggplant, chard, leaf crops and herbs as a leaf crop, mint and strawberry as a season of growth between two rests",
  ),
  memoryRows: fromMemory("FAO-56 Tables 12 and 22: sweet potato and parsnip"),
  practiceRows: practice(
    "no published row: okra reckoned as a fruiting crop of the group Solanaceae, leaf crops and herbs as small vegetables",
  ),
  relatives: practice("a crop without a row of its own is reckoned like its nearest relative"),
} as const satisfies Record<string, Source>;

/** Crops without a row of their own, and the one whose row they follow. */
const FOLLOWS: Partial<Record<CropId, CropId>> = {
  "bean-pole": "bean-bush",
  "bean-lima": "bean-bush",
  "squash-winter": "pumpkin",
  rutabaga: "turnip",
  leek: "onion-green",
  "lettuce-head": "lettuce-leaf",
  "brussels-sprouts": "cabbage",
  "cabbage-chinese": "cabbage",
  collards: "cabbage",
  kale: "cabbage",
  kohlrabi: "cabbage",
  mustard: "chard",
  arugula: "chard",
  basil: "chard",
  parsley: "chard",
  cilantro: "chard",
  dill: "chard",
  fennel: "celery",
  chives: "onion-green",
  thyme: "chard",
  oregano: "chard",
  sage: "chard",
  rosemary: "chard",
};

/** Where neither the crop's nor its relative's row of the crop table gives a root zone: that of lettuce, or of eggplant. */
const ROOTS_LIKE: Partial<Record<CropId, CropId>> = { chard: "lettuce-leaf", okra: "eggplant" };

/** On supports the crop is as high as they are: the middle of 1.5 to 2 m (FAO-56 Table 12, note 2). */
export const ON_SUPPORTS_HEIGHT = 1750;

const ROWS: ReadonlyMap<CropId, CropWater> = new Map(CROP_WATER_ROWS.trim().split("\n").map(readRow));
const CROP_WATER: ReadonlyMap<CropId, CropWater> = new Map(CROP_IDS.map((id) => [id, follow(id)]));

/** How a crop of the crop table uses water. @throws RangeError for a crop that is not in it */
export function cropWater(id: string): CropWater {
  const found = isCropId(id) ? CROP_WATER.get(id) : undefined;
  if (!found) throw new RangeError(`no crop of the crop table: "${id}"`);
  return found;
}

const FROM_MEMORY: ReadonlySet<CropId> = new Set(["sweet-potato", "parsnip"]);

/** How a crop's coefficients are known: from a row of its own, read or recalled, from a relative's, or from its group's. */
export function cropWaterSource(id: CropId): Source {
  if (cropWater(id).row.startsWith("group")) return CROP_WATER_SOURCES.practiceRows;
  if (FOLLOWS[id]) return CROP_WATER_SOURCES.relatives;
  return FROM_MEMORY.has(id) ? CROP_WATER_SOURCES.memoryRows : CROP_WATER_SOURCES.kc;
}

/** Rows whose stages no published row gives. */
const STAGES_GUESSED: ReadonlySet<CropId> = new Set([
  "garlic",
  "turnip",
  "mint",
  "strawberry",
  "parsnip",
  "chard",
  "okra",
]);

/** How the stages of a crop are known: as recalled from Table 11, its own row or its relative's, or guessed. */
export const cropStagesSource = (id: CropId): Source =>
  STAGES_GUESSED.has(FOLLOWS[id] ?? id) ? CROP_WATER_SOURCES.stagesGuessed : CROP_WATER_SOURCES.stages;

function follow(id: CropId): CropWater {
  const lead = FOLLOWS[id] ?? id;
  const row = ROWS.get(lead);
  if (!row) throw new RangeError(`no row tells how ${id} uses water`);
  return { ...row, rootZone: rootsOf(id) ?? row.rootZone };
}

function readRow(line: string): [CropId, CropWater] {
  const [id = "", row = "", kcInitial, kcMid, kcEnd, height, easyShare, onSupports, stages = ""] =
    line.split(" | ");
  if (!isCropId(id)) throw new RangeError(`no crop leads the row: ${line}`);
  const rootZone = rootsOf(ROOTS_LIKE[id] ?? id);
  if (!rootZone) throw new RangeError(`nothing tells how deep ${id} roots`);
  return [
    id,
    {
      row,
      kcInitial: numberOf(kcInitial, line),
      kcMid: numberOf(kcMid, line),
      kcEnd: numberOf(kcEnd, line),
      kcMidOnSupports: onSupports === "-" ? null : numberOf(onSupports, line),
      height: numberOf(height, line) * 1000,
      easyShare: numberOf(easyShare, line),
      rootZone,
      stages: stagesOf(stages, line),
    },
  ];
}

function rootsOf(id: CropId): Crop["rootZone"] {
  return cropById(id)?.rootZone ?? null;
}

/** The middle where a range is printed. */
function numberOf(text: string | undefined, line: string): number {
  const ends = (text ?? "").split("..").map(Number);
  const middle = ends.reduce((sum, end) => sum + end, 0) / ends.length;
  if (!(middle > 0)) throw new RangeError(`no number "${text}" in: ${line}`);
  return middle;
}

function stagesOf(text: string, line: string): Stages {
  const [initial, development, mid, late] = text.split(" ").map(Number);
  const days = [initial, development, mid, late].map((each) => numberOf(`${each}`, line));
  return [days[0]!, days[1]!, days[2]!, days[3]!];
}
