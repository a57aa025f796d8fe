import { expect, it } from "vitest";
import { CROPS, cropById } from "../../src/crops/crop-table.ts";
import { cropWord } from "../../src/crops/crop-word.ts";

const word = (id: string) => {
  const crop = cropById(id);
  return crop && cropWord(crop);
};

it("calls crops by what they are called in a sentence", () => {
  expect(
    ["tomato", "pepper", "lettuce-leaf", "squash-summer", "chard", "brussels-sprouts"].map(word),
  ).toEqual(["tomato", "pepper", "leaf lettuce", "summer squash", "Swiss chard", "Brussels sprouts"]);
});

it("has a plain word of its own for every row of the table", () => {
  const words = CROPS.map(cropWord);
  expect(words.filter((each) => /[(),/]/.test(each))).toEqual([]);
  expect(new Set(words).size).toBe(CROPS.length);
});
