import { describe, expect, it } from "vitest";
import { emptyGarden, itemId, knownPoints, newItem, ownPoints } from "../../src/index.ts";

const place = (id: string, x: number, y: number) =>
  ({ id: itemId(id), at: [x, y], units: "metric" }) as const;
const house = newItem("house", place("house", 6000, 2000));
const round = newItem("bed-round", place("pond", 3000, 7000));
const fence = newItem("fence", place("fence", 6000, 8900));
const tap = { ...newItem("tap", place("tap", 2000, 4100)), name: "Back tap" };
const garden = {
  ...emptyGarden("metric"),
  items: [house, round, fence, tap, newItem("path", place("way", 0, 0))],
};

describe("points to measure from", () => {
  const labels = knownPoints(garden, round.id).map(({ label }) => label);

  it("are corners of the yard and of buildings, ends of fences, and taps", () => {
    expect(labels).toEqual([
      "Yard, corner 1, top left",
      "Yard, corner 2, top right",
      "Yard, corner 3, bottom right",
      "Yard, corner 4, bottom left",
      "House, corner 1, top left",
      "House, corner 2, top right",
      "House, corner 3, bottom right",
      "House, corner 4, bottom left",
      "Fence, start",
      "Fence, end",
      "Back tap",
    ]);
  });

  it("lie where the thing has been put and turned", () => {
    const turned = knownPoints({ ...garden, items: [{ ...house, turn: 90 }] }, round.id);
    // 8 m by 4 m, on its end: the corner that was top left is now top right.
    const corner = turned.find(({ key }) => key === "house corner 1");
    expect(corner?.at).toEqual([8000, -2000]);
  });

  it("are never those of the thing that is measured", () => {
    expect(knownPoints(garden, house.id).some(({ key }) => key.startsWith("house"))).toBe(false);
  });
});

describe("points to measure up to", () => {
  it("are the middle, and corners where there are few enough to tell apart", () => {
    expect(ownPoints(house).map(({ key }) => key)).toEqual([
      "house middle",
      "house corner 1",
      "house corner 2",
      "house corner 3",
      "house corner 4",
    ]);
    expect(ownPoints(round).map(({ key }) => key)).toEqual(["pond middle"]);
    expect(ownPoints(fence)).toHaveLength(2);
    expect(ownPoints(tap)).toEqual([{ key: "tap middle", label: "Back tap, middle", at: [2000, 4100] }]);
  });
});
