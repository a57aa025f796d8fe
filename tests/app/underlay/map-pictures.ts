import type { KeptPicture, PictureShelf } from "../../../app/underlay/picture-shelf.ts";

export interface MapPictures extends PictureShelf {
  readonly kept: Map<string, KeptPicture>;
  /** What any asking meets with; null where all goes well. */
  trouble: DOMException | null;
}

/** A shelf of pictures that does what the browser's own does. */
export function createMapPictures(): MapPictures {
  const kept = new Map<string, KeptPicture>();
  const shelf: MapPictures = {
    kept,
    trouble: null,
    get: async (picture) => asked(() => kept.get(picture)),
    put: async (one) => asked(() => kept.set(one.picture, one)),
    list: async () => asked(() => [...kept.values()].map(({ picture, at }) => ({ picture, at }))),
    remove: async (picture) => asked(() => kept.delete(picture)),
  };
  const asked = <T>(doing: () => T): T => {
    if (shelf.trouble) throw shelf.trouble;
    return doing();
  };
  return shelf;
}
