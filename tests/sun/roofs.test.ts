import { describe, expect, it } from "vitest";
import type { ItemOf, Point, Ring } from "../../src/index.ts";
import { buildingSolids } from "../../src/sun/building-solids.ts";
import { shadowOf } from "../../src/sun/shadow.ts";
import { shed } from "../helpers/garden-of.ts";

/**
 * Shadows of sloping roofs against plane trigonometry: a point h above the ground throws its shadow h cot(altitude) from
 * under it, away from the sun. True north is up the plan, so a sun due south throws shadows up, towards smaller y.
 */
const WIDTH = 4000;
const DEPTH = 3000;
const EAVES = 2000;
const RISE = 1200;

type Changes = Partial<Omit<ItemOf<"shed">, "id" | "kind">>;
const hut = (changes: Changes) =>
  shed("hut", {
    at: [0, 0],
    shape: { type: "rectangle", width: WIDTH, length: DEPTH },
    height: EAVES,
    roof: "single-pitch",
    roofRise: RISE,
    ...changes,
  });

const shadowCorners = (changes: Changes, perHeight: Point): Ring =>
  buildingSolids(hut(changes)).flatMap((body) => shadowOf(body, perHeight, 0) ?? []);

/** How far up the plan the shadow gets, from the building's middle. */
const northward = (changes: Changes, cot: number) =>
  Math.max(...shadowCorners(changes, [0, -cot]).map(([, y]) => -y));
const eastward = (changes: Changes, cot: number) =>
  Math.max(...shadowCorners(changes, [cot, 0]).map(([x]) => x));

const COTS = [0.3, 1, 2, 5];

describe("the noon shadow of a lean-to", () => {
  it.each(COTS)(
    "that falls away from the sun reaches as far as its ridge or its eaves throw it: cot %f",
    (cot) => {
      // The high edge stands at the south wall, the eaves at the north one.
      const far = Math.max(DEPTH / 2 + EAVES * cot, -DEPTH / 2 + (EAVES + RISE) * cot);
      expect(northward({ roofFalls: "up" }, cot)).toBeCloseTo(far, 6);
    },
  );

  it.each(COTS)("that falls towards the sun has its high edge at the north wall: cot %f", (cot) => {
    expect(northward({ roofFalls: "down" }, cot)).toBeCloseTo(DEPTH / 2 + (EAVES + RISE) * cot, 6);
  });

  it.each(COTS)("that falls across the light is high along one side of its shadow alone: cot %f", (cot) => {
    // High edge at the left wall: the shadow's tip slants from there down to the eaves at the right.
    const corners = shadowCorners({ roofFalls: "right" }, [0, -cot]);
    const tipAt = (x: number) =>
      Math.max(...corners.filter(([at]) => Math.abs(at - x) < 1).map(([, y]) => -y));
    expect(tipAt(-WIDTH / 2)).toBeCloseTo(DEPTH / 2 + (EAVES + RISE) * cot, 6);
    expect(tipAt(WIDTH / 2)).toBeCloseTo(DEPTH / 2 + EAVES * cot, 6);
    const mirrored = shadowCorners({ roofFalls: "left" }, [0, -cot]);
    expect(Math.max(...mirrored.filter(([x]) => x > 0).map(([, y]) => -y))).toBeCloseTo(
      DEPTH / 2 + (EAVES + RISE) * cot,
      6,
    );
  });

  it("turns with the building: a quarter turn clockwise makes its front face left", () => {
    // What fell down the plan falls to the left: its high edge stands at the right.
    const half = DEPTH / 2;
    expect(eastward({ roofFalls: "down", turn: 90 }, 1)).toBeCloseTo(half + EAVES + RISE, 6);
    expect(eastward({ roofFalls: "up", turn: 90 }, 1)).toBeCloseTo(half + EAVES, 6);
  });
});

describe("the noon shadow of a gabled roof", () => {
  it.each(COTS)("with its ridge across the light is thrown by the ridge or by the eaves: cot %f", (cot) => {
    const far = Math.max(DEPTH / 2 + EAVES * cot, (EAVES + RISE) * cot);
    for (const roofFalls of ["up", "down"] as const) {
      expect(northward({ roof: "gabled", roofFalls }, cot)).toBeCloseTo(far, 6);
    }
  });

  it.each(COTS)("with its ridge along the light is thrown by the gable: cot %f", (cot) => {
    for (const roofFalls of ["left", "right"] as const) {
      expect(northward({ roof: "gabled", roofFalls }, cot)).toBeCloseTo(DEPTH / 2 + (EAVES + RISE) * cot, 6);
    }
  });
});

describe("a flat roof", () => {
  it.each(["up", "right", "down", "left"] as const)(
    "is level whichever way it is said to fall: %s",
    (roofFalls) => {
      expect(northward({ roof: "flat", roofFalls }, 2)).toBeCloseTo(DEPTH / 2 + 2 * EAVES, 6);
      expect(northward({ roofRise: 0, roofFalls }, 2)).toBeCloseTo(DEPTH / 2 + 2 * EAVES, 6);
    },
  );
});

describe("a lean-to of L shape", () => {
  it("has the one roof, cut to its outline: no corner of it stands off the plane", () => {
    const solids = buildingSolids(
      hut({
        shape: { type: "l", width: WIDTH, length: DEPTH, armWidth: 1500, armLength: 1200 },
        roofFalls: "left",
      }),
    );
    expect(solids.length).toBeGreaterThan(1);
    for (const { ring, tops } of solids) {
      ring.forEach(([x], i) => {
        expect(tops[i]).toBeCloseTo(EAVES + (RISE * (x + WIDTH / 2)) / WIDTH, 6);
      });
    }
  });
});
