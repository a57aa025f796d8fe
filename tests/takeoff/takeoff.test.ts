import { describe, expect, it } from "vitest";
import {
  applyOps,
  emptyGarden,
  type Garden,
  INCH,
  type Item,
  itemId,
  priceKeysOf,
  takeoff,
} from "../../src/index.ts";
import { bed, gardenOf, gardenWith, path } from "../helpers/garden-of.ts";

const fourByEight = { w: 48 * INCH, h: 96 * INCH };
const boards = {
  made: "boards",
  board: "2x6",
  timber: "douglas-fir",
  courses: 2,
  corner: "ends-between-sides",
  cornerPosts: true,
  capRail: null,
  bracing: "stakes",
} as const;

const lineOf = (garden: Garden, key: string) => takeoff(garden).lines.find((line) => line.key === key);
const quantity = (garden: Garden, key: string) => lineOf(garden, key)?.quantity ?? 0;
const oneBed = (changes: Parameters<typeof bed>[1]) => takeoff(gardenOf(bed("salads", changes))).beds[0]!;

describe("the boards of a bed", () => {
  it("are two sides and two ends a course, six boards of 8 ft for two courses of 4 x 8 ft", () => {
    const garden = gardenWith(
      { cutting: { ...emptyGarden("us").cutting, stockLengths: [96 * INCH] } },
      bed("salads", { ...fourByEight, name: "Salads", wall: boards }),
    );
    const [plan] = takeoff(garden).boardPlans;
    expect(plan?.pieces).toEqual([
      { length: 1143, count: 4, label: "Salads, end" },
      { length: 2438.4, count: 4, label: "Salads, side" },
    ]);
    expect(plan?.plan).toMatchObject({ proven: true, uncut: [] });
    expect(quantity(garden, "board:2x6:douglas-fir:8ft")).toBe(6);
    // Four posts of 11 in from one 8 ft 4x4.
    expect(quantity(garden, "board:4x4:douglas-fir:8ft")).toBe(1);
  });

  it("are cut together for beds of one board, apart for beds of another", () => {
    const larch = { ...boards, timber: "larch" };
    const garden = gardenOf(
      bed("a", { ...fourByEight, wall: boards }),
      bed("b", { ...fourByEight, wall: boards, x: 2000 }),
      bed("c", { ...fourByEight, wall: larch, x: 4000 }),
    );
    const kinds = takeoff(garden).boardPlans.map(({ board, timber, pieces }) => [
      board,
      timber,
      pieces.reduce((sum, { count }) => sum + count, 0),
    ]);
    expect(kinds).toEqual([
      ["2x6", "douglas-fir", 16],
      ["4x4", "douglas-fir", 8],
      ["2x6", "larch", 8],
      ["4x4", "larch", 4],
    ]);
  });

  it("longer than any board on sale come in equal parts, joined on a post", () => {
    const garden = gardenWith(
      { cutting: { ...emptyGarden("metric").cutting, stockLengths: [2400] } },
      bed("long", { w: 1200, h: 6000, wall: { ...boards, courses: 1 } }),
    );
    const { boardPlans, beds } = takeoff(garden);
    expect(boardPlans[0]?.spliced).toEqual([
      { length: 6000, count: 1, label: "Bed, side" },
      { length: 6000, count: 1, label: "Bed, side" },
    ]);
    expect(boardPlans[0]?.pieces.find(({ length }) => length === 2000)?.count).toBe(6);
    expect(boardPlans[0]?.tooLong).toEqual([]);
    expect(beds[0]?.posts).toBe(4 + 4);
  });

  it("of a table bed have longer posts and a floor", () => {
    const { boards: pieces } = oneBed({ w: 600, h: 1200, wall: boards, legs: 700 });
    const floor = pieces.find(({ label }) => label?.endsWith("floor"));
    // 1123.8 mm between the ends, boards of 139.7 mm with 6 mm between: eight.
    expect(floor).toMatchObject({ count: 8 });
    expect(floor?.length).toBeCloseTo(600 - 2 * 38.1, 6);
  });
});

