import { describe, expect, it } from "vitest";
import {
  applyOps,
  carrying,
  compareWalls,
  costAYear,
  costOf,
  emptyGarden,
  type Garden,
  INCH,
  type Item,
  itemId,
  layeringSavings,
  TIMBERS,
  takeoff,
} from "../../src/index.ts";
import { lifeOf, renewals } from "../../src/takeoff/lives.ts";
import { recommendedLift } from "../../src/takeoff/weights.ts";
import { bed, gardenOf, gardenWith, ground, path } from "../helpers/garden-of.ts";
import { expected, given } from "../published/cases.ts";

const wall = {
  made: "boards",
  board: "2x6",
  timber: "douglas-fir",
  courses: 2,
  corner: "ends-between-sides",
  cornerPosts: true,
  capRail: null,
  bracing: "stakes",
} as const;
const fourByEight = { w: 48 * INCH, h: 96 * INCH, wall };
const garden = gardenOf(
  bed("a", { ...fourByEight, mulch: { material: "straw", depth: 50 }, bottom: { mesh: { opening: 12.7 } } }),
  bed("b", { ...fourByEight, x: 3000, wall: { ...wall, timber: "western-redcedar", capRail: "2x4" } }),
  bed("c", {
    ...fourByEight,
    x: 6000,
    wall: { made: "metal", height: 500, thickness: 1 },
    bottom: { liner: "sheet" },
  }),
  path("way", {
    from: [0, -4000],
    to: [9000, -4000],
    width: 900,
    depth: 75,
    surface: "bark",
    edging: "timber",
  }),
  path("paved", {
    from: [0, -8000],
    to: [4000, -8000],
    width: 900,
    depth: 50,
    surface: "paving",
    edging: "brick",
  }),
);

describe("every line", () => {
  it("says how its quantity came about, with figures in it, and where the way of counting comes from", () => {
    const { lines } = takeoff(garden);
    const parts = new Set(lines.map(({ part }) => part));
    expect([...parts].sort()).toEqual(
      [
        "boards",
        "bottom",
        "delivery",
        "edging",
        "fill",
        "fixings",
        "mulch",
        "paths",
        "posts",
        "walls",
      ].sort(),
    );
    for (const { how, source, what } of lines) {
      expect(how, what).toMatch(/\d/);
      expect(source.text.length, what).toBeGreaterThan(10);
    }
  });
});

describe("the total", () => {
  it("is the sum of its parts, and of the beds and what no bed bears", () => {
    const { total, byPart, beds, unsharedCost } = takeoff(garden);
    expect(byPart.reduce((sum, { cost }) => sum + cost, 0)).toBeCloseTo(total, 6);
    expect(beds.reduce((sum, { cost }) => sum + cost, unsharedCost)).toBeCloseTo(total, 6);
    expect(unsharedCost).toBeGreaterThan(0);
    expect(byPart.every(({ cost }) => cost > 0)).toBe(true);
  });
});

describe("edging", () => {
  const edged = (...items: readonly Item[]) =>
    takeoff(gardenWith({ units: "metric" }, ...items)).lines.filter(({ part }) => part === "edging");
  const way = (changes = {}) =>
    path("way", { from: [0, 0], to: [6000, 0], width: 900, depth: 0, edging: "metal", ...changes });

  it("runs along both sides of a path", () => {
    // 12 m in strips of 2.4 m.
    expect(edged(way())).toMatchObject([{ key: "edging-metal:2400mm", quantity: 5 }]);
    // Bricks of 215 mm: 12,000 / 215 is 55.8.
    expect(edged(way({ edging: "brick" }))).toMatchObject([{ quantity: 56 }]);
    expect(edged(way({ edging: null }))).toEqual([]);
  });

  it("is left out where a bed stands against the side, or another path joins", () => {
    const against = bed("b", { x: 1000, y: 450, w: 2400, h: 1200 });
    // 2.4 m and 25 mm at both its ends.
    expect(edged(way(), against)[0]?.how).toContain("9.55 m");
    const apart = bed("b", { x: 1000, y: 600, w: 2400, h: 1200 });
    expect(edged(way(), apart)[0]?.quantity).toBe(5);
    const joining = path("other", { from: [3000, 0], to: [3000, 3000], width: 1000 });
    expect(edged(way(), joining)[0]?.how).toContain(": 11.00 m");
  });

  it("of timber has a peg at both ends of each run and every 900 mm", () => {
    // Two runs of 6 m: ceil(6000 / 900) + 1 each.
    expect(edged(way({ edging: "timber" })).map(({ quantity }) => quantity)).toEqual([5, 16]);
  });

  it("goes round a bend on both sides", () => {
    const bent = path("way", { from: [0, 0], to: [4000, 0], width: 1000, depth: 0, edging: "metal" });
    const corner = { ...bent, points: [...bent.points, [4000, 4000] as const] };
    // Outside 4.5 + 4.5 m, inside 3.5 + 3.5 m.
    const [line] = edged(corner);
    expect(line?.how).toContain(": 16.00 m");
  });
});

