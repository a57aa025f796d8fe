import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bedWaterYears,
  contains,
  type DripPlan,
  distance,
  dripPlan,
  frameOf,
  type Garden,
  type ItemOf,
  itemId,
  type Point,
} from "../../src/index.ts";
import { bed, fence, gardenOf, gardenWith, tap } from "../helpers/garden-of.ts";
import { smallGarden } from "../helpers/random-gardens.ts";
import { DRY_SUMMER, dripBed, dripGarden, withWater } from "./drip-scene.ts";

const lengthOf = (runs: readonly (readonly Point[])[]) =>
  runs.reduce((sum, run) => run.slice(1).reduce((length, to, i) => length + distance(run[i]!, to), sum), 0);
const countOf = ({ fittings }: DripPlan, key: string) =>
  fittings.reduce((sum, fitting) => sum + (fitting.key === key ? fitting.count : 0), 0);

/** 4 by 8 ft of soil inside boards of 1.5 in. */
const fourByEight = { w: 48 * 25.4 + 76.2, h: 96 * 25.4 + 76.2 } as const;

describe("the drip lines of one bed", () => {
  const garden = dripGarden([0, 0], dripBed("a", { x: -700, y: 3000, ...fourByEight }));
  const plan = dripPlan(garden);
  const [drip] = plan.beds;

  it("are four lines a foot apart in a bed of four feet, an emitter a foot apart on each", () => {
    // A line of 96 in less 2 in at both ends holds 8 emitters a foot apart.
    expect(drip!.lines).toHaveLength(4);
    expect(drip!.emitters).toHaveLength(32);
    expect(drip!.length).toBeCloseTo(4 * (96 * 25.4 - 100), 6);
    // Half a gallon an hour each, 32 of them; the tubing takes hardly anything of it.
    expect(drip!.flowLh).toBeCloseTo(32 * 0.5 * 3.785411784, 1);
    expect(drip!.uniformity).toBeCloseTo(1 - 1.27 * 0.05, 3);
  });

  it("are fed from the main over the wall, and joined in front of it", () => {
    expect(plan.main.length).toBeCloseTo(3000 - 6, 1);
    // Up 11 in, 6 + 38.1 mm to the soil, which stands at the rim.
    expect(drip!.feedLength).toBeCloseTo(11 * 25.4 + 6 + 38.1, 0);
    // Across the heads of four lines a foot apart, and a little to the first: never more than from side to side and back.
    expect(drip!.headerLength).toBeGreaterThan(3 * 304.8);
    expect(drip!.headerLength).toBeLessThan(4 * 304.8);
    expect(lengthOf(drip!.header)).toBeCloseTo(drip!.headerLength, 6);
  });

  it("take the fittings one counts on such a bed", () => {
    // Tap to bed: no fork. In the bed a line branches at each of four heads, the outer two at the ends of the header.
    expect(countOf(plan, "end-cap")).toBe(4);
    expect(countOf(plan, "tee")).toBe(3);
    expect(countOf(plan, "timer")).toBe(1);
    expect(countOf(plan, "vacuum-breaker"), "fitted at the tap already").toBe(0);
    expect(
      countOf(
        dripPlan({
          ...garden,
          items: garden.items.map((item) => (item.kind === "tap" ? { ...item, backflow: false } : item)),
        }),
        "vacuum-breaker",
      ),
    ).toBe(1);
  });

  it("are in one zone of a usual tap, which is said to be guessed", () => {
    expect(plan.zones).toHaveLength(1);
    expect(plan.supply.measured).toBe(false);
    expect(plan.sources.some(({ text }) => text.includes("4 to 8 gallons a minute"))).toBe(true);
    expect(plan.zones[0]!.pressureKPa).toBeGreaterThanOrEqual(plan.supply.neededKPa);
    expect(plan.troubles).toEqual([]);
  });

  it("follow what is typed", () => {
    const typed = dripBed("a", {
      ...fourByEight,
      drip: { run: "across", apart: 200, emittersApart: 150, emitterLh: 3 },
    });
    const [own] = dripPlan(gardenWith({ units: "metric" }, typed)).beds;
    // 96 in is 2438 mm: 13 lines no farther apart than 200, along 48 in less 100: 1119 mm, 8 emitters.
    expect(own!.lines).toHaveLength(13);
    expect(own!.emitters).toHaveLength(13 * 8);
    expect(own).toMatchObject({ apart: 200, emittersApart: 150, emitterLh: 3, drawn: false });
  });

  it("are those drawn by hand, with no emitter beyond the soil", () => {
    const drawn: readonly (readonly Point[])[] = [
      [
        [0, -1000],
        [0, 1000],
        [900, 1000],
      ],
    ];
    const plan2 = dripPlan(
      dripGarden([0, -5000], dripBed("a", { x: -600, y: -1200, drip: { drawn, emittersApart: 100 } })),
    );
    const [own] = plan2.beds;
    expect(own).toMatchObject({ drawn: true, length: 2900 });
    // 30 emitters over 2.9 m; the last leg leaves the soil 561.9 mm from the middle.
    expect(own!.emitters).toHaveLength(26);
    expect(plan2.troubles).toMatchObject([{ what: "beyond-soil", bedId: "a" }]);
    expect(plan2.troubles[0]!.text).toMatch(/^.*4 emitters/);
  });
});

