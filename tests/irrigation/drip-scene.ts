import type { Garden, ItemOf, Point } from "../../src/index.ts";
import { bed, gardenOf, tap } from "../helpers/garden-of.ts";

type Bed = ItemOf<"bed">;

/** A bed with drip lines, and what of them a test speaks of. */
export function dripBed(
  id: string,
  {
    drip,
    rainedOn = true,
    ...changes
  }: Parameters<typeof bed>[1] & {
    readonly drip?: Partial<Bed["watering"]["drip"]>;
    readonly rainedOn?: boolean;
  } = {},
): Bed {
  const plain = bed(id, changes);
  return { ...plain, watering: { by: "drip", rainedOn, drip: { ...plain.watering.drip, ...drip } } };
}

/** A tap at a place, with a vacuum breaker, and beds. */
export const dripGarden = (at: Point, ...beds: readonly Bed[]): Garden =>
  gardenOf(tap("tap", { at, backflow: true }), ...beds);

export const withWater = (garden: Garden, water: Partial<Garden["water"]>): Garden => ({
  ...garden,
  water: { ...garden.water, ...water },
});

/** A made-up year of warm, dry summers: mean temperatures on a cosine, the rain the other way. */
export const DRY_SUMMER: NonNullable<Garden["climate"]> = {
  station: "Example",
  altitude: 250,
  setting: "interior",
  gaugeHeight: 2000,
  months: Array.from({ length: 12 }, (_, month) => {
    const warmth = -Math.cos((month * Math.PI) / 6);
    return {
      maxC: 17 + 13 * warmth,
      minC: 6 + 9 * warmth,
      rain: 45 - 30 * warmth,
      humidity: 62,
      sunHours: null,
      windMs: 2,
    };
  }),
};