describe("cost a year", () => {
  it("renews what wears out when the middle of its life is over", () => {
    // Douglas-fir, 5 to 7 years: within 10 years once, at 6; within 12 once, since nothing is renewed at the end.
    expect(renewals([5, 7], 10)).toBe(1);
    expect(renewals([5, 7], 12)).toBe(1);
    expect(renewals([5, 7], 13)).toBe(2);
    expect(renewals([1, 1], 10)).toBe(9);
    expect(renewals([20, 30], 10)).toBe(0);
    expect(() => lifeOf("moonbeams")).toThrow(RangeError);
  });

  it("adds up to the first cost and all that is bought again", () => {
    const { first, renewals: again, perYear, rows, horizon } = costAYear(garden);
    expect(first).toBe(takeoff(garden).total);
    expect(again).toBeCloseTo(
      rows.reduce((sum, { cost, times }) => sum + cost * times, 0),
      2,
    );
    expect(perYear).toBeCloseTo((first + again) / horizon, 2);
    expect(rows.map(({ what }) => what)).toEqual([
      "Walls of Douglas-fir",
      "Walls of Western redcedar",
      "Metal walls",
      "Mesh and its staples",
      "Liner",
      "Paving",
      "Edging of paths",
      "Edging of paths",
      "Straw mulch",
      "Bark on paths",
      "Compost to top up",
    ]);
    for (const { how, source, life } of rows) {
      expect(how).toMatch(/\d/);
      expect(source.text).not.toBe("");
      expect(life[0]).toBeLessThanOrEqual(life[1]);
    }
  });

  it("shares the fixings with the boards they hold: walls come to all that walls cost", () => {
    const { rows } = costAYear(garden);
    const wallParts = takeoff(garden).lines.filter(({ part }) =>
      ["boards", "posts", "fixings", "walls"].includes(part),
    );
    const walls = rows.filter(({ what }) => what.startsWith("Walls") || what.startsWith("Metal"));
    expect(walls.reduce((sum, { cost }) => sum + cost, 0)).toBeCloseTo(
      wallParts.reduce((sum, { cost }) => sum + cost, 0),
      1,
    );
  });

  it("still renews a bed that stands, though it costs nothing now", () => {
    const standing = bed("a", { ...fourByEight, already: { courses: 2, soilDepth: 2 * 139.7 } });
    const { first, rows } = costAYear(gardenOf(standing));
    expect(first).toBe(0);
    const [walls] = rows;
    expect(walls).toMatchObject({ what: "Walls of Douglas-fir", times: 1, life: [5, 7] });
    expect(walls?.perYear).toBeCloseTo((walls?.cost ?? 0) / 10, 2);
  });

  it("tops up each year after the first, by the advice or the habit as the garden says", () => {
    const plain = gardenOf(bed("a", fourByEight));
    const topUp = (upkeep: Partial<Garden["upkeep"]>) =>
      costAYear({ ...plain, upkeep: { ...plain.upkeep, ...upkeep } }).rows.at(-1);
    // VL-14: an inch on 45 x 93 in is 2.42 ft³; two bags of 1 ft³ and more.
    expect(topUp({ topUp: "advice" })).toMatchObject({ what: "Compost to top up", times: 9 });
    expect(topUp({ topUp: "advice" })?.how).toContain("2.42 ft³");
    // The habit of 2 to 3 in by its middle: 2.5 x 2.42 ft³.
    expect(topUp({ topUp: "habit" })?.how).toContain("6.05 ft³, each year");
    const twice = topUp({ topUp: "habit", topUpsAYear: 2 });
    expect(twice?.how).toContain("6.05 ft³, twice each year");
    expect(twice?.cost).toBeCloseTo(2 * (topUp({ topUp: "habit" })?.cost ?? 0), 2);
  });

  it("takes any timber, with a life it says is assumed", () => {
    const odd = gardenOf(bed("a", { ...fourByEight, wall: { ...wall, timber: "ash" } }));
    expect(costAYear(odd).rows[0]).toMatchObject({ what: "Walls of ash", life: [5, 10] });
  });
});