describe("what cannot be done is said", () => {
  const salads = dripBed("bed-1", { x: -600, y: 2000 });
  const troubles = (garden: Garden) => dripPlan(garden).troubles.map(({ what, bedId }) => `${what} ${bedId}`);

  it("of a garden without a tap, whose lines are laid all the same", () => {
    expect(troubles(gardenOf(salads))).toEqual(["no-tap null"]);
    expect(dripPlan(gardenOf(salads)).beds[0]!.lines.length).toBeGreaterThan(0);
    expect(dripPlan(gardenOf(salads)).tap).toBeNull();
  });

  it("of a bed behind fences without a gate", () => {
    const shut = [
      fence("n", { from: [-3000, -3000], to: [3000, -3000], thickness: 60 }),
      fence("e", { from: [3000, -3030], to: [3000, 5000], thickness: 60 }),
      fence("s", { from: [3030, 5000], to: [-3000, 5000], thickness: 60 }),
      fence("w", { from: [-3000, 5030], to: [-3000, -3030], thickness: 60 }),
    ];
    expect(troubles(gardenOf(...shut, tap("tap", { at: [9000, 0] }), salads))).toEqual(["unreached bed-1"]);
  });

  it("of a tap that is no longer there", () => {
    expect(troubles(withWater(dripGarden([0, 0], salads), { tap: itemId("gone") }))).toEqual([
      "lost-tap null",
    ]);
  });

  it("of walls that leave no soil, of lines closer than any is made, of beds as large as fields", () => {
    const thick = { made: "masonry", unitLength: 390, unitHeight: 190, thickness: 700, courses: 1 } as const;
    expect(troubles(dripGarden([0, 0], dripBed("bed-1", { x: 0, y: 2000, wall: thick })))).toEqual([
      "no-soil bed-1",
    ]);
    expect(troubles(dripGarden([0, 0], dripBed("bed-1", { x: 0, y: 2000, drip: { apart: 3 } })))).toEqual([
      "too-close bed-1",
    ]);
    expect(
      troubles(
        dripGarden(
          [0, 0],
          dripBed("bed-1", { x: 500, y: 0, w: 15_000, h: 19_000, drip: { apart: 60, emittersApart: 60 } }),
        ),
      ),
    ).toEqual(["too-many bed-1"]);
  });

  it("of pressure that does not get there, and of a line that asks more than the tap gives", () => {
    const weak = withWater(dripGarden([0, 0], salads), { supply: { stillKPa: 130, openLh: 900 } });
    expect(troubles(weak)).toEqual(["no-pressure null"]);
    const scant = withWater(dripGarden([0, 0], salads), { supply: { stillKPa: 400, openLh: 15 } });
    expect(troubles(scant)).toEqual(["too-thirsty bed-1"]);
  });

  it("and nothing of a garden that has no drip lines", () => {
    expect(dripPlan(gardenOf(bed("a")))).toMatchObject({
      tap: null,
      beds: [],
      zones: [],
      fittings: [],
      troubles: [],
    });
  });
});