describe("fixings of a bed", () => {
  it("are a post a corner, a stake at most every 4 ft, screws for both", () => {
    const counted = oneBed({ ...fourByEight, wall: boards });
    // Screws: 8 boards with two ends of two, and two at each of two stakes in both courses.
    expect(counted).toMatchObject({ posts: 4, stakes: 2, ties: 0, screws: 32 + 8 });
  });

  it("need no stakes without bracing, and none under a table bed", () => {
    expect(oneBed({ ...fourByEight, wall: { ...boards, bracing: "none" } })).toMatchObject({
      stakes: 0,
      screws: 32,
    });
    expect(oneBed({ ...fourByEight, wall: boards, legs: 600 }).stakes).toBe(0);
  });

  it("have ties once the soil is 18 in deep and ties are wanted", () => {
    const deep = { ...boards, courses: 4, bracing: "stakes-and-ties" } as const;
    expect(oneBed({ w: 48 * INCH, h: 144 * INCH, wall: deep })).toMatchObject({ stakes: 4, ties: 2 });
    expect(oneBed({ w: 48 * INCH, h: 144 * INCH, wall: { ...deep, courses: 3 } }).ties).toBe(0);
    expect(oneBed({ w: 48 * INCH, h: 144 * INCH, wall: { ...deep, bracing: "stakes" } }).ties).toBe(0);
  });

  it("follow the gardener's own spacing of stakes", () => {
    const closer = gardenWith({ limits: { stakeEvery: 700 } }, bed("b", { w: 1200, h: 2400, wall: boards }));
    // 2400 mm needs three between the ends, 1200 mm one.
    expect(takeoff(closer).beds[0]?.stakes).toBe(2 * (3 + 1));
    // The same bed under other limits is counted anew.
    const none = { ...closer, limits: { stakeEvery: 0 } };
    expect(takeoff(none).beds[0]?.stakes).toBe(0);
  });

  it("hold heavy timbers to one another instead of to posts", () => {
    const garden = gardenOf(bed("b", { ...fourByEight, wall: { ...boards, board: "6x6" } }));
    expect(takeoff(garden).beds[0]).toMatchObject({ posts: 0, stakes: 0, screws: 0 });
    expect(quantity(garden, "spike:203mm")).toBe(4 * 2 * 2);
  });
});

describe("the bottom of a bed", () => {
  it("takes mesh from the width and length of roll that come cheapest", () => {
    const garden = gardenOf(bed("b", { ...fourByEight, wall: boards, bottom: { mesh: { opening: 12.7 } } }));
    const rolls = takeoff(garden).lines.filter(({ key }) => key.startsWith("mesh"));
    expect(rolls.map(({ quantity: n }) => n)).toEqual([1]);
    // MS-04: 54 x 102 in of 48 in roll is three strips of 54 in, 13½ ft: a roll of 25 ft at the least.
    const offered = priceKeysOf(garden).filter(({ key }) => key.startsWith("mesh"));
    const other = applyOps(garden, [{ op: "set-price", key: rolls[0]!.key, value: 999 }]);
    const [next] = takeoff(other).lines.filter(({ key }) => key.startsWith("mesh"));
    expect(next?.key).not.toBe(rolls[0]?.key);
    expect(offered.map(({ key }) => key)).toContain(next?.key);
    // Round a 4 x 8 ft bed, one every 4 in: 72, from a box of 500.
    expect(lineOf(garden, "staples:500")).toMatchObject({ quantity: 1 });
    expect(lineOf(garden, "staples:500")?.how).toContain("72 staples");
  });

  it("takes liner of its own kind", () => {
    const garden = gardenOf(
      bed("a", { ...fourByEight, bottom: { liner: "fabric" } }),
      bed("b", { ...fourByEight, x: 3000, bottom: { liner: "sheet" } }),
    );
    const keys = takeoff(garden).lines.map(({ key }) => key.split(":")[0]);
    expect(keys).toContain("liner-fabric");
    expect(keys).toContain("liner-sheet");
  });
});

describe("walls that are not of boards", () => {
  const wallLines = (wall: Parameters<typeof bed>[1]) =>
    takeoff(gardenOf(bed("b", wall))).lines.filter(({ part }) => part === "walls");

  it("of metal take panels and a corner piece a corner, none on a round bed", () => {
    const metal = { made: "metal", height: 600, thickness: 1 } as const;
    // 7315 mm round, panels of 2438.4 that lap 50.8.
    expect(wallLines({ ...fourByEight, wall: metal }).map(({ quantity: n }) => n)).toEqual([4, 4]);
    const round = { type: "oval", width: 1500, length: 1500 } as const;
    expect(wallLines({ shape: round, wall: metal }).map(({ quantity: n }) => n)).toEqual([2]);
  });

  it("of blocks take them along the middle of the wall", () => {
    const blocks = { made: "masonry", unitLength: 400, unitHeight: 200, thickness: 100, courses: 3 } as const;
    // 2 x (1200 + 2400) - 4 x 100 = 6800 mm: 17 blocks a course.
    expect(wallLines({ w: 1200, h: 2400, wall: blocks })).toMatchObject([{ quantity: 51 }]);
  });

  it("of fabric come whole, and a mound has none", () => {
    expect(wallLines({ ...fourByEight, wall: { made: "fabric", height: 300 } })).toMatchObject([
      { quantity: 1 },
    ]);
    expect(wallLines({ ...fourByEight, wall: { made: "mound", height: 200 } })).toEqual([]);
  });
});

