import { type Database, putGarden, type StoredGarden } from "./database.ts";

const KEY = "bedwright-last-moment";

/**
 * Sets a garden down where writing is done at once. A page that is closing may be gone before IndexedDB has taken
 * anything; the next visit puts this where it belongs.
 */
export function setDown(garden: StoredGarden): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(garden));
  } catch {
    // Full or denied: the keeper is writing to IndexedDB at the same moment, and says so if that fails too.
  }
}

/** Puts what was set down in the last moment among the kept gardens, and clears it away. */
export async function takeUp(database: Database): Promise<void> {
  const text = readDown();
  if (text === null) return;
  const garden = parsed(text);
  if (!garden) {
    localStorage.removeItem(KEY);
    return;
  }
  const kept = await database.get("gardens", garden.id);
  if (!kept || kept.changed <= garden.changed) await putGarden(database, garden);
  localStorage.removeItem(KEY);
}

function readDown(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null; // storage denied: nothing was set down either
  }
}

/** Null for what this page cannot have written whole. */
function parsed(text: string): StoredGarden | null {
  try {
    const { id, name, changed, beds, text: own } = JSON.parse(text) as Partial<StoredGarden>;
    const isWhole =
      id !== undefined &&
      name !== undefined &&
      changed !== undefined &&
      beds !== undefined &&
      own !== undefined;
    return isWhole ? { id, name, changed, beds, text: own } : null;
  } catch {
    return null;
  }
}
