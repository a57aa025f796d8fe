import { type CropId, cropById } from "../../../src/index.ts";

/** Adds the sign of a plant to the current path, about a px, `r` px in radius. */
export type Sign = (ctx: CanvasRenderingContext2D, x: number, y: number, r: number) => void;

const ring: Sign = (ctx, x, y, r) => {
  ctx.moveTo(x + r, y);
  ctx.arc(x, y, r, 0, 2 * Math.PI);
};

/** Strokes through the middle, the first upright, evenly turned. */
const strokes =
  (count: number, first = 0): Sign =>
  (ctx, x, y, r) => {
    for (let i = 0; i < count; i++) {
      const angle = first + (i * Math.PI) / count;
      const [dx, dy] = [Math.sin(angle) * r, Math.cos(angle) * r];
      ctx.moveTo(x - dx, y - dy);
      ctx.lineTo(x + dx, y + dy);
    }
  };

/** An outline of so many corners, the first above the middle unless turned. */
const corners =
  (count: number, first = 0): Sign =>
  (ctx, x, y, r) => {
    for (let i = 0; i < count; i++) {
      const angle = first + (i * 2 * Math.PI) / count;
      const [px, py] = [x + Math.sin(angle) * r, y - Math.cos(angle) * r];
      if (i === 0) ctx.moveTo(px, py);
      else ctx.lineTo(px, py);
    }
    ctx.closePath();
  };

const both =
  (one: Sign, other: Sign): Sign =>
  (ctx, x, y, r) => {
    one(ctx, x, y, r);
    other(ctx, x, y, r);
  };

const inner =
  (sign: Sign, part: number): Sign =>
  (ctx, x, y, r) =>
    sign(ctx, x, y, r * part);

/** A sign for each botanical family, as a planting plan draws them: what is rotated together looks alike. */
const BY_FAMILY: Readonly<Record<string, Sign>> = {
  Solanaceae: both(ring, inner(ring, 0.3)),
  Brassicaceae: both(ring, strokes(2)),
  Fabaceae: corners(3),
  Cucurbitaceae: strokes(3),
  Apiaceae: strokes(2),
  Amaryllidaceae: strokes(2, Math.PI / 4),
  Amaranthaceae: corners(4),
  Poaceae: corners(4, Math.PI / 4),
  Lamiaceae: both(ring, strokes(1)),
  Convolvulaceae: corners(6),
  Malvaceae: corners(5),
};

/** The sign of a crop; a plain ring for families that have none of their own. */
export const signOf = (crop: CropId): Sign => BY_FAMILY[cropById(crop)?.family ?? ""] ?? ring;
