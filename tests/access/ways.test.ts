import { describe, expect, it } from "vitest";
import { entrancesOf } from "../../src/access/entrances.ts";
import { standingPieces } from "../../src/access/standing.ts";
import { waysOf } from "../../src/access/ways.ts";
import { NARROWEST_WAY } from "../../src/access/ways-told.ts";
import { type Garden, INCH, type Item, type ItemOf, type Point } from "../../src/index.ts";
import { eroded, joins, widestByErosion } from "../helpers/erosion-reference.ts";
import { bed, door, fence, gardenOf, gardenWith, gate, house, shed } from "../helpers/garden-of.ts";
import { denseScene, rowsScene, tangledScene } from "../helpers/scenes.ts";

const bedsOf = ({ items }: Garden) => items.filter((item): item is ItemOf<"bed"> => item.kind === "bed");
const idOf = (item: Item) => item.id;

/** A bed in a court of four fences; `open` is left free at the upper left corner. */
const court = (open: number, turn = 0) => {
  const line = (id: string, from: Point, to: Point) => fence(id, { from, to, thickness: 40, turn });
  return [
    line("left", [-3000, -3000 + open], [-3000, 3000]),
    line("below", [-3020, 3000], [3020, 3000]),
    line("right", [3000, 3020], [3000, -3020]),
    line("above", [-3020, -3000], [3020, -3000]),
    bed("salads", { x: -600, y: -1250, w: 1200, h: 2500 }),
  ];
};
const outside = gate("gate", { at: [0, 20_000], width: 1100 });

describe("the widest way to a bed", () => {
  it("is as wide as its narrowest place, and says where that is and what stands there", () => {
    const opening = 700;
    const salads = court(opening)[4]!;
    const way = waysOf(gardenOf(outside, ...court(opening))).toBed(salads.id).fromGate;
    expect(way?.width).toBeCloseTo(opening - 20, 3);
    expect(way?.narrowest?.between.toSorted()).toEqual(["above", "left"]);
    expect(way?.narrowest?.width).toBeCloseTo(opening - 20, 3);
  });

  it("is the same however the whole garden is turned", () => {
    for (const turn of [17, 45, 133]) {
      const way = waysOf(gardenOf(outside, ...court(700, turn).slice(0, 4), court(0)[4]!)).toBed(
        court(0)[4]!.id,
      );
      expect(way.fromGate?.width).toBeCloseTo(680, 2);
    }
  });

  it("is 0 to a bed that is sealed off, and names what closes it", () => {
    const salads = court(0)[4]!;
    const way = waysOf(gardenOf(outside, ...court(0))).toBed(salads.id).fromGate;
    expect(way?.width).toBe(0);
    expect(way?.narrowest).not.toBeNull();
    expect(["left", "above", "right", "below"]).toContain(way?.narrowest?.between[0]);
  });

  it("counts a squeeze under 6 in as closed, and one just over as a way", () => {
    const widthAt = (open: number) =>
      waysOf(gardenOf(outside, ...court(open + 20))).toBed(court(0)[4]!.id).fromGate?.width;
    expect(widthAt(NARROWEST_WAY - 2)).toBe(0);
    expect(widthAt(NARROWEST_WAY + 2)).toBeCloseTo(NARROWEST_WAY + 2, 3);
  });

  it("tells a corridor of exactly 36 in as 36 in, straight or turned", () => {
    for (const turn of [0, 17.2]) {
      const beds = [
        bed("west", { shape: { type: "rectangle", width: 4000, length: 9000 }, at: [0, 0], turn }),
        bed("far", { shape: { type: "rectangle", width: 900, length: 1200 }, at: [0, -16_000] }),
      ];
      const rad = (turn * Math.PI) / 180;
      const step = 4000 + 36 * INCH;
      const east = bed("east", {
        shape: { type: "rectangle", width: 4000, length: 9000 },
        at: [step * Math.cos(rad), step * Math.sin(rad)],
        turn,
      });
      const garden = gardenOf(outside, ...beds, east);
      const gap = waysOf(garden).reachableAt(36 * INCH)([
        (step / 2) * Math.cos(rad),
        (step / 2) * Math.sin(rad),
      ]);
      const wider = waysOf(garden).reachableAt(36 * INCH + 2)([
        (step / 2) * Math.cos(rad),
        (step / 2) * Math.sin(rad),
      ]);
      expect([gap, wider]).toEqual([true, false]);
    }
  });

  it("is null from what a garden does not have, and 0 from a door that something stands against", () => {
    const salads = bed("salads", { x: 2000, y: 3000 });
    expect(waysOf(gardenOf(salads)).toBed(idOf(salads))).toEqual({ fromGate: null, fromDoor: null });
    const home = house("house", { x: -4000, y: -4000, w: 8000, h: 4000 });
    const blocked = gardenOf(
      home,
      door("door", { at: [0, 0] }),
      shed("shed", { x: -900, y: 0, w: 1800, h: 1500 }),
      salads,
    );
    expect(waysOf(blocked).toBed(idOf(salads)).fromDoor?.width).toBe(0);
  });

  it("holds in yards of any kind: a notch, a bed outside, a yard smaller than a person, beds that coincide", () => {
    const small = gardenWith(
      {
        yard: [
          [0, 0],
          [300, 0],
          [300, 250],
          [0, 250],
        ],
      },
      gate("gate", { at: [150, 0] }),
      bed("one", { x: 2000, y: 0 }),
    );
    expect(waysOf(small).toBed(small.items[1]!.id).fromGate?.width).toBe(0);
    const twice = gardenOf(outside, bed("one"), bed("two"));
    expect(waysOf(twice).toBed(twice.items[1]!.id).fromGate).not.toBeNull();
    expect(waysOf(twice).toBed(twice.items[2]!.id).fromGate).not.toBeNull();
  });
});

