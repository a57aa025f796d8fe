import { describe, expect, it } from "vitest";
import { bedReach } from "../../src/access/reach.ts";
import { waysOf } from "../../src/access/ways.ts";
import { frameOf, type Garden, type ItemOf, type Point } from "../../src/index.ts";
import { wishesOf } from "../../src/rules/sound-change.ts";
import { areaBeyondByJsts } from "../helpers/jsts-reference.ts";
import { smallGarden } from "../helpers/random-gardens.ts";

/** Soil out of reach in hundreds of gardens against JSTS's buffers of the same standing edges. */

const bedsOf = ({ items }: Garden) => items.filter((item): item is ItemOf<"bed"> => item.kind === "bed");

/** Chords to a quarter round of the reference: 200 lie inside the true arc by 610 (1 - cos(pi/800)) = 0.005 mm. */
const QUARTER = 200;

/** Less than a fingertip: where hardly any soil is out of reach, arcs drawn with chords are felt. mm² */
const FINGERTIP = 25;

const SEEDS = Array.from({ length: 200 }, (_, i) => i + 1);

describe("soil out of reach in random gardens", () => {
  it.each(SEEDS)("has the area that the reference gives, within 0.1 per cent: seed %i", (seed) => {
    const garden = smallGarden(seed, { beds: 3, apart: [-1, 0, 40, 460][seed % 4]! });
    const wishes = { ...wishesOf(garden), canGetTo: waysOf(garden).reachableAt(460) };
    for (const bed of bedsOf(garden)) {
      const { standing, reach, outOfReachAreaMm2 } = bedReach(bed, garden, wishes);
      const lines = standing.flatMap(openLines);
      const expected = frameOf(bed).inside.reduce(
        (sum, ring) => sum + areaBeyondByJsts(ring, lines, reach, QUARTER),
        0,
      );
      expect(Math.abs(outOfReachAreaMm2 - expected), bed.id).toBeLessThan(
        Math.max(0.001 * expected, FINGERTIP),
      );
    }
  });
});

/** In two where it closes on itself: the reference takes a closed line for a ring, and loses the inside of a small one. */
function openLines(line: readonly Point[]): (readonly Point[])[] {
  const [first, last] = [line[0], line.at(-1)];
  if (line.length < 4 || first?.[0] !== last?.[0] || first?.[1] !== last?.[1]) return [line];
  const middle = Math.floor(line.length / 2);
  return [line.slice(0, middle + 1), line.slice(middle)];
}
