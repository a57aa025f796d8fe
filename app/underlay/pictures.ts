import { type Garden, say, told, word } from "../../src/index.ts";
import { reasonOf } from "../keeping/reason-of.ts";
import type { Shelf } from "../keeping/shelf.ts";
import type { Editor } from "../store/editor.ts";
import { asDataUrl, blobOfDataUrl } from "./data-url.ts";
import { pictureHeader } from "./picture-header.ts";
import type { PictureShelf } from "./picture-shelf.ts";
import { fingerprint } from "./read-picture.ts";
import { sweepPictures } from "./sweep.ts";

/** A garden, and what could not be done about its picture: a sentence, or null where all went well. */
export interface WithPicture {
  readonly garden: Garden;
  readonly lacking: string | null;
}

/** The pictures beneath plans: kept beside the gardens, each once, and carried along in their files. */
export interface Pictures {
  /** Keeps a picture. Where that fails it is there until the page is closed, and a sentence says so. */
  put(picture: string, blob: Blob): Promise<string | null>;
  /** Null where it is not on this device, or cannot be got at. */
  blobOf(picture: string): Promise<Blob | null>;
  /** A garden as it goes into a file: with its picture in it. */
  carriedAlong(garden: Garden): Promise<WithPicture>;
  /** A garden as it comes out of a file: its picture put by, and the garden itself small again. */
  takenIn(garden: Garden): Promise<WithPicture>;
  /** Removes those that no garden here uses any more; they are left where that cannot be told. */
  sweep(gardens: Shelf, editor: Editor): Promise<void>;
}

export function createPictures(shelf: PictureShelf, now: () => number): Pictures {
  /** Those that could not be kept. */
  const atHand = new Map<string, Blob>();

  const put = async (picture: string, blob: Blob): Promise<string | null> => {
    try {
      await shelf.put({ picture, blob, at: now() });
      atHand.delete(picture);
      return null;
    } catch (error) {
      atHand.set(picture, blob);
      return say`The picture lies beneath the plan, but could not be kept. ${reasonOf(error)}`;
    }
  };

  const blobOf = async (picture: string): Promise<Blob | null> => {
    try {
      return atHand.get(picture) ?? (await shelf.get(picture))?.blob ?? null;
    } catch {
      return null; // what this device keeps nothing of is said where gardens are kept
    }
  };

  return {
    put,
    blobOf,
    async carriedAlong(garden) {
      const { underlay } = garden;
      if (!underlay) return { garden, lacking: null };
      const blob = await blobOf(underlay.picture);
      if (!blob) return { garden, lacking: told(NOT_IN_FILE) };
      return { garden: { ...garden, underlay: { ...underlay, data: await asDataUrl(blob) } }, lacking: null };
    },
    async takenIn(garden) {
      const { underlay } = garden;
      if (!underlay?.data) return { garden, lacking: null };
      const { data, ...rest } = underlay;
      const bare = { ...garden, underlay: { ...rest, data: null } };
      const blob = blobOfDataUrl(data);
      const header = blob && pictureHeader(new Uint8Array(await blob.arrayBuffer()));
      // A picture of other sizes than the garden says is another one, or worse.
      if (!header || header.width !== underlay.pixels[0] || header.height !== underlay.pixels[1]) {
        return { garden: bare, lacking: told(BROKEN_IN_FILE) };
      }
      const picture = await fingerprint(blob);
      const taken = { ...garden, underlay: { ...rest, picture, data: null } };
      return { garden: taken, lacking: await put(picture, blob) };
    },
    async sweep(gardens, editor) {
      try {
        await sweepPictures(shelf, gardens, editor, now());
      } catch {
        // They take up room until the next time.
      }
    },
  };
}

const NOT_IN_FILE = word(
  "The garden is in the file, but the picture beneath its plan is not: it is not on this device.",
);
const BROKEN_IN_FILE = word(
  "The garden was opened, but the picture beneath its plan cannot be read. Choose it again under Site.",
);
