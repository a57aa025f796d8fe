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
