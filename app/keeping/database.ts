import { type DBSchema, type IDBPDatabase, openDB } from "idb";

/** A garden as it lies in the browser's storage: its text is the same as in a file, and read through the same door. */
export interface StoredGarden {
  readonly id: string;
  readonly name: string;
  readonly changed: number;
  readonly beds: number;
  readonly text: string;
}

interface Schema extends DBSchema {
  gardens: { key: string; value: StoredGarden; indexes: { changed: number } };
}

export type Database = IDBPDatabase<Schema>;

const VERSION = 1;

/** @throws DOMException where the browser keeps nothing (a private window, storage denied) */
export const openDatabase = (name = "bedwright"): Promise<Database> =>
  openDB<Schema>(name, VERSION, {
    upgrade(database) {
      database.createObjectStore("gardens", { keyPath: "id" }).createIndex("changed", "changed");
    },
  });

/** All gardens, last changed first. */
export async function storedGardens(database: Database): Promise<StoredGarden[]> {
  return (await database.getAllFromIndex("gardens", "changed")).reverse();
}

/**
 * Keeps a garden. Its transaction is committed along with it: left to itself, the browser would commit only after it
 * has come back to the page, and a page that is closing is no longer there.
 */
export async function putGarden(database: Database, garden: StoredGarden): Promise<void> {
  const transaction = database.transaction("gardens", "readwrite");
  const put = transaction.store.put(garden);
  transaction.commit();
  await Promise.all([put, transaction.done]);
}
