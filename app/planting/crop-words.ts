import {
  type CropId,
  cropById,
  cropWord,
  formatShort,
  type PlantedPatch,
  type Planting,
  SAME_LENGTH,
  type Units,
} from "../../src/index.ts";

/** What a crop is called where it stands alone: "Leaf lettuce". */
export function cropTitle(id: CropId): string {
  const word = cropWordOf(id);
  return word.charAt(0).toUpperCase() + word.slice(1);
}

/** The same inside a sentence. */
export function cropWordOf(id: CropId): string {
  const crop = cropById(id);
  return crop ? cropWord(crop) : id;
}

/** "tomato", "tomato and basil", "3 crops". */
export function cropsInShort(crops: readonly CropId[]): string {
  const [first, second, ...more] = crops.map(cropWordOf);
  if (first === undefined) return "";
  if (second === undefined) return first;
  return more.length === 0 ? `${first} and ${second}` : `${crops.length} crops`;
}

/** "18 in" where plants stand equally far apart both ways, else "3 × 12 in": in the row, then between rows. */
export function spacingWords({ apart, rowsApart, standing }: PlantedPatch, units: Units): string {
  if (standing.planting.set === "block" || isSame(apart, rowsApart)) return formatShort(apart, units);
  const [inRow, between] = [formatShort(apart, units), formatShort(rowsApart, units)];
  const unit = units === "us" ? " in" : " cm";
  // One unit said once.
  const plain = inRow.endsWith(unit) && between.endsWith(unit) ? inRow.slice(0, -unit.length) : inRow;
  return `${plain} × ${between}`;
}

const isSame = (a: number, b: number): boolean => Math.abs(a - b) < SAME_LENGTH;

/** "18 plants in 2 rows, 18 in apart", "40 plants, 4 in apart every way", "no room for a plant". */
export function countWords(patch: PlantedPatch, units: Units): string {
  const { count, apart, rowsApart, standing, notPlaced } = patch;
  if (count === 0) return "no room for a plant";
  const plants = `${count} ${count === 1 ? "plant" : "plants"}`;
  const lost = notPlaced > 0 ? `; ${notPlaced} more would not fit` : "";
  const distance = formatShort(apart, units);
  if (standing.planting.set === "block") return `${plants}, ${distance} apart every way${lost}`;
  const rows = rowCount(patch);
  const between = isSame(apart, rowsApart) || rows < 2 ? "" : `, rows ${formatShort(rowsApart, units)} apart`;
  const inRows = rows === 0 ? "" : ` in ${rows} ${rows === 1 ? "row" : "rows"}`;
  return `${plants}${inRows}, ${distance} apart${between}${lost}`;
}

/** Rows of a patch; a row that the soil's outline parts is one row. */
export function rowCount({ rows }: Pick<PlantedPatch, "rows">): number {
  const spans = rows.map(([[ax, ay], [bx, by]]) => [Math.abs(bx - ax), Math.abs(by - ay)] as const);
  const across = spans.some(([x, y]) => x > y);
  return new Set(rows.map(([[x, y]]) => Math.round(across ? y : x))).size;
}

/** What a step of history calls a planting: "tomato in Salads". */
export const plantingIn = ({ crop }: Pick<Planting, "crop">, bed: string): string =>
  `${cropWordOf(crop)} in ${bed}`;
