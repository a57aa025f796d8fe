import type { Shelf } from "./shelf.ts";
import type { KeptChange, StepRecord, StoredGarden } from "./stored.ts";

const KEY = "bedwright-last-moment";
const keyOf = (id: string) => `${KEY}:${id}`;

/**
 * Sets a change down where writing is done at once. A page that is closing may be gone before IndexedDB has taken
 * anything; the next visit puts this where it belongs.
 */
export function setDown({ garden, steps }: KeptChange): void {
  try {
    localStorage.setItem(keyOf(garden.id), JSON.stringify({ garden, steps }));
  } catch {
    // Full or denied: the keeper is writing to IndexedDB at the same moment, and says so if that fails too.
  }
}

/**
 * Puts what was set down in the last moment among the kept gardens, and clears it away.
 * @returns a garden there was no room for, which stays set down; null where all went well
 * @throws what the shelf throws when it is asked
 */
export async function takeUp(shelf: Shelf): Promise<StoredGarden | null> {
  let left: StoredGarden | null = null;
  for (const key of keysSetDown()) {
    const change = parsed(localStorage.getItem(key));
    const kept = change && (await shelf.get(change.garden.id));
    try {
      if (change && (!kept || kept.changed <= change.garden.changed)) await shelf.put(change);
      localStorage.removeItem(key);
    } catch {
      left = change?.garden ?? null;
    }
  }
  return left;
}

function keysSetDown(): string[] {
  try {
    return Object.keys(localStorage).filter((key) => key === KEY || key.startsWith(`${KEY}:`));
  } catch {
    return []; // storage denied: nothing was set down either
  }
}

/** Null for what this page cannot have written whole. */
function parsed(text: string | null): KeptChange | null {
  try {
    const data: unknown = JSON.parse(text ?? "");
    if (!isRecord(data)) return null;
    // Before there was a history, the garden alone was set down.
    const { garden, steps } = "garden" in data ? data : { garden: data, steps: [] };
    return isStored(garden) && Array.isArray(steps) && steps.every(isStep) ? { garden, steps } : null;
  } catch {
    return null;
  }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

function isStored(value: unknown): value is StoredGarden {
  return (
    isRecord(value) &&
    typeof value.id === "string" &&
    typeof value.name === "string" &&
    typeof value.changed === "number" &&
    typeof value.beds === "number" &&
    typeof value.text === "string" &&
    (value.history === undefined || isSpan(value.history))
  );
}

const isSpan = (value: unknown): boolean =>
  isRecord(value) && [value.first, value.at, value.end].every((n) => Number.isInteger(n));

const isStep = (value: unknown): value is StepRecord =>
  isRecord(value) && Number.isInteger(value.n) && typeof value.text === "string";
