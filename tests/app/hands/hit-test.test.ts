import { describe, expect, it } from "vitest";
import type { Handle } from "../../../app/plan/hands/handles.ts";
import { hitTest, nearness } from "../../../app/plan/hands/hit-test.ts";
import { itemId, type Point } from "../../../src/index.ts";
import { bed, door, fence, gardenOf, ground, house, path, tap, tree } from "../../helpers/garden-of.ts";

/** 1 pixel is 10 mm. */
const PIXELS = 0.1;
const MOUSE = nearness(false, PIXELS);
const FINGER = nearness(true, PIXELS);
const on = (garden: ReturnType<typeof gardenOf>, at: Point, near = MOUSE) => {
  const hit = hitTest(garden, [], [], at, near);
  return hit.on === "item" ? hit.id : hit.on;
};

describe("what a press means", () => {
  it("takes the foremost of two beds that overlap", () => {
    const garden = gardenOf(bed("under", { w: 1200, h: 2500 }), bed("over", { x: 600, w: 900, h: 1700 }));
    expect(on(garden, [900, 400])).toBe("over");
    expect(on(garden, [300, 400])).toBe("under");
  });

  it("takes a bed rather than the ground or the path it stands on, whichever was drawn last", () => {
    const garden = gardenOf(
      bed("bed", { w: 1200, h: 2500 }),
      ground("patio", { x: -500, y: -500, w: 4000, h: 4000 }),
      path("way", { from: [-900, 700], to: [4000, 700] }),
    );
    expect(on(garden, [600, 700])).toBe("bed");
    expect(on(garden, [2500, 700])).toBe("way");
    expect(on(garden, [2500, 3000])).toBe("patio");
  });

  it("takes a door in the wall of a house rather than the house", () => {
    const garden = gardenOf(
      house("house", { w: 8000, h: 4000 }),
      door("door", { at: [2000, 4000], width: 900 }),
    );
    expect(on(garden, [2300, 3960])).toBe("door");
    expect(on(garden, [4000, 3960])).toBe("house");
  });

  it("takes a tree by its trunk or its rim, and the bed under its crown anywhere else", () => {
    const garden = gardenOf(
      bed("bed", { x: 500, y: -800, w: 900, h: 1700 }),
      tree("plum", { at: [0, 0], trunk: 200, canopy: 6000 }),
    );
    expect(on(garden, [40, 60])).toBe("plum");
    expect(on(garden, [900, 100])).toBe("bed");
    expect(on(garden, [-1500, 0])).toBe("nothing");
    expect(on(garden, [-3000, 0])).toBe("plum");
  });

  it("forgives a finger more than a mouse", () => {
    const garden = gardenOf(
      tap("tap", { at: [0, 0] }),
      fence("fence", { from: [4000, 0], to: [4000, 3000] }),
    );
    expect(on(garden, [180, 0])).toBe("nothing");
    expect(on(garden, [180, 0], FINGER)).toBe("tap");
    expect(on(garden, [4110, 1500])).toBe("nothing");
    expect(on(garden, [4110, 1500], FINGER)).toBe("fence");
  });

  it("takes an L bed by its soil, not by the corner it leaves free", () => {
    const shape = { type: "l", width: 2400, length: 1900, armWidth: 700, armLength: 600 } as const;
    const garden = gardenOf(bed("l", { at: [0, 0], shape }));
    expect(on(garden, [-900, 700])).toBe("l");
    expect(on(garden, [800, 700])).toBe("nothing");
  });

  it("takes the yard's line, with the corner it starts from", () => {
    const hit = hitTest(gardenOf(), [], [], [20_020, 300], MOUSE);
    expect(hit).toEqual({ on: "yard-line", index: 1 });
  });

  it("takes a handle before a snag's mark, and a mark before the thing under it", () => {
    const one = bed("one", { w: 1200, h: 2500 });
    const handle: Handle = { does: "turn", id: itemId("one"), at: [600, 50], stem: [600, 0] };
    const mark = { key: "narrow-path:one", at: [640, 90] as const };
    expect(hitTest(gardenOf(one), [handle], [mark], [610, 60], MOUSE)).toEqual({ on: "handle", handle });
    expect(hitTest(gardenOf(one), [], [mark], [610, 60], MOUSE)).toEqual({ on: "snag", key: mark.key });
  });
});
