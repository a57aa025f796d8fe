import { describe, expect, it } from "vitest";
import { openingZone } from "../../src/access/clear-zones.ts";
import { placeOf } from "../../src/access/place.ts";
import { shiftIntoPlace } from "../../src/access/shift-into-place.ts";
import { signedArea } from "../../src/geometry/ring.ts";
import { applyOps, type Garden, itemId, type Ring } from "../../src/index.ts";
import {
  bed,
  door,
  fence,
  gardenOf,
  gardenWith,
  gate,
  house,
  keepClear,
  path,
  shed,
  tap,
  tree,
  wall,
} from "../helpers/garden-of.ts";

const id = itemId("salads");
const salads = bed("salads", { w: 1200, h: 2500 });
const conflicts = (garden: Garden) =>
  placeOf(garden).conflicts.map(({ of, with: other, what, depth }) => [of, other, what, Math.round(depth)]);

describe("placeOf", () => {
  it("finds a bed in each kind of thing it may not stand in", () => {
    expect(
      conflicts(
        gardenOf(
          salads,
          house("house", { x: 1150, y: 0, w: 4000, h: 3000 }),
          fence("fence", { from: [-500, 20], to: [1000, 20], thickness: 100 }),
          wall("wall", { from: [60, 1000], to: [60, 2000], thickness: 200 }),
          tree("tree", { at: [600, 2600], trunk: 300 }),
          keepClear("manhole", { x: -500, y: 2200, w: 530, h: 900 }),
          path("way", { from: [0, 2900], to: [4000, 2900], width: 880 }),
        ),
      ),
    ).toEqual([
      ["salads", "house", "thing", 50],
      ["salads", "fence", "thing", 70],
      ["salads", "wall", "thing", 160],
      ["salads", "tree", "thing", 50],
      ["salads", "manhole", "keep-clear", 30],
      ["salads", "way", "path", 40],
    ]);
  });

  it("tells two beds that overlap once", () => {
    expect(conflicts(gardenOf(salads, bed("squash", { x: 1130, y: 900, w: 900, h: 700 })))).toEqual([
      ["salads", "squash", "thing", 70],
    ]);
  });

  it("lets things touch, and overlap by less than half a millimetre", () => {
    expect(
      conflicts(gardenOf(salads, bed("squash", { x: 1200 }), house("house", { x: -8000, h: 3000 }))),
    ).toEqual([]);
    expect(conflicts(gardenOf(salads, bed("squash", { x: 1199.6 })))).toEqual([]);
    expect(conflicts(gardenOf(salads, bed("squash", { x: 1199.4 })))).toHaveLength(1);
  });

  it("keeps the ground before doors and gates clear, but for the shed that the door is in", () => {
    const before = door("back-door", { at: [600, -700], width: 800, swing: "in" });
    expect(conflicts(gardenOf(salads, before))).toEqual([["salads", "back-door", "opening", 214]]);
    const store = shed("store", { x: -300, y: -2500, w: 1800, h: 1810 });
    expect(conflicts(gardenOf(store, before))).toEqual([]);
    // A gate is walked through from both sides, whichever way round it is drawn.
    const yardGate = gate("gate", { at: [600, -700], width: 800, swing: "sliding", turn: 180 });
    expect(conflicts(gardenOf(salads, yardGate))).toEqual([["salads", "gate", "opening", 214]]);
  });

  it("finds a bed that sticks out of the yard by the shift that brings it in, at a notch too", () => {
    const beyond = (yard: Ring) =>
      placeOf(gardenWith({ yard }, salads)).outside.map((outside) => Math.round(outside.beyond));
    expect(
      beyond([
        [-50, -50],
        [5000, -50],
        [5000, 5000],
        [-50, 5000],
      ]),
    ).toEqual([]);
    expect(
      beyond([
        [80, -50],
        [5000, -50],
        [5000, 5000],
        [80, 5000],
      ]),
    ).toEqual([80]);
    // A neighbour's strip, 100 wide, runs 90 deep into the side of the bed: no corner of the bed is out.
    expect(
      beyond([
        [-900, -900],
        [5000, -900],
        [5000, 5000],
        [-900, 5000],
        [-900, 1300],
        [90, 1300],
        [90, 1200],
        [-900, 1200],
      ]),
    ).toEqual([90]);
    // A yard too small for the bed: its farthest corner is told.
    expect(
      beyond([
        [0, 0],
        [1000, 0],
        [1000, 2500],
        [0, 2500],
      ]),
    ).toEqual([200]);
  });
});

