import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { LIMITS, type Limits } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import type { Op } from "../garden/op.ts";
import { applyOps } from "../garden/operations.ts";
import { outlineOf } from "../garden/outline.ts";
import { centroid } from "../geometry/ring.ts";
import { subtract } from "../geometry/vector.ts";
import { bedShade } from "../sun/sun-hours.ts";
import type { BedSun } from "../sun/sun-map.ts";
import { formatHours } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { FOOT, SAME_LENGTH, type Units } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { SAME_HOURS } from "./crop-sun.ts";
import type { Facts } from "./facts.ts";
import { moveIntoSun } from "./move-into-sun.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { standingOf } from "./standing-rules.ts";

/**
 * Flags beds from which another, taller or trellised one takes more than its share of sun. It is worth knowing, no more,
 * where the lower one has plenty all the same: six to eight hours are wanted, and of more than that it can spare some.
 */
export const shadedByBed = defineRule({
  id: "shaded-by-bed",
  grade: "should",
  promise: word("No bed stands in the shade of another."),
  why: word(
    "A tall bed or a trellis on the sunny side shades the low one behind it every day of the season.",
  ),
  source: LIMITS.bedShade.source,
  limits: ["bedShade", "sun"],
  needs: ["garden", "access", "beds", "sun", "limits", "units"],

  check({ garden, access, beds, sun, limits, units }) {
    return beds.flatMap((bed) => {
      const got = sun.get(bed.id);
      return (got?.shade ?? []).flatMap((taken) => {
        const taller = beds.find(({ id }) => id === taken.id);
        if (!got || !taller || taken.hours <= limits.bedShade + SAME_HOURS) return [];
        const [takes, gets] = [formatHours(taken.hours), formatHours(got.hours)];
        return [
          {
            grade: hasPlenty(got, limits) ? ("note" as const) : ("should" as const),
            itemIds: [bed.id, taller.id],
            at: [centroid(outlineOf(bed)), centroid(outlineOf(taller))],
            measured: taken.hours,
            limit: limits.bedShade,
            unit: "h" as const,
            title: say`${nameOf(bed)}: ${nameOf(taller)} takes ${takes} of its sun`,
            detail: say`It gets ${gets} a day over the season and would get ${formatHours(got.hours + taken.hours)} without ${nameOf(taller)}; ${formatHours(limits.bedShade)} may be taken.`,
            get waysOut() {
              const isClear = (after: BedSun) => takenBy(taller, after) <= limits.bedShade + SAME_HOURS;
              return [
                ...lowerTrellis(garden, bed, taller, isClear, units),
                ...swapPlaces({ garden, access }, bed, taller, limits),
                ...moveIntoSun({ garden, access }, bed, {
                  hours: got.hours,
                  also: isClear,
                  about: `clear-of-${taller.id}`,
                  named: true,
                }),
              ];
            },
          },
        ];
      });
    });
  },
});

/** Two hours above what is wanted: the upper end of the 6 to 8 that are. */
const PLENTY = 2;
const hasPlenty = ({ hours }: BedSun, limits: Limits): boolean => hours >= limits.sun + PLENTY - SAME_HOURS;

const takenBy = ({ id }: Bed, { shade }: BedSun): number => shade?.find((one) => one.id === id)?.hours ?? 0;

/** Trellises are lowered by so much at a time, mm. */
const STEP: Readonly<Record<Units, number>> = { us: FOOT, metric: 250 };
/** Lower than this it holds nothing up, mm. */
const LOWEST = 2 * FOOT;

/** The tallest trellis that leaves the bed its sun; without one where none does. */
function lowerTrellis(
  garden: Garden,
  bed: Bed,
  taller: Bed,
  isClear: (after: BedSun) => boolean,
  units: Units,
): WayOut[] {
  if (taller.trellis === null) return [];
  const step = STEP[units];
  const heights: (number | null)[] = [];
  const first = Math.ceil(taller.trellis / step - 1e-9) - 1;
  for (let steps = first; steps * step >= LOWEST - SAME_LENGTH; steps--) heights.push(steps * step);
  for (const trellis of [...heights, null]) {
    const ops = [{ op: "set" as const, id: taller.id, changes: { trellis } }];
    const after = bedShade(applyOps(garden, ops), bed.id);
    if (!after || !isClear(after)) continue;
    const label =
      trellis === null
        ? say`Take out the trellis of ${nameOf(taller)}`
        : say`Lower the trellis of ${nameOf(taller)} to ${formatShort(trellis, units)}`;
    return [{ label, ops }];
  }
  return [];
}

/** Puts the taller bed on the pole side, where both have the same outline and neither then shades the other. */
function swapPlaces(
  known: Pick<Facts, "garden" | "access">,
  bed: Bed,
  taller: Bed,
  limits: Limits,
): WayOut[] {
  const { garden } = known;
  if (JSON.stringify(bed.shape) !== JSON.stringify(taller.shape) || bed.turn !== taller.turn) return [];
  const by = subtract(taller.at, bed.at);
  const ops: Op[] = [
    { op: "move", id: bed.id, by },
    { op: "move", id: taller.id, by: [-by[0], -by[1]] },
  ];
  const after = applyOps(garden, ops);
  const [low, high] = [bedShade(after, bed.id), bedShade(after, taller.id)];
  const most = limits.bedShade + SAME_HOURS;
  if (!low || !high || takenBy(taller, low) > most || takenBy(bed, high) > most) return [];
  if (!standingOf(known)(after)) return [];
  return [{ label: say`Let ${nameOf(bed)} and ${nameOf(taller)} change places`, ops }];
}
