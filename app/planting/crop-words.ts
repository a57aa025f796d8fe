import {
  type CropId,
  capital,
  cropById,
  cropWord,
  formatShort,
  listed,
  type PlantedPatch,
  type Planting,
  SAME_LENGTH,
  say,
  sayCount,
  type Units,
} from "../../src/index.ts";

/** What a crop is called where it stands alone: "Leaf lettuce". */
export const cropTitle = (id: CropId): string => capital(cropWordOf(id));

/** The same inside a sentence. */
export function cropWordOf(id: CropId): string {
  const crop = cropById(id);
  return crop ? cropWord(crop) : id;
}

/** "tomato", "tomato and basil", "3 crops". */
export function cropsInShort(crops: readonly CropId[]): string {
  if (crops.length <= 2) return listed(crops.map(cropWordOf));
  return sayCount(crops.length, { one: "{{count}} crop", other: "{{count}} crops" });
}

/** "18 in" where plants stand equally far apart both ways, else "3 × 12 in": in the row, then between rows. */
export function spacingWords({ apart, rowsApart, standing }: PlantedPatch, units: Units): string {
  if (standing.planting.set === "block" || isSame(apart, rowsApart)) return formatShort(apart, units);
  const [inRow, between] = [formatShort(apart, units), formatShort(rowsApart, units)];
  const unit = inRow.slice(inRow.lastIndexOf(" "));
  // One unit said once.
  const plain = between.endsWith(unit) ? inRow.slice(0, -unit.length) : inRow;
  return `${plain} × ${between}`;
}

const isSame = (a: number, b: number): boolean => Math.abs(a - b) < SAME_LENGTH;

/** "18 plants in 2 rows, 18 in apart", "40 plants, 4 in apart every way", "no room for a plant". */
export function countWords(patch: PlantedPatch, units: Units): string {
  const { count, apart, rowsApart, standing, notPlaced } = patch;
  if (count === 0) return say`no room for a plant`;
  const plants = sayCount(count, { one: "{{count}} plant", other: "{{count}} plants" });
  const distance = formatShort(apart, units);
  if (standing.planting.set === "block")
    return withLost(say`${plants}, ${distance} apart every way`, notPlaced);
  const rows = rowCount(patch);
  const inRows = rows === 0 ? plants : withRows(plants, rows);
  if (isSame(apart, rowsApart) || rows < 2) return withLost(say`${inRows}, ${distance} apart`, notPlaced);
  const between = formatShort(rowsApart, units);
  return withLost(say`${inRows}, ${distance} apart, rows ${between} apart`, notPlaced);
}

const withRows = (plants: string, rows: number): string =>
  sayCount(rows, { one: "{{plants}} in {{count}} row", other: "{{plants}} in {{count}} rows" }, { plants });

const withLost = (words: string, notPlaced: number): string =>
  notPlaced === 0
    ? words
    : sayCount(
        notPlaced,
        { one: "{{words}}; {{count}} more would not fit", other: "{{words}}; {{count}} more would not fit" },
        { words },
      );

/** Rows of a patch; a row that the soil's outline parts is one row. */
export function rowCount({ rows }: Pick<PlantedPatch, "rows">): number {
  const spans = rows.map(([[ax, ay], [bx, by]]) => [Math.abs(bx - ax), Math.abs(by - ay)] as const);
  const across = spans.some(([x, y]) => x > y);
  return new Set(rows.map(([[x, y]]) => Math.round(across ? y : x))).size;
}

/** What a step of history calls a planting: "tomato in Salads". */
export const plantingIn = ({ crop }: Pick<Planting, "crop">, bed: string): string =>
  say`${cropWordOf(crop)} in ${bed}`;
