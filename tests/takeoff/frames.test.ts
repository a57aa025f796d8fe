import { describe, expect, it } from "vitest";
import { type Garden, INCH, priceKeysOf, takeoff } from "../../src/index.ts";
import { middleOfWall, railSides, wallSides } from "../../src/takeoff/sides.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";

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
const fourByEight = { w: 48 * INCH, h: 96 * INCH, name: "Salads" };
const oneBed = (changes: Parameters<typeof bed>[1]) => takeoff(gardenOf(bed("salads", changes))).beds[0]!;
const quantity = (garden: Garden, key: string) =>
  takeoff(garden).lines.find((line) => line.key === key)?.quantity ?? 0;

/** A regular polygon of so many sides, each of `side` mm. */
const regular = (corners: number, side: number) => ({
  type: "polygon" as const,
  points: Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    const radius = side / 2 / Math.sin(Math.PI / corners);
    return [radius * Math.cos(angle), radius * Math.sin(angle)] as const;
  }),
});

describe("corners of a frame", () => {
  it("without posts are screwed board into end: one end a corner and course, by longer screws", () => {
    const posted = oneBed({ ...fourByEight, wall: { ...boards, bracing: "none" } });
    const bare = oneBed({ ...fourByEight, wall: { ...boards, bracing: "none", cornerPosts: false } });
    expect(posted).toMatchObject({ posts: 4, screws: 2 * 4 * 2 * 2 });
    // Four posts of 3½ x 3½ in, 11 in high: 539 in³, 0.312 ft³.
    expect(posted.postsWhy).toBe(
      "4 in the corners, inside, where they take 0.31 ft³ of the soil, which the fill does not count off",
    );
    expect(bare).toMatchObject({ posts: 0, screws: 2 * 4 * 2, postsWhy: null });
    const garden = gardenOf(bed("b", { ...fourByEight, wall: { ...boards, cornerPosts: false } }));
    // 1½ in of board and 2½ in of end grain.
    expect(quantity(garden, "screws:102mm:50")).toBe(1);
  });

  it("of a polygon are mitred, the saw set to half the turn: 30° at a hexagon, 22½° at an octagon", () => {
    // A regular n-gon turns by 360/n at each corner (Euclid I.32, corollary).
    for (const [corners, angle] of [
      [6, 30],
      [8, 22.5],
      [5, 36],
      [3, 60],
    ] as const) {
      const { boards: pieces, joined } = oneBed({ shape: regular(corners, 900), wall: boards });
      expect(joined).toBe("mitred");
      expect(pieces.reduce((sum, { count }) => sum + count, 0)).toBe(2 * corners);
      for (const piece of pieces) {
        expect(piece.length).toBeCloseTo(900, 4);
        expect(piece.ends?.cut).toBe("bevel");
        expect(piece.ends?.angles[0]).toBeCloseTo(angle, 4);
        expect(piece.ends?.angles[1]).toBeCloseTo(angle, 4);
      }
    }
  });

  it("tells each end of a piece its own angle, below 0 at an inner corner", () => {
    // A dart: its tip turns in. Corners turn by 153.4, 153.4, 116.6 and -63.4 degrees, 360 in all.
    const dart = [
      [0, 0],
      [2000, 1000],
      [0, 2000],
      [500, 1000],
    ] as const;
    const { sides } = wallSides({ type: "polygon", points: dart }, 38.1, "ends-between-sides");
    const turns = sides.map(({ angles }) => 2 * angles[0]);
    expect(turns.reduce((sum, turn) => sum + turn, 0)).toBeCloseTo(360, 4);
    expect(sides.filter(({ angles }) => angles[0] < 0 || angles[1] < 0)).toHaveLength(2);
    for (const [i, { angles }] of sides.entries()) {
      expect(angles[1]).toBeCloseTo(sides[(i + 1) % sides.length]!.angles[0], 6);
    }
  });

  it("leave square ends unsaid", () => {
    expect(oneBed({ ...fourByEight, wall: boards }).boards.every(({ ends }) => ends === undefined)).toBe(
      true,
    );
  });
});