describe("walls compared", () => {
  it("has every timber and the other kinds of wall, the cheapest a year first, with the source of the life", () => {
    const choices = compareWalls(garden);
    expect(choices.map(({ id }) => id).sort()).toEqual(
      [...TIMBERS.map(({ id }) => id), "metal", "masonry", "fabric"].sort(),
    );
    const yearly = choices.map(({ perYear }) => perYear);
    expect(yearly).toEqual(yearly.toSorted((a, b) => a - b));
    for (const { first, times, perYear, source } of choices) {
      expect(first).toBeGreaterThan(0);
      expect(perYear).toBeCloseTo((first * (1 + times)) / 10, 1);
      expect(source.text).not.toBe("");
    }
    expect(choices.some(({ now }) => now)).toBe(false);
    expect(choices.find(({ id }) => id === "creosoted-sleeper")?.besideFood).toBe("unfit");
  });

  it("agrees with the takeoff about what the garden has now", () => {
    const plain = gardenOf(bed("a", fourByEight), bed("b", { ...fourByEight, x: 3000 }));
    const now = compareWalls(plain).find((choice) => choice.now);
    const walls = takeoff(plain).lines.filter(({ part }) => ["boards", "posts", "fixings"].includes(part));
    expect(now?.id).toBe("douglas-fir");
    expect(now?.first).toBeCloseTo(
      walls.reduce((sum, { cost }) => sum + cost, 0),
      2,
    );
  });

  it("has nothing to compare in a garden of mounds", () => {
    expect(compareWalls(gardenOf(bed("m", { wall: { made: "mound", height: 200 } })))).toEqual([]);
  });
});

describe("what a change costs", () => {
  it("is the difference of the totals, below 0 where it saves, null where it cannot be made", () => {
    const cedar = { ...wall, timber: "western-redcedar" };
    const ops = [{ op: "set" as const, id: itemId("a"), changes: { wall: cedar } }];
    const cost = costOf(garden, ops);
    expect(cost).toBeGreaterThan(0);
    expect(cost).toBeCloseTo(takeoff(applyOps(garden, ops)).total - takeoff(garden).total, 2);
    expect(costOf(garden, [{ op: "remove", id: itemId("a") }])).toBeLessThan(0);
    expect(costOf(garden, [{ op: "remove", id: itemId("nobody") }])).toBeNull();
    expect(costOf(garden, [{ op: "move", id: itemId("a"), by: [0, 900] }])).toBe(0);
  });
});

describe("layering", () => {
  const tall = { ...wall, courses: 6 };

  it("tells what wood below saves now, or could save, and the mix it takes the place of", () => {
    const mixed = gardenOf(bed("t", { ...fourByEight, wall: tall }));
    const layered = gardenOf(
      bed("t", { ...fourByEight, wall: tall, fill: { way: "layered", mixDepth: 12 * INCH } }),
    );
    const [could] = layeringSavings(mixed);
    const [does] = layeringSavings(layered);
    expect(could).toMatchObject({ bedId: "t", now: false });
    expect(does).toMatchObject({ bedId: "t", now: true });
    expect(could?.saved).toBeCloseTo(takeoff(mixed).total - takeoff(layered).total, 2);
    expect(does?.saved).toBeCloseTo(could?.saved ?? 0, 2);
    // 33 in less 12 in of mix over 45 x 93 in, before settling.
    expect(does?.mixSavedL).toBeCloseTo((45 * 93 * 21 * INCH ** 3) / 1e6 / 0.85, 6);
  });

  it("has nothing to say of shallow beds and of beds of the yard's own soil", () => {
    expect(layeringSavings(gardenOf(bed("b", fourByEight)))).toEqual([]);
    expect(
      layeringSavings(gardenOf(bed("b", { ...fourByEight, wall: tall, fill: { way: "native" } }))),
    ).toEqual([]);
  });
});

