import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { KeptPicture, PictureShelf } from "./picture-shelf.ts";

interface Schema extends DBSchema {
  pictures: { key: string; value: KeptPicture };
  /** When each was put: apart from the bytes, which need not be read to know. */
  times: { key: string; value: { readonly picture: string; readonly at: number } };
}

const VERSION = 1;

/**
 * Pictures in a database of their own beside that of the gardens: tabs of an older version go on with theirs, and no
 * garden waits for a picture to be written.
 */
export function createPictureDatabase(name = "bedwright-pictures"): PictureShelf {
  let opened: Promise<IDBPDatabase<Schema>> | null = null;
  const forget = () => {
    opened = null;
  };
  const open = () => {
    opened ??= openDB<Schema>(name, VERSION, {
      upgrade(database) {
        database.createObjectStore("pictures", { keyPath: "picture" });
        database.createObjectStore("times", { keyPath: "picture" });
      },
      blocking: (_from, _to, event) => {
        if (event.target instanceof IDBDatabase) event.target.close();
        forget();
      },
      terminated: forget,
    });
    // What failed once can go well the next time.
    opened.catch(forget);
    return opened;
  };

  return {
    get: async (picture) => (await open()).get("pictures", picture),
    put: async (kept) => {
      const transaction = (await open()).transaction(["pictures", "times"], "readwrite");
      const { picture, at } = kept;
      await Promise.all([
        transaction.objectStore("pictures").put(kept),
        transaction.objectStore("times").put({ picture, at }),
        transaction.done,
      ]);
    },
    list: async () => (await open()).getAll("times"),
    remove: async (picture) => {
      const transaction = (await open()).transaction(["pictures", "times"], "readwrite");
      await Promise.all([
        transaction.objectStore("pictures").delete(picture),
        transaction.objectStore("times").delete(picture),
        transaction.done,
      ]);
    },
  };
}
