import type { ItemId } from "../garden/fields.ts";
import type { Garden, GardenPrices } from "../garden/garden.ts";
import { practice, type Source } from "../garden/source.ts";
import type { GardenWater } from "../garden/watering.ts";
import { dripBeds } from "../irrigation/drip-plan.ts";
import type { BedDrip, DripPlan, FittingKey } from "../irrigation/types.ts";
import { formatDistance, formatShort } from "../units/format-length.ts";
import type { Units } from "../units/length.ts";
import { say, sayCount } from "../words/say.ts";
import { cheapestBoxes } from "./buy-fixings.ts";
import { counted } from "./counted.ts";
import { dripLineRolls, fittingGood, type Roll, standsAtTap, tubingRolls } from "./drip-goods.ts";
import {
  type Bill,
  groupedBy,
  joinedBills,
  type Purchase,
  type Shares,
  sharesOf,
  total,
} from "./purchase.ts";
import type { Stage } from "./stages.ts";

/** Cut ends and bends, of all line and tubing. */
const WASTE = 0.05;
const LENGTHS: Source = practice(
  "lines and tubing as they are laid on the plan, a twentieth more for bends and cut ends, in whole rolls",
);
const FITTINGS: Source = practice(
  "fittings as the plan of the lines counts them: tees where tubing forks, elbows at sharp bends and over the rim, an end cap a line, a stake every 3 ft",
);
const AT_TAP: Source = practice(
  "at the tap, from it on: timer, vacuum breaker, filter, pressure regulator, adapter to tubing",
);

/** What of a plan is bought in a stage. */
interface Laying {
  readonly beds: readonly BedDrip[];
  /** The main and what stands at the tap come with the first beds that need them. */
  readonly withMain: boolean;
  readonly plan: DripPlan;
  readonly units: Units;
  readonly prices: GardenPrices;
}

interface Known {
  /** Which beds there are, their stages, and the stage that is bought for. */
  readonly key: string;
  readonly units: Units;
  readonly prices: GardenPrices;
  readonly bill: Bill;
}
const known = new WeakMap<DripPlan, Known>();

/** Drip lines, the main, and what they are put together with. Remembered by the plan, which is kept while a hand drags. */
export function buyDrip(plan: DripPlan, garden: Garden, stage: Stage): Bill {
  const { units, prices } = garden;
  const beds = dripBeds(garden);
  const key = `${stage}: ${beds.map((bed) => `${bed.id} ${bed.stage}`).join()}`;
  const before = known.get(plan);
  if (before?.key === key && before.units === units && before.prices === prices) return before.bill;
  const bill = bought(plan, new Map(beds.map((bed) => [bed.id, bed.stage])), stage, { units, prices });
  known.set(plan, { key, units, prices, bill });
  return bill;
}

function bought(
  plan: DripPlan,
  stages: ReadonlyMap<ItemId, number>,
  stage: Stage,
  { units, prices }: Pick<Laying, "units" | "prices">,
): Bill {
  const laid = plan.beds.filter(({ bedId, lines }) => stages.has(bedId) && lines.length > 0);
  const first = Math.min(...laid.map(({ bedId }) => stages.get(bedId)!));
  const beds = laid.filter(({ bedId }) => stage === "all" || stages.get(bedId) === stage);
  if (beds.length === 0) return { purchases: [], offered: [] };
  const laying: Laying = { beds, withMain: stage === "all" || stage === first, plan, units, prices };
  return joinedBills([...lineBills(laying), ...tubingBills(laying), ...fittingBills(laying)]);
}

const lineBills = ({ beds, units, prices }: Laying): Bill[] =>
  [...groupedBy(beds, ({ emittersApart, emitterLh }) => `${emittersApart} ${emitterLh}`).values()].map(
    (group) => {
      const { emittersApart, emitterLh } = group[0]!;
      const length = total(group, (bed) => bed.length);
      const emitters = total(group, (bed) => bed.emitters.length);
      const lines = total(group, (bed) => bed.lines.length);
      return inRolls(dripLineRolls(emittersApart, emitterLh, units), length, prices, {
        how: say`${counted(lines, "line")} in ${counted(group.length, "bed")}, ${counted(emitters, "emitter")} ${formatShort(emittersApart, units)} apart: ${withWaste(length, units)}`,
        shares: sharesOf(
          group,
          ({ bedId }) => bedId,
          (bed) => bed.length,
        ),
      });
    },
  );

const withWaste = (length: number, units: Units): string =>
  say`${formatDistance(length, units)} and ${Math.round(100 * WASTE)} % over`;

