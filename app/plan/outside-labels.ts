import { type Box, boundsOf, type Item, outlineOf, ownName, type Point } from "../../src/index.ts";
import type { View } from "../store/editor.ts";
import { type Label, LEADING, labelBox, labelOf, overlap, SMALL_NAME } from "./label.ts";
import { type Letters, measure } from "./lettering.ts";
import { standingBoxes } from "./standing-boxes.ts";
import { toScreen } from "./viewport.ts";

const LETTERING: Letters = { ...SMALL_NAME, weight: 500 };
/** A bed smaller than this on the screen is not told apart by its name any more, px. */
const SMALLEST = 26;
const OFF = 4;

/** Names that have no room in their beds, beside them: where nothing stands and nothing is written. */
export function outsideLabels(items: readonly Item[], view: View, units: "us" | "metric"): readonly Label[] {
  const nameless = items.filter(
    (item) => item.kind === "bed" && ownName(item) !== "" && !labelOf(item, view, units),
  );
  if (nameless.length === 0) return [];
  const standing = standingBoxes(items, view);
  const written = items.flatMap((item) => labelOf(item, view, units) ?? []).map(labelBox);
  return nameless.flatMap((item) => {
    if (item.kind !== "bed") return [];
    const bed = boundsOf(outlineOf(item).map((corner) => toScreen(view, corner)));
    if (Math.max(bed.maxX - bed.minX, bed.maxY - bed.minY) < SMALLEST) return [];
    const others = standing.filter(({ id }) => id !== item.id).map(({ box }) => box);
    const label = beside(ownName(item), bed, [...others, ...written]);
    if (label) written.push(labelBox(label));
    return label ? [label] : [];
  });
}

function beside(text: string, bed: Box, taken: readonly Box[]): Label | null {
  const [width, height] = [measure(text, LETTERING), LETTERING.size * LEADING];
  const [x, y] = [(bed.minX + bed.maxX) / 2, (bed.minY + bed.maxY) / 2];
  const places: readonly Point[] = [
    [x, bed.maxY + OFF + height / 2],
    [x, bed.minY - OFF - height / 2],
    [bed.maxX + OFF + width / 2, y],
    [bed.minX - OFF - width / 2, y],
  ];
  const labels = places.map(
    (at): Label => ({ lines: [{ text, letters: LETTERING }], at, turn: 0, width, height }),
  );
  return labels.find((label) => taken.every((box) => !overlap(box, labelBox(label)))) ?? null;
}
