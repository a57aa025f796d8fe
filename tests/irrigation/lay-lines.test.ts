import { describe, expect, it } from "vitest";
import { segmentDistance } from "../../src/geometry/segment.ts";
import { contains, type Point, type Ring } from "../../src/index.ts";
import { emittersAlong, type Line, layLines } from "../../src/irrigation/lay-lines.ts";
import { soilOfBed } from "../../src/irrigation/soil-of-bed.ts";
import { bed } from "../helpers/garden-of.ts";
import { seeded, someBed } from "../helpers/scenes.ts";

const box = (width: number, length: number): Ring => [
  [0, 0],
  [width, 0],
  [width, length],
  [0, length],
];

const inSoil = (soil: readonly Ring[], at: Point) =>
  soil.filter((ring) => contains(ring, at)).length % 2 === 1;

const along = ([[ax, ay], [bx, by]]: Line, share: number): Point => [
  ax + share * (bx - ax),
  ay + share * (by - ay),
];

describe("drip lines in a rectangle", () => {
  it("are evenly apart, half as far from the sides, and 2 in off the ends", () => {
    expect(layLines([box(2400, 1100)], 300, "x")).toEqual([
      [
        [50, 137.5],
        [2350, 137.5],
      ],
      [
        [50, 412.5],
        [2350, 412.5],
      ],
      [
        [50, 687.5],
        [2350, 687.5],
      ],
      [
        [50, 962.5],
        [2350, 962.5],
      ],
    ]);
  });

  it("run the other way as well", () => {
    expect(layLines([box(700, 1900)], 350, "y")).toEqual([
      [
        [175, 50],
        [175, 1850],
      ],
      [
        [525, 50],
        [525, 1850],
      ],
    ]);
  });

  it("are as many as the spacing just asks for", () => {
    expect(layLines([box(2000, 1200)], 300, "x")).toHaveLength(4);
    expect(layLines([box(2000, 1201)], 300, "x")).toHaveLength(5);
  });

  it("are one in the middle where the soil is narrower than the spacing, even a hand wide", () => {
    expect(layLines([box(2000, 260)], 300, "x")).toEqual([
      [
        [50, 130],
        [1950, 130],
      ],
    ]);
    expect(layLines([box(900, 60)], 300, "x")).toEqual([
      [
        [25, 30],
        [875, 30],
      ],
    ]);
  });

  it("are none where there is no soil", () => {
    expect(layLines([], 300, "x")).toEqual([]);
  });
});

describe("drip lines in soil of any outline", () => {
  const seeds = Array.from({ length: 120 }, (_, seed) => seed + 1);

  it.each(seeds)("lie in it and leave none farther off than the spacing (seed %i)", (seed) => {
    const random = seeded(seed * 31 + 5);
    const soil = soilOfBed(someBed("bed", random)).rings;
    const apart = 150 + Math.floor(random() * 400);
    const runs = random() < 0.5 ? "x" : "y";
    const lines = layLines(soil, apart, runs);
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) {
      const strays = [0.001, 0.1, 0.3, 0.5, 0.7, 0.9, 0.999].filter(
        (share) => !inSoil(soil, along(line, share)),
      );
      expect(strays).toEqual([]);
      expect(runs === "x" ? line[0][1] === line[1][1] : line[0][0] === line[1][0]).toBe(true);
    }
    // Crumbs of under 2 by 2 in at the soil's sides may lie up to 2 in farther off.
    expect(driest(soil, lines)).toBeLessThan(apart + 50);
  });

  it("give a narrow arm that lies between two lines one of its own", () => {
    // Foot 180 deep at the lower left: no level line that is 500 apart over 1200 comes to lie in it.
    const soil: Ring = [
      [0, 0],
      [800, 0],
      [800, 1180],
      [3000, 1180],
      [3000, 1300],
      [0, 1300],
    ];
    const lines = layLines([soil], 500, "x");
    expect(driest([soil], lines)).toBeLessThan(501);
    expect(lines.some(([, [x]]) => x > 2400)).toBe(true);
  });
});

/** The farthest that a place in the soil is from a line, by a fine grid. */
function driest(soil: readonly Ring[], lines: readonly Line[]): number {
  let worst = 0;
  const corners = soil.flat();
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  for (let x = Math.min(...xs); x <= Math.max(...xs); x += 17) {
    for (let y = Math.min(...ys); y <= Math.max(...ys); y += 17) {
      if (!inSoil(soil, [x, y])) continue;
      const away = lines.map(([[ax, ay], [bx, by]]) => segmentDistance(x, y, ax, ay, bx, by));
      worst = Math.max(worst, Math.min(...away));
    }
  }
  return worst;
}

describe("emitters along a line", () => {
  it("are evenly apart, what is over at both ends", () => {
    const emitters = emittersAlong(
      [
        [0, 10],
        [1000, 10],
      ],
      300,
    );
    expect(emitters.map(([x]) => Math.round(x))).toEqual([50, 350, 650, 950]);
  });

  it("go on round a bend of a drawn line", () => {
    const emitters = emittersAlong(
      [
        [0, 0],
        [400, 0],
        [400, 500],
      ],
      300,
    );
    expect(emitters).toEqual([
      [0, 0],
      [300, 0],
      [400, 200],
      [400, 500],
    ]);
  });

  it("are one in the middle of a short line", () => {
    expect(
      emittersAlong(
        [
          [0, 0],
          [200, 0],
        ],
        300,
      ),
    ).toEqual([[100, 0]]);
  });
});

describe("the soil of a bed", () => {
  it("stays the same value while the bed is moved and turned", () => {
    const before = bed("a", { w: 1300, h: 2500 });
    expect(soilOfBed({ ...before, at: [5000, -300], turn: 33 })).toBe(soilOfBed(before));
  });
});