function inRolls(
  packs: readonly Roll[],
  length: number,
  prices: GardenPrices,
  { how, shares }: Pick<Purchase, "how" | "shares">,
): Bill {
  const rolls = cheapestBoxes(length * (1 + WASTE), packs, prices);
  return {
    purchases: rolls.map(({ good, quantity }) => ({
      part: "water" as const,
      good,
      quantity,
      how,
      source: LENGTHS,
      shares,
      filling: 0,
    })),
    offered: packs,
  };
}

/** The main, and half-inch tubing up to each bed and in it, together where they are the same. */
function tubingBills({ beds, withMain, plan, units, prices }: Laying): Bill[] {
  const { length, tubing } = plan.main;
  const main = withMain ? length : 0;
  const inBeds = total(beds, tubingOf);
  const sizes: readonly GardenWater["main"][] = tubing === "half" ? ["half"] : [tubing, "half"];
  return sizes.flatMap((size) => {
    const ofMain = size === tubing ? main : 0;
    const ofBeds = size === "half" ? inBeds : 0;
    if (ofMain + ofBeds <= 0) return [];
    const parts = [
      ...(ofMain > 0 ? [say`main from the tap ${formatDistance(ofMain, units)}`] : []),
      ...(ofBeds > 0
        ? [
            say`up to ${counted(beds.length, "bed")} and in front of the lines ${formatDistance(ofBeds, units)}`,
          ]
        : []),
    ];
    const shares = added(
      byFlow(beds, ofMain),
      sharesOf(beds, ({ bedId }) => bedId, size === "half" ? tubingOf : () => 0),
    );
    const how = `${parts.join(", ")}: ${withWaste(ofMain + ofBeds, units)}`;
    return [inRolls(tubingRolls(size, units), ofMain + ofBeds, prices, { how, shares })];
  });
}

const tubingOf = ({ headerLength, feedLength }: BedDrip): number => headerLength + feedLength;

/** What serves all beds, by the water each takes of it. */
function byFlow(beds: readonly BedDrip[], amount: number): Shares {
  const flow = total(beds, ({ flowLh }) => flowLh);
  return sharesOf(
    beds,
    ({ bedId }) => bedId,
    ({ flowLh }) => (amount * flowLh) / flow,
  );
}

function added(a: Shares, b: Shares): Shares {
  const sum = new Map<ItemId, number>(a);
  for (const [id, amount] of b) sum.set(id, (sum.get(id) ?? 0) + amount);
  return sum;
}

interface Counted {
  readonly key: FittingKey;
  readonly size: GardenWater["main"];
  readonly count: number;
  readonly bedId: ItemId | null;
}

function fittingBills({ beds, withMain, plan, units }: Laying): Bill[] {
  const here = new Set<ItemId | null>(beds.map(({ bedId }) => bedId));
  const fittings = plan.fittings
    .filter(({ bedId }) => (bedId === null ? withMain : here.has(bedId)))
    .map((fitting): Counted => ({ ...fitting, size: fitting.bedId === null ? plan.main.tubing : "half" }));
  const groups = groupedBy(fittings, ({ key, size }) => fittingGood(key, size, units).key);
  return [...groups.values()].map((group) => {
    const { key, size } = group[0]!;
    const good = fittingGood(key, size, units);
    const quantity = total(group, ({ count }) => count);
    const shares = group.reduce<Shares>(
      (sum, { bedId, count }) => added(sum, bedId === null ? byFlow(beds, count) : new Map([[bedId, count]])),
      new Map(),
    );
    return {
      purchases: [
        {
          part: "water",
          good,
          quantity,
          how: howMany(group),
          source: standsAtTap(key) ? AT_TAP : FITTINGS,
          shares,
          filling: 0,
        },
      ],
      offered: [good],
    };
  });
}

const inSoMany = (pieces: number, beds: number): string =>
  sayCount(beds, { one: "{{pieces}} in {{count}} bed", other: "{{pieces}} in {{count}} beds" }, { pieces });

function howMany(group: readonly Counted[]): string {
  const main = total(
    group.filter(({ bedId }) => bedId === null),
    ({ count }) => count,
  );
  const beds = group.filter(({ bedId }) => bedId !== null);
  const inBeds = total(beds, ({ count }) => count);
  if (standsAtTap(group[0]!.key)) return say`${main} at the tap`;
  return [
    ...(main > 0 ? [say`${main} along the main`] : []),
    ...(inBeds > 0 ? [inSoMany(inBeds, beds.length)] : []),
  ].join(", ");
}
