import * as v from "valibot";
import { say, word } from "../words/say.ts";
import { between, count, degrees, point, share } from "./fields.ts";
import type { DeepReadonly } from "./readonly.ts";

const MOST_PIXELS = 8192;
/** About 3 MB of picture, as text. */
const MOST_DATA = 4_200_000;

/** A photo or scan of a plan of the site that lies beneath the garden's plan. */
export const underlayField = v.strictObject({
  /** Which picture: the SHA-256 of its bytes, as 64 hexadecimal digits. */
  picture: v.pipe(
    v.string(() => say`must be text`),
    v.regex(/^[0-9a-f]{64}$/, () => say`must be the SHA-256 of a picture, 64 hexadecimal digits`),
  ),
  /** Its width and height. */
  pixels: v.pipe(v.strictTuple([count(MOST_PIXELS), count(MOST_PIXELS)]), v.readonly()),
  /** Its middle, on the plan. */
  at: point,
  turn: degrees,
  mmPerPixel: between(0.001, 1e5, word("must be within 0.001 and 100,000 mm")),
  /** 0 for unseen, 1 for full strength. */
  opacity: share,
  /** Cannot be moved by hand. */
  locked: v.boolean(() => say`must be true or false`),
  /** The picture itself, in a file that carries it along; null on the board, where it is kept beside the garden. */
  data: v.nullable(
    v.pipe(
      v.string(() => say`must be text`),
      v.maxLength(MOST_DATA, () => say`is over 3 MB`),
      v.regex(
        /^data:image\/(png|jpeg|webp);base64,[A-Za-z0-9+/]+={0,2}$/,
        () => say`must be a PNG, JPEG or WebP picture as a data URL`,
      ),
    ),
  ),
});

export type Underlay = DeepReadonly<v.InferOutput<typeof underlayField>>;
