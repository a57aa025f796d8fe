import { language, type PlanPicture, say } from "../../src/index.ts";
import { pageLettering } from "./page-lettering.ts";
import { withDensity } from "./png-density.ts";

/** Dots to the inch that are offered: for a screen, for a household's printer, for a print shop. */
export const RESOLUTIONS = [96, 150, 300] as const;
export type Resolution = (typeof RESOLUTIONS)[number];

/** Dots. Some browsers draw no canvas above 16,777,216. */
const MOST_DOTS = 16_000_000;

/** A picture that could not be made. `message` is a sentence for whoever wanted it. */
export class PictureError extends Error {
  override readonly name = "PictureError";
}

/** How many dots a picture has at so many to the inch. */
export const dotsOf = ({ widthMm, heightMm }: Size, resolution: Resolution): readonly [number, number] => [
  Math.round((widthMm / 25.4) * resolution),
  Math.round((heightMm / 25.4) * resolution),
];

type Size = Pick<PlanPicture, "widthMm" | "heightMm">;

/** @throws PictureError where that is more than browsers draw */
export function checkedDots(size: Size, resolution: Resolution): readonly [number, number] {
  const [width, height] = dotsOf(size, resolution);
  if (width * height > MOST_DOTS) {
    throw new PictureError(
      say`At ${resolution} dots to the inch this plan would be ${count(width)} by ${count(height)} dots, more than every browser can draw. Choose fewer dots, or save it as SVG.`,
    );
  }
  return [width, height];
}

const count = (dots: number): string => dots.toLocaleString(language());

/**
 * The picture in dots.
 * @throws PictureError where it is too large, or the browser cannot draw it
 */
export async function pngOf(picture: PlanPicture, resolution: Resolution): Promise<Blob> {
  const [width, height] = checkedDots(picture, resolution);
  const svg = inDots(picture, width, height, await pageLettering());
  const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  try {
    const image = new Image(width, height);
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = width;
    canvas.height = height;
    const context = canvas.getContext("2d");
    if (!context) throw failed();
    context.drawImage(image, 0, 0, width, height);
    const png = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/png"));
    if (!png) throw failed();
    const bytes = withDensity(new Uint8Array(await png.arrayBuffer()), resolution);
    return new Blob([bytes], { type: "image/png" });
  } catch (cause) {
    throw cause instanceof PictureError ? cause : failed({ cause });
  } finally {
    URL.revokeObjectURL(address);
  }
}

const failed = (options?: ErrorOptions) =>
  new PictureError(
    say`This browser could not draw the picture. Choose fewer dots, or save it as SVG.`,
    options,
  );

/** The same drawing sized in dots, for a browser draws it no finer than it is large, and with its letters in it. */
function inDots(
  { svg, widthMm, heightMm }: PlanPicture,
  width: number,
  height: number,
  style: string,
): string {
  return svg
    .replace(`width="${widthMm}mm" height="${heightMm}mm"`, `width="${width}" height="${height}"`)
    .replace("<defs>", () => `<defs><style>${style}</style>`);
}
