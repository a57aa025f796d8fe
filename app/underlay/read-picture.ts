import { language, say } from "../../src/index.ts";
import { pictureHeader } from "./picture-header.ts";

/** Why a file cannot lie beneath the plan. `message` is a sentence for whoever chose it. */
export class PictureFileError extends Error {
  override readonly name = "PictureFileError";
}

/** A picture as it is kept: made anew, so that it is as small as need be and says nothing of where it was taken. */
export interface ReadPicture {
  /** SHA-256 of its bytes, as 64 hexadecimal digits. */
  readonly picture: string;
  readonly pixels: readonly [width: number, height: number];
  readonly blob: Blob;
}

/** Bytes of a file that is read at all. */
const LARGEST_FILE = 60_000_000;
/** Pixels that a browser of a phone decodes: the largest of today's cameras. */
const MOST_DECODED = 110_000_000;
/** Pixels that are kept: a site plan on A3 at 180 dots to the inch. */
const MOST_KEPT = 4_000_000;
const LONGEST_SIDE = 8192;
/** Bytes that are kept: what a garden file has room for. */
export const LARGEST_KEPT = 3_000_000;
const QUALITIES = [0.86, 0.74, 0.6] as const;

/**
 * Reads a photo or scan, scaled down to what lies well beneath a plan.
 * @throws PictureFileError for what is no PNG, JPEG or WebP, is broken, or too large to be read
 */
export async function readPicture(file: Blob): Promise<ReadPicture> {
  if (file.size > LARGEST_FILE)
    throw new PictureFileError(say`This picture is over 60 MB. Save a smaller copy of it first.`);
  const header = pictureHeader(new Uint8Array(await file.arrayBuffer()));
  if (!header) {
    throw new PictureFileError(
      say`This file is not a picture that can be read here. Choose a PNG, JPEG or WebP; from a PDF, save the page as a picture first.`,
    );
  }
  if (header.width * header.height > MOST_DECODED) {
    throw new PictureFileError(
      say`This picture has ${header.width.toLocaleString(language())} by ${header.height.toLocaleString(language())} pixels, more than this browser can draw. Save a smaller copy of it first.`,
    );
  }
  const bitmap = await decoded(file);
  try {
    return await made(bitmap);
  } finally {
    bitmap.close();
  }
}

async function decoded(file: Blob): Promise<ImageBitmap> {
  try {
    return await createImageBitmap(file);
  } catch (cause) {
    throw new PictureFileError(say`This picture is broken: the browser could not read it to its end.`, {
      cause,
    });
  }
}

/** Redrawn at a size and a quality that are small enough: first less exact, then smaller. */
async function made(bitmap: ImageBitmap): Promise<ReadPicture> {
  const area = bitmap.width * bitmap.height;
  let scale = Math.min(1, Math.sqrt(MOST_KEPT / area), LONGEST_SIDE / Math.max(bitmap.width, bitmap.height));
  for (let tries = 0; tries < 6; tries++, scale *= 0.7) {
    const pixels = [side(bitmap.width * scale), side(bitmap.height * scale)] as const;
    const canvas = redrawn(bitmap, pixels);
    for (const quality of QUALITIES) {
      const blob = await encoded(canvas, quality);
      if (blob.size <= LARGEST_KEPT) return { picture: await fingerprint(blob), pixels, blob };
    }
  }
  throw new PictureFileError(say`This picture could not be made small enough to be kept.`);
}

const side = (pixels: number): number => Math.max(1, Math.round(pixels));

function redrawn(bitmap: ImageBitmap, [width, height]: readonly [number, number]): HTMLCanvasElement {
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext("2d");
  if (!context) throw new PictureFileError(say`This browser could not draw the picture.`);
  // What can be seen through lies on white, as on paper.
  context.fillStyle = "#fff";
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, 0, 0, width, height);
  return canvas;
}

/** As WebP; as JPEG where the browser makes no WebP, and hands out PNG instead. */
async function encoded(canvas: HTMLCanvasElement, quality: number): Promise<Blob> {
  for (const type of ["image/webp", "image/jpeg"]) {
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, type, quality));
    if (blob?.type === type) return blob;
  }
  throw new PictureFileError(say`This browser could not draw the picture.`);
}

/** SHA-256, as 64 hexadecimal digits. */
export async function fingerprint(blob: Blob): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", await blob.arrayBuffer());
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