describe("a cap rail", () => {
  const wall = { ...boards, capRail: "2x6" } as const;

  it("is mitred at 45°, as long as the outside of the wall", () => {
    const { capRail } = oneBed({ ...fourByEight, wall });
    expect(capRail).toEqual([
      { length: 1219.2, count: 2, label: "Salads, rail on end", ends: { cut: "mitre", angles: [45, 45] } },
      { length: 2438.4, count: 2, label: "Salads, rail on side", ends: { cut: "mitre", angles: [45, 45] } },
    ]);
  });

  it("is longer on its inner edge at an inner corner, by its width", () => {
    const ell = { type: "l", width: 2000, length: 3000, armWidth: 900, armLength: 800 } as const;
    const sides = railSides(ell, 139.7);
    const inner = sides.filter(({ angles }) => angles.includes(-45));
    expect(sides).toHaveLength(6);
    expect(inner).toHaveLength(2);
    for (const side of inner) expect(side.board).toBeCloseTo(side.outside + 139.7, 6);
  });

  it("comes from the same boards as the wall, cut with them, and is screwed down every 16 in", () => {
    const garden = gardenOf(bed("b", { ...fourByEight, wall }));
    const [plan] = takeoff(garden).boardPlans;
    expect(plan?.pieces.reduce((sum, { count }) => sum + count, 0)).toBe(8 + 4);
    expect(takeoff(garden).boardPlans.map(({ board }) => board)).toEqual(["2x6", "4x4"]);
    // Ends of 48 in take 3 and one, sides of 96 in 6 and one.
    expect(takeoff(garden).beds[0]!.screws).toBe(32 + 8 + 2 * (4 + 7));
  });

  it("of another board is cut from that board", () => {
    const garden = gardenOf(bed("b", { ...fourByEight, wall: { ...boards, capRail: "1x6" } }));
    expect(takeoff(garden).boardPlans.map(({ board }) => board)).toEqual(["2x6", "1x6", "4x4"]);
  });

  it("is not made on a round wall, which no straight board follows", () => {
    expect(oneBed({ shape: { type: "oval", width: 1500, length: 1500 }, wall }).capRail).toEqual([]);
  });
});

describe("a board of the gardener's own", () => {
  it("is measured by its sizes and priced by its volume", () => {
    const garden = gardenOf(bed("b", { ...fourByEight, wall: { ...boards, board: "32x175mm", courses: 1 } }));
    const [counted] = takeoff(garden).beds;
    expect(counted?.wallHeight).toBe(175);
    const rows = priceKeysOf(garden).filter(({ key }) => key.startsWith("board:32x175mm:douglas-fir:"));
    const [eight] = rows;
    // 0.95 a board foot, 423.776 board feet to the cubic metre (1 m³ / (1 ft² x 1 in)).
    expect(eight?.example).toBeCloseTo(0.95 * 423.776 * 0.032 * 0.175 * 2.4384, 2);
    const thick = gardenOf(bed("b", { ...fourByEight, wall: { ...boards, board: "64x175mm", courses: 1 } }));
    const double = priceKeysOf(thick).find(({ key }) => key.startsWith("board:64x175mm"));
    expect(double?.example).toBeCloseTo(2 * (eight?.example ?? 0), 1);
  });
});

describe("the middle of a block wall", () => {
  const rectangle = { type: "rectangle", width: 1200, length: 2400 } as const;

  it("is shorter than the outside by four thicknesses, of an L as of a rectangle", () => {
    expect(middleOfWall(rectangle, 100)).toBeCloseTo(7200 - 400, 6);
    const ell = { type: "l", width: 2000, length: 3000, armWidth: 900, armLength: 800 } as const;
    expect(middleOfWall(ell, 100)).toBeCloseTo(10_000 - 400, 6);
  });

  it("of a hexagon agrees with the hexagon that runs half a thickness inside it", () => {
    // Side of a hexagon whose apothem is 50 mm less: by 2 x 50 x tan(30°).
    const inner = 6 * (900 - 2 * 50 * Math.tan(Math.PI / 6));
    expect(middleOfWall(regular(6, 900), 100)).toBeCloseTo(inner, 6);
  });
});

