import { type ItemOf, type PlantedPatch, plantsOf, type Units } from "../../../src/index.ts";
import { dayShown } from "../../planting/shown-day.ts";
import { standingThen } from "../../planting/standing-on.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { INK } from "../../style/ink.ts";
import { cropCaptions } from "../crop-captions.ts";
import { type Label, labelBox, labelOf } from "../label.ts";
import { letteringAge, measure } from "../lettering.ts";
import type { Pen } from "../pen.ts";
import { toScreen } from "../viewport.ts";
import { paintLabel } from "./label.ts";

type Bed = ItemOf<"bed">;

/** The captions of a bed's crops; after the bed's own name, which they make room for. */
export function paintCropCaptions(pen: Pen, bed: Bed): void {
  for (const label of captionLabels(pen, bed)) paintLabel(pen, label, INK.soil, true);
}

/** Where those captions stand, px of the plan. */
export function captionLabels(pen: Pick<Pen, "view" | "units">, bed: Bed): readonly Label[] {
  if (bed.plantings.length === 0) return [];
  const [x, y] = toScreen(pen.view, bed.at);
  return captionsOf(pen, bed).map((label) => ({ ...label, at: [label.at[0] + x, label.at[1] + y] }));
}

interface Lettered {
  readonly scale: number;
  readonly units: Units;
  readonly age: number;
  readonly turn: number;
  readonly trellised: boolean;
  /** The bed's own words, which captions keep off. */
  readonly name: string;
  readonly labels: readonly Label[];
}

const lettered = new WeakMap<readonly PlantedPatch[], Lettered>();

/**
 * A bed's captions, px from the middle of its frame; remembered by what they are about, for to find room for words takes
 * longer than to draw them. Panning, and carrying the bed, leave them as they are.
 */
function captionsOf({ view, units }: Pick<Pen, "view" | "units">, bed: Bed): readonly Label[] {
  const { site } = shownGarden(useEditor.getState());
  const all = plantsOf(bed, site);
  const shown = standingThen(all, dayShown());
  const { scale } = view;
  const { turn } = bed;
  const age = letteringAge();
  const own = labelOf(bed, view, units);
  const name = own ? `${own.lines.map(({ text }) => text).join()} ${own.turn}` : "";
  const trellised = bed.trellis !== null;
  let known = lettered.get(shown);
  if (
    known?.scale !== scale ||
    known.units !== units ||
    known.age !== age ||
    known.turn !== turn ||
    known.trellised !== trellised ||
    known.name !== name
  ) {
    const [x, y] = toScreen(view, bed.at);
    const taken = own ? [labelBox({ ...own, at: [own.at[0] - x, own.at[1] - y] })] : [];
    const about = { scale, x: bed.at[0], y: bed.at[1] };
    known = {
      scale,
      units,
      age,
      turn,
      trellised,
      name,
      labels: cropCaptions(bed, shown, all, about, units, taken, measure),
    };
    lettered.set(shown, known);
  }
  return known.labels;
}
