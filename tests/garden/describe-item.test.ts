import { expect, it } from "vitest";
import { describeItem, type Item } from "../../src/index.ts";
import { bed, door, fence, gate, path, tap, tree } from "../helpers/garden-of.ts";

const FOOT = 304.8;

it.each<[Item, string]>([
  [bed("bed-1", { name: "Salads", w: 4 * FOOT, h: 8 * FOOT }), "Bed Salads, 4 ft by 8 ft"],
  [bed("bed-1", { w: 4 * FOOT, h: 6.5 * FOOT }), "Bed, 4 ft by 6 ft 6 in"],
  [
    bed("bed-1", { name: "Herbs", shape: { type: "oval", width: 3.5 * FOOT, length: 3.5 * FOOT } }),
    "Round bed Herbs, 3 ft 6 in across",
  ],
  [
    bed("bed-1", {
      shape: {
        type: "polygon",
        points: [
          [0, 0],
          [5 * FOOT, 0],
          [2 * FOOT, 3 * FOOT],
        ],
      },
    }),
    "3-sided bed, 5 ft by 3 ft",
  ],
  [path("path-1", { from: [0, 0], to: [0, 10 * FOOT], width: 3 * FOOT }), "Path, 3 ft wide, 10 ft long"],
  [
    fence("fence-1", { from: [0, 0], to: [3 * FOOT, 4 * FOOT], height: 6 * FOOT }),
    "Fence, 5 ft long, 6 ft high",
  ],
  [
    tree("tree-1", { name: "Plum", canopy: 6 * FOOT, height: 11 * FOOT }),
    "Tree Plum, crown 6 ft across, 11 ft high",
  ],
  [gate("gate-1", { width: 3.5 * FOOT }), "Gate, 3 ft 6 in wide"],
  [door("door-1", { width: 3 * FOOT, kitchen: true }), "Door, 3 ft wide, to the kitchen"],
  [tap("tap-1", { name: "By the steps" }), "Tap By the steps"],
  [tap("tap-1", { name: "tap" }), "Tap"],
])("describes a thing in words: %#", (item, words) => {
  expect(describeItem(item, "us")).toBe(words);
});

it("gives sizes in metres where the garden does", () => {
  expect(describeItem(bed("bed-1", { name: "Salads", w: 900, h: 2400 }), "metric")).toBe(
    "Bed Salads, 90 cm by 2.40 m",
  );
});
