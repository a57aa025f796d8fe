import { describe, expect, it } from "vitest";
import {
  carrying,
  compareWalls,
  costAYear,
  type Garden,
  type Item,
  type ItemOf,
  layeringSavings,
  readGarden,
  stagesOf,
  takeoff,
  takeoffCsv,
  writeGarden,
} from "../../src/index.ts";
import { smallGarden } from "../helpers/random-gardens.ts";
import { seeded } from "../helpers/scenes.ts";

type Bed = ItemOf<"bed">;

/** A small seeded garden in which everything that the takeoff knows occurs: stages, what stands, rails, recipes. */
function anyGarden(seed: number): Garden {
  const random = seeded(seed * 31 + 5);
  const pick = <T>(...options: readonly T[]): T => options[Math.floor(random() * options.length)]!;
  const wallOf = (): Bed["wall"] =>
    pick<() => Bed["wall"]>(
      () => ({
        made: "boards",
        board: pick("2x6", "1x6", "2x10", "6x6", "47x150", "33x171.5mm"),
        timber: pick("douglas-fir", "larch", "ash"),
        courses: 1 + Math.floor(random() * 5),
        corner: pick("ends-between-sides", "ends-over-sides"),
        bracing: pick("none", "stakes", "stakes-and-ties"),
        cornerPosts: pick(true, false),
        capRail: pick(null, "2x6", "1x4"),
      }),
      () => ({ made: "metal", height: 430, thickness: 1 }),
      () => ({ made: "masonry", unitLength: 400, unitHeight: 200, thickness: 100, courses: 2 }),
      () => ({ made: "fabric", height: 300 }),
      () => ({ made: "mound", height: 150 }),
    )();
  const changed = (item: Item): Item => {
    if (item.kind === "path") {
      return { ...item, edging: pick(null, "timber", "metal", "brick"), stage: pick(1, 3) };
    }
    if (item.kind !== "bed") return item;
    const already = pick(null, null, { courses: 1, soilDepth: 0 }, { courses: 2, soilDepth: 180 });
    return {
      ...item,
      wall: wallOf(),
      already,
      stage: pick(1, 2, 3),
      fill: {
        ...item.fill,
        way: pick("mix", "layered", "native"),
        recipe: pick({ compost: 1, topsoil: 2, soilless: 0 }, { compost: 0, topsoil: 0, soilless: 1 }),
      },
      bottom: { mesh: pick(null, { opening: 12.7 }), liner: pick(null, "fabric", "sheet") },
      mulch: pick(null, { material: "wood-chips" as const, depth: 60 }),
    };
  };
  const garden = smallGarden(seed, { beds: 4, apart: 300 });
  const onHand = pick<Garden["cutting"]["onHand"]>(
    [],
    [
      { board: "2x6", timber: "larch", length: 1900, count: 3 },
      { board: "2x6", timber: "larch", length: 1900, count: 1 },
      { board: "1x6", timber: "ash", length: 5000, count: 2 },
    ],
  );
  const aim = pick("least-cost" as const, "least-waste" as const);
  return { ...garden, cutting: { ...garden.cutting, onHand, aim }, items: garden.items.map(changed) };
}

const seeds = Array.from({ length: 60 }, (_, i) => i + 1);

describe("the takeoff of any garden", () => {
  it.each(seeds)("adds up and loses nothing, for all and for each stage: seed %i", (seed) => {
    const garden = anyGarden(seed);
    expect(readGarden(JSON.parse(writeGarden(garden)))).toEqual(garden);
    for (const stage of ["all", ...stagesOf(garden)] as const) {
      const { beds, boardPlans, lines, total, byPart, unsharedCost } = takeoff(garden, { stage });
      const sum = (amounts: readonly number[]) => amounts.reduce((all, amount) => all + amount, 0);
      expect(sum(lines.map(({ cost }) => cost))).toBeCloseTo(total, 6);
      expect(sum(byPart.map(({ cost }) => cost))).toBeCloseTo(total, 6);
      expect(sum(beds.map(({ cost }) => cost)) + unsharedCost).toBeCloseTo(total, 6);
      for (const { quantity, cost, how, source } of lines) {
        expect(quantity).toBeGreaterThan(0);
        expect(cost).toBeGreaterThanOrEqual(0);
        expect(how).not.toMatch(/NaN|undefined|Infinity/);
        expect(source.text).not.toBe("");
      }
      // Every piece of every bed is in some plan, and cut from some board.
      const wanted = sum(
        beds.map(
          ({ boards, capRail, posts }) => sum([...boards, ...capRail].map(({ count }) => count)) + posts,
        ),
      );
      expect(sum(boardPlans.map(({ pieces }) => sum(pieces.map(({ count }) => count))))).toBe(wanted);
      const cut = boardPlans.flatMap(({ plan }) => plan.boards.map(({ pieces }) => pieces.length));
      expect(sum(cut)).toBe(wanted);
      for (const { excess, wasteShare, plan } of boardPlans) {
        expect(excess).toBeGreaterThanOrEqual(0);
        expect(plan.proven).toBe(excess === 0);
        expect(wasteShare).toBeGreaterThanOrEqual(0);
        expect(wasteShare).toBeLessThan(1);
      }
      for (const bed of beds) {
        expect(bed.soilHaveL).toBeLessThanOrEqual(bed.soilVolumeL + 1e-9);
        expect(bed.newSoilL).toBeGreaterThanOrEqual(-1e-9);
        expect(bed.orderVolumeL).toBeGreaterThanOrEqual(bed.newSoilL - 1e-9);
      }
    }
  });

  it("is told in a table, by the year, by walls and by weight without fail", () => {
    for (const seed of seeds.filter((one) => one % 4 === 0)) {
      const garden = anyGarden(seed);
      expect(takeoffCsv(takeoff(garden), garden)).not.toMatch(/NaN|undefined|Infinity/);
      const { perYear, first, renewals, horizon } = costAYear(garden);
      expect(perYear).toBeCloseTo((first + renewals) / horizon, 1);
      for (const choice of compareWalls(garden)) expect(choice.perYear).toBeGreaterThan(0);
      for (const { mixSavedL } of layeringSavings(garden)) expect(mixSavedL).toBeGreaterThan(0);
      expect(carrying(garden).weightKg).toBeGreaterThanOrEqual(0);
    }
  }, 60_000);
});