describe("a bed that stands already", () => {
  const raised = { ...fourByEight, wall: { ...boards, courses: 3 }, already: { courses: 2, soilDepth: 250 } };

  it("takes only the boards of the courses that are added, and posts up old and new", () => {
    const counted = oneBed(raised);
    expect(counted).toMatchObject({ coursesStanding: 2, coursesNew: 1, frameStands: false, posts: 4 });
    expect(counted.boards.reduce((sum, { count }) => sum + count, 0)).toBe(4);
    expect(counted.postsWhy).toContain("both old and new");
    const [, posts] = takeoff(gardenOf(bed("b", raised))).boardPlans;
    expect(posts?.pieces).toEqual([{ length: 3 * 5.5 * INCH, count: 4, label: "Salads, post" }]);
    // Posts are screwed to the old courses as well as to the new.
    expect(counted.screws).toBe(3 * 4 * 2 * 2 + 2 * 3 * 2);
  });

  it("has such posts even where the corners had none", () => {
    expect(oneBed({ ...raised, wall: { ...raised.wall, cornerPosts: false } }).posts).toBe(4);
  });

  it("takes only the soil above what is in it", () => {
    const { soilVolumeL, soilHaveL, newSoilL, settlingL, orderVolumeL } = oneBed(raised);
    expect(soilHaveL / soilVolumeL).toBeCloseTo(250 / (3 * 139.7), 9);
    expect(newSoilL).toBeCloseTo(soilVolumeL - soilHaveL, 9);
    expect(orderVolumeL).toBeCloseTo(newSoilL / 0.85, 9);
    expect(settlingL).toBeCloseTo(orderVolumeL - newSoilL, 9);
  });

  it("costs nothing but its mulch once it stands as drawn and is full", () => {
    const standing = bed("b", {
      ...fourByEight,
      wall: { ...boards, capRail: "2x6" },
      already: { courses: 2, soilDepth: 2 * 139.7 },
      bottom: { mesh: { opening: 12.7 } },
      mulch: { material: "straw", depth: 50 },
    });
    const { lines, beds, boardPlans } = takeoff(gardenOf(standing));
    expect(lines.map(({ part }) => part)).toEqual(["mulch"]);
    expect(boardPlans).toEqual([]);
    expect(beds[0]).toMatchObject({ frameStands: true, coursesNew: 0, posts: 0, stakes: 0, screws: 0 });
  });

  it("puts mix on top and wood below it, of a tall bed half full", () => {
    const tall = oneBed({
      ...fourByEight,
      wall: { ...boards, courses: 6 },
      fill: { way: "layered", mixDepth: 300 },
      already: { courses: 6, soilDepth: 400 },
    });
    const area = tall.soilAreaMm2;
    // 838.2 mm deep, 438.2 to come: 300 of mix, the rest of wood.
    expect(tall.orderVolumeL).toBeCloseTo((area * (300 / 0.85 + 138.2 / 0.75)) / 1e6, 6);
  });

  it("of blocks takes blocks for its new courses alone; other walls stand whole", () => {
    const blocks = { made: "masonry", unitLength: 400, unitHeight: 200, thickness: 100, courses: 3 } as const;
    const already = { courses: 1, soilDepth: 0 };
    const walls = (changes: Parameters<typeof bed>[1]) =>
      takeoff(gardenOf(bed("b", { w: 1200, h: 2400, ...changes }))).lines.filter(
        ({ part }) => part === "walls",
      );
    expect(walls({ wall: blocks, already })).toMatchObject([{ quantity: 17 * 2 }]);
    expect(walls({ wall: { made: "metal", height: 600, thickness: 1 }, already })).toEqual([]);
  });

  it("can still have mesh laid while it is empty, not once it is filled", () => {
    const meshed = (soilDepth: number) =>
      takeoff(
        gardenOf(
          bed("b", { ...raised, bottom: { mesh: { opening: 12.7 } }, already: { courses: 2, soilDepth } }),
        ),
      ).lines.some(({ part }) => part === "bottom");
    expect(meshed(0)).toBe(true);
    expect(meshed(100)).toBe(false);
  });
});
