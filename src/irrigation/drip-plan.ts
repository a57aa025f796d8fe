import type { ItemId } from "../garden/fields.ts";
import { frameOf } from "../garden/frame.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { published, type Source } from "../garden/source.ts";
import { nearestOnSegment } from "../geometry/segment.ts";
import type { Point } from "../geometry/types.ts";
import { distance, placed, unplaced } from "../geometry/vector.ts";
import { USABLE_SHARE_SOURCE } from "../water/tap-flow.ts";
import { LINE_VARIATION, TUBING } from "../water/tubing.ts";
import { type Header, headerOf } from "./bed-header.ts";
import { type BedLines, bedLines } from "./bed-lines.ts";
import { bedWaterYears } from "./bed-water-year.ts";
import { troublesOf } from "./drip-troubles.ts";
import { FITTINGS_SOURCE, fittingsOf } from "./fittings-of.ts";
import { type Main, mainTo } from "./garden-main.ts";
import { EMITTER_SOURCE, LINE_SPACING_SOURCE } from "./line-spacing.ts";
import { crossingsOf } from "./main-crossings.ts";
import { DEVICES_SOURCE, groundRise, supplyTo, USUAL_SUPPLY_SOURCE } from "./supply.ts";
import type { BedDrip, BedWaterYear, DripPlan } from "./types.ts";
import { zonesOf } from "./zones-of-garden.ts";

/** A bed with all that is laid in it. */
export interface DrippedBed {
  readonly bed: Bed;
  readonly lines: BedLines;
  readonly header: Header | null;
  readonly drip: BedDrip;
}

const LOSS_SOURCE: Source = published(
  "pressure lost in tubing by Darcy-Weisbach with Blasius (1913), for smooth pipe and whirling water up to a Reynolds number of 100,000; gliding water by 64 / Re",
);

/** The beds of a garden that are watered by drip lines. */
export const dripBeds = ({ items }: Pick<Garden, "items">): readonly Bed[] =>
  items.filter((item) => item.kind === "bed").filter(({ watering }) => watering.by === "drip");

interface Known {
  readonly garden: Garden;
  readonly plan: DripPlan;
}
const known = new WeakMap<Garden["items"], Known>();

/**
 * The drip lines of a garden: lines and emitters in the soil of each bed that is watered by them, the main from the tap
 * along free ground, the zones that the tap's flow and pressure allow, and what it is all put together with.
 *
 * Empty for a garden without such beds. What cannot be done is said in `troubles`, and the rest is planned as if it could.
 *
 * @param options.years of the garden's beds, where they are known already
 */
export function dripPlan(
  garden: Garden,
  { years }: { readonly years?: readonly BedWaterYear[] } = {},
): DripPlan {
  const before = known.get(garden.items);
  if (before && planAlike(before.garden, garden)) return before.plan;
  const beds = dripBeds(garden);
  // Without such beds nobody's water is worked out: this is asked for every move of a hand.
  const plan = worked(garden, beds, beds.length > 0 ? (years ?? bedWaterYears(garden)) : []);
  known.set(garden.items, { garden, plan });
  return plan;
}

const DECIDING = ["yard", "site", "climate", "water", "units"] as const;
const planAlike = (a: Garden, b: Garden): boolean => DECIDING.every((field) => a[field] === b[field]);

function worked(garden: Garden, beds: readonly Bed[], years: readonly BedWaterYear[]): DripPlan {
  const main = mainTo(
    beds.filter((bed) => bedLines(bed, garden.units).lines.length > 0),
    garden,
  );
  const dripped = beds.map((bed) => dripIn(bed, main, garden));
  const laid = dripped.filter(({ lines }) => lines.lines.length > 0);
  const needed = Math.max(0, ...laid.map(({ lines }) => lines.spacing.emitter.atKPa));
  const { supply, way } = supplyTo(
    laid.map(({ bed, lines, header, drip }) => ({
      mainLength: drip.mainLength,
      tubing: drip.feedLength + (header?.farthest ?? 0),
      flowLh: lines.flowLh,
      rise: frameOf(bed).rim + (main.tap ? groundRise(garden.site, main.tap.at, bed.at) : 0),
    })),
    garden.water,
    needed,
  );
  const yearOf = new Map<ItemId, BedWaterYear>(years.map((year) => [year.bedId, year]));
  const { zones, fewest, tooThirsty } = zonesOf(
    laid.map(({ bed, lines }) => ({ id: bed.id, lines: lines.lines.length, flowLh: lines.flowLh })),
    yearOf,
    supply,
    way,
  );
  const fitted = laid.flatMap(({ drip, header }) => (header ? [{ drip, header }] : []));
  return {
    tap: main.tap?.id ?? null,
    main: { runs: main.runs, length: main.length, drawn: main.drawn, tubing: garden.water.main },
    beds: dripped.map(({ drip }) => drip),
    zones,
    fewestZones: fewest,
    fittings: fittingsOf(main, fitted, zones),
    supply,
    troubles: troublesOf(garden, { main, dripped, supply, tooThirsty, years: yearOf }),
    crossings: crossingsOf(main, garden),
    sources: [
      LINE_SPACING_SOURCE,
      EMITTER_SOURCE,
      TUBING[garden.water.main].source,
      LOSS_SOURCE,
      LINE_VARIATION.source,
      DEVICES_SOURCE,
      USABLE_SHARE_SOURCE,
      ...(supply.measured ? [] : [USUAL_SUPPLY_SOURCE]),
      FITTINGS_SOURCE,
    ],
  };
}

function dripIn(bed: Bed, main: Main, { units }: Garden): DrippedBed {
  const lines = bedLines(bed, units);
  const head = main.heads.get(bed.id) ?? null;
  const header = headerOf(lines, head && unplaced(head.at, bed.at, bed.turn));
  const onPlan = (points: readonly Point[]) => points.map((point) => placed(point, bed.at, bed.turn));
  const laid = header?.lines ?? lines.lines;
  return {
    bed,
    lines,
    header,
    drip: {
      bedId: bed.id,
      lines: laid.map(({ points }) => onPlan(points)),
      emitters: laid.flatMap(({ emitters }) => onPlan(emitters)),
      apart: lines.spacing.apart,
      emittersApart: lines.spacing.emittersApart,
      emitterLh: lines.spacing.emitter.flowLh,
      why: lines.spacing.why,
      length: lines.length,
      header: (header?.runs ?? []).map(onPlan),
      headerLength: header?.length ?? 0,
      head: head?.at ?? null,
      mainLength: head?.along ?? 0,
      feedLength:
        head && header ? feedLength(bed, lines, unplaced(head.at, bed.at, bed.turn), header.entry) : 0,
      flowLh: lines.flowLh,
      uniformity: lines.uniformity,
      pressureVaries: lines.pressureVaries,
      drawn: lines.drawn,
    },
  };
}

/** From the main up the wall, over its rim and down to the soil. */
function feedLength(bed: Bed, { soil }: BedLines, from: Point, entry: Point): number {
  const toSoil = Math.min(
    distance(from, entry),
    ...soil.flatMap((ring) =>
      ring.map((corner, i) => distance(from, nearestOnSegment(from, corner, ring[(i + 1) % ring.length]!))),
    ),
  );
  return frameOf(bed).rim + toSoil + bed.fill.belowRim;
}