describe("zones", () => {
  const beds = ["a", "b", "c"].map((id, i) =>
    dripBed(id, { x: i * 2500 - 3000, y: 3000, ...fourByEight, crops: ["tomato"] }),
  );
  const garden: Garden = {
    ...withWater(dripGarden([0, 0], ...beds), { supply: { stillKPa: 350, openLh: 200 } }),
    climate: DRY_SUMMER,
  };

  it("part what the tap cannot feed at once, and each bed then has a valve", () => {
    const plan = dripPlan(garden);
    // 60 L/h a bed, and three quarters of 200 L/h at once: two beds and one.
    expect(plan.zones.map(({ bedIds }) => bedIds.length).toSorted()).toEqual([1, 2]);
    expect(countOf(plan, "valve")).toBe(3);
    for (const { flowLh } of plan.zones) expect(flowLh).toBeLessThanOrEqual(plan.supply.zoneLimitLh);
  });

  it("bring each bed the litres it asks in every week of the year, and none in winter", () => {
    const plan = dripPlan(garden);
    const years = bedWaterYears(garden);
    for (const zone of plan.zones) {
      const asked = zone.bedIds.map((id) => years.find(({ bedId }) => bedId === id)!.litresAWeek);
      zone.minutesAWeek.forEach((minutes, month) => {
        for (const [i, id] of zone.bedIds.entries()) {
          const flow = plan.beds.find(({ bedId }) => bedId === id)!.flowLh;
          expect((minutes / 60) * flow).toBeGreaterThanOrEqual(asked[i]![month]! - 1e-9);
        }
        // Beds alike ask alike: nothing is poured away.
        const all = asked.reduce((sum, litres) => sum + litres[month]!, 0);
        expect(zone.litresAWeek[month]).toBeCloseTo(all, 1);
        expect(zone.surplusAWeek[month]).toBeCloseTo(zone.litresAWeek[month]! - all, 9);
        const runs = zone.months![month]!;
        expect(runs.aWeek * runs.minutesEach).toBeCloseTo(minutes, 6);
      });
      expect(zone.minutesAWeek[6]).toBeGreaterThan(0);
      expect(zone.minutesAWeek[0]).toBe(0);
    }
  });

  it("pour out more than is asked where beds unlike are watered together, and say how much", () => {
    const unlike = dripGarden(
      [0, 0],
      dripBed("a", { x: -600, y: 3000, ...fourByEight, crops: ["tomato"] }),
      dripBed("b", { x: 3000, y: 3000, ...fourByEight }),
    );
    const [zone] = dripPlan({ ...unlike, climate: DRY_SUMMER }).zones;
    const july = 6;
    // Nothing grows in the second, which has as many emitters: half of what runs is for nothing.
    expect(zone!.surplusAWeek[july]! / zone!.litresAWeek[july]!).toBeCloseTo(0.5, 6);
  });

  it("bring in all what is asked and what is over, whichever way beds are parted", () => {
    for (const openLh of [90, 120, 200, 400]) {
      const wide = withWater(garden, { supply: { stillKPa: 350, openLh } });
      const { zones } = dripPlan(wide);
      const asked = bedWaterYears(wide).reduce((sum, year) => sum + year.litresAWeek[6]!, 0);
      const brought = zones.reduce((sum, zone) => sum + zone.litresAWeek[6]! - zone.surplusAWeek[6]!, 0);
      expect(brought, `${zones.length} zones`).toBeCloseTo(asked, 6);
    }
  });

  it("run by the rule of thumb without a climate", () => {
    const plan = dripPlan({ ...garden, climate: null });
    for (const zone of plan.zones) {
      expect(zone.months).toBeNull();
      // An inch over 2.97 m2 in an hour of 60 L: 75 L, an hour and a quarter.
      expect(zone.minutesAWeek[6]).toBeCloseTo((60 * 25.4 * 1.2192 * 2.4384) / 60.5666, -0.5);
    }
  });

  it("get less through a longer or thinner main, and more through a wider", () => {
    const far = dripBed("a", { x: -600, y: 15_000, ...fourByEight });
    const long = withWater(dripGarden([0, -19_000], far), { supply: { stillKPa: 190, openLh: 2000 } });
    const near = withWater(dripGarden([0, 14_000], far), { supply: { stillKPa: 190, openLh: 2000 } });
    const limit = (of: Garden) => dripPlan(of).supply.zoneLimitLh;
    expect(limit(long)).toBeLessThan(limit(near));
    expect(limit(withWater(long, { main: "threeQuarter" }))).toBeGreaterThan(limit(long));
  });

  it("count the rise to a bed uphill of the tap", () => {
    const uphill = gardenWith(
      { ground: { slope: 0.2, falls: 0 } },
      ...dripGarden([0, -9000], dripBed("a", { x: -600, y: 0 })).items,
    );
    const level = gardenWith({}, ...uphill.items);
    // The middle of the bed lies 10.2 m down the plan, and the ground falls up the plan by a fifth: 2.04 m, 20 kPa.
    const more = dripPlan(uphill).supply.lostKPa - dripPlan(level).supply.lostKPa;
    expect(more).toBeCloseTo(2.04 * 9.80665, 1);
  });
});

