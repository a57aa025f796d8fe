import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { applyOps } from "../garden/operations.ts";
import { bedLines } from "../irrigation/bed-lines.ts";
import { dripPlan } from "../irrigation/drip-plan.ts";
import { formatFlow } from "../units/water-measures.ts";
import { USABLE_SHARE_SOURCE } from "../water/tap-flow.ts";
import { say, word } from "../words/say.ts";
import { byHand, lighterLines } from "./drip-changes.ts";
import { defineRule, type WayOut } from "./rule.ts";

/**
 * Flags beds of which one drip line alone asks more than reaches it from the tap. Beds that ask more with all their lines
 * together are watered in turns, which is no fault.
 */
export const thirstyDripBed = defineRule({
  id: "thirsty-drip-bed",
  grade: "should",
  promise: word("The tap gives each drip line the water and the pressure its emitters are made for."),
  why: word("With less, the emitters near the tap drip and the others do not."),
  source: USABLE_SHARE_SOURCE,
  slow: true,
  needs: ["garden", "beds", "drip", "units"],

  check({ garden, beds, drip, units }) {
    const limit = drip.supply.zoneLimitLh;
    return thirstyIn(drip).flatMap((id) => {
      const bed = beds.find((candidate) => candidate.id === id);
      if (!bed) return [];
      const asked = bedLines(bed, units).mostLineLh;
      const gives = limit > 0 ? formatFlow(limit, units) : say`none at that pressure`;
      return [
        {
          itemIds: [bed.id],
          at: [bed.at],
          measured: asked,
          limit,
          unit: "count" as const,
          title: say`${nameOf(bed)}: one drip line asks ${formatFlow(asked, units)}, the tap gives ${gives}`,
          detail: say`${drip.supply.measured ? say`By the pressure and flow that were measured` : say`Nobody has measured the tap: a usual one is taken`}; what the way to the bed takes is counted off.`,
          get waysOut() {
            return waysOut(bed, garden);
          },
        },
      ];
    });
  },
});

const thirstyIn = ({
  troubles,
  beds,
  supply,
}: Pick<ReturnType<typeof dripPlan>, "troubles" | "beds" | "supply">): readonly ItemId[] =>
  supply.zoneLimitLh > 0
    ? troubles.flatMap(({ what, bedId }) => (what === "too-thirsty" && bedId ? [bedId] : []))
    : beds.flatMap(({ bedId, lines }) => (lines.length > 0 ? [bedId] : []));

function waysOut(bed: Bed, garden: Garden): WayOut[] {
  const helps = ({ ops }: WayOut) => {
    const after = dripPlan(applyOps(garden, ops));
    return (
      after.beds.some(({ bedId, lines }) => bedId === bed.id && lines.length > 0) &&
      !thirstyIn(after).includes(bed.id)
    );
  };
  const wider: WayOut = {
    label: say`Lay the main in wider tubing`,
    ops: [{ op: "set-garden", changes: { water: { ...garden.water, main: "threeQuarter" } } }],
  };
  const lighter = lighterLines(bed, garden.units).flatMap((sort) => {
    const found = sort.find(({ wayOut }) => helps(wayOut));
    return found ? [found.wayOut] : [];
  });
  return [
    ...(garden.water.main === "half" && helps(wider) ? [wider] : []),
    ...lighter,
    { label: say`Water it by hand`, ops: [byHand(bed)] },
  ];
}
