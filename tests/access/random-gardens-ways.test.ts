import { describe, expect, it } from "vitest";
import { standingPieces } from "../../src/access/standing.ts";
import { waysOf } from "../../src/access/ways.ts";
import { NARROWEST_WAY } from "../../src/access/ways-told.ts";
import type { Garden, ItemOf, Point } from "../../src/index.ts";
import { type Eroded, enteredFrom, eroded, holds, joins } from "../helpers/erosion-reference.ts";
import { smallGarden } from "../helpers/random-gardens.ts";

/**
 * Widths of ways and places that can be got to, in hundreds of gardens, against ground shrunk by half a width: somebody
 * gets through where they are told to, and somebody wider by the tolerance does not.
 */

const bedsOf = ({ items }: Garden) => items.filter((item): item is ItemOf<"bed"> => item.kind === "bed");

/** The bar for widths, mm. */
const TOLERANCE = 1;
/** Wider than this nothing narrows a way that any rule asks about, mm. */
const SIGHT = 1600;

const apart = (seed: number) => [-1, 40, 300, 600][seed % 4]!;
const gardenOf = (seed: number) => smallGarden(seed, { beds: 2 + (seed % 3), apart: apart(seed) });

/** Gardens that were told wrong once: pockets, ways that taper, starts in a corner, four outlines as near as each other. */
const ONCE_WRONG = [
  598, 872, 1036, 1145, 1247, 1313, 1348, 1556, 1573, 1628, 1769, 2063, 2108, 2125, 2144, 2162, 2176, 2344,
  2432, 2713, 2848, 2876, 2887, 3008, 3593, 3644, 3660, 3940, 3965, 3976, 3992, 4028, 4127, 4205, 4270, 4356,
  4607, 4717, 4747, 4772, 4816, 4820, 4871, 5312,
];
const SEEDS = [...Array.from({ length: 240 }, (_, i) => i + 1), ...ONCE_WRONG];

describe("the widest ways of random gardens", () => {
  it.each(SEEDS)("are as wide as eroded ground says, within 1 mm: seed %i", (seed) => {
    const garden = gardenOf(seed);
    const ways = waysOf(garden);
    const ground = new Map<number, Eroded>();
    const opens = (width: number, from: readonly Point[], item: ItemOf<"bed">) => {
      const at = ground.get(width) ?? eroded(garden, width);
      ground.set(width, at);
      return from.some((start) => joins(at, start, item));
    };
    for (const item of bedsOf(garden)) {
      const found = ways.toBed(item.id);
      for (const kind of ["gate", "door"] as const) {
        const starts = ways.entrances
          .filter((entrance) => entrance.kind === kind)
          .flatMap((entrance) => entrance.starts.map(({ at }) => at));
        const width = (kind === "gate" ? found.fromGate : found.fromDoor)?.width ?? Number.NaN;
        const where = `${item.id} from the ${kind}, ${width.toFixed(1)}`;
        if (width > 0) expect(opens(Math.min(width, SIGHT) - TOLERANCE, starts, item), where).toBe(true);
        if (width < SIGHT)
          expect(opens(Math.max(width, NARROWEST_WAY) + TOLERANCE, starts, item), where).toBe(false);
      }
    }
  });

  it.each(SEEDS.filter((seed) => seed % 2 === 1))(
    "lead to the same standing places as on eroded ground: seed %i",
    (seed) => {
      const garden = gardenOf(seed);
      const ways = waysOf(garden);
      const width = 460;
      const canGetTo = ways.reachableAt(width + 0.5);
      // Half a millimetre of the rules' tolerance, and the rounding of the eroded ground, either way.
      const starts = ways.entrances.flatMap((entrance) => entrance.starts.map(({ at }) => at));
      const [more, less] = [width + 1, width - 0.4].map((wide) => enteredFrom(eroded(garden, wide), starts));
      for (const item of bedsOf(garden)) {
        for (const { body } of standingPieces(item, garden, width + 0.5)) {
          const [surely, perhaps] = [holds(more!, body), holds(less!, body)];
          if (surely === perhaps)
            expect(canGetTo(body), `${item.id} at ${body.map(Math.round)}`).toBe(surely);
        }
      }
    },
  );
});