describe("openingZone", () => {
  const areaM2 = (rings: readonly Ring[]) => rings.reduce((sum, ring) => sum + signedArea(ring), 0) / 1e6;

  it("is a rectangle before a sliding door, and a leaf that is wider than that adds its swing", () => {
    const plain = door("door", { width: 800, swing: "sliding" });
    expect(areaM2(openingZone(plain, 900))).toBeCloseTo(0.72, 9);
    for (const hinge of ["left", "right"] as const) {
      const zone = openingZone(door("door", { width: 1200, swing: "out", hinge }), 600);
      // Quarter of a round of 1200 above the rectangle: π/4·1.2² less what lies in the rectangle's own 600, that is
      // r²/2·(π/2 - (1/2·√3/2 + π/6)).
      const above = 0.72 * (Math.PI / 2 - (Math.sqrt(3) / 4 + Math.PI / 6));
      expect(areaM2(zone)).toBeCloseTo(1.2 * 0.6 + above, 2);
    }
  });

  it("turns with its gate and lies to both sides", () => {
    const [zone] = openingZone(
      gate("gate", { at: [500, 300], turn: 90, width: 1000, swing: "sliding" }),
      700,
    );
    const xs = (zone ?? []).map(([x]) => x);
    const ys = (zone ?? []).map(([, y]) => y);
    expect([Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]).toEqual([
      -200, 1200, -200, 800,
    ]);
  });
});

describe("shiftIntoPlace", () => {
  const far = { most: 3000 };

  it("is no shift for a bed in its place", () => {
    expect(shiftIntoPlace(gardenOf(salads), id, far)).toEqual([0, 0]);
  });

  it("is the smallest that clears everything, and it does clear", () => {
    const garden = gardenOf(
      salads,
      house("house", { x: 1150, y: 0, w: 4000, h: 3000 }),
      tap("tap", { at: [-300, 1200] }),
    );
    const by = shiftIntoPlace(garden, id, far);
    // The tap keeps 18 in clear to the left: the bed goes up or down past it, or left beyond it. 50 left is not free.
    expect(by).not.toBeNull();
    const cleared = applyOps(garden, [{ op: "move", id, by: by! }]);
    expect(placeOf(cleared).conflicts).toEqual([]);
    expect(Math.hypot(...by!)).toBeGreaterThan(500);
  });

  it("leaves room where it is asked to", () => {
    const garden = gardenOf(salads, bed("squash", { x: 1130, y: -3000, w: 900, h: 9000 }));
    expect(shiftIntoPlace(garden, id, far)?.map(Math.round)).toEqual([-70, 0]);
    expect(shiftIntoPlace(garden, id, { ...far, room: 610 })?.map(Math.round)).toEqual([-680, 0]);
  });

  it("is null where the yard has no room, or none within reach", () => {
    const yard: Ring = [
      [0, 0],
      [1900, 0],
      [1900, 2500],
      [0, 2500],
    ];
    const crowded = gardenWith({ yard }, salads, bed("squash", { x: 1000, w: 900, h: 2500 }));
    expect(shiftIntoPlace(crowded, id, far)).toBeNull();
    const deep = gardenOf(salads, house("house", { x: -4000, y: -4000, w: 9000, h: 9000 }));
    expect(shiftIntoPlace(deep, id, { most: 1000 })).toBeNull();
  });

  it("is null for what is neither bed nor shed", () => {
    expect(shiftIntoPlace(gardenOf(tree("tree")), itemId("tree"), far)).toBeNull();
  });
});
