import { describe, expect, it } from "vitest";
import { standingPieces } from "../../src/access/standing.ts";
import { NARROWEST_WAY, waysOf } from "../../src/access/ways.ts";
import type { Garden, ItemOf, Point } from "../../src/index.ts";
import { type Eroded, eroded, joins } from "../helpers/erosion-reference.ts";
import { bed } from "../helpers/garden-of.ts";
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

const SEEDS = Array.from({ length: 240 }, (_, i) => i + 1);

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
      const [more, less] = [eroded(garden, width + 1), eroded(garden, width - 0.4)];
      const starts = ways.entrances.flatMap((entrance) => entrance.starts.map(({ at }) => at));
      for (const item of bedsOf(garden)) {
        for (const { body } of standingPieces(item, garden, width + 0.5)) {
          const surely = starts.some((start) => joinsBody(more, start, body));
          const perhaps = starts.some((start) => joinsBody(less, start, body));
          if (surely === perhaps)
            expect(canGetTo(body), `${item.id} at ${body.map(Math.round)}`).toBe(surely);
        }
      }
    },
  );
});

/** The body itself is a disc that must lie in the piece of ground the start touches. */
function joinsBody(ground: Eroded, start: Point, body: Point): boolean {
  const here = bed("here", { shape: { type: "rectangle", width: 2, length: 2 }, at: body });
  const own = ground.regions.filter((region) => joins({ half: 0, regions: [region] }, body, here));
  return joins({ ...ground, regions: own }, start, here);
}