describe("carrying", () => {
  it("lifts by the published equation: NI-01, NI-02", () => {
    for (const id of ["NI-01", "NI-02"]) {
      const from = given(id, "V_in") * INCH;
      const kg = recommendedLift({
        horizontal: given(id, "H_in") * INCH,
        from,
        to: from + given(id, "D_in") * INCH,
      });
      expect(Math.abs(kg / 0.45359237 - expected(id, "RWL_lb"))).toBeLessThan(0.1);
    }
  });

  it("weighs bags: one of 1½ ft³ of compost is over the limit, WT-02", () => {
    const small = gardenOf(
      bed("a", { w: 500, h: 900, wall, fill: { recipe: { compost: 1, topsoil: 0, soilless: 0 } } }),
    );
    const { bags, caution, weightKg, tripsFor } = carrying(small);
    const heavy = bags.find(({ what }) => what.includes("1½ ft³"));
    expect(heavy?.kg).toBeCloseTo(expected("WT-02", "bag_1.5_ft3_lb") * 0.45359237, 1);
    expect(heavy?.overNiosh).toBe(true);
    expect(caution).toContain("66.7 lb");
    expect(weightKg).toBeCloseTo(
      bags.reduce((sum, { kg, count }) => sum + kg * count, 0),
      6,
    );
    expect(tripsFor(weightKg)).toBe(1);
    expect(tripsFor(weightKg / 2.5)).toBe(3);
    expect(() => tripsFor(0)).toThrow(RangeError);
  });

  it("counts barrows for what comes loose, and the heaviest board", () => {
    const { barrowLoads, heaviestBoardKg } = carrying(garden);
    expect(barrowLoads).toBeGreaterThan(10);
    // The longest 2x6 of 16 ft, Douglas-fir at 510 kg/m³: 13 kg; cedar is lighter.
    expect(heaviestBoardKg).toBeLessThan(0.0381 * 0.1397 * 4.8768 * 520 + 12);
    expect(carrying(gardenOf())).toMatchObject({
      weightKg: 0,
      bags: [],
      barrowLoads: 0,
      heaviestBoardKg: null,
    });
  });
});

describe("mesh under a bed on two grounds", () => {
  const meshed = (...items: readonly Item[]) =>
    takeoff(gardenOf(...items)).lines.find(({ key }) => key.startsWith("mesh"));
  const drawn = bed("b", { ...fourByEight, bottom: { mesh: { opening: 12.7 } } });

  it("is laid only where it does not stand on paving", () => {
    const halfPaved = ground("p", { x: -500, y: 48 * INCH, w: 3000, h: 3000, cover: "paving" });
    expect(meshed(drawn)?.how).not.toContain("only where");
    const half = meshed(halfPaved, drawn);
    // 48 x 48 in and 3 in up all round is one strip of 54 in by 2 of a 48 in roll or one more way: less than the whole.
    expect(half?.how).toContain("1 bed only where the ground under it needs it");
    expect(half!.cost).toBeLessThan(meshed(drawn)!.cost);
  });

  it("is laid whole on a patch that is no harder than the yard, and where the patch lies elsewhere", () => {
    const soft = ground("p", { x: -500, y: 48 * INCH, w: 3000, h: 3000, cover: "loose-gravel" });
    const far = ground("p", { x: 9000, y: 0, w: 3000, h: 3000, cover: "paving" });
    expect(meshed(soft, drawn)?.cost).toBe(meshed(drawn)?.cost);
    expect(meshed(far, drawn)?.cost).toBe(meshed(drawn)?.cost);
  });

  it("keeps a liner to the contaminated part", () => {
    const lined = bed("b", { ...fourByEight, bottom: { liner: "fabric" } });
    const bad = ground("p", { x: -500, y: 72 * INCH, w: 3000, h: 3000, contaminated: true });
    const line = takeoff(gardenOf(bad, lined)).lines.find(({ key }) => key.startsWith("liner"));
    // 48 x 24 in, turned up 4 in: 56 x 32 in, one strip.
    expect(line?.how).toContain("1 strip of");
    expect(line?.how).toContain("only where");
  });
});

describe("prices of soilless mix", () => {
  it("are there in both units", () => {
    for (const units of ["us", "metric"] as const) {
      const one = gardenWith(
        { units, prices: emptyGarden(units).prices },
        bed("s", { ...fourByEight, fill: { recipe: { compost: 1, topsoil: 0, soilless: 1 } } }),
      );
      expect(takeoff(one).lines.some(({ key }) => key.startsWith("soilless:"))).toBe(true);
    }
  });
});
