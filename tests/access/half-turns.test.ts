import { describe, expect, it } from "vitest";
import { halfTurnsRound } from "../../src/access/half-turns.ts";
import { type Garden, INCH, type Item, type ItemOf, turned } from "../../src/index.ts";
import { bed, gardenWith, wall } from "../helpers/garden-of.ts";

/**
 * 2010 ADA Standards, 403.5.2: what is turned around is less than 48 in wide, and the widths before, at and after the
 * turn count. Which run of an outline is an end is ours; the widths below are laid out, not worked out.
 */
const ELEMENT = 48 * INCH;
const WAY = 36 * INCH;

const bedOf = (garden: Garden) => garden.items.find((item): item is ItemOf<"bed"> => item.kind === "bed")!;
const turnsIn = (garden: Garden) => halfTurnsRound(bedOf(garden), garden, ELEMENT, WAY);
const whole = (mm: number) => Math.round(mm);

/** Walls of 200 mm about a ground, each so far from the origin. */
const about = (left: number, top: number, right: number, bottom: number): Item[] => [
  wall("left", { from: [-left - 100, -9000], to: [-left - 100, 9000], thickness: 200 }),
  wall("top", { from: [-9000, -top - 100], to: [9000, -top - 100], thickness: 200 }),
  wall("right", { from: [right + 100, -9000], to: [right + 100, 9000], thickness: 200 }),
  wall("bottom", { from: [-9000, bottom + 100], to: [9000, bottom + 100], thickness: 200 }),
];
const rectangle = bed("beans", { shape: { type: "rectangle", width: 900, length: 3000 }, at: [0, 0] });

describe("the half turns round a bed", () => {
  it("go round both ends of a rectangle, none round its long sides", () => {
    const found = turnsIn(
      gardenWith({}, rectangle, ...about(450 + 1100, 1500 + 1250, 450 + 1070, 1500 + 1600)),
    );
    expect(
      found.map(({ element, approach, turn, leave }) => [element, approach, turn, leave].map(whole)),
    ).toEqual([
      [900, 1070, 1600, 1100],
      [900, 1100, 1250, 1070],
    ]);
  });

  it("are the same however the whole is turned", () => {
    const around = about(450 + 1100, 1500 + 1250, 450 + 1070, 1500 + 1600);
    const spun = [rectangle, ...around].map((item) => ({
      ...item,
      at: turned(item.at, 33),
      turn: item.turn + 33,
    }));
    const found = turnsIn(gardenWith({}, ...(spun as Item[])));
    expect(found.map(({ approach, turn }) => [whole(approach), whole(turn)])).toEqual([
      [1070, 1600],
      [1100, 1250],
    ]);
  });

  it("go round a round bed at any side of it, as wide as it is across", () => {
    const round = bed("herbs", { shape: { type: "oval", width: 1000, length: 1000 }, at: [0, 0] });
    const found = turnsIn(gardenWith({}, round, ...about(500 + 1100, 500 + 1300, 500 + 1100, 500 + 1700)));
    for (const { element } of found) expect(element).toBeCloseTo(1000, -1);
    const up = found.filter(({ at: [x, y] }) => Math.abs(x) < 120 && y < 0);
    expect(up.length).toBeGreaterThan(0);
    // Begun a chord off the exact side, it stands a millimetre or two farther from the wall.
    for (const { approach, turn, leave } of up)
      [approach, turn, leave].forEach(
        (width, i) => void expect(width).toBeCloseTo([1100, 1300, 1100][i]!, -1),
      );
  });

  it("are none round a bed that is 48 in across, rounded or not", () => {
    const round = bed("herbs", { shape: { type: "oval", width: 1300, length: 1300 }, at: [0, 0] });
    expect(turnsIn(gardenWith({}, round))).toEqual([]);
    const square = bed("herbs", {
      shape: { type: "rectangle", width: ELEMENT, length: ELEMENT },
      at: [0, 0],
    });
    expect(turnsIn(gardenWith({}, square))).toEqual([]);
  });

  it("go round the end of each arm of an L, which are narrow where its bounds are wide", () => {
    const l = bed("squash", {
      shape: { type: "l", width: 3000, length: 2800, armWidth: 900, armLength: 800 },
      at: [0, 0],
    });
    const found = turnsIn(gardenWith({}, l));
    expect(found.map(({ element }) => whole(element)).sort()).toEqual([800, 900]);
  });
});