describe("fill, mulch and paths", () => {
  it("orders mix for settling, by the share of compost", () => {
    const drawn = bed("b", {
      ...fourByEight,
      wall: boards,
      fill: { recipe: { compost: 25, topsoil: 75, soilless: 0 } },
    });
    const { soilVolumeL, orderVolumeL } = takeoff(gardenOf(drawn)).beds[0]!;
    expect(orderVolumeL).toBeCloseTo(soilVolumeL / 0.85, 9);
    expect(lineOf(gardenOf(drawn), "compost:1ft3") ?? lineOf(gardenOf(drawn), "compost:yd3")).toBeDefined();
  });

  it("buys no fill for a bed of the yard's own soil", () => {
    const { lines, fillShare } = takeoff(gardenOf(bed("b", { ...fourByEight, fill: { way: "native" } })));
    expect(lines.filter(({ part }) => part === "fill" || part === "delivery")).toEqual([]);
    expect(fillShare).toBe(0);
  });

  it("puts wood under the mix of a layered bed, gathered and not delivered", () => {
    const tall = { ...boards, courses: 6 };
    const garden = gardenOf(
      bed("b", { ...fourByEight, wall: tall, fill: { way: "layered", mixDepth: 305 } }),
    );
    const [counted] = takeoff(garden).beds;
    expect(counted!.mixVolumeL / counted!.soilVolumeL).toBeCloseTo(305 / (6 * 139.7), 9);
    expect(counted!.woodyVolumeL + counted!.mixVolumeL).toBeCloseTo(counted!.soilVolumeL, 9);
    const wood = lineOf(garden, "wood:yd3");
    expect(wood?.cost).toBe(0);
    expect(wood!.quantity * 764.55).toBeGreaterThanOrEqual(counted!.woodyVolumeL / 0.75 - 8);
  });

  it("surfaces a path where no bed stands on it, and a crossing once", () => {
    const way = path("way", {
      from: [-3000, 0],
      to: [3000, 0],
      width: 1000,
      depth: 100,
      surface: "firm-gravel",
    });
    const cross = path("cross", {
      from: [0, -2000],
      to: [0, 2000],
      width: 1000,
      depth: 100,
      surface: "firm-gravel",
    });
    const how = (...items: Item[]) =>
      takeoff(gardenWith({ units: "metric" }, ...items)).lines.find(({ key }) =>
        key.startsWith("firm-gravel"),
      )!.how;
    expect(how(way)).toContain("600 L in all");
    expect(how(way, cross)).toContain("900 L in all");
    const onIt = bed("b", { w: 500, h: 400, x: 0, y: -200, wall: { made: "mound", height: 1 } });
    expect(how(way, onIt)).toContain("580 L in all");
    // Half way off it, half of what it covered is surfaced again, though the same one bed still lies on it.
    const half = applyOps(gardenWith({ units: "metric" }, way, onIt), [
      { op: "move", id: onIt.id, by: [0, 500] },
    ]);
    expect(takeoff(half).lines.find(({ key }) => key.startsWith("firm-gravel"))!.how).toContain(
      "590 L in all",
    );
    // Moved off the path, the whole of it is surfaced again.
    const off = applyOps(gardenWith({ units: "metric" }, way, onIt), [
      { op: "move", id: onIt.id, by: [0, 5000] },
    ]);
    expect(takeoff(off).lines.find(({ key }) => key.startsWith("firm-gravel"))!.how).toContain(
      "600 L in all",
    );
  });

  it("counts paving by the area and leaves bare paths alone", () => {
    const way = { from: [0, 0], to: [2000, 0], width: 1500 } as const;
    const paved = gardenWith({ units: "metric" }, path("p", { ...way, surface: "paving", depth: 50 }));
    expect(quantity(paved, "paving")).toBe(3);
    expect(takeoff(gardenOf(path("p", { ...way, surface: "lawn", depth: 50 }))).lines).toEqual([]);
    expect(takeoff(gardenOf(path("p", { ...way, surface: "bark", depth: 0 }))).lines).toEqual([]);
  });
});

