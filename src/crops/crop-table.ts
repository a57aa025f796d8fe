import { CROP_IDS, type CropId, isCropId } from "../garden/crop-ids.ts";
import { fromMemory, practice, published, type Source } from "../garden/source.ts";
import { FOOT, INCH } from "../units/length.ts";
import { CROP_ROWS } from "./crop-rows.ts";

export interface Range {
  readonly least: number;
  readonly most: number;
}

const ROOT_CLASSES = ["shallow", "medium", "deep"] as const;
const SUN = ["full", "full/part", "part"] as const;
const SEASONS = ["warm", "cool"] as const;

export type RootClass = (typeof ROOT_CLASSES)[number];

/** A row of the crop table. Lengths in mm; null where the sources are silent. */
export interface Crop {
  readonly id: CropId;
  readonly name: string;
  readonly botanical: string;
  /** Botanical family, for rotation. */
  readonly family: string;
  readonly season: (typeof SEASONS)[number];
  readonly sow: string;
  readonly sun: (typeof SUN)[number];
  readonly rootClass: RootClass;
  /** How deep roots go in open ground. */
  readonly rootDepth: Range | null;
  /** The depth most of the water is drawn from. */
  readonly rootZone: Range | null;
  /** Soil in a bed that is open to soil below. */
  readonly leastBedDepth: number;
  readonly inRow: Range | null;
  readonly betweenRows: Range | null;
  readonly rowSource: string | null;
  /** Apart in every direction where a bed is planted close. */
  readonly bedSpacing: Range | null;
  readonly support: string;
  readonly supportHeight: Range | null;
  readonly matureHeight: Range;
  readonly heightSource: string;
  readonly daysToMaturity: Range;
  readonly daysSource: string;
}

/** Where each column comes from; codes in the last fields of a row are spelled out in `CROP_SOURCE_CODES`. */
export const CROP_SOURCES = {
  botanical: fromMemory("standard nomenclature"),
  family: fromMemory("standard botany; Amaranthaceae was Chenopodiaceae"),
  season: fromMemory("extension lists of cool and warm crops"),
  sow: practice("as usually sown or planted"),
  sun: practice("fruiting crops want full sun, leaf crops bear part shade"),
  rootClass: practice("three classes, shallow 12 to 18 in, medium 18 to 24, deep 24 to 36 and more"),
  rootDepth: published("UC Master Gardeners, Vegetable Root Depth, F. Nishida 2011, as copied"),
  rootZone: published("FAO Irrigation and Drainage Paper 56, Table 22"),
  leastBedDepth: practice("a bed open to soil below; over a hard surface the root class counts"),
  bedSpacing: fromMemory("Virginia Cooperative Extension 426-335, Intensive Gardening Methods"),
  support: practice("supports as usually built; 1.5 to 2 m in FAO-56 Table 12, note 2"),
} as const satisfies Record<string, Source>;

export const CROP_SOURCE_CODES: Readonly<Record<string, Source>> = {
  UME: published("University of Maine Extension, planting chart"),
  "UME-hills": published("University of Maine Extension, planting chart, planted in hills"),
  TSU: published("Tennessee State University Cooperative Extension ANR-3, 2011, as quoted"),
  TXW: published("Wood County (Texas) Master Gardeners, herb table"),
  CP: practice("common practice"),
};

export const CROPS: readonly Crop[] = CROP_ROWS.trim().split("\n").map(readRow);

const byId = new Map<string, Crop>(CROPS.map((crop) => [crop.id, crop]));
for (const id of CROP_IDS) {
  if (!byId.has(id)) throw new RangeError(`the crop table has no row for ${id}`);
}

/** The row of the table, or null for a crop it does not have. */
export const cropById = (id: string): Crop | null => byId.get(id) ?? null;

function readRow(line: string): Crop {
  const cells = line.split(" | ");
  const cell = (column: number): string => {
    const text = cells[column];
    if (text === undefined) throw new RangeError(`crop row too short: ${line}`);
    return text;
  };
  const textOrNull = (column: number) => (cell(column) === "-" ? null : cell(column));
  const range = (column: number, unit: number) => readRange(cell(column), unit);
  const id = cell(0);
  if (!isCropId(id)) throw new RangeError(`no garden may list the crop ${id}`);
  return {
    id,
    name: cell(1),
    botanical: cell(2),
    family: cell(3),
    season: oneOf(SEASONS, cell(4)),
    sow: cell(5),
    sun: oneOf(SUN, cell(6)),
    rootClass: oneOf(ROOT_CLASSES, cell(7)),
    rootDepth: range(8, INCH),
    rootZone: range(9, 1000),
    leastBedDepth: Number(cell(10)) * INCH,
    inRow: range(11, INCH),
    betweenRows: range(12, INCH),
    rowSource: textOrNull(13),
    bedSpacing: range(14, INCH),
    support: cell(15),
    supportHeight: range(16, FOOT),
    matureHeight: given(range(17, INCH), line),
    heightSource: cell(18),
    daysToMaturity: given(range(19, 1), line),
    daysSource: cell(20),
  };
}

function readRange(text: string, unit: number): Range | null {
  if (text === "-") return null;
  const [least, most = least] = text.split("..").map(Number);
  if (least === undefined || most === undefined || !(least <= most))
    throw new RangeError(`no range: ${text}`);
  return { least: least * unit, most: most * unit };
}

function given(range: Range | null, line: string): Range {
  if (!range) throw new RangeError(`crop row with a gap where there may be none: ${line}`);
  return range;
}

function oneOf<T extends string>(words: readonly T[], text: string): T {
  const word = words.find((known) => known === text);
  if (!word) throw new RangeError(`"${text}" is none of ${words.join(", ")}`);
  return word;
}
