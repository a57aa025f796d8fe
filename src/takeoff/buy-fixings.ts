import type { GardenPrices } from "../garden/garden.ts";
import { practice } from "../garden/source.ts";
import { formatShort } from "../units/format-length.ts";
import { INCH } from "../units/length.ts";
import { say } from "../words/say.ts";
import type { BedQuantities } from "./bed-quantities.ts";
import { counted } from "./counted.ts";
import type { FrameParts } from "./frame-parts.ts";
import type { Good } from "./goods.ts";
import { priceOf, screwPacks, spikeGood, stakeGood, tieGood } from "./price-table.ts";
import { type Bill, groupedBy, joinedBills, type Purchase, sharesOf, total } from "./purchase.ts";
import type { Settings } from "./settings.ts";
import { STRUCTURE_SOURCES } from "./structure.ts";

const TIES = practice("taller beds need cross ties: one from each stake of a long side to the one across");
const SPIKES = practice("two long screws in each corner of each course of heavy timbers");

/** Stakes, ties, screws and spikes of all beds. */
export function buyFixings(beds: readonly BedQuantities[], prices: GardenPrices, settings: Settings): Bill {
  const framed = beds.flatMap(({ frame, bed }) => (frame ? [{ frame, id: bed.id }] : []));
  return joinedBills([
    buyStakes(framed, settings),
    buyTies(framed, settings),
    buyScrews(framed, prices, settings),
    buySpikes(framed, settings),
  ]);
}

type Framed = { readonly frame: FrameParts; readonly id: BedQuantities["bed"]["id"] };

function buyEach(
  framed: readonly Framed[],
  countOf: (frame: FrameParts) => number,
  rest: Pick<Purchase, "part" | "good" | "source"> & { how(count: number, beds: number): string },
): Bill {
  const count = total(framed, ({ frame }) => countOf(frame));
  if (count === 0) return { purchases: [], offered: [] };
  const shares = sharesOf(
    framed,
    ({ id }) => id,
    ({ frame }) => countOf(frame),
  );
  const { part, good, source } = rest;
  const how = rest.how(count, shares.size);
  return { purchases: [{ part, good, quantity: count, how, source, shares, filling: 0 }], offered: [good] };
}

function buyStakes(framed: readonly Framed[], { units, stakeEvery }: Settings): Bill {
  const byLength = [...groupedBy(framed, ({ frame }) => `${frame.stakes.length}`).values()];
  const bills = byLength.map((group) =>
    buyEach(group, (frame) => frame.stakes.count, {
      part: "posts",
      good: stakeGood(group[0]!.frame.stakes.length, units),
      source: STRUCTURE_SOURCES.stakes,
      how: (count, beds) =>
        say`${counted(count, "stake")} for ${counted(beds, "bed")}: sides over ${formatShort(stakeEvery, units)} get one every ${formatShort(stakeEvery, units)} or less; as high as the wall and ${formatShort(12 * INCH, units)} in the ground`,
    }),
  );
  return joinedBills(bills);
}

const buyTies = (framed: readonly Framed[], { units, tiesFrom }: Settings): Bill =>
  buyEach(framed, (frame) => frame.ties.count, {
    part: "fixings",
    good: tieGood(units),
    source: TIES,
    how: (count, beds) =>
      say`${counted(count, "tie")} across ${counted(beds, "bed")} with soil ${formatShort(tiesFrom, units)} deep or more`,
  });

const buySpikes = (framed: readonly Framed[], { units }: Settings): Bill =>
  joinedBills(
    [...groupedBy(framed, ({ frame }) => `${frame.spikes.length}`).values()].map((group) =>
      buyEach(group, (frame) => frame.spikes.count, {
        part: "fixings",
        good: spikeGood(group[0]!.frame.spikes.length, units),
        source: SPIKES,
        how: (count, beds) =>
          say`${counted(count, "screw")} in the corners of ${counted(beds, "bed")} of heavy timber`,
      }),
    ),
  );

/** Screws of the frame, and those that hold its rail down, which are of a length of their own. */
const screwsIn = ({ frame, id }: Framed) =>
  [frame.screws, ...(frame.rail ? [frame.rail.screws] : [])].map((screws) => ({ ...screws, id }));

function buyScrews(framed: readonly Framed[], prices: GardenPrices, { units }: Settings): Bill {
  const uses = framed.flatMap(screwsIn).filter(({ count }) => count > 0);
  const bills = [...groupedBy(uses, ({ length }) => length.toFixed(3)).values()].map((group): Bill => {
    const count = total(group, (use) => use.count);
    const { length } = group[0]!;
    const packs = screwPacks(length, units);
    const shares = sharesOf(
      group,
      ({ id }) => id,
      (use) => use.count,
    );
    const how = say`${counted(count, "screw")} of ${formatShort(length, units)} for ${counted(shares.size, "bed")}: 2 to 4 at each board end by its height, 2 a course at each stake, one every ${formatShort(16 * INCH, units)} along a rail`;
    const purchases = cheapestBoxes(count, packs, prices).map(
      ({ good, quantity }): Purchase => ({
        part: "fixings",
        good,
        quantity,
        how,
        source: STRUCTURE_SOURCES.screws,
        shares,
        filling: 0,
      }),
    );
    return { purchases, offered: packs };
  });
  return joinedBills(bills);
}

/** Every number of large boxes with the rest in small ones; the cheapest, and of equals the fewest boxes. */
export function cheapestBoxes(
  count: number,
  packs: readonly (Good & { readonly count: number })[],
  prices: GardenPrices,
): { readonly good: Good; readonly quantity: number }[] {
  const [small, large] = packs;
  if (!small || !large) throw new RangeError("screws come in two sizes of box");
  let best = { cost: Number.POSITIVE_INFINITY, boxes: 0, large: 0, small: 0 };
  for (let n = Math.ceil(count / large.count); n >= 0; n--) {
    const rest = Math.max(0, Math.ceil((count - n * large.count) / small.count));
    const cost = n * priceOf(large, prices).price + rest * priceOf(small, prices).price;
    if (cost < best.cost - 1e-9 || (cost < best.cost + 1e-9 && n + rest < best.boxes)) {
      best = { cost, boxes: n + rest, large: n, small: rest };
    }
  }
  return [
    { good: large, quantity: best.large },
    { good: small, quantity: best.small },
  ].filter(({ quantity }) => quantity > 0);
}