describe("money", () => {
  const garden = gardenOf(
    bed("a", { ...fourByEight, wall: boards, mulch: { material: "straw", depth: 50 } }),
    bed("b", { w: 900, h: 1800, x: 4000, wall: boards, bottom: { mesh: { opening: 12.7 } } }),
    bed("c", {
      shape: { type: "keyhole", diameter: 1800, slotWidth: 450, middleDiameter: 600 },
      at: [9000, 0],
    }),
    path("way", { from: [0, -4000], to: [9000, -4000], width: 900, depth: 75 }),
  );

  it("adds up: lines to the total, beds and paths to the lines", () => {
    const { lines, total, beds } = takeoff(garden);
    expect(lines.reduce((sum, { cost }) => sum + cost, 0)).toBeCloseTo(total, 6);
    for (const { price, quantity: n, cost } of lines) expect(cost).toBeCloseTo(price * n, 2);
    const forBeds = beds.reduce((sum, { cost }) => sum + cost, 0);
    expect(forBeds).toBeGreaterThan(0.5 * total);
    expect(forBeds).toBeLessThan(total);
    const noPath = applyOps(garden, [{ op: "remove", id: itemId("way") }]);
    const alone = takeoff(noPath);
    expect(alone.beds.reduce((sum, { cost }) => sum + cost, 0)).toBeCloseTo(alone.total, 1);
  });

  it("says what share is fill, and 0 of nothing", () => {
    const { lines, total, fillShare } = takeoff(applyOps(garden, [{ op: "remove", id: itemId("way") }]));
    const filling = lines.filter(({ part }) => part === "fill" || part === "mulch" || part === "delivery");
    expect(fillShare).toBeCloseTo(filling.reduce((sum, { cost }) => sum + cost, 0) / total, 6);
    expect(takeoff(gardenOf())).toMatchObject({
      lines: [],
      total: 0,
      fillShare: 0,
      beds: [],
      boardPlans: [],
    });
  });

  it("charges beds with their part only of what serves paths too", () => {
    const mulched = bed("a", { ...fourByEight, wall: boards, mulch: { material: "bark", depth: 50 } });
    const way = path("way", { from: [0, -4000], to: [9000, -4000], width: 900, depth: 75, surface: "bark" });
    const { beds, total, lines } = takeoff(gardenOf(mulched, way));
    const bark = lines.filter(({ key }) => key.startsWith("bark")).reduce((sum, { cost }) => sum + cost, 0);
    const areas = [(48 - 3) * (96 - 3) * INCH ** 2 * 50, 9000 * 900 * 75] as const;
    const ofPath = areas[1] / (areas[0] + areas[1]);
    const delivery = lines.find(({ part }) => part === "delivery")!;
    expect(delivery.cost).toBeGreaterThan(0);
    const charged = beds[0]!.cost;
    expect(charged).toBeLessThan(total - bark * ofPath + 0.02);
    expect(charged).toBeGreaterThan(total - bark * ofPath - delivery.cost);
  });

  it("takes the gardener's own prices and marks them", () => {
    const [line] = takeoff(garden).lines;
    const own = applyOps(garden, [{ op: "set-price", key: line!.key, value: 0.5 }]);
    const after = takeoff(own).lines.find(({ key }) => key === line!.key);
    expect(line?.ownPrice).toBe(false);
    expect(after).toMatchObject({ price: 0.5, ownPrice: true });
  });

  it("has each row of the price table once, with every price that is used among them", () => {
    const rows = priceKeysOf(garden);
    const keys = rows.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { key } of takeoff(garden).lines) expect(keys).toContain(key);
    for (const { example } of rows) expect(example).toBeGreaterThanOrEqual(0);
    expect(keys).toContain("board:2x6:douglas-fir:16ft");
    expect(keys.every((key) => /^[a-z0-9:./-]+$/.test(key))).toBe(true);
  });

  it("does not change where a bed is moved or turned off the paths", () => {
    const moved = applyOps(garden, [
      { op: "move", id: itemId("a"), by: [123.4567, 77.77] },
      { op: "turn", id: itemId("c"), by: 33 },
    ]);
    const plain = (g: Garden) => ({
      ...takeoff(g),
      beds: takeoff(g).beds.map(({ cost, soilAreaMm2 }) => [cost, soilAreaMm2]),
    });
    expect(plain(moved)).toEqual(plain(garden));
  });

  it("gives the same answer whatever was asked before", () => {
    const other = applyOps(garden, [
      { op: "set", id: itemId("a"), changes: { shape: { type: "rectangle", width: 1000, length: 2000 } } },
    ]);
    const before = JSON.stringify(takeoff(garden));
    takeoff(other);
    expect(JSON.stringify(takeoff(garden))).toBe(before);
    expect(JSON.stringify(takeoff(structuredClone(garden)))).toBe(before);
  });

  it("knows each line's reckoning, with this garden's figures", () => {
    for (const { how, quantity: n } of takeoff(garden).lines) {
      expect(how).toMatch(/\d/);
      expect(n).toBeGreaterThan(0);
    }
  });
});
