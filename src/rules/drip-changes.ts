import type { Bed } from "../garden/kinds/bed.ts";
import type { Op } from "../garden/op.ts";
import type { BedWatering } from "../garden/watering.ts";
import { lineSpacing } from "../irrigation/line-spacing.ts";
import { figure } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { INCH, type Units } from "../units/length.ts";
import { LITRES_PER_GALLON } from "../units/water-measures.ts";
import { say } from "../words/say.ts";
import type { WayOut } from "./rule.ts";

/** A bed as it would be with other drip lines, and what the button says. */
export interface DripChange {
  readonly bed: Bed;
  readonly wayOut: WayOut;
}

/** Spacings that line is sold with. */
const EMITTERS_APART = {
  us: [6, 9, 12, 18, 24].map((inches) => inches * INCH),
  metric: [150, 200, 300, 400, 500, 600],
};
const LEAST_EMITTER_LH = { us: 0.5 * LITRES_PER_GALLON, metric: 2 } as const;
/** What differs by less is the same line. */
const SAME = 1.01;

type Drip = BedWatering["drip"];

/** Lines that ask less of their tubing and of the tap: the other way, with emitters farther apart, with lesser emitters. */
export function lighterLines(bed: Bed, units: Units): readonly (readonly DripChange[])[] {
  const { drip } = bed.watering;
  const { emittersApart, emitter } = lineSpacing(bed, units);
  const other = drip.run === "along" ? "across" : "along";
  const wider = EMITTERS_APART[units].filter((apart) => apart > emittersApart * SAME);
  const least = LEAST_EMITTER_LH[units];
  return [
    drip.drawn
      ? []
      : [
          changed(bed, other === "along" ? say`Run its lines along` : say`Run its lines across`, {
            run: other,
          }),
        ],
    emitter.flowLh > least * SAME
      ? [changed(bed, say`Emitters of ${emitterWords(least, units)}`, { emitterLh: least })]
      : [],
    wider.map((apart) =>
      changed(bed, say`Emitters ${formatShort(apart, units)} apart`, { emittersApart: apart }),
    ),
  ];
}

const emitterWords = (litresPerHour: number, units: Units): string =>
  units === "us"
    ? say`${figure(litresPerHour / LITRES_PER_GALLON)} gal an hour`
    : say`${figure(litresPerHour)} L an hour`;

function changed(bed: Bed, label: string, changes: Partial<Drip>): DripChange {
  const watering = { ...bed.watering, drip: { ...bed.watering.drip, ...changes } };
  return {
    bed: { ...bed, watering },
    wayOut: { label, ops: [{ op: "set", id: bed.id, changes: { watering } }] },
  };
}

/** The first of each sort of change that does it. */
export const firstOfEach = (
  changes: readonly (readonly DripChange[])[],
  does: (change: DripChange) => boolean,
): readonly WayOut[] =>
  changes.flatMap((sort) => {
    const found = sort.find(does);
    return found ? [found.wayOut] : [];
  });

export const byHand = (bed: Bed): Op => ({
  op: "set",
  id: bed.id,
  changes: { watering: { ...bed.watering, by: "hand" } },
});
