import * as v from "valibot";
import type { Shape } from "../geometry/shape.ts";
import { say } from "../words/say.ts";
import { points, size } from "./fields.ts";

const l = v.pipe(
  v.strictObject({ type: v.literal("l"), width: size, length: size, armWidth: size, armLength: size }),
  v.check(
    (s) => s.armWidth < s.width && s.armLength < s.length,
    () => say`an L's arms must be thinner than its sides`,
  ),
);
const u = v.pipe(
  v.strictObject({ type: v.literal("u"), width: size, length: size, bayWidth: size, bayLength: size }),
  v.check(
    (s) => s.bayWidth < s.width && s.bayLength < s.length,
    () => say`a U's bay must be smaller than its sides`,
  ),
);
const keyhole = v.pipe(
  v.strictObject({ type: v.literal("keyhole"), diameter: size, slotWidth: size, middleDiameter: size }),
  v.check(
    (s) => s.slotWidth <= s.middleDiameter && s.middleDiameter < s.diameter,
    () => say`a keyhole's way in must be no wider than its middle, and the middle smaller than the bed`,
  ),
);

/** Every outline a thing may have; see `geometry/shape.ts` for what the sizes mean. */
export const shapeField = v.variant(
  "type",
  [
    v.strictObject({ type: v.literal("rectangle"), width: size, length: size }),
    l,
    u,
    v.strictObject({ type: v.literal("oval"), width: size, length: size }),
    keyhole,
    v.strictObject({ type: v.literal("polygon"), points: points(3) }),
  ],
  () => say`must be a rectangle, l, u, oval, keyhole or polygon`,
);

// The schema and the geometry must speak of the same shapes: this line stops compiling when they part.
export const asShape = (shape: v.InferOutput<typeof shapeField>): Shape => shape;