describe("entrances", () => {
  const start = (garden: Garden) => entrancesOf(garden)[0]?.starts.map(({ at }) => at.map(Math.round));
  it("begin half a pace inside the yard for a gate in its fence", () => {
    const garden = gardenWith(
      {
        yard: [
          [0, 0],
          [6000, 0],
          [6000, 5000],
          [0, 5000],
        ],
      },
      gate("gate", { at: [3000, 5000], width: 1000 }),
      fence("fence", { from: [0, 5000], to: [6000, 5000], thickness: 80 }),
    );
    expect(start(garden)).toEqual([[3000, 5000 - 40 - 150]]);
  });
  it("begin before the house wall for a door, on whichever side is free", () => {
    const home = house("house", { x: -4000, y: -4000, w: 8000, h: 4000 });
    expect(start(gardenOf(home, door("door", { at: [500, -60] })))).toEqual([[500, 150]]);
    expect(start(gardenOf(home, door("door", { at: [500, 0], turn: 180 })))).toEqual([[500, 150]]);
  });
  it("are none for an opening far from any free ground", () => {
    const home = house("house", { x: -8000, y: -8000, w: 16_000, h: 16_000 });
    expect(start(gardenOf(home, door("door", { at: [0, 0] })))).toEqual([]);
  });
});

/** Wider than this nothing narrows a way that any rule asks about, mm. */
const SIGHT = 1600;

describe("against halving the span with eroded ground", () => {
  const scenes = [
    ...[1, 2, 3, 4, 5, 6].map((seed) => ["dense", seed, denseScene(8, seed)] as const),
    ...[1, 2, 3].map((seed) => ["rows", seed, rowsScene(7, seed)] as const),
    ...[1, 2, 3, 4, 5, 6, 7, 8].map((seed) => ["tangled", seed, tangledScene(6, seed)] as const),
  ];

  it.each(scenes)("widths agree within 1 mm: %s %i", (_name, _seed, garden) => {
    const ways = waysOf(garden);
    for (const item of bedsOf(garden)) {
      const found = ways.toBed(item.id);
      for (const [kind, way] of [
        ["gate", found.fromGate],
        ["door", found.fromDoor],
      ] as const) {
        const starts = ways.entrances
          .filter((entrance) => entrance.kind === kind)
          .flatMap((entrance) => entrance.starts);
        const reference = widestByErosion(
          garden,
          starts.map(({ at }) => at),
          item,
          SIGHT,
        );
        const expected = reference < NARROWEST_WAY ? 0 : reference;
        expect(
          Math.abs(Math.min(SIGHT, way?.width ?? -1) - expected),
          `${item.id} from the ${kind}`,
        ).toBeLessThan(1);
      }
    }
  });

  it.each(scenes.filter((_, i) => i % 2 === 0))(
    "standing places that can be got to agree: %s %i",
    (_name, _seed, garden) => {
      const ways = waysOf(garden);
      const width = 500;
      const canGetTo = ways.reachableAt(width + 0.5);
      const ground = eroded(garden, width - 0.3);
      const starts = ways.entrances.flatMap((entrance) => entrance.starts.map(({ at }) => at));
      for (const item of bedsOf(garden)) {
        for (const { body } of standingPieces(item, garden, width + 0.5)) {
          const here = bed("here", { shape: { type: "rectangle", width: 2, length: 2 }, at: body });
          const expected = starts.some((start) => joinsBody(ground, start, here));
          expect(canGetTo(body), `${item.id} at ${body.map(Math.round)}`).toBe(expected);
        }
      }
    },
  );
});

/** The body itself is a disc that must lie in the piece of ground the start touches. */
const joinsBody = (ground: ReturnType<typeof eroded>, start: Point, body: ItemOf<"bed">): boolean =>
  joins(
    {
      ...ground,
      regions: ground.regions.filter((region) => joins({ half: 0, regions: [region] }, body.at, body)),
    },
    start,
    body,
  );
