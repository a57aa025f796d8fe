import { createPictureDatabase } from "./picture-database.ts";
import { createPictures, type Pictures } from "./pictures.ts";

let made: Pictures | null = null;

/** The page's pictures, made when first asked for. */
export function pagePictures(): Pictures {
  made ??= createPictures(createPictureDatabase(), () => Date.now());
  return made;
}
