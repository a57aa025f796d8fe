import { type Garden, writeGarden } from "../../src/index.ts";
import type { Editor } from "../store/editor.ts";
import type { StoredGarden } from "./database.ts";
import { useKeeping } from "./use-keeping.ts";

/** Where gardens are put. The page's is IndexedDB; a test's is a map. */
export interface Shelf {
  put(garden: StoredGarden): Promise<unknown>;
}

/** Changes are kept well within a second of the last one, and not once for each step of a held arrow key. */
const PAUSE_MS = 300;
const TRY_AGAIN_MS = 5000;

export interface Keeper {
  /** Says which kept garden the one on the board is; null for one that is not kept until it changes. */
  adopt(id: string | null): void;
  /** Keeps the garden on the board now, changed or not; true if that went well. */
  keepNow(): Promise<boolean>;
  stop(): void;
}

/**
 * Keeps the garden on the board whenever it changes. What cannot be kept is said at once and stays said until it
 * can; it is tried again by itself and with the next change.
 *
 * @param shelf null where the browser keeps nothing
 */
export function createKeeper(
  editor: Editor,
  shelf: Shelf | null,
  now: () => number,
  newId: () => string,
): Keeper {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let running: Promise<boolean> = Promise.resolve(true);

  const later = (ms: number) => {
    clearTimeout(timer);
    timer = setTimeout(() => void keepNow(), ms);
  };

  const keepNow = (): Promise<boolean> => {
    clearTimeout(timer);
    // One after another: an earlier garden must not be written over a later one.
    running = running.then(write);
    return running;
  };

  const write = async (): Promise<boolean> => {
    const { garden } = editor.getState();
    const id = useKeeping.getState().gardenId ?? newId();
    try {
      if (!shelf) throw new DOMException("no storage", "SecurityError");
      await shelf.put(asStored(id, garden, now()));
    } catch (error) {
      useKeeping.setState({ keeping: { state: "not-kept", reason: reasonOf(error) } });
      later(TRY_AGAIN_MS);
      return false;
    }
    // Another garden may have come onto the board meanwhile, with an id of its own.
    if (useKeeping.getState().gardenId === null && editor.getState().garden === garden) {
      useKeeping.setState({ gardenId: id });
    }
    if (editor.getState().garden === garden) useKeeping.setState({ keeping: { state: "kept", at: now() } });
    return true;
  };

  let expected: Garden = editor.getState().garden;
  const stopListening = editor.subscribe(({ garden }) => {
    if (garden === expected) return;
    expected = garden;
    if (useKeeping.getState().keeping.state === "kept") {
      useKeeping.setState({ keeping: { state: "keeping" } });
    }
    later(PAUSE_MS);
  });

  return {
    adopt(gardenId) {
      clearTimeout(timer);
      expected = editor.getState().garden;
      useKeeping.setState({ gardenId, keeping: { state: "kept", at: null } });
    },
    keepNow,
    stop() {
      clearTimeout(timer);
      stopListening();
    },
  };
}

export function asStored(id: string, garden: Garden, changed: number): StoredGarden {
  return {
    id,
    name: garden.name,
    changed,
    beds: garden.items.filter(({ kind }) => kind === "bed").length,
    text: writeGarden(garden),
  };
}

export function reasonOf(error: unknown): string {
  const name = error instanceof DOMException ? error.name : "";
  if (name === "QuotaExceededError") {
    return "This device's storage is full, so the last changes are not kept. Save the garden to a file, or remove gardens you no longer need.";
  }
  if (name === "SecurityError" || name === "InvalidStateError") {
    return "This browser keeps nothing here (a private window, or storage is turned off). Save the garden to a file before you close the page.";
  }
  return "The last changes could not be kept on this device. Save the garden to a file to be safe; keeping is tried again by itself.";
}
