/**
 * A choice kept on this device, or null where none is kept or the browser tells nothing.
 * @param choices what may stand there: anything else was not written by this page
 */
export function remembered<T extends string>(key: string, choices: readonly T[]): T | null {
  try {
    const kept = localStorage.getItem(key);
    return choices.find((choice) => choice === kept) ?? null;
  } catch {
    return null;
  }
}

/** Keeps a choice on this device. Where storage is denied it lasts as long as the page. */
export function remember(key: string, choice: string): void {
  try {
    localStorage.setItem(key, choice);
  } catch {
    // Nothing of the garden depends on it.
  }
}
