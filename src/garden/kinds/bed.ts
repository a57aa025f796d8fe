import * as v from "valibot";
import { CROP_IDS, isCropId } from "../crop-ids.ts";
import { count, share, size, sizeOrNone, standing, text } from "../fields.ts";
import type { DeepReadonly } from "../readonly.ts";
import { shapeField } from "../shape-field.ts";
import { boardSize } from "../timber-sizes.ts";

export const isBoard = (name: string): boolean => boardSize(name) !== null;

/** The frame round the soil. Heights of board walls follow from dressed sizes, so they are not stored. */
export const wallField = v.variant(
  "made",
  [
    v.strictObject({
      made: v.literal("boards"),
      /** A row of the timber table by its trade name, such as "2x6" or "38x150". */
      board: v.pipe(text, v.check(isBoard, "is not a board of the timber table, such as 2x6 or 47x150")),
      /** A row of the timber species table, such as "douglas-fir". */
      timber: text,
      courses: count(12),
      corner: v.picklist(["ends-between-sides", "ends-over-sides"]),
      /** What keeps long or tall sides from bowing: nothing, stakes along the sides, or stakes and ties across. */
      bracing: v.picklist(["none", "stakes", "stakes-and-ties"]),
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
  "must be boards, metal, fabric, masonry or mound",
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
  /** Compost as a share of the mix by volume, 0 to 1; the rest is topsoil. */
  compostShare: share,
  /** A pot test (bioassay) of the compost, manure, straw or hay has come out clean. */
  tested: v.boolean("must be true or false"),
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
  /** Ids of rows of the crop table, in the order given. */
  crops: v.pipe(
    v.array(v.pipe(text, v.check(isCropId, "is not a crop of the crop table")), "must be a list of crops"),
    v.maxLength(CROP_IDS.length, `has more than ${CROP_IDS.length} crops`),
  ),
  /** Height above the soil of the trellis that stands in the bed, mm; null for none. */
  trellis: v.nullable(size),
  /** A table bed stands on legs: height of the underside of its soil box, mm; null for a bed on the ground. */
  legs: v.nullable(size),
});

export type Bed = DeepReadonly<v.InferOutput<typeof bedSchema>>;
export type BedWall = Bed["wall"];