describe("laws of drip plans in small gardens of every sort", () => {
  const gardens = Array.from({ length: 25 }, (_, seed): Garden => {
    const garden = smallGarden(seed + 101, { beds: 2 + (seed % 4), apart: 300 });
    const items = garden.items.map((item) =>
      item.kind === "bed" ? { ...item, watering: { ...item.watering, by: "drip" as const } } : item,
    );
    return { ...garden, items };
  });
  const bedIn = (garden: Garden, id: string) =>
    garden.items.find((item): item is ItemOf<"bed"> => item.kind === "bed" && item.id === id)!;

  it("every emitter lies in the soil of its bed, and header and lines within its frame", () => {
    for (const garden of gardens) {
      for (const { bedId, emitters, header, lines } of dripPlan(garden).beds) {
        const { inside, outside } = frameOf(bedIn(garden, bedId));
        const inSoil = (at: Point) => inside.filter((ring) => contains(ring, at)).length % 2 === 1;
        expect(emitters.filter((at) => !inSoil(at))).toEqual([]);
        expect([...header, ...lines].flat().filter((at) => !contains(outside, at))).toEqual([]);
      }
    }
  });

  it("each line begins where the header comes to it", () => {
    for (const garden of gardens) {
      for (const { header, lines } of dripPlan(garden).beds) {
        const joints = header.flat();
        for (const [head] of lines) {
          const nearest = Math.min(...joints.map((at) => distance(at, head!)));
          // A single line may begin at the very place where the water comes in.
          expect(nearest).toBeLessThan(1e-6);
        }
      }
    }
  });

  it("moving a bed changes where its lines lie and what leads to them, and nothing of the lines themselves", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...gardens),
        fc.tuple(fc.integer({ min: -200, max: 200 }), fc.integer({ min: -200, max: 200 })),
        (garden, [dx, dy]) => {
          const before = dripPlan(garden);
          const { bedId } = before.beds[0]!;
          const items = garden.items.map((item) =>
            item.id === bedId ? { ...item, at: [item.at[0] + dx, item.at[1] + dy] as const } : item,
          );
          const moved = { ...garden, items };
          const after = dripPlan(moved);
          const [was, is] = [before, after].map(({ beds }) => beds.find((one) => one.bedId === bedId)!);
          for (const field of [
            "length",
            "flowLh",
            "uniformity",
            "pressureVaries",
            "apart",
            "emittersApart",
          ] as const)
            expect(is![field]).toBe(was![field]);
          expect(is!.emitters).toHaveLength(was!.emitters.length);
          expect(bedWaterYears(moved)).toEqual(bedWaterYears(garden));
        },
      ),
      { numRuns: 30, seed: 5 },
    );
  });

  it("a plan is the same value while nothing changes", () => {
    expect(dripPlan(gardens[0]!)).toBe(dripPlan({ ...gardens[0]!, name: "Another name" }));
  });
});
