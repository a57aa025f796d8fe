import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { say } from "../../src/index.ts";
import { PagesOfTwoVersions } from "./reason-of.ts";
import type { PackedState, Shelf } from "./shelf.ts";
import type { StepRecord, StoredGarden } from "./stored.ts";

interface Schema extends DBSchema {
  gardens: { key: string; value: StoredGarden; indexes: { changed: number } };
  /** What was done to a garden, step by step; `n` counts on for as long as the garden is kept. */
  steps: { key: [garden: string, n: number]; value: StepRecord & { readonly garden: string } };
  states: { key: [garden: string, at: number]; value: PackedState };
}

type Database = IDBPDatabase<Schema>;

const VERSION = 2;

/** All numbers, as bounds of a key. */
const [FIRST, LAST] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];

function openDatabase(name: string, onEnd: () => void): Promise<Database> {
  return new Promise((resolve, reject) => {
    if (!("indexedDB" in globalThis && globalThis.indexedDB)) {
      throw new DOMException(say`this browser has no storage`, "NotFoundError");
    }
    openDB<Schema>(name, VERSION, {
      upgrade(database, from) {
        if (from < 1) {
          database.createObjectStore("gardens", { keyPath: "id" }).createIndex("changed", "changed");
        }
        if (from < 2) {
          database.createObjectStore("steps", { keyPath: ["garden", "n"] });
          database.createObjectStore("states", { keyPath: ["garden", "at"] });
        }
      },
      // Another tab holds an older version open. The page must not wait for it without a word.
      blocked: () => reject(new PagesOfTwoVersions()),
      // A later version is about to change the storage: this page lets go, and says so with its next change.
      blocking: (_from, _to, event) => {
        if (event.target instanceof IDBDatabase) event.target.close();
        onEnd();
      },
      terminated: onEnd,
    }).then(resolve, reject);
  });
}

/**
 * The browser's own storage as a shelf. Its connection is opened when first needed and again when the browser has
 * ended it, so that what failed once can go well the next time.
 */
export function createDatabaseShelf(name = "bedwright"): Shelf {
  let opened: Promise<Database> | null = null;
  const forget = () => {
    opened = null;
  };
  const open = (): Promise<Database> => {
    if (!opened) {
      const opening = openDatabase(name, forget);
      opening.catch(() => {
        if (opened === opening) opened = null;
      });
      opened = opening;
    }
    return opened;
  };

  const using = async <T>(work: (database: Database) => Promise<T>): Promise<T> => {
    try {
      return await work(await open());
    } catch (error) {
      // The connection was closed under our feet: once more with a new one.
      if (!(error instanceof DOMException && error.name === "InvalidStateError")) throw error;
      forget();
      return await work(await open());
    }
  };

  return {
    list: () => using(async (database) => (await database.getAllFromIndex("gardens", "changed")).reverse()),
    get: (id) => using((database) => database.get("gardens", id)),
    steps: (id) => using((database) => database.getAll("steps", IDBKeyRange.bound([id, FIRST], [id, LAST]))),
    /*
     * Committed along with it: left to itself, the browser would commit only after it has come back to the page, and
     * a page that is closing is no longer there. Strictly, so that a cut of the power takes nothing either.
     */
    put: ({ garden, steps }) =>
      using(async (database) => {
        const transaction = database.transaction(["gardens", "steps"], "readwrite", { durability: "strict" });
        const stepStore = transaction.objectStore("steps");
        const { first, end } = garden.history ?? { first: 0, end: 0 };
        const { id } = garden;
        const asked: Promise<unknown>[] = [
          transaction.objectStore("gardens").put(garden),
          stepStore.delete(IDBKeyRange.bound([id, FIRST], [id, first], false, true)),
          stepStore.delete(IDBKeyRange.bound([id, end], [id, LAST])),
          ...steps.map((step) => stepStore.put({ ...step, garden: id })),
        ];
        transaction.commit();
        await Promise.all([...asked, transaction.done]);
      }),
    remove: (id) =>
      using(async (database) => {
        const transaction = database.transaction(["gardens", "steps", "states"], "readwrite");
        const ofGarden = IDBKeyRange.bound([id, FIRST], [id, LAST]);
        await Promise.all([
          transaction.objectStore("gardens").delete(id),
          transaction.objectStore("steps").delete(ofGarden),
          transaction.objectStore("states").delete(ofGarden),
          transaction.done,
        ]);
      }),
    stateTimes: (id) =>
      using(async (database) => {
        const keys = await database.getAllKeys("states", IDBKeyRange.bound([id, FIRST], [id, LAST]));
        return keys.map(([, at]) => at);
      }),
    states: (id) =>
      using((database) => database.getAll("states", IDBKeyRange.bound([id, FIRST], [id, LAST]))),
    putState: (state, thinnedOut) =>
      using(async (database) => {
        const transaction = database.transaction("states", "readwrite");
        await Promise.all([
          transaction.store.put(state),
          ...thinnedOut.map((at) => transaction.store.delete([state.garden, at])),
          transaction.done,
        ]);
      }),
  };
}
