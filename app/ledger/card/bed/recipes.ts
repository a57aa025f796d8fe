import { type ItemOf, type Source, word } from "../../../../src/index.ts";

export type Recipe = ItemOf<"bed">["fill"]["recipe"];

/** A mix that a published text gives, by parts of volume. */
export interface PublishedRecipe extends Recipe {
  readonly id: string;
  readonly label: string;
  readonly source: Source;
}

const published = (text: string): Source => ({ how: "published", text });

const MARYLAND = published(
  "University of Maryland Extension, Filling raised beds; 25 to 50 % organic matter by volume",
);
const WASHINGTON = published(
  "Washington State University Extension, Soil for Raised Beds (2014): at most 10 % compost with soil",
);

/** They disagree about compost, and the gardener decides. */
export const RECIPES: readonly PublishedRecipe[] = [
  { id: "1:2", label: word("1 compost : 2 topsoil"), compost: 1, topsoil: 2, soilless: 0, source: MARYLAND },
  { id: "1:1", label: word("1 compost : 1 topsoil"), compost: 1, topsoil: 1, soilless: 0, source: MARYLAND },
  {
    id: "1:0:1",
    label: word("1 compost : 1 soilless mix"),
    compost: 1,
    topsoil: 0,
    soilless: 1,
    source: MARYLAND,
  },
  {
    id: "1:9",
    label: word("1 compost : 9 topsoil"),
    compost: 1,
    topsoil: 9,
    soilless: 0,
    source: WASHINGTON,
  },
];

/** The published recipe of the same shares, or null: 2 to 4 is 1 to 2. */
export const publishedAs = (recipe: Recipe): PublishedRecipe | null =>
  RECIPES.find((one) => PARTS.every((part) => Math.abs(shareOf(one, part) - shareOf(recipe, part)) < 1e-6)) ??
  null;

export const PARTS = ["compost", "topsoil", "soilless"] as const;

/** Share of the whole, 0 to 1. */
export const shareOf = (recipe: Recipe, part: keyof Recipe): number =>
  recipe[part] / (recipe.compost + recipe.topsoil + recipe.soilless);
