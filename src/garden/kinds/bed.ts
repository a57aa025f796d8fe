import * as v from "valibot";
import { say, word } from "../../words/say.ts";
import { between, count, size, sizeOrNone, stageField, standing, text } from "../fields.ts";
import { cropsField, plantingsField } from "../plantings.ts";
import type { DeepReadonly } from "../readonly.ts";
import { shapeField } from "../shape-field.ts";
import { boardSize } from "../timber-sizes.ts";
import { winterField } from "../upkeep-field.ts";
import { bedWateringField } from "../watering.ts";

const parts = between(0, 1000, word("must be within 0 and 1000"));

export const isBoard = (name: string): boolean => boardSize(name) !== null;
export const boardField = v.pipe(
  text,
  v.check(
    isBoard,
    () =>
      say`is not a board of the timber table, such as 2x6 or 47x150, nor one by its sizes, such as 32x175mm`,
  ),
);

/** The frame round the soil. Heights of board walls follow from dressed sizes, so they are not stored. */
export const wallField = v.variant(
  "made",
  [
    v.strictObject({
      made: v.literal("boards"),
      /** A row of the timber table by its trade name, such as "2x6" or "38x150", or any board by its sizes, "32x175mm". */
      board: boardField,
      /** A row of the timber species table, such as "douglas-fir". */
      timber: text,
      courses: count(12),
      corner: v.picklist(["ends-between-sides", "ends-over-sides"]),
      /** What keeps long or tall sides from bowing: nothing, stakes along the sides, or stakes and ties across. */
      bracing: v.picklist(["none", "stakes", "stakes-and-ties"]),
      /** A post in each corner, inside, that the boards are screwed to; without, they are screwed into one another's ends. */
      cornerPosts: v.boolean(() => say`must be true or false`),
      /** A board laid flat along the top, mitred at the corners; null for none. */
      capRail: v.nullable(boardField),
    }),
    v.strictObject({ made: v.literal("metal"), height: size, thickness: size }),
    v.strictObject({ made: v.literal("fabric"), height: size }),
    v.strictObject({
      made: v.literal("masonry"),
      unitLength: size,
      unitHeight: size,
      thickness: size,
      courses: count(12),
    }),
    v.strictObject({ made: v.literal("mound"), height: size }),
  ],
  () => say`must be boards, metal, fabric, masonry or mound`,
);

export const bottomField = v.strictObject({
  /** Wire mesh under the bed against burrowing animals: its size, wire centre to wire centre, mm. */
  mesh: v.nullable(v.strictObject({ opening: size })),
  /** Fabric lets water through; a sheet does not and needs drain gaps. */
  liner: v.nullable(v.picklist(["fabric", "sheet"])),
});

export const fillField = v.strictObject({
  /** All mix; woody stuff below and mix on top; or the yard's own soil alone. */
  way: v.picklist(["mix", "layered", "native"]),
  /** Mix on top of a layered fill, mm. Unused otherwise. */
  mixDepth: size,
  /** How far the soil stops below the rim, mm. */
  belowRim: sizeOrNone,
  /** Parts of the mix by volume, such as 1 of compost to 2 of topsoil. Soilless mix is sold ready, light, without soil in it. */
  recipe: v.pipe(
    v.strictObject({ compost: parts, topsoil: parts, soilless: parts }),
    v.check(
      ({ compost, topsoil, soilless }) => compost + topsoil + soilless > 0,
      () => say`must have a part of something`,
    ),
  ),
  /** A pot test (bioassay) of the compost, manure, straw or hay has come out clean. */
  tested: v.boolean(() => say`must be true or false`),
});

export const mulchField = v.nullable(
  v.strictObject({
    material: v.picklist(["straw", "leaves", "wood-chips", "bark", "grass-clippings", "compost"]),
    depth: size,
  }),
);

export const bedSchema = v.strictObject({
  kind: v.literal("bed"),
  ...standing,
  /** Outside of the frame. */
  shape: shapeField,
  wall: wallField,
  bottom: bottomField,
  fill: fillField,
  mulch: mulchField,
  /** What grows in it over the year, one after another or side by side. */
  plantings: plantingsField,
  /** What grew in it last year. */
  lastYear: cropsField,
  watering: bedWateringField,
  winter: winterField,
  /** Height above the soil of the trellis that stands in the bed, mm; null for none. */
  trellis: v.nullable(size),
  /** A table bed stands on legs: height of the underside of its soil box, mm; null for a bed on the ground. */
  legs: v.nullable(size),
  /** What of it stands in the yard already; null for a bed that is yet to be built. */
  already: v.nullable(
    v.strictObject({
      /** Courses of its boards or blocks that stand; 1 for any other wall. */
      courses: count(12),
      /** Depth of soil that is in it, mm. */
      soilDepth: sizeOrNone,
    }),
  ),
  stage: stageField,
});

export type Bed = DeepReadonly<v.InferOutput<typeof bedSchema>>;
export type BedWall = Bed["wall"];
