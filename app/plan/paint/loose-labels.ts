import type { Item } from "../../../src/index.ts";
import { groundLabels } from "../ground-labels.ts";
import { measure } from "../lettering.ts";
import { outsideLabels } from "../outside-labels.ts";
import type { Pen } from "../pen.ts";
import { paintLabel } from "./label.ts";

/** The words whose place depends on what else is there: names of the ground, and of beds too small for theirs. */
export function paintLooseLabels(pen: Pen, items: readonly Item[]): void {
  for (const label of groundLabels(items, pen.view, measure)) paintLabel(pen, label);
  for (const label of outsideLabels(items, pen.view, pen.units)) paintLabel(pen, label);
}
